export { describeGrindPlan } from './describe-grind-plan.js';
export { type EndPlay, type EndPlayReading, endPlay } from './end-play.js';
export {
  type GrindPlan,
  type GrindReason,
  type GrindRequest,
  grindPlan,
  type JournalToGrind,
  type JournalWork,
} from './grind-plan.js';
export { undersizeSteps } from './undersize.js';
