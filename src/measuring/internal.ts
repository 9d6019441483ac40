// What the other rooms use of this one and users never see.
export {
  describeDoubts,
  describeNearly,
  describeStepsLeft,
  isReadTooCoarsely,
  outsideBy,
} from './describe-standing.js';
export { linearExpansion, partTemperature } from './domains.js';
export { guardExpansion } from './expansion.js';
export {
  type AmountRule,
  amountOr,
  guardMachining,
  guardStepsAtHand,
} from './machining-request.js';
export { oddInBore } from './odd-in-bore.js';
export { journalShapeLimits, judgeShape, MOST_IN_DOUBT } from './shape-rule.js';
export { sizeSteps, withStandard } from './size-steps.js';
export { doubtAbout, guardSizeAndShape, outsideOf, usableAsItIs } from './standing.js';
