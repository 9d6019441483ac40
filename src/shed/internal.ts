// What the other rooms use of this one; users never see it.

export { accuracyOfShed } from './accuracy-of-shed.js';
export { printedFile } from './as-written.js';
export { MEASURED, type MeasuredField, type WholeField } from './checks/places.js';
export { type TakenApart, withCoreParts } from './core-parts.js';
export { everyFault } from './every-fault.js';
export { groupsIn } from './groups.js';
export { howShedWasRead } from './how-read.js';
export { needsOf } from './needs.js';
export {
  boresOf,
  mainHousingsOf,
  mainJournalsOf,
  pistonsOf,
  rodJournalsOf,
  rodsOf,
} from './places-of.js';
export { READ_AGAIN } from './record/outside-limits.js';
export { undoneBy } from './record/undone.js';
export { unreadBefore } from './record/unread-before.js';
export { named, partWord, wordFor } from './section-words.js';
export { SECTIONS } from './sections.js';
export { cautionsFor } from './triage/cautions.js';
export { describeAgain } from './triage/describe-again.js';
export { describeFar } from './triage/describe-far.js';
export { describeJob, doing, order } from './triage/describe-job.js';
export { describeMisread } from './triage/describe-misread.js';
export { NO_LIMIT_STATED, sayNotJudged } from './triage/describe-not-judged.js';
export { instrumentFor } from './triage/describe-not-measured.js';
export { nothingFits } from './triage/describe-reason.js';
export { describeTest, sayTestedFirst, sayTroubles } from './triage/describe-tests.js';
export { triageSections } from './triage/describe-triage.js';
export { saysAgain } from './triage/measure-again.js';
export { notJudgedOf } from './triage/not-judged.js';
export { thingsToMeasure } from './triage/not-measured.js';
export { ofPart } from './triage/of-part.js';
export { readyBlock } from './triage/ready-block.js';
export { readyCrankshaft } from './triage/ready-crankshaft.js';
export { readyHead, readyRods, readyValves, readyWhole } from './triage/ready-others.js';
export { pistonSizes } from './triage/ready-pistons.js';
export { testFirst } from './triage/test-first.js';
export { CRACK_TESTED, testsFor, withTests } from './triage/tests.js';
export { dispositionsOf } from './triage/triage.js';
export { troublesIn, troublesOf } from './triage/troubles.js';
export { isMisread, undecidedUntil } from './triage/until.js';
export type { Readiness, Way } from './triage/ways.js';
export { isTest } from './works.js';
