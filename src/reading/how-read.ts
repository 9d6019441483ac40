import type { NamedRule } from '../judging/index.js';
import { readingUncertainty, type Shape, shareOfOvalSeen } from '../measuring/index.js';
import { isOneDiameter } from '../measuring/internal.js';
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
  readonly ovalHidden: readonly HiddenOval[];
}

/** A journal or cylinder that was read at too few angles. */
export interface HiddenOval {
  /** The part it is on; absent on a sheet, where all is of one engine. */
  readonly part?: string;
  /** Its name. */
  readonly place: string;
  /** Whether it was read at one angle only, where no oval is seen. */
  readonly oneAngle?: true;
}

/** Angles that are sure to show less of an oval than this hide most of it: any two do. */
const MOST_OF_OVAL = 0.5;

/** What was read, and with what. */
export interface WasRead {
  /** What was read with each instrument. */
  readonly used: ReadOf<InstrumentName>;
  /** What was read of each kind of part; nothing where it is not said how warm it was. */
  readonly warm: ReadOf<keyof Accuracy['growth']>;
  /** Journals and cylinders, by their names. */
  readonly shapes: readonly (HiddenOval & { readonly angles: Angles })[];
}

/** Lists of what was read, each with what it was read with or of. */
type ReadOf<N> = readonly (readonly [N, readonly unknown[]])[];

/** The names with something in their lists. */
const given = <N>(all: ReadOf<N>): readonly N[] =>
  all.flatMap(([name, read]) => (read.length > 0 ? [name] : []));

type Angles = Parameters<typeof shareOfOvalSeen>[0];

/** The angles that a shape was read at. */
export const anglesOf = ({ lines }: Pick<Shape, 'lines'>): Angles =>
  lines.map(({ angle }) => angle);

/** Tells how well sizes were read. */
export function howWellRead({ shapes, ...read }: WasRead, accuracy: Accuracy): HowRead {
  const [used, warm] = [given(read.used), given(read.warm)];
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
      .map(({ angles, ...place }) => ({
        ...place,
        ...(isOneDiameter(angles) && { oneAngle: true as const }),
      })),
  };
}
