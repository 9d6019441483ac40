// What the other rooms use of this one and users never see.
export { guardCrankPlace } from './crank-place.js';
export {
  angleWithin,
  breakerSpeedRatio,
  plugGap,
  pointsGap,
  rimDiameter,
  sparkAdvance,
  sparkLag,
} from './domains.js';
export { guardCamTeeth, TEETH } from './gear-teeth.js';
export { guardValveReadings } from './valve-readings.js';
