import type { CardLetter } from '../judging/internal.js';
import { type Dimension, type Quantity, type UnitSystem, valueIn } from '../quantities/index.js';
import { shopUnit } from './shop-units.js';

/** A range as wide as this, most over least, is walked by factors and not by steps. */
const WIDE = 20;

/**
 * The value of a letter so far between the least and the most that is usual, 0 to 1, as a shop would read it: rounded
 * in the unit that it reads such a thing in, to some part of the range that a tool can tell.
 */
export function shopValue(
  { domain, usual: [least, most] }: CardLetter,
  share: number,
  system: UnitSystem,
  ofLiquid: boolean,
): number {
  const isWide = least > 0 && most / least >= WIDE;
  const typical = isWide ? Math.sqrt(least * most) : Math.max(Math.abs(least), Math.abs(most));
  const unit = shopUnit(domain.dimension, typical, system, ofLiquid);
  const value = isWide ? least * (most / least) ** share : least + share * (most - least);
  const [from, to, at] = [least, most, value].map((v) => valueIn(v as Quantity<Dimension>, unit));
  const coarsest = domain.dimension === 'temperature' ? 1 : 0;
  return unit(rounded(at as number, from as number, to as number, isWide, coarsest));
}

/** Rounded within a range; a value that cannot be otherwise keeps six digits. */
function rounded(at: number, from: number, to: number, isWide: boolean, leastStep: number): number {
  if (from === to) return Number(at.toPrecision(6));
  const least = isWide ? Math.abs(at) : (to - from) / 2;
  const step = Math.max(10 ** (Math.floor(Math.log10(least)) - 1), leastStep);
  const steps = Math.min(
    Math.max(Math.round(at / step), Math.ceil(from / step - 1e-9)),
    Math.floor(to / step + 1e-9),
  );
  return Number((steps * step).toPrecision(12));
}
