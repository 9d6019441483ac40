/**
 * An exact fraction of whole numbers in lowest terms. Every unit's factor is
 * one, built from definitions; tests recompute them all with BigInt.
 */
export type Fraction = readonly [numerator: number, denominator: number];

/** Greatest common divisor of two positive whole numbers. */
export function greatestCommonDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestCommonDivisor(b, a % b);
}

/** The product of fractions, reduced before multiplying so that no step outgrows a double. */
export function product(...fractions: readonly Fraction[]): Fraction {
  return fractions.reduce<Fraction>(
    ([a, b], [c, d]) => {
      const first = greatestCommonDivisor(a, d);
      const second = greatestCommonDivisor(c, b);
      return [(a / first) * (c / second), (b / second) * (d / first)];
    },
    [1, 1],
  );
}

/** One fraction over another. */
export function quotient(over: Fraction, under: Fraction): Fraction {
  return product(over, [under[1], under[0]]);
}
