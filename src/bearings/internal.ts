// What the other rooms use of this one and users never see.
export { clearanceLeft, guardShellWall, oilClearanceLimits } from './clearance.js';
export { consequence } from './explain.js';
export { guardRoughness } from './film/film-regime.js';
export { guardBearing, guardLoad, guardSpeed } from './film/journal-bearing.js';
export { governingLimit } from './film/safe-hours.js';
export { rankShells } from './match.js';
