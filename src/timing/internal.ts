// What the other rooms use of this one and users never see.
export { pastTopOf } from './crank-place.js';
export {
  angleWithin,
  breakerSpeedRatio,
  plugGap,
  pointsGap,
  rimDiameter,
  sparkAdvance,
  sparkLag,
  turnFromCentre,
} from './domains.js';
export { guardCamTeeth, TEETH } from './gear-teeth.js';
export { guardValveReadings } from './valve-readings.js';
