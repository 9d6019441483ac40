import type { Span } from '../judging/index.js';
import {
  diameter,
  guardFields,
  machiningStock,
  outOfTrue,
  showLength,
  sizeStep,
} from '../judging/internal.js';
import type { Shape } from '../measuring/index.js';
import {
  type AmountRule,
  amountOr,
  guardMachining,
  guardSizeAndShape,
  guardStepsAtHand,
  journalShapeLimits,
} from '../measuring/internal.js';
import { type Length, RebuildInputError, thou } from '../quantities/index.js';
import type { GrindRequest, JournalToGrind } from './grind-types.js';

const sizeRule = (): AmountRule => ({
  amount: thou(0.5),
  basis: {
    kind: 'common practice',
    rule: 'a journal within 0.0005 in (0.013 mm) of its size is used if the clearance allows',
  },
});
const allowanceRule = (): AmountRule => ({
  amount: thou(1),
  basis: {
    kind: 'common practice',
    rule: '0.001 in (0.025 mm) is left for the wheel to clean up',
  },
});

/** A request that is sound and complete. */
export type GrindJob = ReturnType<typeof guardRequest>;

const REQUEST = [
  'journals',
  'standard',
  'steps',
  'shellsAtHand',
  'minimum',
  'cleanUpAllowance',
  'sizeAllowance',
  'wear',
  'shape',
  'sizeUncertainty',
] as const;

/** Those of a journal, and those that its shape has besides. */
const JOURNAL = [
  'name',
  'smallest',
  'largest',
  'outOfRound',
  'taper',
  'runout',
  'faults',
  'form',
  'stations',
  'lines',
  'taperNotRead',
  'repeats',
] as const;

/** Checks a request at the door and fills in its defaults, each with its basis. */
export function guardRequest(request: GrindRequest) {
  guardFields('request', request, REQUEST);
  const list = { name: 'journals', parts: request.journals, one: 'journal' };
  const { standard, steps, sizeAllowance, wear, shape } = guardMachining(
    request,
    list,
    'undersize',
    sizeRule(),
  );
  const { cleanUpAllowance, shellsAtHand } = request;
  const { amount, basis } = amountOr(
    'cleanUpAllowance',
    cleanUpAllowance,
    allowanceRule(),
    machiningStock,
  );
  return {
    standard,
    steps,
    sizeAllowance,
    wear,
    journals: request.journals.map((journal, i) =>
      guardJournalOfKind(`journals[${i}]`, journal, standard),
    ),
    shellsAtHand: guardStepsAtHand('shellsAtHand', shellsAtHand, 'undersizes'),
    minimum: guardMinimumOfKind('minimum', request.minimum, standard),
    allowance: { cleanUpAllowance: amount, basis },
    shape: journalShapeLimits('shape', shape),
  };
}

/** Refuses a least size that even a journal that nothing is wrong with would not pass. */
export function guardMinimumOfKind(
  parameter: string,
  minimum: Length | undefined,
  standard: Span<Length>,
): Length | undefined {
  if (minimum === undefined || diameter(parameter, minimum) <= standard.max) return minimum;
  throw new RebuildInputError({
    parameter,
    value: minimum,
    shown: showLength(minimum),
    expected: `at most the standard ${showLength(standard.max)}`,
    hint: 'No journal could pass: is it of another journal?',
  });
}

/** Refuses a journal that cannot be one of its kind. */
export function guardJournalOfKind(
  at: string,
  journal: JournalToGrind,
  standard: Span<Length>,
): JournalToGrind {
  guardFields(at, journal as JournalToGrind & Shape, JOURNAL);
  guardSizeAndShape(at, journal);
  if (journal.runout !== undefined) outOfTrue(`${at}.runout`, journal.runout);
  guardOfThisKind(at, journal, standard);
  return journal;
}

/** What a journal of a kind can read: it wears, and is ground, by no more than the largest undersize there is. */
export const sizesOfKind = ({ min, max }: Span<Length>): Span<Length> => ({
  min: (min - sizeStep.most) as Length,
  max: (max + ABOVE_NEW) as Length,
});

/** A journal reads no larger than a new one but for dirt and the error of the micrometer. */
const ABOVE_NEW = 1e-4;

/** Refuses what no journal of the kind can read. */
function guardOfThisKind(at: string, journal: JournalToGrind, standard: Span<Length>): void {
  const { name, smallest, largest } = journal;
  const { min, max } = sizesOfKind(standard);
  if (smallest < min) {
    throw new RebuildInputError({
      parameter: `${at}.smallest`,
      value: smallest,
      shown: `${name}, ${showLength(smallest)} at its smallest,`,
      expected: `at most ${showLength(sizeStep.most)} below the standard ${showLength(standard.min)}`,
      hint: 'No journal is ground that far: check the standard size, the digits and which journal this is.',
    });
  }
  if (largest <= max) return;
  throw new RebuildInputError({
    parameter: `${at}.largest`,
    value: largest,
    shown: `${name}, ${showLength(largest)} at its largest,`,
    expected: `at most ${showLength(ABOVE_NEW)} above the standard ${showLength(standard.max)}`,
    hint: 'Journals only wear smaller: check the standard size, the units and which journal this is.',
  });
}
