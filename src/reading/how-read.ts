import type { NamedRule } from '../judging/index.js';
import { readingUncertainty, type Shape, shareOfOvalSeen } from '../measuring/index.js';
import type { Length } from '../quantities/index.js';
import type { Accuracy } from './accuracy.js';
import { INSTRUMENTS, type InstrumentName } from './bench.js';

/** How well the sizes were read. */
export interface HowRead {
  /** The instruments that are described, with how far one reading of each may be off, about 95 times in 100. */
  readonly within: readonly {
    /** Which. */
    readonly instrument: InstrumentName;
    /** How far [m]. */
    readonly expanded: Length;
  }[];
  /** The instruments that something was read with and nobody described: their readings count as exact. */
  readonly undescribed: readonly InstrumentName[];
  /** The rule that verdicts go by, if one is named. */
  readonly rule?: NamedRule;
  /** What was read warm and is not said what it is made of: its size at 20 °C is known less well. */
  readonly notAt20C: readonly (keyof Accuracy['growth'])[];
  /** Journals and cylinders of which the angles they were read at may hide most of an oval. */
  readonly ovalHidden: readonly string[];
}

/** Angles that are sure to show less of an oval than this hide most of it: any two do. */
const MOST_OF_OVAL = 0.5;

/** What was read, and with what. */
export interface WasRead {
  readonly used: readonly InstrumentName[];
  /** What was read warm, if anything was. */
  readonly warm: readonly (keyof Accuracy['growth'])[];
  /** Journals and cylinders, by their names. */
  readonly shapes: readonly { readonly name: string; readonly angles: Angles }[];
}

type Angles = Parameters<typeof shareOfOvalSeen>[0];

/** The angles that a shape was read at. */
export const anglesOf = ({ lines }: Pick<Shape, 'lines'>): Angles =>
  lines.map(({ angle }) => angle);

/** Tells how well sizes were read. */
export function howWellRead({ used, warm, shapes }: WasRead, accuracy: Accuracy): HowRead {
  return {
    within: INSTRUMENTS.flatMap((instrument) => {
      const budget = accuracy.reads[instrument];
      return budget && used.includes(instrument)
        ? [{ instrument, expanded: readingUncertainty(budget).size }]
        : [];
    }),
    undescribed: INSTRUMENTS.filter((each) => used.includes(each) && !accuracy.reads[each]),
    ...(accuracy.rule !== undefined && { rule: accuracy.rule }),
    notAt20C: warm.filter((part) => accuracy.growth[part]?.isNamed === false),
    ovalHidden: shapes
      .filter(({ angles }) => shareOfOvalSeen(angles) < MOST_OF_OVAL)
      .map(({ name }) => name),
  };
}
