import { guardFields } from '../../judging/internal.js';
import { studentQuantileOfTail } from '../../numerics/index.js';
import {
  type Dimension,
  type Quantity,
  type Ratio,
  RebuildInputError,
} from '../../quantities/index.js';
import { largestOf } from '../../quantities/internal.js';
import { type Contribution, type Contributor, contributionsOf } from './contributor.js';

/** How sure an expanded uncertainty is to be. */
export interface CoverageOptions {
  /** Chance that the true value lies within it; by default 0.9545, for which the factor is 2 at the least. */
  readonly coverage?: number;
}

/** What one contributor adds to a result. */
export interface BudgetShare<D extends Dimension = 'length'> {
  /** What the contributor is called. */
  readonly name: string;
  /** Standard uncertainty that it adds, in the coherent SI unit of the dimension. */
  readonly standard: Quantity<D>;
  /** Its part of the square of the whole [-]. */
  readonly share: Ratio;
}

/** The uncertainty of a result. */
export interface ExpandedUncertainty<D extends Dimension = 'length'> {
  /** Half width of the interval that covers the true value, in the coherent SI unit of the dimension. */
  readonly expanded: Quantity<D>;
  /** Combined standard uncertainty, in the same unit. */
  readonly standard: Quantity<D>;
  /** What the standard uncertainty was multiplied by [-]. */
  readonly coverageFactor: Ratio;
  /** Chance that the interval covers the true value [-]. */
  readonly coverage: Ratio;
  /** Effective degrees of freedom; absent where they are without number. */
  readonly degreesOfFreedom?: number;
  /** What each contributor adds, the largest first. */
  readonly shares: readonly BudgetShare<D>[];
}

const OPTIONS = ['coverage'] as const;

/**
 * The uncertainty of a result from all that adds to it. The contributors are taken as independent. A half width
 * a of limits is a standard uncertainty of a / √3 where the value may lie anywhere between them, of a / √6 where it lies rather
 * in the middle and of a / √2 where it swings between them; of readings it is s / √n.
 *
 *     standard = √(sum of (sensitivity · contributor)²)
 *     degreesOfFreedom = standard⁴ / (sum of (sensitivity · contributor)⁴ / its degrees of freedom)
 *     expanded = coverageFactor · standard
 *
 * The coverage factor is that of Student's distribution for the degrees of freedom, cut to a whole number.
 *
 * @param contributors - what adds to the uncertainty, each in the unit of the result or with its sensitivity
 * @param options - how sure it is to be
 * @returns expanded and standard uncertainty, coverage factor, degrees of freedom and shares, the largest first
 * @throws {RebuildInputError} when a field is misspelt, there is no contributor, a spread is negative, a contributor is
 * of no known kind, there are no degrees of freedom, the coverage is not between 0 and 1, or nothing adds anything
 * @see Source: JCGM 100:2008, 4.3, 5.1, annex G.4 and G.6.4
 * @example
 * ```ts
 * const { expanded, shares } = expandedUncertainty([
 *   { name: 'resolution', kind: 'rectangular', halfWidth: inch(0.00005) },
 *   { name: 'zero error', kind: 'rectangular', halfWidth: inch(0.0001), common: true },
 *   { name: 'repeatability', kind: 'readings', standardDeviation: inch(0.00008), readings: 5 },
 * ]);
 * format(expanded, micrometre); // "3.8 µm"
 * shares[0]?.name; // "zero error"
 * ```
 */
export function expandedUncertainty<D extends Dimension = 'length'>(
  contributors: readonly Contributor<D>[],
  options: CoverageOptions = {},
): ExpandedUncertainty<D> {
  guardFields('options', options, OPTIONS);
  const { coverage = TWO_SIGMA } = options;
  if (!(typeof coverage === 'number' && coverage > 0 && coverage < 1 - 1e-9)) {
    throw new RebuildInputError({
      parameter: 'options.coverage',
      value: coverage,
      expected: 'a chance of more than 0 and less than 1',
      hint: 'Nothing covers the true value for certain. 95 % is 0.95.',
    });
  }
  return combined(contributionsOf('contributors', contributors), coverage);
}

/** Within two standard deviations of a normal distribution. */
const TWO_SIGMA = 0.9545;

/** Combines contributions of which one at least is more than nothing. */
export function combined<D extends Dimension>(
  contributions: readonly Contribution[],
  coverage = TWO_SIGMA,
): ExpandedUncertainty<D> {
  const largest = largestOf(contributions.map(({ standard }) => standard));
  const sum = (of: (share: number, degrees: number) => number) =>
    contributions.reduce((all, { standard, degrees }) => all + of(standard / largest, degrees), 0);
  const squares = sum((u) => u ** 2);
  const degrees = squares ** 2 / sum((u, nu) => u ** 4 / nu);
  const standard = largest * Math.sqrt(squares);
  const whole = degrees === Infinity ? degrees : Math.max(1, Math.floor(degrees + ROUNDED));
  const coverageFactor = studentQuantileOfTail((1 - coverage) / 2, whole);
  const shares = contributions.map(({ name, standard: u }) => ({
    name,
    standard: u as Quantity<D>,
    share: ((u / largest) ** 2 / squares) as Ratio,
  }));
  return {
    expanded: (coverageFactor * standard) as Quantity<D>,
    standard: standard as Quantity<D>,
    coverageFactor: coverageFactor as Ratio,
    coverage: coverage as Ratio,
    ...(degrees < MOST_DEGREES && { degreesOfFreedom: degrees }),
    shares: shares.sort((a, b) => b.share - a.share),
  };
}

/** What rounding may have taken from a whole number. */
const ROUNDED = 1e-6;
/** More degrees of freedom than these are without number. */
const MOST_DEGREES = 1e12;
