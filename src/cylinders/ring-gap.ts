import {
  guardAlike,
  guardDiameter,
  guardFields,
  guardLength,
  guardList,
  guardObject,
  guardStation,
} from '../judging/guards.js';
import { type Finding, judge } from '../judging/judge.js';
import type { Limits, Span } from '../judging/limits.js';
import {
  type BasedLimits,
  OWN_LIMITS,
  type OwnLimits,
  ownLimitsOr,
} from '../judging/own-limits.js';
import type { StationShape } from '../measuring/shape.js';
import type { Length } from '../quantities/dimensions.js';
import { largestOf, smallestOf } from '../quantities/extremes.js';

/**
 * The rule of thumb for a ring gap where the maker's figure is lost: 0.003 to
 * 0.004 in for each inch of bore.
 *
 *     gap = 0.003 … 0.004 * bore
 *
 * @param bore - bore diameter [m]
 * @returns limits, marked as common practice [m]
 * @throws {RebuildInputError} when the size cannot belong to a bore
 * @see Source: common practice, no source; the maker's figure always wins
 * @example
 * ```ts
 * const { limits } = recommendedRingGap(inch(3));
 * limits.min && format(limits.min, inch); // "0.0090 in"
 * ```
 */
export function recommendedRingGap(bore: Length): BasedLimits<'length'> {
  guardDiameter('bore', bore);
  return {
    limits: { min: (0.003 * bore) as Length, max: (0.004 * bore) as Length },
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

/**
 * The gap that a ring has in another diameter: its length stays, the
 * circumference grows by π times the diameter.
 *
 *     gap = measuredGap + π * (bore - measuredIn)
 *
 * @param ring - the gap, the bore it was measured in, and the bore it is wanted in [m]
 * @returns gap in that bore; negative means the ends butt by so much [m]
 * @throws {RebuildInputError} when a size cannot belong to a ring or bore, or bores differ by more than 5 %
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
  const { gap, measuredIn } = guardMeasured('ring', ring);
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
}

/**
 * The gap of a ring as it travels a worn bore, from one measurement of it.
 *
 * @param ring - the gap, where it was measured, and the stations of the bore as `boreShape` gives them [m]
 * @returns gap at every station, and the span of them all [m]
 * @throws {RebuildInputError} when a size cannot belong to a ring or bore, or bores differ by more than 5 %, or there is no station
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
  const { gap, measuredIn } = guardMeasured('ring', ring);
  guardList('stations', ring.stations, 1, 'station');
  const gaps = ring.stations.map((place, i) => {
    guardObject(`stations[${i}]`, place);
    const station = guardStation(`stations[${i}].station`, place.station);
    const mean = guardSameBore(`stations[${i}].mean`, place.mean, measuredIn);
    return { station, gap: gapAt(gap, measuredIn, mean) };
  });
  const sizes = gaps.map((at) => at.gap);
  return { gaps, span: { min: smallestOf(sizes), max: largestOf(sizes) } };
}

/** What to do with a ring whose gap was measured. */
export type RingFiling =
  | {
      /**
       * Within the limits; wider than the caller's, and a ring cannot be filed longer; or wider than
       * the rule of thumb, which is of new rings and condemns none.
       */
      readonly work: 'fit as it is' | 'use another ring' | 'wider than a new fit';
      /** The gap against its limits. */
      readonly finding: Finding<'length'>;
    }
  | {
      /** The ends must be filed. */
      readonly work: 'file';
      /** The gap against its limits. */
      readonly finding: Finding<'length'>;
      /** Metal to take off the ends, both together: at least, and if the limits say so at most [m]. */
      readonly remove: Limits<Length> & Pick<Span<Length>, 'min'>;
    };

/**
 * Whether the ends of a ring must be filed, and by how much. The gap that
 * counts is the tightest: the one in the smallest diameter that the ring travels.
 *
 * @param ring - the gap, the bore it was measured in, the smallest bore it will travel, and the
 * maker's limits if they are known [m]
 * @returns what to do, with the gap against its limits
 * @throws {RebuildInputError} when a size cannot belong to a ring or bore, or bores differ by more than 5 %
 * @see Source: the default limits are common practice
 * @example
 * ```ts
 * const filing = ringFilingNeeded({ gap: thou(5), measuredIn: inch(3) });
 * filing.work; // "file"
 * filing.work === 'file' && format(filing.remove.min, thou); // "4.0 thou"
 * ```
 */
export function ringFilingNeeded(
  ring: MeasuredRingGap &
    OwnLimits<'length'> & {
      /** Smallest diameter of the ring's travel; by default where the gap was measured [m]. */
      readonly smallestBore?: Length;
    },
): RingFiling {
  guardFields('ring', ring, ['gap', 'measuredIn', 'smallestBore', ...OWN_LIMITS]);
  const { gap: measuredGap, measuredIn } = guardMeasured('ring', ring);
  const bore = guardSameBore('smallestBore', ring.smallestBore ?? measuredIn, measuredIn);
  const gap = gapAt(measuredGap, measuredIn, bore);
  const { limits, basis } = ownLimitsOr('ring', ring, recommendedRingGap(bore), (name, bound) =>
    guardLength(name, bound, 0, 0.03 * bore),
  );
  const finding = judge({ feature: 'ring gap', dimension: 'length', value: gap, limits, basis });
  if (finding.verdict === 'above') {
    return { work: ring.limits ? 'use another ring' : 'wider than a new fit', finding };
  }
  if (finding.verdict === 'within' || limits.min === undefined) {
    return { work: 'fit as it is', finding };
  }
  const least = (limits.min - gap) as Length;
  const most = limits.max === undefined ? {} : { max: (limits.max - gap) as Length };
  return { work: 'file', finding, remove: { min: least, ...most } };
}

const gapAt = (gap: Length, measuredIn: Length, bore: Length) =>
  (gap + Math.PI * (bore - measuredIn)) as Length;

/** A ring belongs to one cylinder: its bores are alike, however worn. */
function guardSameBore(parameter: string, bore: Length, measuredIn: Length): Length {
  return guardAlike(parameter, guardDiameter(parameter, bore), 'measuredIn', measuredIn);
}

/** A gap is never more than a tenth of its bore: that catches thousandths given as metres. */
function guardMeasured(parameter: string, ring: MeasuredRingGap): MeasuredRingGap {
  guardObject(parameter, ring);
  const measuredIn = guardDiameter('measuredIn', ring.measuredIn);
  return { gap: guardLength('gap', ring.gap, 0, measuredIn / 10), measuredIn };
}
