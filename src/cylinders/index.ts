export { pistonClearance, pistonClearanceSpan } from './piston-clearance.js';
export {
  type MeasuredRingGap,
  type RingFiling,
  type RingGapAt,
  type RingTravel,
  recommendedRingGap,
  ringFilingNeeded,
  ringGapAlongBore,
  ringGapIn,
} from './ring-gap.js';
