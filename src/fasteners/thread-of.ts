import { guardText } from '../judging/internal.js';
import { inch, type Length, mm, RebuildInputError } from '../quantities/index.js';
import { byLikeness } from './nearest-threads.js';
import { everyThread, type Thread, type ThreadSeries } from './thread-series.js';

/** What a designation says; a pitch that it leaves out is that of the series. */
interface Said {
  /** Diameter as it is written: `3/8`, `#10`, `1_1/8`; in a metric one, in millimetres. */
  readonly size: string;
  /** Threads in an inch, or the pitch in millimetres. */
  readonly pitch?: string;
  /** The series it names; every metric one, or every one where none is named. */
  readonly series: readonly ThreadSeries[];
}

/** Names that a series went by. The older American ones have the same sizes and nearly the same form. */
const SERIES_NAMES: Readonly<Record<string, ThreadSeries>> = {
  UNC: 'UNC',
  NC: 'UNC',
  UNF: 'UNF',
  NF: 'UNF',
  BSW: 'BSW',
  W: 'BSW',
  WHIT: 'BSW',
  WHITWORTH: 'BSW',
  BSF: 'BSF',
  BSC: 'BSC',
  CEI: 'BSC',
  BA: 'BA',
};

const METRIC: readonly ThreadSeries[] = ['metric coarse', 'metric fine'];
const METRIC_NAME = /^M(\d+(?:\.\d+)?)(?:X(\d+(?:\.\d+)?))?(?:-\d?[A-Z\d]*)?$/;
const INCH_NAME =
  /^(?:NO\.? ?)?(#?\d+(?:[ -]\d+\/\d+)?|\d+\/\d+)(?:[- ](\d+))?(?: ?([A-Z]+)(?:-?\d[AB])?)?$/;
const BA_NAME = /^(?:NO\.? ?)?(\d{1,2}) ?BA$|^BA ?(\d{1,2})$/;

/**
 * Looks up a thread by the name that its standard gives it: `3/8-16 UNC`, `3/8 BSW`, `1/4-26 BSF`, `M10`, `M10x1.25`,
 * `10-32 UNF`, `2 BA`, `3/8-26 BSC`. A class of tolerance (`-2A`, `-6g`) may follow and is passed over; `LH` at the end
 * makes it left-hand. Where the pitch is left out it is that of the series.
 *
 * The name alone never tells 60° from 55°: 3/8-16 is UNC and BSW, and a nut of the one goes on the other and strips.
 *
 * @param designation - the name, in the standard's own words
 * @returns form, diameter and pitch of the thread, with its name and series
 * @throws {RebuildInputError} when the text is not the name of a thread, it is in no series, or it is in more than one
 * @see Source: ISO 261 and ISO 262, ASME B1.1, BS 84, BS 811 and BS 93
 * @example
 * ```ts
 * const { form, pitch } = threadOf('3/8 BSW');
 * form; // "Whitworth"
 * format(pitch, inch); // "0.0625 in"
 * ```
 */
export function threadOf(designation: string): Thread {
  const text = guardText('designation', designation)
    .toUpperCase()
    .replace(/["”″]|\bIN(?:CH)?\b/g, '')
    .replace(/[×*]/g, 'X')
    .replace(/[–—]/g, '-')
    .replace(/ *([-X/]) */g, '$1')
    .replace(/\s+/g, ' ')
    .trim();
  const plain = text.replace(/[- ]?LH$/, '');
  const said = readName(plain);
  if (said === undefined) throw noName(designation);
  const found = meantBy(said);
  // Where no pitch is said, the first of the series is meant: coarse before fine, 26 threads before 20.
  const [meant] = found;
  if (meant === undefined) throw inNoSeries(designation, said);
  if (found.some(({ form }) => form !== meant.form)) throw ofMany(designation, found);
  return { ...meant, ...(plain !== text && { leftHand: true }) };
}

function readName(text: string): Said | undefined {
  const ba = BA_NAME.exec(text);
  if (ba) return { size: ba[1] ?? ba[2] ?? '', series: ['BA'] };
  const metric = METRIC_NAME.exec(text);
  if (metric && Number(metric[1]) > 0)
    return { size: String(Number(metric[1])), ...pitchOf(metric[2]), series: METRIC };
  const inches = INCH_NAME.exec(text);
  const [, size = '', threads, name] = inches ?? [];
  const series = name === undefined ? undefined : SERIES_NAMES[name];
  if (!inches || (name !== undefined && series === undefined)) return undefined;
  if (series === undefined && threads === undefined) return undefined;
  const named = size.replace(/(\d)[ -](\d)/, '$1_$2');
  // 0/2 and 2/0 are no sizes.
  if (!(inchesOf(named) > 0 && inchesOf(named) < Infinity)) return undefined;
  return {
    size: named,
    ...pitchOf(threads),
    series: series === undefined ? ['UNC', 'UNF', 'BSW', 'BSF', 'BSC'] : [series],
  };
}

const pitchOf = (text: string | undefined) =>
  text === undefined ? {} : { pitch: String(Number(text)) };

/** The threads that a name may mean. A numbered screw is often written without its sign: 10-32. */
function meantBy(said: Said): readonly Thread[] {
  const all = everyThread();
  const exactly = all.filter((thread) => isMeant(thread, said));
  if (exactly.length > 0) return exactly;
  return all.filter((thread) => isMeant(thread, { ...said, size: `#${said.size}` }));
}

function isMeant({ designation, series, pitch }: Thread, said: Said): boolean {
  const [size, threads] = listedAs(designation);
  if (!said.series.includes(series) || size !== said.size) return false;
  if (said.pitch === undefined) return true;
  return METRIC.includes(series)
    ? Math.abs(pitch - mm(Number(said.pitch))) < 1e-9
    : threads === said.pitch;
}

/** `1 1/8-7 UNC` is `1_1/8` and 7, `M10x1.25` is 10. */
const listedAs = (designation: string): readonly string[] =>
  designation
    .replace(/^M| (?:BA|UNC|UNF|BSW|BSF|BSC)$/g, '')
    .replace(' ', '_')
    .split(/[-x]/);

function noName(designation: string): RebuildInputError {
  return new RebuildInputError({
    parameter: 'designation',
    value: designation,
    expected: 'the name of a thread, e.g. 3/8-16 UNC, 3/8 BSW, M10 or 2 BA',
    hint: 'Name its series, or give a thread by form, diameter and pitch.',
  });
}

function inNoSeries(designation: string, said: Said): RebuildInputError {
  const near = byLikeness(
    guessed(said),
    everyThread().filter(({ series }) => isKin(series, said)),
  );
  const names = near.slice(0, 3).map((thread) => thread.designation);
  return new RebuildInputError({
    parameter: 'designation',
    value: designation,
    expected: 'a thread of a common series',
    hint: `The nearest are ${names.join(', ')}. A special thread is given by form, diameter and pitch.`,
  });
}

function ofMany(designation: string, found: readonly Thread[]): RebuildInputError {
  const names = found.map((thread) => thread.designation);
  return new RebuildInputError({
    parameter: 'designation',
    value: designation,
    expected: 'a thread of one series',
    hint: `It may be ${names.join(' or ')}: look at the angle of its flanks, and name the series.`,
  });
}

const BRITISH: readonly ThreadSeries[] = ['BSW', 'BSF', 'BSC'];
const UNIFIED: readonly ThreadSeries[] = ['UNC', 'UNF'];

/** Whether a series is of the same country's threads. */
const isKin = (series: ThreadSeries, said: Said): boolean =>
  [BRITISH, UNIFIED, METRIC].some(
    (kin) => kin.includes(series) && said.series.some((one) => kin.includes(one)),
  ) || said.series.includes(series);

/** About what was meant, to find what is near it. */
function guessed({ size, pitch, series }: Said): { diameter: Length; pitch?: Length } {
  if (series.includes('BA')) return { diameter: mm(6 * 0.9 ** (1.2 * Number(size))) };
  const isMetric = series.some((one) => METRIC.includes(one));
  const given = Number(pitch ?? 0);
  if (isMetric) return { diameter: mm(Number(size)), ...(given > 0 && { pitch: mm(given) }) };
  return { diameter: inch(inchesOf(size)), ...(given > 0 && { pitch: inch(1 / given) }) };
}

/** The inches of a size; a whole number above 2 is that of a numbered screw, which is often written without its sign. */
function inchesOf(size: string): number {
  const number = Number(size.replace('#', ''));
  if (size.startsWith('#') || number === 0 || number > 2) return 0.06 + 0.013 * number;
  return size
    .split('_')
    .map((part) => part.split('/').map(Number))
    .reduce((sum, [over = 0, under = 1]) => sum + over / under, 0);
}
