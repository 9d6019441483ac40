import type { Span } from '../judging/index.js';
import { diametralClearance, guardFields, guardSpan } from '../judging/internal.js';
import { fitByLeastSquares, studentQuantileOfTail } from '../numerics/index.js';
import { type Length, RebuildInputError } from '../quantities/index.js';
import { largestOf, smallestOf } from '../quantities/internal.js';
import { deletedResiduals, ENOUGH_LEFT } from './deleted-residuals.js';
import { statedUncertainty } from './domains.js';
import { isConfirmed, isSeldom, oddInForm, type Place } from './odd-form.js';
import {
  excessOf,
  FALSE_ALARM,
  MOST_TYPED,
  meanOfPlace,
  oddRepeats,
  placesOf,
} from './odd-repeats.js';
import type { OddReading } from './odd-types.js';
import { type DiameterReading, groupBy, guardReadings, TENTH } from './readings.js';

/** What may be told to the search for readings that do not fit. */
export interface OddReadingOptions {
  /** Expanded uncertainty of one reading, about 95 %; by default 0.0001 in, a tenth [m]. */
  readonly uncertainty?: Length;
  /** How far a reading may be from the others by wear at its place alone, larger ones positive; by default not at all [m]. */
  readonly localWear?: Span<Length>;
  /** How often a set of sound readings may be called odd: between 0 and 0.5, by default 0.01. */
  readonly falseAlarm?: number;
}

const OPTIONS = ['uncertainty', 'localWear', 'falseAlarm'] as const;

/**
 * Readings of a round part that do not fit the others: a digit has slipped, the thimble was read a turn off, or there is
 * a flaw at that place. Nothing is corrected: read each again before any verdict rests on it.
 *
 * The form of the part is taken into account: a part may be oval and tapered, so that every station and every
 * angle has a deviation of its own. What is left of a reading after a least-squares fit of these, without the
 * reading itself, is held against its standard deviation: the deleted residual. A reading is odd
 *
 * - against the instrument, if that is past the normal quantile and the reading lies outside of all others by more
 *   than they differ among themselves, or
 * - against the scatter, if it is past the quantile of Student's t and at least three readings are left over.
 *
 * Both quantiles are those of the false-alarm rate, shared out among all readings and both tests (Bonferroni). The rate
 * holds for parts that have the same oval all along; of parts that wear at one place alone, say how far.
 *
 * Often the form does not tell which one is wrong: of two stations by two angles, each may be it. Readings that
 * explain the misfit as well are named `together`, except those that leave a part that is seldom seen: one that differs
 * by more than 0.0025 of its diameter. The oddest is taken out, with all that are named together with it, and the others
 * are tested again, as long as more than three places are left. Two wrong readings of one part can hide each other.
 *
 * Readings of one place are held against each other first: of three or more the one that is off is named, of two both
 * are. A place whose readings agree stands with their mean. It is never named, and where it does not fit it is left out
 * of the test of the others. Readings of a station that is out of round by more than 0.005 of the diameter are all named
 * together: no part worn so far holds together (common practice).
 *
 * @param readings - diameters of one part, with their places; repeats are welcome, up to 300 are tested
 * @param options - how well one reading is measured, and how often sound readings may be called odd
 * @returns the readings that do not fit, the oddest first; an empty list says that none was found, not that all are right
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, a span is reversed, or a
 * reading stands out against the others by more than any part wears
 * @see Source: deleted residuals, from memory of Cook and Weisberg, Residuals and Influence in Regression (1982), section
 * 2.2; critical values, NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.17; that a reading must lie outside of all
 * others by their own range, and what form is seldom seen, are rules of this library
 * @example
 * ```ts
 * const [odd] = oddReadings([
 *   { station: mm(6), angle: degree(0), diameter: mm(31.99) },
 *   { station: mm(6), angle: degree(90), diameter: mm(31.98) },
 *   { station: mm(30), angle: degree(0), diameter: mm(31.59) },
 *   { station: mm(30), angle: degree(90), diameter: mm(31.98) },
 * ]);
 * odd && format(odd.reading.diameter, mm); // "31.590 mm"
 * odd && format(odd.expected, mm); // "31.990 mm"
 * ```
 */
export function oddReadings(
  readings: readonly DiameterReading[],
  options: OddReadingOptions = {},
): readonly OddReading[] {
  guardFields('options', options, OPTIONS);
  const { uncertainty = TENTH, localWear = 0 as Length, falseAlarm = FALSE_ALARM } = options;
  const expanded = statedUncertainty('options.uncertainty', uncertainty);
  const wear = guardSpan('options.localWear', localWear, diametralClearance);
  const rate = guardRate(falseAlarm);
  const placed = guardReadings(readings);
  if (placed.length > MOST_TYPED) return [];
  const instrument = expanded / 2;
  const listed = placed.map((reading, index) => ({ ...reading, index }));
  const { odd, left } = oddRepeats(listed, instrument, rate);
  const places = placesOf(left).map((group): Place => {
    const { station, angle } = group[0] as DiameterReading;
    return { station, angle, diameter: meanOfPlace(group), indices: group.map((one) => one.index) };
  });
  const found = [...odd];
  const leftOut = new Set<Place>();
  let tested = places;
  while (tested.length > 3) {
    const misfits = oddest(tested, instrument, wear, rate);
    if (misfits === undefined) break;
    const named = misfits.filter(({ place }) => !isConfirmed(place));
    found.push(...asOne(named));
    for (const { place } of misfits) leftOut.add(place);
    tested = places.filter((place) => !leftOut.has(place));
  }
  found.push(...oddInForm(tested, instrument));
  const written = (index: number) => ({ index, reading: readings[index] as DiameterReading });
  return found.map(({ together, ...one }) => ({
    ...one,
    ...written(one.index),
    ...(together && { together: together.map((each) => ({ ...each, ...written(each.index) })) }),
  }));
}

