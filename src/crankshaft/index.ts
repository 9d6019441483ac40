/**
 * What to grind a crankshaft to, its end play, and the shims and washers that set it.
 *
 * @packageDocumentation
 */
export { describeGrindPlan } from './describe-grind-plan.js';
export { type EndPlay, type EndPlayReading, endPlay } from './end-play.js';
export { grindPlan } from './grind-plan.js';
export type {
  GrindPlan,
  GrindReason,
  GrindRequest,
  JournalToGrind,
  JournalWork,
  NearlyServes,
  ServedGrindPlan,
} from './grind-types.js';
export { pickShims, type Shim, type ShimStack } from './pick-shims.js';
export { undersizeSteps } from './undersize.js';
export { type FittedWashers, type WashersToFit, washersForEndPlay } from './washers.js';
