import { type CardLetter, sizeStep, type WrittenCard } from '../judging/internal.js';
import {
  type Dimension,
  inch,
  mm,
  type Quantity,
  rpm,
  thou,
  type Unit,
  type UnitSystem,
  valueIn,
} from '../quantities/index.js';
import { lastPlace, stepped } from './rounding.js';
import { shopUnit } from './shop-units.js';

/** A range as wide as this, most over least, is walked by factors and not by steps. */
const WIDE = 20;

/** The steps that shells and pistons are made in, in thou and in mm. */
const STEPS: Readonly<Record<UnitSystem, number>> = { inch: 10, metric: 0.25 };

/** What a micrometer or a dial is read to, and a speed is set to, in the units of its scale. */
const LEAST_READ: ReadonlyMap<Unit<Dimension>, number> = /* @__PURE__ */ new Map<
  Unit<Dimension>,
  number
>([
  [inch, 1e-4],
  [thou, 0.1],
  [mm, 1e-3],
  [rpm, 50],
]);
/** Digits of what is given where no tool says to how many it is read. */
const DIGITS = 4;

/** How a shop reads a letter. */
export interface ShopReading {
  readonly unit: Unit<Dimension>;
  /** Rounds a value to what a tool can tell of such a thing, or so many times finer [SI]. */
  readonly round: (value: number, finer?: number) => number;
  /** The value so far between the least and the most that is usual, 0 to 1 [SI]. */
  readonly at: (share: number) => number;
}

/** What of a card tells how a shop reads it. */
type ReadCard = Pick<WrittenCard, 'letters' | 'gives' | 'madeTogether'> & {
  readonly topic: string;
};

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
 * no size in inches. So is what is measured out in mL, for the rest of the card is read in units that go with them.
 */
export const readIn = (card: ReadCard, system: UnitSystem): UnitSystem => {
  if (isMeasuredOut(card)) return 'metric';
  const { letters } = card;
  const made = Object.values(letters).flatMap((letter) =>
    letter.made === undefined || isList(letter.made) ? [] : [letter.made],
  );
  const only = made.map((lists) => Object.keys(lists)).find(({ length }) => length === 1);
  return (only?.[0] as UnitSystem | undefined) ?? system;
};

/** Whether oil, fuel or air is measured out: every shop does that in mL and litres. */
const isMeasuredOut = (card: ReadCard): boolean =>
  [card.gives, ...Object.values(card.letters).map(({ domain }) => domain)].some(
    ({ dimension }) => dimension === 'flow' || (dimension === 'volume' && isOfLiquid(card)),
  );

/** Values of a card, those that are only made together changed to the nearest that are. */
export function asMade(
  card: ReadCard,
  values: Readonly<Record<string, number>>,
  system: UnitSystem,
): Readonly<Record<string, number>> {
  const rows = card.madeTogether?.[readIn(card, system)];
  if (rows === undefined) return values;
  const farFrom = (row: Readonly<Record<string, number>>) =>
    Object.entries(row).reduce(
      (sum, [letter, made]) => sum + Math.log((values[letter] as number) / made) ** 2,
      0,
    );
  const nearest = rows.reduce((best, row) => (farFrom(row) < farFrom(best) ? row : best));
  return { ...values, ...nearest };
}

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
  const leastStep = (number: number) =>
    domain === sizeStep
      ? STEPS[system]
      : (LEAST_READ.get(unit) ?? (number === 0 ? 0 : lastPlace(number, DIGITS)));
  return {
    unit,
    round: (value, finer = 1) => {
      const number = inUnit(value);
      const span = isWide ? Math.abs(number) : halfRange;
      if (span === 0) return unit(Number(number.toPrecision(6)));
      // Nobody reads a temperature to less than a degree.
      const step = domain.dimension === 'temperature' ? 1 : tenthOf(span) / finer;
      return unit(stepped(number, Math.max(step, leastStep(number))));
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
const tenthOf = (span: number) => lastPlace(span, 2);

/**
 * An answer as a shop writes it: a size to four digits, but no finer than a micrometer is read; a film likewise to three;
 * any other number to three digits, and to four where the first is 1. It gets more only where it would be off by more
 * than it may be.
 */
export function answerIn(unit: Unit<Dimension>, number: number, mayBeOff: number): number {
  const least = LEAST_READ.get(unit) ?? 0;
  let step = Math.max(lastPlace(number, digitsOf(unit, number)), least);
  // Half of a step may be more by the noise of its last digit.
  while (Math.abs(stepped(number, step) - number) > mayBeOff * (1 + 1e-9)) step /= 10;
  return stepped(number, step);
}

const digitsOf = (unit: Unit<Dimension>, number: number): number => {
  if (unit.dimension === 'length') return LEAST_READ.has(unit) ? 4 : 3;
  return number.toExponential().replace('-', '').startsWith('1') ? 4 : 3;
};
