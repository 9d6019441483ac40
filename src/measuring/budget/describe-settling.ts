import type { Finding, Wording } from '../../judging/index.js';
import {
  comparisonTolerance,
  guardBandOf,
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
import { formatNumber, scaleOf } from '../../quantities/internal.js';
import type { Contributor } from './contributor.js';
import { type Bettering, type Settling, whatSettles } from './settling.js';

/**
 * Says what would settle an undecided finding, in words that follow it after a colon or a dash.
 *
 * @param finding - what `judge` gave
 * @param wording - the units to print in
 * @param budget - all that adds to its uncertainty, if that is known
 * @returns one sentence without a full stop
 * @throws {RebuildInputError} when a field is misspelt, the unit system is unknown, or `whatSettles` refuses the
 * finding or the budget
 * @example
 * ```ts
 * const finding = judge({
 *   feature: 'bore', dimension: 'length', value: inch(3.0021),
 *   limits: { max: inch(3.002) }, basis: { kind: 'specified' }, uncertainty: inch(0.0003),
 * });
 * describeSettling(finding, { units: 'inch' });
 * // ["settled by an uncertainty of 0.0001 in or less, if it reads the same again"]
 * ```
 */
export function describeSettling<D extends Dimension>(
  finding: Finding<D>,
  wording: Wording,
  budget?: readonly Contributor<D>[],
): readonly string[] {
  guardWording(wording);
  return [saySettling(whatSettles(finding, budget), finding, wording)];
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
      return settling.why === 'at the limit' && settling.limit !== undefined
        ? `it reads at the limit of ${say(settling.limit, dimension, units)}: read it finer, as the next reading may fall on either side`
        : `no better reading settles it: ${reasonOf(settling, finding, units)}`;
    default: {
      const { better, moreReadings, uncertainty, limit } = settling;
      const tooClose = sayTooClose(finding, units);
      if (tooClose !== undefined) return tooClose;
      // What comparing leaves out of account is not printed.
      const slack = 3 * comparisonTolerance(dimension, [finding.value, limit]);
      const needed = sayNeeded(uncertainty + slack, finding, units);
      if (better === undefined) return needed;
      if (moreReadings !== undefined && moreReadings <= MOST_MORE) {
        return `${needed}: the mean of ${moreReadings} more ${moreReadings === 1 ? 'reading' : 'readings'} of each size in it`;
      }
      const no =
        moreReadings === undefined
          ? 'reading again will not settle it:'
          : `it takes ${moreReadings} more readings, or`;
      return `${needed}; ${no} ${sayBetter(better, dimension, units)}`;
    }
  }
}

/** More than this nobody takes of one size. */
const MOST_MORE = 10;

function sayBetter<D extends Dimension>(
  { name, stated, ofAnotherDimension, from, to }: Bettering,
  dimension: D,
  units: UnitSystem,
): string {
  const sign = stated === 'half width' || stated === 'expanded uncertainty' ? '± ' : `${stated} `;
  const now = ofAnotherDimension ? '' : ` (${sign}${sayClosely(from, dimension, units)})`;
  if (to === undefined) return `the ${name}${now} alone, however good, is not enough`;
  const then = ofAnotherDimension
    ? `${Math.floor((1000 * to) / from) / 10} % of what it is`
    : `${sign === '± ' ? sign : ''}${sayAtMost(to, dimension, units)}`;
  return `the ${name}${now} must come down to ${then}`;
}

/** What to say of limits that are closer together than readings tell apart. */
function sayTooClose<D extends Dimension>(
  finding: Finding<D>,
  units: UnitSystem,
): string | undefined {
  const { limits, dimension, uncertainty = 0, verdict } = finding;
  if (verdict !== 'undecided' || limits.min === undefined || limits.max === undefined)
    return undefined;
  const apart = limits.max - limits.min;
  if (apart >= 2 * guardBandOf(finding)) return undefined;
  return `limits ${sayClosely(apart, dimension, units)} apart cannot be judged by readings to ± ${sayClosely(uncertainty, dimension, units)}: measure it better`;
}

function reasonOf<D extends Dimension>(
  { limit }: Extract<Settling<D>, { readonly outcome: 'no reading' }>,
  { rule, dimension }: Finding<D>,
  units: UnitSystem,
): string {
  if (limit === undefined) return 'only a service limit of this engine does';
  const band = typeof rule === 'object' ? sayClosely(rule.guardBand, dimension, units) : '';
  return `the value lies within the guard band of ${band} at the limit of ${say(limit, dimension, units)}`;
}

/** How small the uncertainty must be, and how large it is now where both would read alike. */
function sayNeeded<D extends Dimension>(
  needed: number,
  { uncertainty = 0 as Quantity<D>, dimension }: Finding<D>,
  units: UnitSystem,
): string {
  const most = `settled by an uncertainty of ${sayAtMost(needed, dimension, units)} or less`;
  const again = 'if it reads the same again';
  const now = sayClosely(uncertainty, dimension, units);
  if (sayAtMost(needed, dimension, units) !== now) return `${most}, ${again}`;
  const unit: Unit<Dimension> = tradeUnit(dimension, units);
  return `${most} (it is ${format(uncertainty as Quantity<Dimension>, unit, unit.decimals + 2)} now), ${again}`;
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
    if (steps > 0 && cut > 0.9 * value)
      return `${formatNumber(unit(cut), unit, decimals)} ${scaleOf(unit)}`;
  }
  return sayDistance(distance, dimension, units);
}
