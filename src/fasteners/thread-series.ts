import { guardWord } from '../judging/internal.js';
import { inch, type Length, mm } from '../quantities/index.js';
import type { ThreadForm, ThreadSize } from './thread-forms.js';

/** A list of threads that a standard names. */
export type ThreadSeries =
  | 'metric coarse'
  | 'metric fine'
  | 'UNC'
  | 'UNF'
  | 'BSW'
  | 'BSF'
  | 'BSC'
  | 'BA';

/** A thread of a series. */
export interface Thread extends ThreadSize {
  /** As its standard writes it: `3/8-16 UNC`, `M10x1.25`, `2 BA`. */
  readonly designation: string;
  /** The series it belongs to. */
  readonly series: ThreadSeries;
  /** Whether it is tightened the other way; absent on an ordinary thread. */
  readonly leftHand?: boolean;
}

/** The sizes of a series, each as its standard writes it: diameter and pitch, or diameter and threads in an inch. */
interface Listed {
  readonly form: ThreadForm;
  readonly sizes: string;
}

// source: ISO 261 and ISO 262; ASME B1.1; BS 84; BS 811; BS 93. Numbered screws are 0.060 in and 0.013 in a number.
const LISTED: Readonly<Record<ThreadSeries, Listed>> = {
  'metric coarse': {
    form: 'ISO metric',
    sizes:
      '1.6x0.35 2x0.4 2.5x0.45 3x0.5 3.5x0.6 4x0.7 5x0.8 6x1 7x1 8x1.25 10x1.5 12x1.75 14x2 16x2 18x2.5 20x2.5 22x2.5 24x3 27x3 30x3.5 33x3.5 36x4 39x4',
  },
  'metric fine': {
    form: 'ISO metric',
    sizes:
      '4x0.5 5x0.5 6x0.75 8x0.75 8x1 10x0.75 10x1 10x1.25 12x1 12x1.25 12x1.5 14x1 14x1.25 14x1.5 16x1 16x1.5 18x1 18x1.5 18x2 20x1 20x1.5 20x2 22x1 22x1.5 22x2 24x1.5 24x2 27x1.5 27x2 30x1.5 30x2 33x1.5 33x2 36x1.5 36x2 36x3 39x1.5 39x2 39x3',
  },
  UNC: {
    form: 'unified',
    sizes:
      '#1-64 #2-56 #3-48 #4-40 #5-40 #6-32 #8-32 #10-24 #12-24 1/4-20 5/16-18 3/8-16 7/16-14 1/2-13 9/16-12 5/8-11 3/4-10 7/8-9 1-8 1_1/8-7 1_1/4-7 1_3/8-6 1_1/2-6',
  },
  UNF: {
    form: 'unified',
    sizes:
      '#0-80 #1-72 #2-64 #3-56 #4-48 #5-44 #6-40 #8-36 #10-32 #12-28 1/4-28 5/16-24 3/8-24 7/16-20 1/2-20 9/16-18 5/8-18 3/4-16 7/8-14 1-12 1_1/8-12 1_1/4-12 1_3/8-12 1_1/2-12',
  },
  BSW: {
    form: 'Whitworth',
    sizes:
      '1/16-60 3/32-48 1/8-40 5/32-32 3/16-24 7/32-24 1/4-20 5/16-18 3/8-16 7/16-14 1/2-12 9/16-12 5/8-11 11/16-11 3/4-10 7/8-9 1-8 1_1/8-7 1_1/4-7 1_3/8-6 1_1/2-6',
  },
  BSF: {
    form: 'Whitworth',
    sizes:
      '3/16-32 7/32-28 1/4-26 9/32-26 5/16-22 3/8-20 7/16-18 1/2-16 9/16-16 5/8-14 11/16-14 3/4-12 7/8-11 1-10 1_1/8-9 1_1/4-9 1_3/8-8 1_1/2-8',
  },
  // The 26 threads stand first: they are meant where none are said.
  BSC: {
    form: 'BSC',
    sizes:
      '1/8-40 5/32-32 3/16-32 7/32-26 1/4-26 9/32-26 5/16-26 3/8-26 7/16-26 1/2-26 9/16-26 5/8-26 11/16-26 3/4-26 7/16-20 1/2-20 9/16-20 5/8-20 11/16-20 3/4-20',
  },
  BA: {
    form: 'BA',
    sizes:
      '0:6x1 1:5.3x0.9 2:4.7x0.81 3:4.1x0.73 4:3.6x0.66 5:3.2x0.59 6:2.8x0.53 7:2.5x0.48 8:2.2x0.43 9:1.9x0.39 10:1.7x0.35 11:1.5x0.31 12:1.3x0.28',
  },
};

/** Every series. */
export const THREAD_SERIES = [
  'metric coarse',
  'metric fine',
  'UNC',
  'UNF',
  'BSW',
  'BSF',
  'BSC',
  'BA',
] as const satisfies readonly ThreadSeries[];

/**
 * The common threads of a series, by rising size.
 *
 * @param series - the series
 * @returns its threads
 * @throws {RebuildInputError} when the series is unknown
 * @see Source: ISO 261 and ISO 262, ASME B1.1, BS 84, BS 811 and BS 93
 * @example
 * ```ts
 * threadsIn('BSF').map(({ designation }) => designation).slice(2, 5);
 * // ["1/4-26 BSF", "9/32-26 BSF", "5/16-22 BSF"]
 * ```
 */
export function threadsIn(series: ThreadSeries): readonly Thread[] {
  guardWord('series', series, THREAD_SERIES);
  const { form, sizes } = LISTED[series];
  return sizes.split(' ').map((size) => ({
    designation: written(size, series),
    series,
    form,
    ...sizesOf(size),
  }));
}

/** Every thread there is a name for. */
export const everyThread = (): readonly Thread[] => THREAD_SERIES.flatMap(threadsIn);

function written(size: string, series: ThreadSeries): string {
  switch (series) {
    case 'metric coarse':
      return `M${size.split('x')[0]}`;
    case 'metric fine':
      return `M${size}`;
    case 'BA':
      return `${size.split(':')[0]} BA`;
    default:
      return `${size.replace('_', ' ')} ${series}`;
  }
}

function sizesOf(size: string): Pick<Thread, 'diameter' | 'pitch'> {
  if (size.includes('x')) {
    const [diameter = '', pitch] = size.replace(/^\d+:/, '').split('x');
    return { diameter: mm(Number(diameter)), pitch: mm(Number(pitch)) };
  }
  const [diameter = '', threads] = size.split('-');
  return { diameter: inches(diameter), pitch: inch(1 / Number(threads)) };
}

/** `#10` is 0.190 in, `1_1/8` 1.125 in. */
function inches(text: string): Length {
  if (text.startsWith('#')) return inch((60 + 13 * Number(text.slice(1))) / 1000);
  const parts = text.split('_').map((part) => {
    const [over = '', under = '1'] = part.split('/');
    return Number(over) / Number(under);
  });
  return inch(parts.reduce((sum, part) => sum + part));
}
