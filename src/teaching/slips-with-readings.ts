import { diameter } from '../judging/internal.js';
import type { Dimension } from '../quantities/index.js';
import type { CardValues } from './evaluate.js';
import type { FormulaCard } from './formula-card.js';
import { planOf } from './formula-plan.js';
import { countTwos, type Miswritten } from './last-line.js';
import type { NumberSlip } from './slip-types.js';

/** A formula with a slip in it: other readings, or another formula. */
interface Change {
  readonly slip: NumberSlip;
  readonly values: CardValues;
  readonly by?: Miswritten;
}

/** Factors by which a reading is off that was put in in another unit. */
const UNITS: Partial<Record<Dimension, readonly number[]>> = {
  length: [1000, 1 / 1000, 25.4, 1 / 25.4],
  rotationalSpeed: [30 / Math.PI, 1 / (2 * Math.PI), 60, 1 / 60],
  rate: [60, 1 / 60],
  thermalExpansion: [1.8, 1 / 1.8],
  temperatureDifference: [1.8, 1 / 1.8],
};

/** What the readings or the formula become by a slip, the likeliest first. */
export function changesOf(card: FormulaCard, values: CardValues): readonly Change[] {
  const all = Object.entries(card.letters);
  const put = (slip: NumberSlip, changed: CardValues): Change => ({
    slip,
    values: { ...values, ...changed },
  });
  const each = (
    slip: NumberSlip,
    to: (value: number) => number,
    ofWhich: (dimension: Dimension) => boolean,
  ) =>
    all
      .filter(([, { domain }]) => ofWhich(domain.dimension))
      .map(([letter]) => put(slip, { [letter]: to(values[letter] ?? 0) }));
  const isLength = (dimension: Dimension) => dimension === 'length';
  const isAngle = (dimension: Dimension) => dimension === 'angle';
  const round = all.filter(([, { domain }]) => domain === diameter).map(([letter]) => letter);
  const miswritten = (slip: NumberSlip, by: Miswritten): Change => ({ slip, values, by });
  return [
    ...round.flatMap((letter) =>
      [1 / 2, 2].map((factor) =>
        put('radius for diameter', { [letter]: (values[letter] ?? 0) * factor }),
      ),
    ),
    ...each(
      'a reading left out',
      () => 0,
      () => true,
    ),
    ...each(
      'a reading left out',
      () => 1,
      (dimension) => dimension === 'ratio',
    ),
    ...[1 / 2, 2].flatMap((factor) => each('factor two', (value) => value * factor, isLength)),
    ...[1 / 2, 2].flatMap((factor) => each('half of an angle', (value) => value * factor, isAngle)),
    ...[180 / Math.PI, Math.PI / 180].flatMap((factor) =>
      each('degrees for radians', (value) => value * factor, isAngle),
    ),
    ...[1, Math.PI ** 2].map((pi) => miswritten('factor pi', { pi })),
    ...Array.from({ length: countTwos(card) }, (_, two) => miswritten('factor two', { two })),
    ...otherTemperatures(card, values).map((changed) => put('another temperature', changed)),
    ...Object.entries(UNITS).flatMap(([unit, factors]) =>
      factors.flatMap((factor) =>
        each(
          'unit of a reading',
          (value) => value * factor,
          (dimension) => dimension === unit,
        ),
      ),
    ),
    ...each(
      'sign of a reading',
      (value) => -value,
      () => true,
    ),
    ...planOf(card)
      .lines.slice(0, -1)
      .map(({ symbol }) => miswritten('a reading left out', { without: symbol })),
    put(
      'temperature scale',
      Object.fromEntries(
        temperaturesOf(card).map((letter) => [letter, (values[letter] ?? 0) - 273.15]),
      ),
    ),
  ];
}

const temperaturesOf = ({ letters }: FormulaCard): readonly string[] =>
  Object.entries(letters)
    .filter(([, { domain }]) => domain.dimension === 'temperature')
    .map(([letter]) => letter);

/** One temperature put in for another, two of them the wrong way round, and every one of them as cold as the coldest. */
function otherTemperatures(card: FormulaCard, values: CardValues): readonly CardValues[] {
  const letters = temperaturesOf(card);
  const of = (letter: string) => values[letter] ?? 0;
  const pairs = letters.flatMap((a) => letters.filter((b) => b !== a).map((b) => [a, b] as const));
  const coldest = letters.reduce((least, letter) => Math.min(least, of(letter)), Infinity);
  return [
    ...pairs.map(([a, b]) => ({ [a]: of(b) })),
    ...pairs.filter(([a, b]) => a < b).map(([a, b]) => ({ [a]: of(b), [b]: of(a) })),
    ...(letters.length > 2 ? [Object.fromEntries(letters.map((letter) => [letter, coldest]))] : []),
  ];
}
