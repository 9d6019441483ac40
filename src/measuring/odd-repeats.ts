import { studentQuantileOfTail } from '../numerics/index.js';
import type { Length } from '../quantities/index.js';
import { largestOf, smallestOf } from '../quantities/internal.js';
import { deletedResiduals, ENOUGH_LEFT } from './deleted-residuals.js';
import type { OddReading } from './odd-types.js';
import { type DiameterReading, groupBy } from './readings.js';

/** A reading with its place in the list. */
export interface Listed extends DiameterReading {
  readonly index: number;
}

/** How often sound readings may be called odd, if nobody says otherwise. */
export const FALSE_ALARM = 0.01;
/** No more are typed by hand; more are a trace, of which one reading decides nothing. */
export const MOST_TYPED = 300;

/** Readings that share station and angle, place by place. */
export const placesOf = <R extends DiameterReading>(
  readings: readonly R[],
): readonly (readonly R[])[] =>
  groupBy(readings, 'station').flatMap(({ group }) =>
    groupBy(group, 'angle').map((place) => place.group),
  );

/** The mean of readings of one place: from the first on, so that no digit of a large size is lost. */
export function meanOfPlace(group: readonly DiameterReading[]): Length {
  const first = group[0]?.diameter ?? 0;
  const above = group.reduce((sum, { diameter }) => sum + (diameter - first), 0);
  return (first + above / group.length) as Length;
}

/**
 * Readings that do not fit the others of their own place, whatever the form of the part: one of three or more, or both
 * of two. What is left of each place agrees.
 */
export function oddRepeats(
  readings: readonly Listed[],
  instrument: number,
  rate: number,
): { readonly odd: readonly OddReading[]; readonly left: readonly Listed[] } {
  const odd: OddReading[] = [];
  let left = readings;
  while (left.length <= MOST_TYPED) {
    const found = oddestRepeat(left, instrument, rate);
    if (found === undefined) break;
    odd.push(found);
    const out = new Set([found.index, ...(found.together ?? []).map(({ index }) => index)]);
    left = left.filter(({ index }) => !out.has(index));
  }
  return { odd, left };
}

function oddestRepeat(
  left: readonly Listed[],
  instrument: number,
  rate: number,
): OddReading | undefined {
  const places = placesOf(left);
  if (places.length === left.length) return undefined;
  const ordered = places.flatMap((place) => {
    const mean = meanOfPlace(place);
    return place.map((reading) => ({ reading, place, residual: reading.diameter - mean }));
  });
  const { all, degrees } = deletedResiduals({
    residuals: ordered.map(({ residual }) => residual),
    leverages: ordered.map(({ place }) => 1 / place.length),
    rank: places.length,
  });
  // Two tests of each reading, either way.
  const share = rate / (4 * left.length);
  const byNormal = studentQuantileOfTail(share, Infinity);
  const byStudent = degrees < ENOUGH_LEFT ? Infinity : studentQuantileOfTail(share, degrees);
  let oddest: OddReading | undefined;
  ordered.forEach(({ reading, place }, i) => {
    const deviation = all[i];
    if (deviation === undefined) return;
    const { off, spread, scatter } = deviation;
    const sizes = place.flatMap((each) => (each === reading ? [] : [each.diameter]));
    const others = { min: smallestOf(sizes), max: largestOf(sizes) };
    const outside = Math.max(reading.diameter - others.max, others.min - reading.diameter);
    const isApart = place.length > 2 && outside > others.max - others.min;
    // Where their scatter tells nothing yet, all of a place are in doubt.
    const isTold = isApart || place.length === 2 || byStudent === Infinity;
    const instrumental = Math.abs(off) / (instrument * spread);
    const scattered = Math.abs(off) / (Math.max(scatter, instrument) * spread);
    const against =
      isTold && instrumental > byNormal
        ? ({ deviation: instrumental, critical: byNormal, against: 'instrument' } as const)
        : ({ deviation: scattered, critical: byStudent, against: 'scatter' } as const);
    if (!(against.deviation > against.critical)) return;
    if (oddest && excessOf(oddest) >= against.deviation / against.critical) return;
    const isAlone = isApart || (place.length > 2 && against.against === 'scatter');
    const expected = (reading.diameter - off) as Length;
    const together = place
      .filter((each) => each !== reading)
      .map((each) => ({
        index: each.index,
        reading: each,
        expected: meanOfPlace(place.filter((other) => other !== each)),
      }));
    oddest = {
      index: reading.index,
      reading,
      expected,
      others,
      ...against,
      ...(!isAlone && { together }),
    };
  });
  return oddest;
}

/** By how many times a deviation exceeds its critical one. */
export const excessOf = ({ deviation, critical }: Pick<OddReading, 'deviation' | 'critical'>) =>
  deviation / critical;
