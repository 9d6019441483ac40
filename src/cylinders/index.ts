/**
 * What to bore cylinders to, piston clearance, rings and pins cold and warm, honing, and compression.
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
export { pinFit } from './pins/pin-fit.js';
export type { PinFit, PinInBore, PinJoint } from './pins/pin-types.js';
export { type PinReamSize, type PinToReamFor, pinReamSize } from './pins/ream-size.js';
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
export {
  type RingBackClearance,
  type RingOverRoot,
  ringBackClearance,
} from './rings/back-clearance.js';
export { type LeakingRing, type RingLeakArea, ringLeakArea } from './rings/leak-area.js';
export {
  type RingInGroove,
  type RingSideClearance,
  ringSideClearance,
} from './rings/side-clearance.js';
export { type RingTension, ringTension, type SpringingRing } from './rings/tension.js';
export { convertRoughness, type RoughnessMeasure, type RoughnessSpan } from './roughness.js';
export {
  type ColdPistonClearance,
  coldPistonClearance,
  type HotPistonClearance,
  hotPistonClearance,
  type OutsideInBore,
  type PistonToFit,
  type PistonToWarm,
  type WarmPistonInBore,
} from './warm/piston-clearance.js';
export {
  type HotRingGap,
  type LeastColdRingGap,
  leastColdRingGap,
  type OutsideAroundRing,
  type RingToGap,
  type RingToWarm,
  ringGapHot,
  type WarmRingInBore,
} from './warm/ring-gap.js';
export type { RunningPart } from './warm/running-part.js';
