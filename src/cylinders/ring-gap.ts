import type { BasedLimits, Span } from '../judging/index.js';
import {
  diameter,
  guardAlike,
  guardFields,
  guardLength,
  guardList,
  stationAlong,
} from '../judging/internal.js';
import type { StationShape } from '../measuring/index.js';
import type { Length } from '../quantities/index.js';
import { ringGap } from './domains.js';

/**
 * The rule of thumb for a ring gap where the maker's figure is lost: 0.003 to
 * 0.004 in for each inch of bore.
 *
 *     least = 0.003 * bore
 *     most = 0.004 * bore
 *
 * @param bore - bore diameter [m]
 * @returns limits, marked as common practice [m]
 * @throws {RebuildInputError} when a value is not finite or out of range
 * @see Source: common practice, no source; the maker's figure always wins
 * @example
 * ```ts
 * const { limits } = recommendedRingGap(inch(3));
 * limits.min && format(limits.min, inch); // "0.0090 in"
 * ```
 */
export function recommendedRingGap(bore: Length): BasedLimits<'length'> {
  diameter('bore', bore);
  return {
    limits: { min: (0.003 * bore) as Length, max: (0.004 * bore) as Length },
    limitsOf: 'new parts',
    basis: {
      kind: 'common practice',
      rule: 'a new ring has 0.003 to 0.004 of the bore as its gap',
    },
  };
}

/** A ring gap and the bore diameter it was measured in. */
export interface MeasuredRingGap {
  /** Gap of the ring squared in its bore [m]. */
  readonly gap: Length;
  /** Diameter of the bore where the gap was measured [m]. */
  readonly measuredIn: Length;
}

const RING_IN = ['gap', 'measuredIn', 'bore'] as const;
const RING_ALONG = ['gap', 'measuredIn', 'stations'] as const;
/** Of a station as `boreShape` gives it, the out-of-round is not looked at. */
const STATION = ['station', 'mean', 'outOfRound'] as const;

/**
 * The gap that a ring has in another diameter: its length stays, the
 * circumference grows by π times the diameter.
 *
 *     gap in the bore = gap + π * (bore - measuredIn)
 *
 * @param ring - the gap, the bore it was measured in, and the bore it is wanted in [m]
 * @returns gap in that bore; negative means the ends butt by so much [m]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, or the bores are not
 * of one cylinder
 * @see Source: geometry; TM 5-6115-593-34, p. 1-9
 * @example
 * ```ts
 * format(ringGapIn({ gap: thou(12), measuredIn: inch(3), bore: inch(3.001) }), thou); // "15.1 thou"
 * ```
 */
export function ringGapIn(
  ring: MeasuredRingGap & {
    /** Diameter of the bore that the gap is wanted in [m]. */
    readonly bore: Length;
  },
): Length {
  guardFields('ring', ring, RING_IN);
  const { gap, measuredIn } = guardMeasured(ring);
  return gapAt(gap, measuredIn, guardSameBore('bore', ring.bore, measuredIn));
}

/** A ring gap at one station of its bore. */
export interface RingGapAt {
  /** Where along the bore [m]. */
  readonly station: Length;
  /** Gap there [m]. */
  readonly gap: Length;
}

/** The gap of a ring along the bore it travels. */
export interface RingTravel {
  /** Gap at every station, in the order given. */
  readonly gaps: readonly RingGapAt[];
  /** Tightest and widest gap [m]. */
  readonly span: Span<Length>;
  /** Where the gap is tightest, in the smallest bore. */
  readonly tightest: RingGapAt;
  /** Where the gap is widest, most often at the worn top of the travel. */
  readonly widest: RingGapAt;
}

/**
 * The gap of a ring as it travels a worn bore, from one measurement of it.
 *
 *     gap at a station = gap + π * (mean - measuredIn)
 *
 * @param ring - the gap, where it was measured, and the stations of the bore as `boreShape` gives them [m]
 * @returns gap at every station, the span of them all, and where it is tightest and widest [m]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, the bores are not
 * of one cylinder, or there is no station
 * @see Source: geometry; TM 5-6115-593-34, p. 1-9
 * @example
 * ```ts
 * const { span } = ringGapAlongBore({
 *   gap: thou(12), measuredIn: inch(3),
 *   stations: [{ station: inch(0.5), mean: inch(3.008) }, { station: inch(3), mean: inch(3) }],
 * });
 * format(span.max, thou); // "37.1 thou"
 * ```
 */
export function ringGapAlongBore(
  ring: MeasuredRingGap & {
    /** Stations of the bore with their mean diameters [m]. */
    readonly stations: readonly Pick<StationShape, 'station' | 'mean'>[];
  },
): RingTravel {
  guardFields('ring', ring, RING_ALONG);
  const { gap, measuredIn } = guardMeasured(ring);
  guardList('stations', ring.stations, 1, 'station');
  const gaps = ring.stations.map((place, i) => {
    guardFields(`stations[${i}]`, place as StationShape, STATION);
    const station = stationAlong(`stations[${i}].station`, place.station);
    const mean = guardSameBore(`stations[${i}].mean`, place.mean, measuredIn);
    return { station, gap: gapAt(gap, measuredIn, mean) };
  });
  const tightest = gaps.reduce((a, b) => (b.gap < a.gap ? b : a));
  const widest = gaps.reduce((a, b) => (b.gap > a.gap ? b : a));
  return { gaps, span: { min: tightest.gap, max: widest.gap }, tightest, widest };
}

/** The gap in a bore of another diameter. */
export const gapAt = (gap: Length, measuredIn: Length, bore: Length) =>
  (gap + Math.PI * (bore - measuredIn)) as Length;

/** A ring belongs to one cylinder: its bores are alike, however worn. */
export function guardSameBore(parameter: string, bore: Length, measuredIn: Length): Length {
  return guardAlike(parameter, diameter(parameter, bore), 'measuredIn', measuredIn);
}

/** A gap is never more than a tenth of its bore: that catches thousandths given as metres. */
export function guardMeasured(ring: MeasuredRingGap): MeasuredRingGap {
  const measuredIn = diameter('measuredIn', ring.measuredIn);
  const most = Math.min(ringGap.most, measuredIn / 10);
  return { gap: guardLength('gap', ring.gap, [ringGap.least, most], ringGap.example), measuredIn };
}
