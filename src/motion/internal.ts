// What the other rooms use of this one and users never see.
export { sayProud, sayStandDown } from './describe-stand-down.js';
export {
  airPressure,
  bearingLoad,
  crankSpeed,
  deckClearance,
  dipperLength,
  dipperRoom,
  geometricCompression,
  heightFromCrank,
  movingMass,
  oilDepth,
  pinForce,
  pinHeight,
  polytropicExponent,
  rodCentres,
  rodLean,
} from './domains.js';
export { CYCLE, guardCycle } from './guards.js';
export { guardCrankTrain, positionAt } from './piston-motion.js';
