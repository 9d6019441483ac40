import type { Span } from '../judging/index.js';
import { NANOMETRE } from '../judging/internal.js';
import type { Length } from '../quantities/index.js';
import { largestOf, smallestOf } from '../quantities/internal.js';
import { isSwept } from './bore.js';
import { type OddReadingOptions, oddReadings } from './odd-readings.js';
import type { OddReading } from './odd-types.js';
import { type DiameterReading, guardReadings, TENTH } from './readings.js';

/**
 * Bores wear most at one place: at the top of the ring travel, on the thrust side. A spot that is worn further than
 * others by more than this share of the diameter is read again before a bore is condemned for it alone; if it was, it
 * stands (a rule of this library: half of what a bore wears by in all).
 */
const LOCAL_WEAR = 0.0005;
/** What a bore may wear by in all, over its diameter (what TM 10-3930-647-14&P lets a sleeve of another engine have). */
const WEAR = 0.001;

/**
 * Readings of a bore that do not fit the others. Those where the rings run are held against each other; those of the
 * unworn land against the ring travel. */
export function oddInBore(
  readings: readonly DiameterReading[],
  ringTravel: Span<Length> | undefined,
  options: Omit<OddReadingOptions, 'localWear'> = {},
): readonly OddReading[] {
  guardReadings(readings);
  const all = readings.map((reading, index) => ({ reading, index }));
  const swept = all.filter(
    ({ reading }) => ringTravel === undefined || isSwept(reading, ringTravel),
  );
  const size = readings[0]?.diameter ?? 0;
  const [wear, atOnePlace] = [(WEAR * size) as Length, (LOCAL_WEAR * size) as Length];
  const inList = <T extends { readonly index: number }>(one: T): T => ({
    ...one,
    index: swept[one.index]?.index ?? one.index,
  });
  const inTravel = oddReadings(
    swept.map(({ reading }) => reading),
    { ...options, localWear: { min: 0 as Length, max: atOnePlace } },
  ).map(({ together, ...odd }) => ({
    ...inList(odd),
    ...(together && { together: together.map(inList) }),
  }));
  const odd = new Set(
    inTravel.flatMap((one) => [one, ...(one.together ?? [])].map(({ index }) => index)),
  );
  const sound = swept.filter(({ index }) => !odd.has(index));
  const land = all.filter((each) => !swept.includes(each));
  return [...inTravel, ...oddOnLand(land, sound, wear, options)];
}

interface Listed {
  readonly reading: DiameterReading;
  readonly index: number;
}

/**
 * Readings of the unworn land that are further from every one of the ring travel than a bore wears at one place, unless
 * another reading of the land bears them out: a bore may be worn as far all the way down.
 */
function oddOnLand(
  land: readonly Listed[],
  swept: readonly Listed[],
  wear: Length,
  { uncertainty = TENTH }: OddReadingOptions,
): readonly OddReading[] {
  const sizes = swept.map(({ reading }) => reading.diameter);
  const others = { min: smallestOf(sizes), max: largestOf(sizes) };
  const standard = uncertainty / 2;
  return land.flatMap((each): readonly OddReading[] => {
    const { diameter } = each.reading;
    const off = Math.max(others.min - diameter, diameter - others.max);
    const isBorneOut = land.some(
      (other) => other !== each && Math.abs(other.reading.diameter - diameter) <= wear,
    );
    if (off <= wear + NANOMETRE || isBorneOut) return [];
    return [
      {
        ...each,
        expected: diameter < others.min ? others.min : others.max,
        others,
        deviation: off / standard,
        critical: wear / standard,
        against: 'instrument',
      },
    ];
  });
}
