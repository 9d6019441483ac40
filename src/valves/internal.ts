// What the other rooms use of this one and users never see.
export {
  rockerArmRatio,
  springForce,
  springHeight,
  trainLength,
  trainTemperature,
  valveMargin,
  wantedLash,
} from './domains.js';
export { MARGIN_LIMIT, SEAT_WIDTH_LIMIT } from './sources.js';
