export { pistonClearance, pistonClearanceSpan } from './piston-clearance.js';
export {
  type MeasuredRingGap,
  type RingFiling,
  type RingGapAt,
  recommendedRingGap,
  ringFilingNeeded,
  ringGapAlongBore,
  ringGapIn,
} from './ring-gap.js';
