import type { UnitSymbol } from 'crankwright';
import { type Definition, definitions, type Exact, exact } from '../quantities/definitions.js';

/** π to 50 decimals; from memory. */
const PI = exact('3.14159265358979323846264338327950288419716939937510');
const ZERO: Exact = [0n, 1n];

export const times = ([a, b]: Exact, [c, d]: Exact): Exact => [a * c, b * d];
export const over = (a: Exact, [c, d]: Exact): Exact => times(a, [d, c]);
export const plus = ([a, b]: Exact, [c, d]: Exact): Exact => [a * d + c * b, b * d];
export const minus = (a: Exact, [c, d]: Exact): Exact => plus(a, [-c, d]);
const size = (n: bigint): bigint => (n < 0n ? -n : n);

/** The fraction that a double is. */
export function fractionOf(x: number): Exact {
  let [mantissa, halvings] = [x, 0n];
  while (!Number.isInteger(mantissa)) [mantissa, halvings] = [mantissa * 2, halvings + 1n];
  return [BigInt(mantissa), 2n ** halvings];
}

/** How large the first is beside the second, to many digits; both may be negative. */
export function shareOf(part: Exact, whole: Exact): number {
  const [over, under] = [part[0] * whole[1], part[1] * whole[0]];
  if (over === 0n) return 0;
  return Number((size(over) * 2n ** 120n) / size(under)) / 2 ** 120;
}

const factorOf = ({ factor, halfTurns }: Definition): Exact =>
  halfTurns ? times(factor, PI) : factor;

/** One unit in another of its dimension, exactly. */
export function ratioOf(from: UnitSymbol, to: UnitSymbol): Exact {
  return over(factorOf(definitions[from]), factorOf(definitions[to]));
}

/** What a number of one unit is in another, by the definitions and in fractions alone. */
export function exactly(x: number, from: UnitSymbol, to: UnitSymbol): Exact {
  const [origin, wanted] = [definitions[from], definitions[to]];
  const coherent = plus(times(fractionOf(x), factorOf(origin)), origin.zero ?? ZERO);
  return over(minus(coherent, wanted.zero ?? ZERO), factorOf(wanted));
}
