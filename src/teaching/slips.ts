import { diameter } from '../judging/internal.js';
import { type Dimension, type Unit, unitTable } from '../quantities/index.js';
import type { CardName } from './cards.js';
import { type CardValues, cardNamed } from './evaluate.js';
import type { Exercise } from './exercise-types.js';
import type { FormulaCard } from './formula-card.js';
import { planOf } from './formula-plan.js';

/** A slip that explains a wrong number. */
export type NumberSlip =
  | 'a lost minus'
  | 'factor two'
  | 'per cent'
  | 'wrong unit'
  | 'factor of a thousand'
  | 'factor of ten'
  | 'an earlier line'
  | 'a reading left out'
  | 'radius for diameter'
  | 'unit of a reading'
  | 'sign of a reading'
  | 'degrees for radians'
  | 'temperature scale';

/** An answer that could be read. */
export interface ReadAnswer {
  /** In SI. */
  readonly value: number;
  /** The number as it was written; undefined where that is more than a decimal. */
  readonly number: number | undefined;
}

/** The slip that turns the right answer, or a reading, into what was answered: the likeliest that does. */
export function slipOf(problem: Exercise, answer: ReadAnswer): NumberSlip | undefined {
  const { value, tolerance, asks, name, values } = problem;
  /** Whether a slip comes to what was answered; what it made larger may be as much further off. */
  const explains = (slipped: number) =>
    Math.abs(slipped - answer.value) <= tolerance * Math.max(1, Math.abs(slipped / value));
  /** Whether the answer is right once it is taken back by a factor. */
  const isTimes = (factor: number) =>
    [answer.value * factor, answer.value / factor].some(
      (back) => Math.abs(back - value) <= tolerance,
    );
  const card = cardNamed(name as CardName);
  const isWarmth = asks.dimension === 'temperature';
  const isPlain = ['ratio', 'volumeFraction', 'massFraction'].includes(asks.dimension);
  if (explains(-value)) return 'a lost minus';
  if (!isWarmth && isTimes(2)) return 'factor two';
  if (isPlain && isTimes(100)) return 'per cent';
  if (!isPlain && fitsAnotherUnit(problem, answer)) return 'wrong unit';
  if (!isWarmth && isTimes(1000)) return 'factor of a thousand';
  if (!isWarmth && (isTimes(10) || isTimes(100))) return 'factor of ten';
  if (earlierLines(card, values, asks.dimension).some(explains)) return 'an earlier line';
  return changesOf(card, values).find(({ slip, changed }) => {
    const slipped = lastLine(card, changed);
    // A product without one of its factors is nothing; nobody leaves one out to get that.
    return explains(slipped) && !(slip === 'a reading left out' && slipped === 0);
  })?.slip;
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

interface Change {
  readonly slip: NumberSlip;
  readonly changed: CardValues;
}

/** What the readings become by a slip with one of them. */
function changesOf({ letters }: FormulaCard, values: CardValues): readonly Change[] {
  const all = Object.entries(letters);
  const change = (slip: NumberSlip, factor: number, ofWhich: (dimension: Dimension) => boolean) =>
    all
      .filter(([, { domain }]) => ofWhich(domain.dimension))
      .map(([letter]) => ({
        slip,
        changed: { ...values, [letter]: (values[letter] ?? 0) * factor },
      }));
  const isLength = (dimension: Dimension) => dimension === 'length';
  const round = all.filter(([, { domain }]) => domain === diameter);
  const colder = Object.fromEntries(
    all.map(([letter, { domain }]) => [
      letter,
      (values[letter] ?? 0) - (domain.dimension === 'temperature' ? 273.15 : 0),
    ]),
  );
  return [
    ...round.flatMap(([letter]) =>
      [1 / 2, 2].map((factor) => ({
        slip: 'radius for diameter' as const,
        changed: { ...values, [letter]: (values[letter] ?? 0) * factor },
      })),
    ),
    ...change('a reading left out', 0, () => true),
    ...[1 / 2, 2].flatMap((factor) => change('factor two', factor, isLength)),
    ...[1000, 1 / 1000, 25.4, 1 / 25.4].flatMap((factor) =>
      change('unit of a reading', factor, isLength),
    ),
    ...change('degrees for radians', 180 / Math.PI, (dimension) => dimension === 'angle'),
    ...change('sign of a reading', -1, () => true),
    { slip: 'temperature scale', changed: colder },
  ];
}

/** What each line of the formula comes to in SI, without asking whether an engine has such sizes. */
function linesOf(card: FormulaCard, values: CardValues): readonly number[] {
  const { lines, quantities } = planOf(card);
  const scope = new Map<string, number>(Object.entries(values));
  for (const [symbol, { size }] of quantities) scope.set(symbol, size);
  return lines.map(({ compiled, symbol }) => {
    const result: unknown = compiled.evaluate(scope as never);
    // A root of what is negative is no number here.
    const number = typeof result === 'number' ? result : Number.NaN;
    scope.set(symbol, number);
    return number;
  });
}

const lastLine = (card: FormulaCard, values: CardValues): number =>
  linesOf(card, values).at(-1) ?? Number.NaN;

/** What the lines before the last come to, where they give the same kind of thing. */
function earlierLines(card: FormulaCard, values: CardValues, asked: Dimension): readonly number[] {
  const { lines } = planOf(card);
  const last = lines.at(-1)?.exponents.join();
  const isPlain = asked === 'ratio';
  return linesOf(card, values).filter(
    (_, index) => index < lines.length - 1 && !isPlain && lines[index]?.exponents.join() === last,
  );
}
