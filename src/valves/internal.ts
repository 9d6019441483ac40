// What the other rooms use of this one and users never see.
export {
  forceError,
  rockerArmRatio,
  springForce,
  springHeight,
  stemDiameter,
  trainLength,
  trainTemperature,
  valveLash,
  valveMargin,
  valveRecession,
  valveSeatWidth,
  wantedLash,
} from './domains.js';
export { ownRatioLimitsOr } from './ratio-limits.js';
export { MARGIN_LIMIT, SEAT_WIDTH_LIMIT } from './sources.js';
