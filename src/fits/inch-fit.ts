import type { Span } from '../judging/index.js';
import { guardFields, guardLength, guardWord, NANOMETRE, showLength } from '../judging/internal.js';
import { inch, type Length, RebuildInputError } from '../quantities/index.js';
import { betweenParts, type FitKind } from './fit-kind.js';
import { INCH_CLASSES, type InchFitClass } from './inch-classes.js';
import { FORCE_RANGES, INCH_HOLES, INCH_RANGES } from './inch-ranges.js';

/** What a hole or a shaft of an inch fit may measure. */
export interface InchLimits {
  /** How far the smallest and the largest size are from the basic size [m]. */
  readonly deviations: Span<Length>;
  /** Smallest and largest size [m]. */
  readonly limits: Span<Length>;
}

/** A hole and the shaft that goes into it, by ANSI B4.1. */
export interface InchFit {
  /** Class of the fit. */
  readonly fitClass: InchFitClass;
  /** Basic size of both [m]. */
  readonly basic: Length;
  /** What the hole may measure. */
  readonly hole: InchLimits;
  /** What the shaft may measure. */
  readonly shaft: InchLimits;
  /** Least and most diametral clearance of parts within their limits; negative is an interference [m]. */
  readonly clearance: Span<Length>;
  /** The same, least and most diametral interference: negative is a clearance [m]. */
  readonly interference: Span<Length>;
  /** What kind of fit it is. */
  readonly kind: FitKind;
  /** Where the table was read, or that it is from memory. */
  readonly source: string;
}

const REQUEST = ['fitClass', 'basic'] as const;
/** Every class of an inch fit. */
export const INCH_FIT_CLASSES = /* @__PURE__ */ Object.keys(INCH_CLASSES) as InchFitClass[];
/** Multiplies first and divides once, so that whole hundredths of a thou are as exact as `thou` makes them. */
const fromHundredths = (count: number) => ((count * 127) / 500_000_000) as Length;

/**
 * An inch fit by ANSI B4.1: limits of hole and shaft, and the diametral clearance they leave. RC classes run or slide, LC,
 * LT and LN classes locate with clearance, either way or tight, FN classes are forced or shrunk. Every hole starts at the
 * basic size. A size on the end of a range belongs to the range that ends there.
 *
 * Sizes go up to 19.69 in; LC5 to LC11 stand here up to 9.85 in only, since no copy of their tables above was at hand. Over
 * 9.85 in another copy of the standard has less clearance for RC2 and RC4. FN3 starts over 0.95 in, LT3 and LT4 over 0.24 in.
 *
 * @param fit - class of the fit, and basic size [m]
 * @returns limits of both, the clearance and the kind of fit [m]
 * @throws {RebuildInputError} when a field is misspelt, the class does not exist, the size is not finite or out of range, or
 * the class is not defined at the size
 * @see Source: ANSI/ASME B4.1-1967 as Machinery's Handbook, 27th and 31st ed., tables 8 to 12, print it; `source` of each
 * result says what is from memory
 * @example
 * ```ts
 * const { clearance, kind } = inchFit({ fitClass: 'FN2', basic: inch(2) });
 * format(clearance.min, thou); // "-2.7 thou"
 * format(clearance.max, thou); // "-0.8 thou"
 * kind; // "interference"
 * ```
 */
export function inchFit(fit: {
  /** Class of the fit: `RC4`. */
  readonly fitClass: InchFitClass;
  /** Basic size of hole and shaft [m]. */
  readonly basic: Length;
}): InchFit {
  guardFields('fit', fit, REQUEST);
  const fitClass = guardWord('fitClass', fit.fitClass, INCH_FIT_CLASSES);
  const isForce = fitClass.startsWith('FN');
  const ends = isForce ? FORCE_RANGES : INCH_RANGES;
  const basic = guardLength('basic', fit.basic, [SMALLEST, inch(19.69)], 'inch(2)');
  const range = ends.findIndex((end) => basic <= inch(end) + NANOMETRE);
  const [grade, uppers, lowers] = INCH_CLASSES[fitClass];
  const [upper, lower] = [uppers[range], lowers[range]];
  if (upper === undefined || lower === undefined || upper === lower) {
    throw notAtThisSize(fitClass, basic, ends, uppers);
  }
  const holes = INCH_HOLES[grade] ?? [];
  const ofHole = holes[isForce ? mainRange(ends[range] as number) : range] as number;
  return {
    fitClass,
    basic,
    hole: limitsAbout(basic, 0, ofHole),
    shaft: limitsAbout(basic, lower, upper),
    ...betweenParts({ lower: 0, upper: ofHole }, { lower, upper }, fromHundredths),
    source: sourceOf(fitClass, range),
  };
}

/** A tenth of a thou: less is no size of a part [m]. */
const SMALLEST = 0.00000254;

const limitsAbout = (basic: Length, lower: number, upper: number): InchLimits => {
  const deviations = {
    min: fromHundredths(lower),
    max: fromHundredths(upper),
  };
  return {
    deviations,
    limits: {
      min: (basic + deviations.min) as Length,
      max: (basic + deviations.max) as Length,
    },
  };
};

/** The range of holes that a finer range of force fits lies in. */
const mainRange = (end: number): number => INCH_RANGES.findIndex((main) => end <= main);

/** The first range that stands here from memory, by class. */
const FROM_MEMORY: Readonly<Partial<Record<InchFitClass, number>>> = {
  LC1: 0,
  LC2: 0,
  LC3: 0,
  LC4: 0,
  LC5: 0,
  LC6: 6,
  LC7: 6,
  LC8: 6,
  LC9: 6,
  LC10: 6,
  LC11: 6,
  LT1: 7,
  LT3: 7,
  LT6: 7,
  RC5: 10,
};

function sourceOf(fitClass: InchFitClass, range: number): string {
  const memorised = (FROM_MEMORY[fitClass] ?? Infinity) <= range || isGapOfForce(fitClass, range);
  return memorised
    ? 'ANSI/ASME B4.1-1967, from memory'
    : "ANSI/ASME B4.1-1967, as Machinery's Handbook and other copies print it";
}

/** Rows of force fits that no copy at hand showed: over 3.94 up to 4.73 in, and FN2 over 15.75 in. */
const isGapOfForce = (fitClass: InchFitClass, range: number): boolean =>
  fitClass.startsWith('FN') && (range === 12 || (fitClass === 'FN2' && range >= 23));

function notAtThisSize(
  fitClass: InchFitClass,
  basic: Length,
  ends: readonly number[],
  uppers: readonly number[],
): RebuildInputError {
  const first = uppers.findIndex((upper) => upper !== 0);
  const from = first > 0 ? (ends[first - 1] as number) : 0;
  const to = ends[uppers.length - 1] as number;
  return new RebuildInputError({
    parameter: 'basic',
    value: basic,
    shown: showLength(basic),
    expected: `a size that ${fitClass} is defined for here, over ${from} in and up to ${to} in`,
    hint: 'Take another class, or the limits of the standard itself.',
  });
}
