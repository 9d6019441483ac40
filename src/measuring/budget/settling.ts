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

/** The contributor that adds most, and what to bring it down to. */
export interface Bettering<D extends Dimension = Dimension> {
  /** What it is called. */
  readonly name: string;
  /** What it adds to the expanded uncertainty by itself, in the coherent SI unit of the dimension. */
  readonly from: Quantity<D>;
  /** To how much it must come down; absent if it is not enough to better this one alone, in the same unit. */
  readonly to?: Quantity<D>;
}

/** What would settle an undecided finding. */
export type Settling<D extends Dimension = Dimension> =
  | {
      /** Nothing is left to settle. */
      readonly outcome: 'decided';
    }
  | {
      /**
       * No better reading of the same value settles it. It is `at the limit`; it is `within a guard band` that its
       * owner set; or it is decided against a limit that condemns no part: only `a limit of this engine` would do.
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
      readonly better?: Bettering<D>;
    };

/**
 * What would settle an undecided finding: how small its uncertainty must be for this value, and, if its budget is given,
 * how many more readings or which better instrument would bring it there. The value is taken to stay as it
 * is; a better reading may well move it. A finding whose verdict is decided and whose grade is not is settled
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
  if (distance <= 3 * noise) return { outcome: 'no reading', why: 'at the limit', limit };
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
  const { shares, coverageFactor } = combined<D>(contributions);
  const standards = contributions.map(({ standard }) => standard);
  const index = standards.indexOf(shares[0]?.standard as number);
  const { name, standard } = contributions[index] as (typeof contributions)[number];
  const from = coverageFactor * standard;
  const share = mostOf((part) => {
    const changed = contributions.map((one, i) =>
      i === index ? { ...one, standard: part * one.standard } : one,
    );
    return changed.every((one) => one.standard === 0) || combined<D>(changed).expanded <= small;
  });
  return {
    ...(moreReadings !== undefined && { moreReadings }),
    better: {
      name,
      from: from as Quantity<D>,
      ...(share > 0 && { to: (share * from) as Quantity<D> }),
    },
  };
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
