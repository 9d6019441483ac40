import type { Exact, MathUnit } from '../../mathjs/internal.js';
import {
  type Dimension,
  formatFraction,
  inch,
  micrometre,
  mm,
  thou,
  type Unit,
} from '../../quantities/index.js';
import { either } from '../../reading/index.js';
import { isRuleFraction } from './spelled-units.js';
import { WrongStatement } from './wrong-statement.js';

/** A plain number where a size belongs. */
export interface Bare {
  readonly value: number;
  /** As it was typed: a number, a fraction, or what comes to it. */
  readonly written: string;
}

/** The sizes that a shop reads, from a small part of a thou to a metre. */
const LEAST_READ = micrometre(1);
const MOST_READ = mm(1000);

/** Refuses a plain number beside a length. Its unit is not known, so none is chosen where two may be meant. */
export function lengthLacksUnit(bare: Bare, beside: Unit<Dimension>, orMixed = ''): WrongStatement {
  const fraction = bare.written.replace(/\s*\/\s*/, '/');
  if (isRuleFraction(fraction)) return fractionLacksUnit(fraction);
  const isMetric = beside.symbol.endsWith('m');
  const units = [
    ...new Set<Unit<Dimension>>([...(isMetric ? [micrometre, mm] : [thou, inch]), beside]),
  ].sort((one, other) => one(1) - other(1));
  const read = units.filter((unit) => {
    const size = Math.abs(unit(bare.value));
    return size >= LEAST_READ && size <= MOST_READ;
  });
  return numberLacksUnit(
    bare,
    (read.length > 0 ? read : [beside]).map(({ symbol }) => symbol),
    orMixed,
  );
}

/** Refuses a common fraction, or a mixed number, which the trade has of inches alone. */
export const fractionLacksUnit = (written: string): WrongStatement =>
  new WrongStatement(`${written} has no unit: write ${written} in, if it is inches`);

/** Refuses a plain number that may be in any of these units. */
export function numberLacksUnit(
  { value, written }: Bare,
  units: readonly string[],
  orMixed = '',
): WrongStatement {
  const isTyped = Number(written) === value;
  const said = isTyped ? written : `${written} is ${value} and`;
  const all = units.map((unit) => `${isTyped ? written : value} ${unit}`);
  const only = all.length === 1 ? ', if that is meant' : '';
  return new WrongStatement(`${said} has no unit: write ${either(all)}${orMixed || only}`);
}

/** `, or 2-3/8 in for both`: what a whole number and the fraction of an inch behind it may be. */
export function asMixed(whole: number, fraction: MathUnit, exact: Exact): string {
  const [unit] = exact.named(fraction);
  const mixed = unit === inch ? formatFraction(inch(whole + fraction.toNumber('inch'))) : '';
  return new RegExp(`^${whole}-\\d+/\\d+ in$`).test(mixed) ? `, or ${mixed} for both` : '';
}
