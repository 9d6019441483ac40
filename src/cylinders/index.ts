/**
 * What to bore cylinders to, piston clearance, ring gaps, honing, and compression.
 *
 * @packageDocumentation
 */
export { borePlan } from './bore-plan.js';
export type {
  BorePlan,
  BoreReason,
  BoreRequest,
  BoreToMachine,
  BoreWork,
  ServedBorePlan,
} from './bore-types.js';
export * from './compression/index.js';
export { describeBorePlan } from './describe-bore-plan.js';
export { crosshatchAngle, type HoneMotion, strokeRateForCrosshatch } from './honing.js';
export { oversizeSteps } from './oversize.js';
export { pistonClearance, pistonClearanceSpan } from './piston-clearance.js';
export { type RingFiling, ringFilingNeeded } from './ring-filing.js';
export {
  type MeasuredRingGap,
  type RingGapAt,
  type RingTravel,
  recommendedRingGap,
  ringGapAlongBore,
  ringGapIn,
} from './ring-gap.js';
export { convertRoughness, type RoughnessMeasure, type RoughnessSpan } from './roughness.js';
