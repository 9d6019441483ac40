import {
  type Dimension,
  type Length,
  type Quantity,
  tradeUnit,
  type Unit,
  type UnitSystem,
  valueIn,
} from '../quantities/index.js';
import { filmUnit, formatNumber, scaleOf } from '../quantities/internal.js';
import type { Limits, Span } from './limits.js';

/** The units to print in: those of a shop, or one that a quantity is read in whatever the shop. */
export type PrintIn = UnitSystem | Unit<Dimension>;

const unitFor = <D extends Dimension>(dimension: D, as: PrintIn): Unit<D> =>
  typeof as === 'string' ? tradeUnit(dimension, as) : (as as Unit<D>);

/** More than this shows nothing that a shop could know. */
const MOST_DECIMALS = 9;

/** A plain number has no symbol, and is read to the second decimal. */
const isPlain = ({ symbol }: Unit<Dimension>) => symbol === '-';
const decimalsOf = (unit: Unit<Dimension>) => (isPlain(unit) ? 2 : unit.decimals);
/** The words beside it tell that it is a difference: `10.0 °C above the limit`. */
const withSymbol = (number: string, unit: Unit<Dimension>) =>
  isPlain(unit) ? number : `${number} ${scaleOf(unit)}`;

const written = <D extends Dimension>(
  quantity: Quantity<D>,
  unit: Unit<D>,
  decimals = decimalsOf(unit),
): string => withSymbol(formatNumber<D>(quantity, unit, decimals), unit);

/**
 * The distance between two quantities, with the decimals of the trade. A distance too small
 * for them gets more, up to nine; if nine show nothing it prints as zero. The distance
 * between two temperatures is a temperature difference.
 */
export function sayDistance(distance: number, dimension: Dimension, as: PrintIn): string {
  const apart = dimension === 'temperature' ? 'temperatureDifference' : dimension;
  const unit: Unit<Dimension> = unitFor(apart, as);
  const quantity = distance as Quantity<Dimension>;
  let decimals = decimalsOf(unit);
  while (decimals < MOST_DECIMALS && Math.abs(valueIn(quantity, unit)) < 0.5 * 10 ** -decimals)
    decimals++;
  const isNothing = Math.abs(valueIn(quantity, unit)) < 0.5 * 10 ** -decimals;
  return written(quantity, unit, isNothing ? decimalsOf(unit) : decimals);
}

/** A distance likewise, with as many more decimals as it takes to be off by 5 % at most: an uncertainty must not shrink. */
export function sayClosely(distance: number, dimension: Dimension, as: PrintIn): string {
  const apart = dimension === 'temperature' ? 'temperatureDifference' : dimension;
  const unit: Unit<Dimension> = unitFor(apart, as);
  const value = Math.abs(valueIn(distance as Quantity<Dimension>, unit));
  for (let decimals = decimalsOf(unit); decimals < MOST_DECIMALS; decimals++) {
    const off = Math.abs(Number(value.toFixed(decimals)) - value);
    if (off <= 0.05 * value) return written(distance as Quantity<Dimension>, unit, decimals);
  }
  return sayDistance(distance, dimension, as);
}

/**
 * A quantity with its uncertainty, both to the same place: that of the second digit of the uncertainty, of the
 * first where the second is 0, or the trade's where that is finer. source: JCGM 100:2008 (GUM), 7.2.6, from memory: at
 * most two digits
 */
export function sayWithDoubt<D extends Dimension>(
  quantity: Quantity<D>,
  uncertainty: number,
  dimension: D,
  as: PrintIn,
): string {
  const apart = dimension === 'temperature' ? 'temperatureDifference' : dimension;
  const unit: Unit<Dimension> = unitFor(apart, as);
  const doubt = uncertainty as Quantity<Dimension>;
  // Rounded first: 0.0996 has its second digit where 0.10 has it.
  const [digits = '', power = '0'] = Math.abs(valueIn(doubt, unit)).toExponential(1).split('e');
  const second = digits.endsWith('0') ? 0 : 1;
  const places = uncertainty === 0 ? 0 : Math.min(second - Number(power), MOST_DECIMALS);
  const decimals = Math.max(places, decimalsOf(unit));
  return `${written(quantity, unitFor(dimension, as), decimals)} ± ${written(doubt, unit, decimals)}`;
}

/** A quantity in the unit that a shop reads its dimension in. */
export function say<D extends Dimension>(quantity: Quantity<D>, dimension: D, as: PrintIn): string {
  return written(quantity, unitFor(dimension, as));
}

/** A film of oil or a roughness: `2.0 µm`, `79 µin`. */
export const sayFilm = (film: Length, units: UnitSystem): string => written(film, filmUnit(units));

/** `0.0040 to 0.0100 in`, `the limit of 0.0005 in`. */
export function describeLimits<D extends Dimension>(
  limits: Limits<Quantity<D>>,
  dimension: D,
  as: PrintIn,
): string {
  const { min, max } = limits;
  const bounds = describeBounds(limits, dimension, as);
  return min !== undefined && max !== undefined ? bounds : `the limit of ${bounds}`;
}

/** `0.0040 to 0.0100 in`, `0.0005 in`. */
export function describeBounds<D extends Dimension>(
  { min, max }: Limits<Quantity<D>>,
  dimension: D,
  as: PrintIn,
): string {
  if (min !== undefined && max !== undefined) return describeSpan({ min, max }, dimension, as);
  return say((max ?? min) as Quantity<D>, dimension, as);
}

/** A span to work to, its ends rounded inward, so that what is printed is never outside it: `0.0669 to 0.0671 in`. */
export function describeInward({ min, max }: Span<Length>, as: PrintIn): string {
  const unit = unitFor('length', as);
  for (let decimals = decimalsOf(unit); decimals < 9; decimals++) {
    const scale = 10 ** decimals;
    const low = Math.ceil(valueIn(min, unit) * scale - 1e-6) / scale;
    const high = Math.floor(valueIn(max, unit) * scale + 1e-6) / scale;
    if (low > high) continue;
    const [from, to] = [low.toFixed(decimals), high.toFixed(decimals)];
    return withSymbol(from === to ? from : `${from} to ${to}`, unit);
  }
  return describeSpan({ min, max }, 'length', as);
}

/** `2.1045 to 2.1050 in`; one size if both ends print alike. */
export function describeSpan<D extends Dimension>(
  span: Span<Quantity<D>>,
  dimension: D,
  as: PrintIn,
): string {
  const unit = unitFor(dimension, as);
  const [low, high] = [span.min, span.max].map((end) =>
    formatNumber<D>(end, unit, decimalsOf(unit)),
  ) as [string, string];
  return withSymbol(low === high ? high : `${low} to ${high}`, unit);
}
