// What the other rooms use of this one and users never see.
export {
  type AmountRule,
  amountOr,
  guardMachining,
  guardStepsAtHand,
} from './machining-request.js';
export { journalShapeLimits, judgeShape } from './shape-rule.js';
export { sizeSteps, withStandard } from './size-steps.js';
export { guardSizeAndShape, outsideOf, usableAsItIs } from './standing.js';
