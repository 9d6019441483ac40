import { guardLayout, namedFrom } from '../judging/internal.js';
import { randomBits, uniform } from '../numerics/index.js';
import {
  type Dimension,
  type Quantity,
  RebuildInputError,
  type Unit,
  type UnitSystem,
  valueIn,
} from '../quantities/index.js';
import type { CardName } from './cards.js';
import { shownAs } from './conversions.js';
import { type CardValues, cardNamed } from './evaluate.js';
import { exampleOf } from './example.js';
import type { Exercise } from './exercise-types.js';
import type { FormulaCard } from './formula-card.js';
import { exerciseLayout } from './layouts.js';
import { printedQuantity } from './printed.js';
import { resultOf } from './result-of.js';
import { toDigits } from './rounding.js';
import {
  answerIn,
  asMade,
  readIn,
  readingOf,
  resultUnit,
  type ShopReading,
} from './shop-values.js';
import { mayBeOffBy, sizesAlike } from './tolerance.js';
import { worked } from './worked.js';
import { unitsAsked, type WorkedOptions } from './worked-options.js';
import type { WorkedFormula } from './worked-types.js';

/**
 * Draws a problem from a card: rounded values that a shop could read, near those of the card's example, and an answer
 * of the same sort. The same name, seed and units give the same problem.
 *
 * @param name - name of the card
 * @param seed - which problem of the card, a whole number from 0 on [-]
 * @param options - the units that the shop reads, inches without it
 * @returns what is given, what is asked, the answer, and how far off a right answer may be
 * @throws {RebuildInputError} when a field is misspelt, there is no such card, the seed is not a whole number from 0
 * to 4 294 967 295, or the unit system is unknown
 * @example
 * ```ts
 * const { given, asks, answer } = exercise('shellWallFor', 7);
 * given.map(({ meaning, text }) => `${meaning}: ${text}`);
 * asks.meaning; // "wall of one undersize half shell"
 * answer.text;
 * ```
 */
export function exercise(name: CardName, seed: number, options: WorkedOptions = {}): Exercise {
  const card = cardNamed(name);
  if (!Number.isInteger(seed) || seed < 0 || seed >= 2 ** 32) {
    throw new RebuildInputError({
      parameter: 'seed',
      value: seed,
      expected: 'a whole number from 0 to 4 294 967 295',
      hint: 'Any will do; the same seed draws the same problem.',
    });
  }
  const units = unitsAsked(options);
  const { readings, example, sample } = drawing(card, units);
  const { values, value } = drawn(
    card,
    readings,
    example,
    sample,
    seed + 2 ** 32 * numberOf(name),
    units,
  );
  const { gives, topic, expression, where, defines } = card;
  const unit = resultUnit(card, value, units);
  const tolerance = mayBeOffBy(card, values, value);
  return {
    name,
    seed,
    units,
    toldIn: readIn(card, units),
    title: card.name,
    topic,
    given: Object.entries(card.letters).map(([symbol, { meaning }]) => ({
      symbol,
      meaning,
      ...given(values[symbol] as number, (readings.get(symbol) as ShopReading).unit),
    })),
    asks: {
      symbol: gives.symbol,
      meaning: gives.meaning,
      dimension: gives.dimension,
      unit: shownAs(unit),
    },
    formula: expression,
    where,
    defines: Object.entries(defines).map(([symbol, { meaning }]) => ({ symbol, meaning })),
    values,
    answer: answered(card, value, unit, tolerance),
    value,
    tolerance,
  };
}

/**
 * The worked solution of an exercise.
 *
 * @param problem - what `exercise` gave
 * @returns the formula worked through with the numbers of the exercise
 * @throws {RebuildInputError} when the problem is not one
 * @example
 * ```ts
 * const problem = exercise('shellWallFor', 7, { units: 'inch' });
 * solution(problem).steps[0]?.symbolic; // "t + u / 2"
 * ```
 */
