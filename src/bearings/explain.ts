import { undersizeSteps } from '../crankshaft/index.js';
import { type Finding, judge, type OwnLimits, type Wording } from '../judging/index.js';
import {
  diameter,
  diametralClearance,
  guardFields,
  guardLayout,
  guardLength,
  guardList,
  guardWording,
  holds,
  NANOMETRE,
  say,
  sayDistance,
  sayFinding,
  sizeStep,
  toleratedWear,
  type WithTarget,
} from '../judging/internal.js';
import { type Length, RebuildInputError, thou } from '../quantities/index.js';
import { oilClearanceLimits } from './clearance.js';
import { clearanceExplanationLayout } from './layouts.js';
import { mostApart } from './one-bearing.js';

/** A clearance to explain. */
export interface ClearanceQuestion extends OwnLimits<'length'> {
  /** Diametral clearance that was measured or worked out; negative is an interference [m]. */
  readonly clearance: Length;
  /** Journal diameter, for the rule of thumb where no limits are given [m]. */
  readonly journal: Length;
  /** Undersizes that shells and journals come in; by default 10, 20 and 30 thou [m]. */
  readonly steps?: readonly Length[];
  /** How far wear may take a matched clearance above its limits; by default 0.002 in [m]. */
  readonly wearAllowance?: Length;
}

const QUESTION = [
  'clearance',
  'journal',
  'steps',
  'wearAllowance',
  'limits',
  'basis',
  'service',
  'uncertainty',
  'rule',
  'target',
] as const;

/** Journal and shells of different undersizes. */
export interface UndersizeMismatch {
  /** Which of the two is the smaller. */
  readonly outcome: 'journal ground, shells not' | 'shells undersize, journal not';
  /** The clearance against its limits. */
  readonly finding: Finding<'length'>;
  /** How far apart in undersize journal and shells are, on the diameter [m]. */
  readonly mismatch: Length;
  /** The clearance that matching shells would leave, against the same limits. */
  readonly matched: Finding<'length'>;
}

/** What explains a clearance. */
export type ClearanceExplanation =
  | UndersizeMismatch
  | {
      /**
       * Nothing to explain: the clearance is within its limits, or nearer to one than it is measured to.
       * Or no undersize explains it: wear, a wrong part or a wrong reading.
       */
      readonly outcome:
        | 'as it should be'
        | 'undecided'
        | 'too loose, unexplained'
        | 'too tight, unexplained';
      /** The clearance against its limits. */
      readonly finding: Finding<'length'>;
    };

/**
 * Checks whether an undersize step explains a wrong clearance. A ground journal in shells made
 * for a larger one is loose by exactly that step and knocks; the reverse is tight by it. A step
 * explains the clearance if matching shells would bring it within the limits, or above them by at
 * most the wear allowance; `matched` says which. A step no larger than the width of the limits
 * explains nothing: it is indistinguishable from wear.
 *
 *     matched = clearance - step   the journal is ground, the shells are not
 *     matched = clearance + step   the shells are undersize, the journal is not
 *
 * @param question - the clearance, its journal, and the limits and steps if they are known [m]
 * @returns the explanation, with the clearance that matching shells would leave
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, the limits lack
 * one bound, or no step is more than standard
 * @see Source: common practice; worked check in tests/published/bearings.test.ts
 * @example
 * ```ts
 * const why = explainClearance({
 *   clearance: thou(22), journal: inch(2.105),
 *   limits: { min: thou(1), max: thou(3) },
 * });
 * why.outcome; // "journal ground, shells not"
 * 'mismatch' in why && format(why.mismatch, thou); // "20.0 thou"
 * ```
 */
