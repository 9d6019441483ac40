import { type CardLetter, sizeStep, type WrittenCard } from '../judging/internal.js';
import {
  type Dimension,
  inch,
  mm,
  type Quantity,
  thou,
  type Unit,
  type UnitSystem,
  valueIn,
} from '../quantities/index.js';
import { shopUnit } from './shop-units.js';

/** A range as wide as this, most over least, is walked by factors and not by steps. */
const WIDE = 20;

/** The steps that shells and pistons are made in, in thou and in mm. */
const STEPS: Readonly<Record<UnitSystem, number>> = { inch: 10, metric: 0.25 };

/** What a micrometer or a dial is read to, in the units of its scale. */
const LEAST_READ: ReadonlyMap<Unit<Dimension>, number> = /* @__PURE__ */ new Map<
  Unit<Dimension>,
  number
>([
  [inch, 1e-4],
  [thou, 0.1],
  [mm, 1e-3],
]);

/** How a shop reads a letter. */
export interface ShopReading {
  readonly unit: Unit<Dimension>;
  /** Rounds a value to what a tool can tell of such a thing, or so many times finer [SI]. */
  readonly round: (value: number, finer?: number) => number;
  /** The value so far between the least and the most that is usual, 0 to 1 [SI]. */
  readonly at: (share: number) => number;
}

/** What of a card tells how a shop reads it. */
type ReadCard = Pick<WrittenCard, 'letters' | 'gives'> & { readonly topic: string };

/** How a shop reads a letter of a card. */
export const readingOf = (card: ReadCard, letter: CardLetter, system: UnitSystem): ShopReading =>
  shopReading(letter, readIn(card, system), isOfLiquid(card));

/** The unit that a shop tells such a result of a card in. */
export const resultUnit = (card: ReadCard, value: number, system: UnitSystem): Unit<Dimension> =>
  shopUnit(card.gives.dimension, value, readIn(card, system), isOfLiquid(card));

/** A liquid is read in measures of its own. */
const isOfLiquid = ({ topic }: ReadCard): boolean => topic === 'oil';

/**
 * The units that a shop reads a card in. What is made in one system alone is read in it by every shop: a metric thread has
 * no size in inches.
 */
export const readIn = ({ letters }: ReadCard, system: UnitSystem): UnitSystem => {
  const made = Object.values(letters).flatMap((letter) =>
    letter.made === undefined || isList(letter.made) ? [] : [letter.made],
  );
  const only = made.map((lists) => Object.keys(lists)).find(({ length }) => length === 1);
  return (only?.[0] as UnitSystem | undefined) ?? system;
};

type Made = NonNullable<CardLetter['made']>;
const isList = (made: Made): made is readonly number[] => Array.isArray(made);

/** How a shop reads a letter in one of the unit systems. */
function shopReading(
  { domain, usual: [least, most], made }: CardLetter,
  system: UnitSystem,
  ofLiquid: boolean,
): ShopReading {
  const isWide = least > 0 && most / least >= WIDE;
  const typical = isWide ? Math.sqrt(least * most) : Math.max(Math.abs(least), Math.abs(most));
  const unit = shopUnit(domain.dimension, typical, system, ofLiquid);
  const inUnit = (value: number) => valueIn(value as Quantity<Dimension>, unit);
  const sizes = made && (isList(made) ? made : made[system]);
  if (sizes !== undefined) return { unit, ...ofSizes(sizes, unit) };
  const halfRange = (inUnit(most) - inUnit(least)) / 2;
  const leastStep = domain === sizeStep ? STEPS[system] : (LEAST_READ.get(unit) ?? 0);
  return {
    unit,
    round: (value, finer = 1) => {
      const number = inUnit(value);
      const span = isWide ? Math.abs(number) : halfRange;
      if (span === 0) return unit(Number(number.toPrecision(6)));
      // Nobody reads a temperature to less than a degree.
      const step = domain.dimension === 'temperature' ? 1 : tenthOf(span) / finer;
      return unit(stepped(number, Math.max(step, leastStep)));
    },
    at: (share) => (isWide ? least * (most / least) ** share : least + share * (most - least)),
  };
}

/** Draws from sizes that are made, and rounds to the nearest of them. */
function ofSizes(
  sizes: readonly number[],
  unit: Unit<Dimension>,
): Pick<ShopReading, 'round' | 'at'> {
  // As a catalogue writes them: M10 is 0.3937 in.
  const written = sizes.map((size) =>
    unit(Number(valueIn(size as Quantity<Dimension>, unit).toPrecision(4))),
  );
  return {
    round: (value) =>
      written.reduce((best, size) =>
        Math.abs(size - value) < Math.abs(best - value) ? size : best,
      ),
    at: (share) =>
      written[Math.min(Math.floor(share * written.length), written.length - 1)] as number,
  };
}

/** A tenth of a span or less, as a power of ten. */
const tenthOf = (span: number) => 10 ** (Math.floor(Math.log10(span)) - 1);

const stepped = (number: number, step: number) =>
  Number((Math.round(number / step) * step).toPrecision(12));