/** A place that does not fit, or may be the one. */
interface Misfit extends Omit<OddReading, 'index' | 'reading' | 'together'> {
  readonly place: Place;
  /** By how much the sum of squares falls without it [m²]. */
  readonly explains: number;
  /** Reading less what the others expect [m]. */
  readonly off: number;
  /** The standard deviation it was held against [m]. */
  readonly error: number;
}

/** The first of some places, with the others beside it. */
function asOne(misfits: readonly Misfit[]): readonly OddReading[] {
  const [first, ...together] = misfits.map(({ place, expected, ...test }) => ({
    index: place.indices[0] as number,
    reading: place,
    expected,
    test,
  }));
  if (first === undefined) return [];
  const { test, ...suspect } = first;
  const { others, deviation, critical, against } = test;
  const rest = together.map(({ index, reading, expected }) => ({ index, reading, expected }));
  const one = { ...suspect, others, deviation, critical, against };
  return [rest.length > 0 ? { ...one, together: rest } : one];
}

/** The place that exceeds its critical deviation by most, if any does, and all that may be the wrong one as well. */
function oddest(
  left: readonly Place[],
  instrument: number,
  wear: Span<Length>,
  rate: number,
): readonly Misfit[] | undefined {
  const [first] = left;
  const { all, degrees } = deletedResiduals(
    fitByLeastSquares(
      [left.map(() => 1), ...columnsOf(left, 'station'), ...columnsOf(left, 'angle')],
      left.map(({ diameter }) => diameter - (first?.diameter ?? 0)),
    ),
  );
  // Two tests of each reading, either way.
  const share = rate / (4 * left.length);
  const byNormal = studentQuantileOfTail(share, Infinity);
  const byStudent = degrees < ENOUGH_LEFT ? Infinity : studentQuantileOfTail(share, degrees);
  const judged = left.flatMap((place, i): readonly (Misfit & { readonly isOdd: boolean })[] => {
    const deviation = all[i];
    if (deviation === undefined) return [];
    const { off, spread, scatter } = deviation;
    if (off >= wear.min && off <= wear.max) return [];
    const others = othersOf(left, place);
    const expected = (place.diameter - off) as Length;
    const outside = Math.max(place.diameter - others.max, others.min - place.diameter);
    const explains = (off / spread) ** 2;
    const held = (error: number) => ({ error, deviation: Math.abs(off) / (error * spread) });
    const byInstrument = held(instrument);
    const isApart = outside > others.max - others.min && byInstrument.deviation > byNormal;
    const against = isApart
      ? ({ ...byInstrument, critical: byNormal, against: 'instrument' } as const)
      : ({
          ...held(Math.max(scatter, instrument)),
          critical: byStudent,
          against: 'scatter',
        } as const);
    const isOdd = against.deviation > against.critical;
    return [{ place, expected, others, off, explains, ...against, isOdd }];
  });
  const top = judged.filter(({ isOdd }) => isOdd).sort((a, b) => excessOf(b) - excessOf(a))[0];
  if (top === undefined) return undefined;
  const least = top.explains - (top.critical * top.error) ** 2;
  const asWell = judged.filter(
    ({ place, explains, expected }) =>
      place !== top.place &&
      explains >= least - 1e-9 * top.explains &&
      !isSeldom(left, place, expected),
  );
  return [top, ...asWell];
}

/** A column for each place along or around the part: 1 for the readings there. */
function columnsOf(readings: readonly DiameterReading[], key: 'station' | 'angle') {
  return groupBy(readings, key).map(({ group }) =>
    readings.map((reading) => (group.includes(reading) ? 1 : 0)),
  );
}

function othersOf(left: readonly Place[], without: Place): Span<Length> {
  const diameters = left.flatMap((each) => (each === without ? [] : [each.diameter]));
  return { min: smallestOf(diameters), max: largestOf(diameters) };
}

function guardRate(falseAlarm: number): number {
  if (typeof falseAlarm === 'number' && falseAlarm > 0 && falseAlarm < 0.5) return falseAlarm;
  throw new RebuildInputError({
    parameter: 'options.falseAlarm',
    value: falseAlarm,
    expected: 'a share between 0 and 0.5',
    hint: 'Give 0.01 for one false alarm in a hundred parts.',
  });
}
