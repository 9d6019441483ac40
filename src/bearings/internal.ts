// What the other rooms use of this one and users never see.
export {
  NO_FILTER,
  oilBrought,
  particleSize,
  shellPressure,
  shellTemperature,
} from './acceptance/domains.js';
export { shellMetals } from './acceptance/shell-material.js';
export { TRUMPLER, trumplerHottest } from './acceptance/trumpler.js';
export { clearanceLeft, oilClearanceLimits } from './clearance.js';
export { oilFilm, shellWall, surfaceRoughness } from './domains.js';
export { consequence, READ_BEFORE_BLAME, sayClearance } from './explain.js';
export { inletDoubt, shareInDoubt } from './film/domains.js';
export { guardBearing } from './film/journal-bearing.js';
export { loadInDoubt } from './film/max-fuel-dilution-span.js';
export { rankShells } from './match.js';
export { mostApart } from './one-bearing.js';
export { guardLoads } from './orbit/guard-big-end.js';
export { wallsToSuit } from './shell-wall-to-suit.js';
