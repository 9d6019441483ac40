export { borePlan } from './bore-plan.js';
export type { BorePlan, BoreReason, BoreRequest, BoreToMachine, BoreWork } from './bore-types.js';
export { describeBorePlan } from './describe-bore-plan.js';
export { oversizeSteps } from './oversize.js';
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
