// What the other rooms use of this one and users never see.
export { valveMargin } from './domains.js';
export { ownRatioLimitsOr } from './ratio-limits.js';
export { MARGIN_LIMIT, SEAT_WIDTH_LIMIT } from './sources.js';
