// What the other rooms use of this one and users never see.
export { clearanceLeft, oilClearanceLimits } from './clearance.js';
export { shellWall, surfaceRoughness } from './domains.js';
export { consequence } from './explain.js';
export { guardBearing } from './film/journal-bearing.js';
export { governingLimit } from './film/safe-hours.js';
export { rankShells } from './match.js';
export { wallsToSuit } from './shell-wall-to-suit.js';