export function explainClearance(question: ClearanceQuestion): ClearanceExplanation {
  guardFields('question', question as WithTarget<ClearanceQuestion>, QUESTION);
  const journal = diameter('journal', question.journal);
  const most = mostApart(journal);
  const clearance = guardLength(
    'clearance',
    question.clearance,
    [-most, most],
    diametralClearance.example,
  );
  const allowed = oilClearanceLimits('question', question, journal);
  const { limits } = allowed;
  const { min, max } = limits;
  if (min === undefined || max === undefined) {
    throw new RebuildInputError({
      parameter: 'limits',
      value: limits,
      expected: 'both a min and a max',
      problem: 'has only one of min and max',
      hint: 'Without both it cannot be said which clearance matching shells would leave.',
    });
  }
  const { steps: named = undersizeSteps('inch'), wearAllowance = thou(2) } = question;
  const steps = guardSteps(named);
  const wear = toleratedWear('wearAllowance', wearAllowance);
  const judgeAs = (value: Length) =>
    judge({ feature: 'oil clearance', dimension: 'length', value, ...allowed });

  const finding = judgeAs(clearance);
  if (holds(finding)) return { outcome: 'as it should be', finding };
  if (finding.verdict === 'undecided') return { outcome: 'undecided', finding };
  const loose = finding.verdict === 'above';
  const explains = (matched: Finding<'length'>) =>
    matched.verdict === 'within' ||
    matched.verdict === 'undecided' ||
    (matched.verdict === 'above' && matched.margin >= -wear - NANOMETRE);
  const [best] = steps
    .filter((step) => step > max - min + NANOMETRE)
    .map((mismatch) => ({
      mismatch,
      matched: judgeAs((loose ? clearance - mismatch : clearance + mismatch) as Length),
    }))
    .filter(({ matched }) => explains(matched))
    .sort((a, b) => b.matched.margin - a.matched.margin);
  if (best === undefined) {
    return { outcome: loose ? 'too loose, unexplained' : 'too tight, unexplained', finding };
  }
  const outcome = loose ? 'journal ground, shells not' : 'shells undersize, journal not';
  return { outcome, finding, ...best };
}

/**
 * Describes an explanation in a sentence.
 *
 * @param explanation - what `explainClearance` gave
 * @param wording - the units to print in
 * @returns one sentence without a full stop
 * @throws {RebuildInputError} when a field is misspelt, the explanation is not what `explainClearance` gives, or the
 * unit system is unknown
 * @example
 * ```ts
 * const why = explainClearance({
 *   clearance: thou(22), journal: inch(2.105), limits: { min: thou(1), max: thou(3) },
 * });
 * describeClearance(why, { units: 'inch' });
 * // ["it is as if the journal were ground 0.0200 in below what these shells are made for: it will knock; matching shells would leave 0.0020 in"]
 * ```
 */
export function describeClearance(
  explanation: ClearanceExplanation,
  wording: Wording,
): readonly string[] {
  guardLayout('explanation', explanation, clearanceExplanationLayout, 'explainClearance');
  guardWording(wording);
  return [sayClearance(explanation, wording)];
}

/** The sentence of it. */
export function sayClearance(explanation: ClearanceExplanation, wording: Wording): string {
  const length = (value: Length) => say(value, 'length', wording.units);
  switch (explanation.outcome) {
    case 'journal ground, shells not':
      return `it is as if the journal were ground ${length(explanation.mismatch)} below what these shells are made for: ${consequence(explanation, wording)}`;
    case 'shells undersize, journal not':
      return `it is as if these shells were for a journal ground ${length(explanation.mismatch)} smaller: ${consequence(explanation, wording)}`;
    case 'as it should be':
    case 'undecided':
      return sayFinding(explanation.finding, wording);
    default:
      return `${sayFinding(explanation.finding, wording)}; ${explanation.finding.value <= 0 ? 'the shells grip the journal, it cannot turn; ' : ''}none of the undersizes considered explains it`;
  }
}

/** What to take again before shells are called wrong: a housing that is too large looks like a ground journal. */
export const READ_BEFORE_BLAME = 'read journal and housing again, and the stamp on the shells';

/** What a mismatch does, and the clearance that matching shells would leave. */
export function consequence(
  { outcome, finding, matched }: UndersizeMismatch,
  wording: Wording,
): string {
  const tight = finding.value <= 0 ? 'it cannot turn' : 'it has too little oil';
  const effect = outcome === 'journal ground, shells not' ? 'it will knock' : tight;
  const left = `matching shells would leave ${say(matched.value, 'length', wording.units)}`;
  if (matched.verdict === 'within') return `${effect}; ${left}`;
  if (holds(matched)) return `${effect}; ${left}, within the service limit`;
  if (matched.verdict === 'undecided') return `${effect}; ${left}, too near to a limit to tell`;
  const excess = sayDistance(-matched.margin, 'length', wording.units);
  return `${effect}; ${left}, still ${excess} above the limit`;
}

function guardSteps(steps: readonly Length[]): readonly Length[] {
  guardList('steps', steps, 1, 'undersize');
  const ground = steps
    .map((step, i) => sizeStep(`steps[${i}]`, step))
    .filter((step) => step > NANOMETRE);
  if (ground.length > 0) return ground;
  throw new RebuildInputError({
    parameter: 'steps',
    value: steps,
    expected: 'at least one undersize other than standard',
    hint: 'Name those that shells are made in, e.g. undersizeSteps("inch").',
  });
}
