import type { Span } from '../judging/index.js';
import {
  type DiameterReading,
  type Form,
  journalShape,
  type StationShape,
} from '../measuring/index.js';
import type { Length } from '../quantities/index.js';
import { smallestOf } from '../quantities/internal.js';

/** How a guide is worn. */
export interface GuideWear {
  /** Smallest and largest diameter read: the guide that `guideClearance` takes [m]. */
  readonly bore: Span<Length>;
  /** Worst two-point out-of-round of any height [m]. */
  readonly outOfRound: Length;
  /** How much wider the mean bore is at its first station than where it is least [m]. */
  readonly bellMouthFirst: Length;
  /** The same at its last station [m]. */
  readonly bellMouthLast: Length;
  /** How the mean bore runs along the guide: an hourglass is worn at both its ends. */
  readonly form: Form;
}

/**
 * How a worn guide runs, from readings with a small-hole gauge at several heights and angles. Guides wear
 * bell-mouthed, most at the end by the head, and oval the way the rocker or the tappet pushes.
 *
 *     bellMouthFirst = meanFirst - meanLeast
 *     bellMouthLast = meanLast - meanLeast
 *
 * Read both ends and the middle, along the push and across it. With two stations the bell-mouth of one end is the taper,
 * and that of the other is nothing. What is read at one height and one angle alone says nothing of the rest.
 *
 * @param readings - diameters on at least two stations along the guide, at least two angles at each
 * @returns smallest and largest bore, out-of-round, bell-mouth of both ends and form [m]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, a reading stands out
 * against the others, a station has one angle only, or an angle has one station only
 * @see Source: definitions of the trade
 * @example
 * ```ts
 * const at = (height: number, along: number, across: number) => [
 *   { station: inch(height), angle: degree(0), diameter: inch(along) },
 *   { station: inch(height), angle: degree(90), diameter: inch(across) },
 * ];
 * const wear = guideWear([
 *   ...at(0.1, 0.3165, 0.3145), ...at(1, 0.3135, 0.3131), ...at(1.9, 0.3147, 0.3139),
 * ]);
 * format(wear.bore.max, inch); // "0.3165 in"
 * format(wear.bellMouthFirst, thou); // "2.2 thou"
 * wear.form; // "hourglass"
 * ```
 */
export function guideWear(readings: readonly DiameterReading[]): GuideWear {
  const { smallest, largest, outOfRound, stations, form } = journalShape(readings);
  const least = smallestOf(stations.map(({ mean }) => mean));
  const widerBy = (at: StationShape | undefined) => ((at?.mean ?? least) - least) as Length;
  return {
    bore: { min: smallest, max: largest },
    outOfRound,
    bellMouthFirst: widerBy(stations[0]),
    bellMouthLast: widerBy(stations.at(-1)),
    form,
  };
}
