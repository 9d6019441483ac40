import { type Dimension, type Unit, unitTable } from '../quantities/index.js';
import type { CardName } from './cards.js';
import { cardNamed } from './evaluate.js';
import type { Exercise } from './exercise-types.js';
import { earlierLines, lastLine } from './last-line.js';
import type { ReadAnswer } from './read-answer.js';
import type { NumberSlip } from './slip-types.js';
import { changesOf } from './slips-with-readings.js';

/** The slip that turns the right answer, or a reading, into what was answered: the likeliest that does. */
export function slipOf(problem: Exercise, answer: ReadAnswer): NumberSlip | undefined {
  const { value, tolerance, asks, name, values } = problem;
  /** Whether a slip comes to what was answered; what it made larger may be as much further off. */
  const explains = (slipped: number) =>
    Number.isFinite(slipped) &&
    Math.abs(slipped - answer.value) <= tolerance * Math.max(1, Math.abs(slipped / value));
  /** Whether the answer is right once it is taken back by a factor. */
  const isTimes = (factor: number) =>
    [answer.value * factor, answer.value / factor].some(
      (back) => Math.abs(back - value) <= tolerance,
    );
  const card = cardNamed(name as CardName);
  const isWarmth = asks.dimension === 'temperature';
  const isAngle = asks.dimension === 'angle';
  const isPlain = ['ratio', 'volumeFraction', 'massFraction'].includes(asks.dimension);
  if (explains(-value)) return 'a lost minus';
  if (!isWarmth && isTimes(2)) return isAngle ? 'half of an angle' : 'factor two';
  if (isAngle && isTimes(180 / Math.PI)) return 'degrees for radians';
  if (isPlain && isTimes(100)) return 'per cent';
  if (!isPlain && fitsAnotherUnit(problem, answer)) return 'wrong unit';
  if (!isWarmth && isTimes(1000)) return 'factor of a thousand';
  if (!isWarmth && (isTimes(10) || isTimes(100))) return 'factor of ten';
  if (earlierLines(card, values, asks.dimension).some(explains)) return 'an earlier line';
  const found = changesOf(card, values).find(({ slip, values: changed, by }) => {
    const slipped = lastLine(card, changed, by);
    // A product without one of its factors is nothing; nobody leaves one out to get that.
    return explains(slipped) && !(slip === 'a reading left out' && slipped === 0);
  })?.slip;
  return found === 'factor two' && isTimes(4) ? 'factor four' : found;
}

/** Whether the number that was written is right in some unit of what is asked. */
function fitsAnotherUnit({ asks, value, tolerance }: Exercise, { number }: ReadAnswer): boolean {
  if (number === undefined) return false;
  const units: readonly Unit<Dimension>[] = Object.values(unitTable);
  return units.some(
    ({ dimension, numerator, denominator, offset }) =>
      dimension === asks.dimension &&
      Math.abs((number * numerator + offset) / denominator - value) <= tolerance,
  );
}
