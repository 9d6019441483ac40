import type { Finding, Wording } from '../../judging/index.js';
import {
  comparisonTolerance,
  guardWording,
  say,
  sayClosely,
  sayDistance,
} from '../../judging/internal.js';
import {
  type Dimension,
  format,
  type Quantity,
  tradeUnit,
  type Unit,
  type UnitSystem,
  valueIn,
} from '../../quantities/index.js';
import type { Contributor } from './contributor.js';
import { type Settling, whatSettles } from './settling.js';

/**
 * Says what would settle an undecided finding, in words that follow it after a colon or a dash.
 *
 * @param finding - what `judge` gave
 * @param wording - the units to print in
 * @param budget - all that adds to its uncertainty, if that is known
 * @returns a sentence without a full stop
 * @throws {RebuildInputError} when a field is misspelt, the unit system is unknown, or `whatSettles` refuses the
 * finding or the budget
 * @example
 * ```ts
 * const finding = judge({
 *   feature: 'bore', dimension: 'length', value: inch(3.0021),
 *   limits: { max: inch(3.002) }, basis: { kind: 'specified' }, uncertainty: inch(0.0003),
 * });
 * describeSettling(finding, { units: 'inch' });
 * // "settled by an uncertainty of 0.0001 in or less"
 * ```
 */
export function describeSettling<D extends Dimension>(
  finding: Finding<D>,
  wording: Wording,
  budget?: readonly Contributor<D>[],
): string {
  guardWording(wording);
  return saySettling(whatSettles(finding, budget), finding, wording);
}

/** The same of what was found out before. */
export function saySettling<D extends Dimension>(
  settling: Settling<D>,
  finding: Finding<D>,
  wording: Wording,
): string {
  const { dimension } = finding;
  const { units } = wording;
  switch (settling.outcome) {
    case 'decided':
      return 'nothing is left to settle';
    case 'no reading':
      return `no better reading settles it: ${reasonOf(settling, finding, units)}`;
    default: {
      const { better, moreReadings, uncertainty, limit } = settling;
      // What comparing leaves out of account is not printed.
      const slack = 3 * comparisonTolerance(dimension, [finding.value, limit]);
      const needed = sayNeeded(uncertainty + slack, finding, units);
      if (better === undefined) return needed;
      if (moreReadings !== undefined) {
        return `${needed}: ${moreReadings} more ${moreReadings === 1 ? 'reading' : 'readings'}`;
      }
      const from = sayClosely(better.from, dimension, units);
      const none = `${needed}; no number of readings settles it`;
      return better.to === undefined
        ? `${none}, and to better the ${better.name} (${from}) alone is not enough`
        : `${none}: better the ${better.name} (${from}) to ${sayAtMost(better.to, dimension, units)}`;
    }
  }
}

function reasonOf<D extends Dimension>(
  { why, limit }: Extract<Settling<D>, { readonly outcome: 'no reading' }>,
  { rule, dimension }: Finding<D>,
  units: UnitSystem,
): string {
  if (limit === undefined) return 'only a service limit of this engine does';
  const there = `the limit of ${say(limit, dimension, units)}`;
  if (why === 'at the limit') return `the value is exactly at ${there}`;
  const band = typeof rule === 'object' ? sayClosely(rule.guardBand, dimension, units) : '';
  return `the value lies within the guard band of ${band} at ${there}`;
}

/** How small the uncertainty must be, and how large it is now where both would read alike. */
function sayNeeded<D extends Dimension>(
  needed: number,
  { uncertainty = 0 as Quantity<D>, dimension }: Finding<D>,
  units: UnitSystem,
): string {
  const most = `settled by an uncertainty of ${sayAtMost(needed, dimension, units)} or less`;
  const now = sayClosely(uncertainty, dimension, units);
  if (sayAtMost(needed, dimension, units) !== now) return most;
  const unit: Unit<Dimension> = tradeUnit(dimension, units);
  return `${most}, and it is ${format(uncertainty as Quantity<Dimension>, unit, unit.decimals + 2)} now`;
}

/** A distance that must not be exceeded: what is cut off is less than a tenth of it. */
function sayAtMost(distance: number, dimension: Dimension, units: UnitSystem): string {
  const apart = dimension === 'temperature' ? 'temperatureDifference' : dimension;
  const unit: Unit<Dimension> = tradeUnit(apart, units);
  const value = valueIn(distance as Quantity<Dimension>, unit);
  for (let decimals = unit.decimals; decimals < 9; decimals++) {
    // What rounding took from a whole number of steps is given back.
    const steps = Math.floor(value * 10 ** decimals * (1 + 1e-6));
    const cut = steps / 10 ** decimals;
    if (steps > 0 && cut > 0.9 * value) return format(unit(cut), unit, decimals);
  }
  return sayDistance(distance, dimension, units);
}
