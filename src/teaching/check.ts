import { guardLayout } from '../judging/internal.js';
import { coherentUnit, type Dimension, parse, RebuildInputError } from '../quantities/index.js';
import { builtQuantity } from './built-quantity.js';
import type { CardName } from './cards.js';
import { cardNamed } from './evaluate.js';
import type { Exercise } from './exercise-types.js';
import { exerciseLayout } from './layouts.js';
import { type NumberSlip, type ReadAnswer, slipOf } from './slips.js';
import { isExact } from './tolerance.js';

/** A slip that explains a wrong answer. */
export type Slip = NumberSlip | 'no number' | 'no unit' | 'another quantity';

/** How an answer stands. Of a wrong one, the slip is told only where it explains the number. */
export type CheckedAnswer =
  | {
      /** It is right to what was asked. */
      readonly outcome: 'right';
    }
  | {
      /** It is a little off, as by rounding on the way. */
      readonly outcome: 'close';
      /** What to look at. */
      readonly hint: string;
    }
  | {
      /** It is another number, no number, or in no unit of what was asked. */
      readonly outcome: 'wrong';
      /** The slip that explains it. */
      readonly slip?: Slip;
      /** What to look at. */
      readonly hint: string;
    };

/** An answer this many times as far off as a right one may be is close. */
const CLOSE = 5;
/** And no further off than this share of it: half of it is a slip. */
const NOT_A_SLIP = 0.25;

const HINTS: Readonly<Record<Exclude<Slip, 'no number'>, string>> = {
  'no unit': 'A number without its unit is no measurement. Write the unit.',
  'another quantity': 'That is the unit of another quantity. See what is asked for.',
  'a lost minus': 'Look at the sign: which of the two is larger, and what does a minus mean here?',
  'factor two': 'Look for a factor of two: both sides, or one? A radius, or a diameter?',
  'per cent': 'Look for a factor of a hundred: is the answer a share, or per cent?',
  'wrong unit': 'Look at the unit that you wrote: the number fits another one.',
  'factor of a thousand': 'Look for a factor of a thousand: thou for inches, or mm for metres?',
  'factor of ten': 'Look at the decimal point.',
  'a reading left out': 'Look whether every reading is in your sum: one seems to be left out.',
  'an earlier line': 'You are on the way: that is an earlier line of the working.',
  'radius for diameter':
    'Look at the diameters: was a radius put in for one, or a diameter doubled?',
  'unit of a reading': 'Look at the units of what you put in: is one reading in another unit?',
  'sign of a reading': 'Look at the signs of what you put in.',
  'degrees for radians': 'Look at the angle: was it put in as degrees where radians belong?',
  'temperature scale': 'Look at the temperatures: the formula counts from absolute zero.',
};

/**
 * Checks an answer to an exercise. A wrong answer gets a hint where a usual slip explains it; the hint does not give
 * the answer away.
 *
 * @param problem - what `exercise` gave
 * @param answer - number and unit as people write them, for example `'22 thou'`
 * @returns whether it is right, close or wrong, and the slip that explains it
 * @throws {RebuildInputError} when the problem is not one or the answer is not text of at most 100 characters
 * @example
 * ```ts
 * const problem = exercise('shellWallFor', 7, { units: 'inch' });
 * check(problem, problem.answer.text).outcome; // "right"
 * const missing = check(problem, '3');
 * 'hint' in missing && missing.hint; // "A number without its unit is no measurement. Write the unit."
 * ```
 */
export function check(problem: Exercise, answer: string): CheckedAnswer {
  guardLayout('problem', problem, exerciseLayout, 'exercise');
  const card = cardNamed(problem.name as CardName);
  for (const [letter, { domain }] of Object.entries(card.letters)) {
    domain(`problem.values.${letter}`, problem.values[letter] as never);
  }
  if (typeof answer !== 'string' || answer.length > 100) {
    throw new RebuildInputError({
      parameter: 'answer',
      value: answer,
      expected: 'text of at most 100 characters',
      hint: "Write number and unit in quotes, e.g. '22 thou'.",
    });
  }
  const read = readAnswer(answer, problem.asks.dimension);
  if (read === 'no number') return { outcome: 'wrong', slip: read, hint: oneNumber(problem) };
  if (typeof read === 'string') return wrong(read);
  const off = Math.abs(read.value - problem.value);
  // A unit changes the last digit of a number that was right.
  if (off <= problem.tolerance * (1 + 1e-9)) return { outcome: 'right' };
  if (off <= Math.min(CLOSE * problem.tolerance, NOT_A_SLIP * Math.abs(problem.value))) {
    return { outcome: 'close', hint: isExact(card) ? ADD_AGAIN : KEEP_DIGITS };
  }
  const slip = slipOf(problem, read);
  return slip === undefined ? { outcome: 'wrong', hint: LINE_BY_LINE } : wrong(slip);
}

const KEEP_DIGITS = 'Keep more digits until the last line.';
const ADD_AGAIN = 'Add it up once more: the last digits are off.';
const LINE_BY_LINE =
  'No usual slip comes to that. Write down every reading with its unit and its sign, and work it out line by line.';

const oneNumber = ({ asks: { unit } }: Exercise) =>
  unit === ''
    ? 'Write one number and nothing else, such as 1.4.'
    : `Write one number and its unit and nothing else, such as 1.4 ${unit}.`;

const wrong = (slip: Exclude<Slip, 'no number'>): CheckedAnswer => ({
  outcome: 'wrong',
  slip,
  hint: HINTS[slip],
});

/** Reads an answer; what cannot be read is a slip. */
function readAnswer(text: string, dimension: Dimension): ReadAnswer | Slip {
  const written = numberAlone(text);
  const value = quantityIn(written, dimension);
  if (value !== undefined) {
    const number = /^[+-]?(?:\d+\.?\d*|\.\d+)(?![\d/ -]*\/)/.exec(written)?.[0];
    return { value, number: number === undefined ? undefined : Number(number) };
  }
  if (quantityIn(written, 'ratio') !== undefined) return 'no unit';
  const built = builtQuantity(written, dimension);
  if (built !== undefined) return { value: built, number: undefined };
  const others = Object.keys(coherentUnit) as Dimension[];
  const isOther = others.some((other) => quantityIn(written, other) !== undefined);
  return isOther ? 'another quantity' : 'no number';
}

/** An answer without what people write round it: `c_m = 1.4 thou.`, `about 1,4 thou`. */
const numberAlone = (text: string): string =>
  text
    .trim()
    .replaceAll('−', '-')
    .replace(/^[\p{L}_]\w*\s*=\s*/u, '')
    .replace(/^(?:about|approximately|approx\.?|ca\.?|≈|~)\s*/i, '')
    // Not before three digits, where it may part thousands.
    .replace(/^([+-]?\d*),(?!\d{3}(?!\d))(?=\d)/, '$1.')
    .replace(/\.$/, '');

/** A quantity in text. A share may be written as a plain number or in per cent, and a gauge needs no saying so. */
function quantityIn(text: string, dimension: Dimension): number | undefined {
  const spellings: readonly Dimension[] =
    dimension === 'volumeFraction' || dimension === 'massFraction'
      ? [dimension, 'ratio']
      : dimension === 'gaugePressure'
        ? [dimension, 'pressure']
        : [dimension];
  for (const spelling of spellings) {
    try {
      return parse(text, spelling);
    } catch (error) {
      if (!(error instanceof RebuildInputError)) throw error;
    }
  }
  return undefined;
}
