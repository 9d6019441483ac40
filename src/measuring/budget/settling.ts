import type { Finding } from '../../judging/index.js';
import {
  comparisonTolerance,
  guardBandOf,
  guardFinding,
  shareOf,
  showQuantity,
} from '../../judging/internal.js';
import { type Dimension, type Quantity, RebuildInputError } from '../../quantities/index.js';
import { type Contributor, contributionsOf, MOST_READINGS } from './contributor.js';
import { combined } from './expanded-uncertainty.js';

/** The terms that a contributor is stated in. */
export type StatedAs =
  | 'standard deviation'
  | 'standard error'
  | 'half width'
  | 'expanded uncertainty';

/** The contributor that adds most, and what to bring it down to, both in the terms that it was stated in. */
export interface Bettering {
  /** What it is called. */
  readonly name: string;
  /** What was stated of it, and what `from` and `to` are: half a width either way, for one. */
  readonly stated: StatedAs;
  /**
   * Whether it is of another dimension than the finding, so that both are in its own coherent SI unit. A contributor
   * with a sensitivity between 0.1 and 10 is taken to be of the same: that is a number, the 2 of two walls.
   */
  readonly ofAnotherDimension?: true;
  /** What was stated, in the coherent SI unit of the dimension. */
  readonly from: number;
  /** Stated in its place, this decides; absent if it is not enough to better this one alone, in the same unit. */
  readonly to?: number;
}

/** What would settle an undecided finding. */
export type Settling<D extends Dimension = Dimension> =
  | {
      /** Nothing is left to settle. */
      readonly outcome: 'decided';
    }
  | {
      /**
       * No better reading of the same value settles it. It is `at the limit`, or nearer to it than a tenth of its
       * uncertainty; it is `within a guard band` that its owner set; or it is decided against a limit that condemns no part: only `a limit of this engine` would do.
       */
      readonly outcome: 'no reading';
      /** Why. */
      readonly why: 'at the limit' | 'within a guard band' | 'a limit of this engine';
      /** The limit that it is at or too near to, in the coherent SI unit of the dimension. */
      readonly limit?: Quantity<D>;
    }
  | {
      /** A smaller uncertainty settles it, if the value stays as it is. */
      readonly outcome: 'smaller uncertainty';
      /** The limit that it is too near to, in the coherent SI unit of the dimension. */
      readonly limit: Quantity<D>;
      /** The largest expanded uncertainty that decides, in the same unit. */
      readonly uncertainty: Quantity<D>;
      /** With a budget: how many more readings get there; absent if no number of them does. */
      readonly moreReadings?: number;
      /** With a budget: the contributor that adds most. */
      readonly better?: Bettering;
    };

/**
 * What would settle an undecided finding: how small its uncertainty must be for this value, and, if its budget is given,
 * how many more readings or which better instrument would bring it there. The value is taken to stay as it
 * is; a better reading may well move it. What to better is given as it was stated, so that it can be stated anew. A finding whose verdict is decided and whose grade is not is settled
 * against its service limit.
 *
 * @param finding - what `judge` gave
 * @param budget - all that adds to its uncertainty, if that is known
 * @returns the uncertainty that decides, and the ways to it; or why there is none
 * @throws {RebuildInputError} when a field is misspelt, the finding is not one, the budget is refused by
 * `expandedUncertainty`, or the budget is not of the uncertainty of the finding
 * @see Source: the decision rule turned round
 * @example
 * ```ts
 * const budget = [
 *   { name: 'zero error', kind: 'rectangular', halfWidth: inch(0.00003) },
 *   { name: 'repeatability', kind: 'readings', standardDeviation: inch(0.0001), readings: 2, degreesOfFreedom: 20 },
 * ] as const;
 * const finding = judge({
 *   feature: 'journal', dimension: 'length', value: inch(2.1241),
 *   limits: { min: inch(2.124) }, basis: { kind: 'specified' },
 *   uncertainty: expandedUncertainty(budget).expanded,
 * });
 * const settling = whatSettles(finding, budget);
 * settling.outcome === 'smaller uncertainty' && settling.moreReadings; // 4
 * ```
 */
export function whatSettles<D extends Dimension>(
  finding: Finding<D>,
  budget?: readonly Contributor<D>[],
): Settling<D> {
  const { dimension, value, rule, uncertainty } = guardFinding('finding', finding);
  const contributions = budget && contributionsOf('budget', budget);
  if (budget && contributions) guardSame(finding, combined<D>(contributions).expanded);
  const limit = limitInDoubt(finding);
  if (limit === 'none') return { outcome: 'decided' };
  if (limit === 'of this engine') return { outcome: 'no reading', why: 'a limit of this engine' };
  if (typeof rule === 'object') return { outcome: 'no reading', why: 'within a guard band', limit };
  const noise = comparisonTolerance(dimension, [value, limit]);
  const distance = Math.abs(value - limit);
  if (distance <= 3 * noise || distance < AT_LIMIT * (uncertainty ?? 0) - noise)
    return { outcome: 'no reading', why: 'at the limit', limit };
  // A value outside a limit must be so by more than the band, and by the tolerance of comparison besides.
  const room = isInside(finding, limit) ? distance : distance - 2 * noise;
  const share = shareOf(rule ?? 'full expanded uncertainty');
  if (share === 0) return { outcome: 'decided' };
  const small = (room / share) as Quantity<D>;
  const settled = { outcome: 'smaller uncertainty', limit, uncertainty: small } as const;
  return budget && uncertainty !== undefined
    ? { ...settled, ...waysTo(small + noise, budget) }
    : settled;
}

