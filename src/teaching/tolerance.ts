import type { Dimension } from '../quantities/index.js';
import type { CardValues } from './evaluate.js';
import type { FormulaCard } from './formula-card.js';

/** Shares of the answer, of the smallest size that went in, and of what the answer is off a size that went in. */
type Shares = readonly [ofAnswer: number, ofSize: number, ofChange: number];
/** An answer may be so much off by rounding on the way. To leave a size out, or to do nothing, is a slip. */
const ON_THE_WAY: Shares = [0.005, 0.02, 0.05];
/** A length may be half a tenth of a thou off, which is how it is written down [m]. */
const HALF_A_TENTH = 1.27e-6;
/** From so much on, that would hide a slip. */
const SLIP: Shares = [0.05, 0.5, 0.5];

/** How far off a right answer may be: as much as rounding makes, and less than a slip. */
export function mayBeOffBy(card: FormulaCard, values: CardValues, value: number): number {
  if (card.gives.isWhole) return 0.5;
  const sizes = sizesAlike(card, values).map(Math.abs);
  const changes = sizes.map((size) => Math.abs(Math.abs(value) - size));
  /** What can be told from nothing counts. */
  const within = ([ofAnswer, ofSize, ofChange]: Shares, least: number) =>
    Math.min(
      ofAnswer * Math.abs(value),
      ...sizes.filter((size) => size > least).map((size) => ofSize * size),
      ...changes.filter((change) => change > least).map((change) => ofChange * change),
    );
  const onTheWay = isExact(card) ? 0 : within(ON_THE_WAY, 0);
  const written = card.gives.dimension === 'length' ? within(SLIP, 2 * HALF_A_TENTH) : 0;
  return Math.max(onTheWay, Math.min(HALF_A_TENTH, written));
}

/** Dimensions whose quantities are added to one another, so that one left out is a slip. */
const ADDED: ReadonlySet<Dimension> = /* @__PURE__ */ new Set([
  'length',
  'angle',
  'volume',
  'force',
  'torque',
  'time',
]);

/** What goes in of the dimension that comes out. */
export const sizesAlike = (
  { letters, gives }: FormulaCard,
  values: CardValues,
): readonly number[] =>
  ADDED.has(gives.dimension)
    ? Object.entries(letters)
        .filter(([, { domain }]) => domain.dimension === gives.dimension)
        .map(([letter]) => values[letter] as number)
    : [];

/** Whether sizes are only added up, taken away and multiplied by numbers: nothing is rounded on the way. */
export const isExact = ({ expression, where, letters, gives }: FormulaCard): boolean =>
  where.length === 0 &&
  gives.dimension === 'length' &&
  Object.values(letters).every(({ domain: { dimension } }) =>
    ['length', 'ratio'].includes(dimension),
  ) &&
  !/\^|\w\(|\bpi\b|\/ [a-z(]/i.test(expression);
