// What the other rooms use of this one and users never see.
export { describeDoubts, describeStepsLeft, outsideBy } from './describe-standing.js';
export {
  type AmountRule,
  amountOr,
  guardMachining,
  guardStepsAtHand,
} from './machining-request.js';
export { journalShapeLimits, judgeShape, MOST_IN_DOUBT } from './shape-rule.js';
export { sizeSteps, withStandard } from './size-steps.js';
export { doubtAbout, guardSizeAndShape, outsideOf, usableAsItIs } from './standing.js';
export { gapOf, worstCase } from './worst-case.js';
