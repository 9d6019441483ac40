import { guardLayout } from '../judging/internal.js';
import { RebuildInputError } from '../quantities/index.js';
import type { CardName } from './cards.js';
import { cardNamed } from './evaluate.js';
import type { Exercise } from './exercise-types.js';
import {
  hintAt,
  hintWhenClose,
  hintWhenRounded,
  hintWhenUnclear,
  hintWhenUnreadable,
  LINE_BY_LINE,
} from './hints.js';
import { exerciseLayout } from './layouts.js';
import { type ReadAnswer, readAnswer } from './read-answer.js';
import type { Slip } from './slip-types.js';
import { slipOf } from './slips.js';

/** How an answer stands. Of a wrong one, the slip is told only where it explains the number. */
export type CheckedAnswer = (
  | {
      /** It is right to what was asked. */
      readonly outcome: 'right';
    }
  | {
      /** It is a little off, as by rounding on the way or too far. */
      readonly outcome: 'close';
      /** What to look at. */
      readonly hint: string;
    }
  | {
      /** It cannot be read, or its number may be meant in two ways, as where a comma may part decimals or thousands. */
      readonly outcome: 'unclear';
      /** What to write. */
      readonly hint: string;
    }
  | {
      /** It is another number, or in the unit of another quantity. */
      readonly outcome: 'wrong';
      /** The slip that explains it. */
      readonly slip?: Slip;
      /** What to look at. */
      readonly hint: string;
    }
) & {
  /** The answer with the unit that stands after the blank, where it was written without one. */
  readonly takenAs?: string;
};

/** An answer this many times as far off as a right one may be is close. */
const CLOSE = 5;
/** Further off than this share of it, it may be a slip: half of it is one. */
const NOT_A_SLIP = 0.25;

/**
 * Checks an answer to an exercise. A wrong answer gets a hint where a usual slip explains it; the hint does not give
 * the answer away. A number without a unit is taken in the unit that stands after the blank, and the verdict says so.
 *
 * @param problem - what `exercise` gave
 * @param answer - number and unit as people write them, for example `'22 thou'`
 * @returns whether it is right, close, unclear or wrong, and the slip that explains it
 * @throws {RebuildInputError} when the problem is not one or the answer is not text of at most 100 characters
 * @example
 * ```ts
 * const problem = exercise('shellWallFor', 7, { units: 'inch' });
 * check(problem, problem.answer.text).outcome; // "right"
 * check(problem, `${problem.answer.value}`).takenAs === problem.answer.text; // true
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
  const read = readAnswer(answer, problem.asks);
  if (typeof read === 'string') return wrong(read);
  if ('unclear' in read) {
    const { unclear } = read;
    const hint = unclear === undefined ? hintWhenUnreadable(problem) : hintWhenUnclear(unclear);
    return { outcome: 'unclear', hint };
  }
  const taken = read.takenAs !== undefined && { takenAs: read.takenAs };
  return { ...standing(problem, read), ...taken };
}

function standing(problem: Exercise, read: ReadAnswer): CheckedAnswer {
  const { value, tolerance } = problem;
  const off = Math.abs(read.value - value);
  // A unit changes the last digit of a number that was right.
  if (off <= tolerance * (1 + 1e-9)) return { outcome: 'right' };
  const isRounded = off <= read.halfPlace * (1 + 1e-9) && read.value !== 0;
  const rounded = { outcome: 'close', hint: hintWhenRounded(problem) } as const;
  if (off <= NOT_A_SLIP * Math.abs(value)) {
    if (isRounded) return rounded;
    if (off <= CLOSE * tolerance) return { outcome: 'close', hint: hintWhenClose(problem) };
  }
  const slip = slipOf(problem, read);
  if (slip !== undefined) return wrong(slip);
  return isRounded ? rounded : { outcome: 'wrong', hint: LINE_BY_LINE };
}

const wrong = (slip: Slip): CheckedAnswer => ({ outcome: 'wrong', slip, hint: hintAt(slip) });
