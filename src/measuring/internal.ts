export { asOthersSay } from './as-others-say.js';
// What the other rooms use of this one and users never see.
export { saySettling } from './budget/describe-settling.js';
export { sayOddReading } from './describe-odd-reading.js';
export {
  describeDoubts,
  describeNearly,
  describeStepsLeft,
  isReadTooCoarsely,
  outsideBy,
} from './describe-standing.js';
export { sayStillToRead } from './describe-still-to-read.js';
export {
  dialReading,
  elasticModulus,
  instrumentError,
  linearExpansion,
  partTemperature,
  scaleDivision,
  shownLength,
  statedUncertainty,
  temperaturesApart,
} from './domains.js';
export { ENGINE_MATERIALS, guardExpansion } from './expansion.js';
export { fewestAtAPlace } from './fewest-readings.js';
export {
  type AmountRule,
  amountOr,
  guardMachining,
  guardStepsAtHand,
} from './machining-request.js';
export { ofGreyIron, ofSteel } from './made-moduli.js';
export { oddInBore } from './odd-in-bore.js';
export { type KnownShape, kindestShape, type ReadSoFar, readSoFar } from './read-so-far.js';
export { groupBy, guardReadings, isOneDiameter } from './readings.js';
export { repeatsIn } from './repeats.js';
export { formOf } from './shape.js';
export { journalShapeLimits, judgeShape, MOST_IN_DOUBT } from './shape-rule.js';
export { sizeSteps, withStandard } from './size-steps.js';
export { doubtAbout, guardSizeAndShape, outsideOf, usableAsItIs } from './standing.js';
export { gapOf, worstCase } from './worst-case.js';
