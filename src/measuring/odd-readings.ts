import type { Span } from '../judging/index.js';
import { diametralClearance, guardFields, guardSpan } from '../judging/internal.js';
import { fitByLeastSquares, studentQuantileOfTail } from '../numerics/index.js';
import { type Length, RebuildInputError } from '../quantities/index.js';
import { largestOf, smallestOf } from '../quantities/internal.js';
import { statedUncertainty } from './domains.js';
import { type DiameterReading, groupBy, guardReadings } from './readings.js';
import { TENTH } from './shape.js';

/** What may be told to the search for readings that do not fit. */
export interface OddReadingOptions {
  /** Expanded uncertainty of one reading, about 95 %; by default 0.0001 in, a tenth [m]. */
  readonly uncertainty?: Length;
  /** How far a reading may be from the others by wear at its place alone, larger ones positive; by default not at all [m]. */
  readonly localWear?: Span<Length>;
  /** How often a set of sound readings may be called odd: between 0 and 0.5, by default 0.01. */
  readonly falseAlarm?: number;
}

/** A reading that does not fit the others. */
export interface OddReading {
  /** Its place in the list, from 0 [-]. */
  readonly index: number;
  /** The reading as it was written down. */
  readonly reading: DiameterReading;
  /** What the others say that it should be about [m]. */
  readonly expected: Length;
  /** The least and the largest of the others [m]. */
  readonly others: Span<Length>;
  /** How far it is from that in standard deviations, as the test counts them [-]. */
  readonly deviation: number;
  /** With more than so many it is odd [-]. */
  readonly critical: number;
  /** What it was held against: the error of the instrument, or the scatter of the other readings. */
  readonly against: 'instrument' | 'scatter';
}

const OPTIONS = ['uncertainty', 'localWear', 'falseAlarm'] as const;

/** No more are typed by hand; more are a trace, of which one reading decides nothing. */
const MOST_READINGS = 300;
/** Other readings that must be left over by the fit before their scatter tells anything. */
const ENOUGH_LEFT = 3;

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
 * holds for parts that have the same oval all along; of parts that wear at one place alone, say how far. The oddest is
 * taken out, and the others are tested again without it, as long as more than three are left. Two wrong readings of one
 * part can hide each other. A reading that is right although it is named is borne out by a second one at the same place.
 *
 * @param readings - diameters of one part, with their places; repeats are welcome, up to 300 are tested
 * @param options - how well one reading is measured, and how often sound readings may be called odd
 * @returns the readings that do not fit, the oddest first; an empty list says that none was found, not that all are right
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, a span is reversed, or a
 * reading stands out against the others by more than any part wears
 * @see Source: deleted residuals, from memory of Cook and Weisberg, Residuals and Influence in Regression (1982), section
 * 2.2; critical values, NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.17; that a reading must lie outside of all
 * others by their own range is a rule of this library
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
  const { uncertainty = TENTH, localWear = 0 as Length, falseAlarm = 0.01 } = options;
  const expanded = statedUncertainty('options.uncertainty', uncertainty);
  const wear = guardSpan('options.localWear', localWear, diametralClearance);
  const rate = guardRate(falseAlarm);
  const placed = guardReadings(readings);
  if (placed.length > MOST_READINGS) return [];
  const found: OddReading[] = [];
  let left = placed.map((reading, index) => ({ reading, index }));
  while (left.length > 3) {
    const odd = oddest(left, expanded / 2, wear, rate);
    if (odd === undefined) break;
    found.push({ ...odd, reading: readings[odd.index] as DiameterReading });
    left = left.filter(({ index }) => index !== odd.index);
  }
  return found;
}

interface Listed {
  readonly reading: DiameterReading;
  readonly index: number;
}

/** The reading that exceeds its critical deviation by most, if any does. */
function oddest(
  left: readonly Listed[],
  instrument: number,
  wear: Span<Length>,
  rate: number,
): OddReading | undefined {
  const deviations = deviationsOf(left.map(({ reading }) => reading));
  // Two tests of each reading, either way.
  const share = rate / (4 * left.length);
  const byNormal = studentQuantileOfTail(share, Infinity);
  const degrees = deviations.degrees;
  const byStudent = degrees < ENOUGH_LEFT ? undefined : studentQuantileOfTail(share, degrees);
  const odd = left.flatMap((each, i): readonly OddReading[] => {
    const deviation = deviations.all[i];
    if (deviation === undefined) return [];
    const { off, spread, scatter } = deviation;
    if (off >= wear.min && off <= wear.max) return [];
    const others = othersOf(left, each);
    const { diameter } = each.reading;
    const outside = Math.max(diameter - others.max, others.min - diameter);
    const result = { ...each, expected: (diameter - off) as Length, others };
    const byInstrument = {
      ...result,
      deviation: Math.abs(off) / (instrument * spread),
      critical: byNormal,
      against: 'instrument',
    } as const;
    const isApart =
      outside > others.max - others.min && byInstrument.deviation > byInstrument.critical;
    if (isApart) return [byInstrument];
    if (byStudent === undefined) return [];
    const byScatter = {
      ...result,
      deviation: Math.abs(off) / (Math.max(scatter, instrument) * spread),
      critical: byStudent,
      against: 'scatter',
    } as const;
    return byScatter.deviation > byScatter.critical ? [byScatter] : [];
  });
  const excess = ({ deviation, critical }: OddReading) => deviation / critical;
  return odd.sort((a, b) => excess(b) - excess(a))[0];
}

/** How far a reading is from what the others say, and what that is worth. */
interface Deviation {
  /** Reading less what a fit without it expects [m]. */
  readonly off: number;
  /** Standard deviation of that for a standard deviation of 1 of every reading. */
  readonly spread: number;
  /** Standard deviation of the other readings about their fit [m]. */
  readonly scatter: number;
}

/** The deviations of all readings of a part. */
interface Deviations {
  /** Of each; undefined where the others do not tell what it should be. */
  readonly all: readonly (Deviation | undefined)[];
  /** Degrees of freedom of their scatter. */
  readonly degrees: number;
}

/** Every reading against a fit without it. */
function deviationsOf(readings: readonly DiameterReading[]): Deviations {
  const [first] = readings;
  const above = readings.map(({ diameter }) => diameter - (first?.diameter ?? 0));
  const { residuals, leverages, rank } = fitByLeastSquares(
    [readings.map(() => 1), ...columnsOf(readings, 'station'), ...columnsOf(readings, 'angle')],
    above,
  );
  const squares = residuals.reduce((sum, residual) => sum + residual * residual, 0);
  const degrees = readings.length - rank - 1;
  const all = residuals.map((residual, i) => {
    const free = 1 - (leverages[i] as number);
    if (free < 1e-9) return undefined;
    const others = Math.max(0, squares - (residual * residual) / free);
    return {
      off: residual / free,
      spread: Math.sqrt(1 / free),
      scatter: degrees > 0 ? Math.sqrt(others / degrees) : 0,
    };
  });
  return { all, degrees };
}

/** A column for each place along or around the part: 1 for the readings there. */
function columnsOf(readings: readonly DiameterReading[], key: 'station' | 'angle') {
  return groupBy(readings, key).map(({ group }) =>
    readings.map((reading) => (group.includes(reading) ? 1 : 0)),
  );
}

function othersOf(left: readonly Listed[], without: Listed): Span<Length> {
  const diameters = left.flatMap((each) => (each === without ? [] : [each.reading.diameter]));
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