export function solution(problem: Exercise): WorkedFormula {
  guardLayout('problem', problem, exerciseLayout, 'exercise');
  const { name, values, units } = problem;
  return namedFrom(
    () => ({ name: 'problem.name', values: 'problem.values', '': 'problem.values' }),
    () => worked(name as CardName, values, { units }),
  );
}

interface Drawing {
  readonly readings: ReadonlyMap<string, ShopReading>;
  readonly example: CardValues;
  /** What the example comes to. */
  readonly sample: number;
}

const drawings = /* @__PURE__ */ new WeakMap<FormulaCard, Partial<Record<UnitSystem, Drawing>>>();

/** How the letters of a card are read, and its example; the same for every seed. */
function drawing(card: FormulaCard, units: UnitSystem): Drawing {
  const made = drawings.get(card) ?? {};
  drawings.set(card, made);
  made[units] ??= makeDrawing(card, units);
  return made[units];
}

function makeDrawing(card: FormulaCard, units: UnitSystem): Drawing {
  const example = exampleOf(card, units);
  const readings = new Map(
    Object.entries(card.letters).map(([letter, written]) => [
      letter,
      readingOf(card, written, units),
    ]),
  );
  return { readings, example, sample: resultOf(card, example) };
}

/**
 * Values drawn from what is usual. Where they come to what no shop would meet, far from what the example comes to,
 * they are drawn towards the example, half the way at a time.
 */
function drawn(
  card: FormulaCard,
  readings: ReadonlyMap<string, ShopReading>,
  example: CardValues,
  sample: number,
  seed: number,
  units: UnitSystem,
): { readonly values: CardValues; readonly value: number } {
  const bits = randomBits(seed);
  const targets = [...readings].map(([letter, { at }]) => [letter, at(uniform(bits))] as const);
  for (let share = 1; share > 0.003; share /= 2) {
    const near = targets.map(([letter, target]) => {
      const from = example[letter] as number;
      return [letter, from + share * (target - from)] as const;
    });
    const values = Object.fromEntries(
      Object.entries(asMade(card, Object.fromEntries(near), units)).map(([letter, value]) => {
        const { round } = readings.get(letter) as ShopReading;
        return [letter, round(value, share < 0.2 ? 10 : 1)];
      }),
    );
    const value = attempt(card, values);
    if (value !== undefined && isLike(value, sample) && !isGiven(value, card, values)) {
      return { values, value };
    }
  }
  return { values: example, value: sample };
}

/** Whether an answer is of the sort that the example has. */
const isLike = (value: number, sample: number) => value / sample > 0.6 && value / sample < 1.6;

/** Whether the answer is what was given: nothing is left to work out. */
const isGiven = (value: number, card: FormulaCard, values: CardValues) =>
  sizesAlike(card, values).some((size) => Math.abs(size - value) <= 1e-9 * Math.abs(value));

function attempt(card: FormulaCard, values: CardValues): number | undefined {
  try {
    return resultOf(card, values);
  } catch (error) {
    if (error instanceof RebuildInputError) return undefined;
    throw error;
  }
}

/** A number of its own for each name, so that the exercises of two cards are not drawn alike. */
const numberOf = (name: string): number =>
  [...name].reduce((sum, letter) => (sum * 31 + letter.charCodeAt(0)) % 1_048_573, 7);

/** What is given, in the unit that it is read in. */
function given(value: number, unit: Unit<Dimension>) {
  const number = valueIn(value as Quantity<Dimension>, unit);
  return printedQuantity(toDigits(number, 9), shownAs(unit));
}

/** The answer as it is written down; it may be so much off. */
function answered({ gives }: FormulaCard, value: number, unit: Unit<Dimension>, tolerance: number) {
  const number = valueIn(value as Quantity<Dimension>, unit);
  if (gives.isWhole) return printedQuantity(Math.round(number), shownAs(unit));
  const mayBeOff = Math.abs(valueIn((value + tolerance) as Quantity<Dimension>, unit) - number);
  return printedQuantity(answerIn(unit, number, mayBeOff), shownAs(unit));
}