/** A value nearer to its limit than this share of its uncertainty may be on either side when it is read again. */
const AT_LIMIT = 0.1;

/** The limit that a value is too near to be judged by. */
function limitInDoubt<D extends Dimension>(
  finding: Finding<D>,
): Quantity<D> | 'none' | 'of this engine' {
  const { value, limits, verdict, grade, service, dimension } = finding;
  if (verdict === 'undecided') return nearestTo(value, [limits.min, limits.max]);
  if (grade !== 'undecided') return 'none';
  const worn = service?.limits[verdict === 'above' ? 'max' : 'min'];
  if (worn === undefined) return 'of this engine';
  const band = guardBandOf<D>(finding) + comparisonTolerance(dimension, [value, worn]);
  return Math.abs(value - worn) <= band ? worn : 'of this engine';
}

/** Whether a value lies on the good side of a limit. */
function isInside<D extends Dimension>(
  { value, limits, service }: Finding<D>,
  limit: Quantity<D>,
): boolean {
  return limit === limits.max || limit === service?.limits.max ? value <= limit : value >= limit;
}

function nearestTo<D extends Dimension>(
  value: Quantity<D>,
  limits: readonly (Quantity<D> | undefined)[],
): Quantity<D> {
  const known = limits.filter((limit) => limit !== undefined);
  return known.sort((a, b) => Math.abs(value - a) - Math.abs(value - b))[0] as Quantity<D>;
}

/** Refuses the budget of something else: a size's for a difference, one instrument's for a clearance. */
function guardSame<D extends Dimension>(finding: Finding<D>, expanded: Quantity<D>): void {
  const { uncertainty, dimension } = finding;
  if (uncertainty !== undefined && Math.abs(expanded - uncertainty) <= 0.05 * uncertainty) return;
  throw new RebuildInputError({
    parameter: 'budget',
    value: expanded,
    shown: showQuantity(expanded, dimension),
    expected: 'the budget of the uncertainty of this finding',
    problem:
      uncertainty === undefined
        ? 'is the uncertainty of this budget, and the finding has none'
        : `is the uncertainty of this budget, and that of the finding is ${showQuantity(uncertainty, dimension)}`,
    hint: 'Judge with the expanded uncertainty of the same budget.',
  });
}

/** More readings and a better instrument, as far as they lead to an uncertainty. */
function waysTo<D extends Dimension>(small: number, budget: readonly Contributor<D>[]) {
  const isSmall = (changed: readonly Contributor<D>[]) =>
    combined<D>(contributionsOf('budget', changed)).expanded <= small;
  const moreReadings = leastThat((more) => isSmall(budget.map((one) => withMore(one, more))));
  const contributions = contributionsOf('budget', budget);
  const { shares } = combined<D>(contributions);
  const standards = contributions.map(({ standard }) => standard);
  const index = standards.indexOf(shares[0]?.standard as number);
  const largest = budget[index] as Contributor<D>;
  const [stated, from] = statedOf(largest);
  const { sensitivity = 1 } = largest;
  const isSame = Math.abs(sensitivity) >= 0.1 && Math.abs(sensitivity) <= 10;
  const share = mostOf((part) => {
    const changed = contributions.map((one, i) =>
      i === index ? { ...one, standard: part * one.standard } : one,
    );
    return changed.every((one) => one.standard === 0) || combined<D>(changed).expanded <= small;
  });
  return {
    ...(moreReadings !== undefined && { moreReadings }),
    better: {
      name: largest.name,
      stated,
      ...(!isSame && { ofAnotherDimension: true as const }),
      from,
      ...(share > 0 && { to: share * from }),
    },
  };
}

/** What a contributor states of itself, and how much that is. */
function statedOf<D extends Dimension>(one: Contributor<D>): readonly [StatedAs, number] {
  switch (one.kind) {
    case 'readings':
      return ['standard deviation', one.standardDeviation];
    case 'standard error':
      return ['standard error', one.standardError];
    case 'normal':
      return ['expanded uncertainty', one.expanded];
    default:
      return ['half width', one.halfWidth];
  }
}

/** The mean of more readings. What is common was read before, and stays. */
function withMore<D extends Dimension>(one: Contributor<D>, more: number): Contributor<D> {
  return one.kind === 'readings' && !one.common
    ? { ...one, readings: Math.min(MOST_READINGS, one.readings + more) }
    : one;
}

/** The least whole number for which something holds that holds for all larger ones. */
function leastThat(holds: (n: number) => boolean): number | undefined {
  let [never, always] = [0, 1];
  while (!holds(always)) {
    if (always >= MOST_READINGS) return undefined;
    [never, always] = [always, 2 * always];
  }
  while (always - never > 1) {
    const middle = Math.floor((never + always) / 2);
    if (holds(middle)) always = middle;
    else never = middle;
  }
  return always;
}

/** The most of a share for which something holds that holds for all smaller ones; 0 if it holds for none. */
function mostOf(holds: (share: number) => boolean): number {
  let [good, bad] = [0, 1];
  for (let step = 0; step < 30; step++) {
    const middle = (good + bad) / 2;
    if (holds(middle)) good = middle;
    else bad = middle;
  }
  return good;
}
