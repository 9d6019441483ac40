import type { Span } from '../judging/index.js';
import type { Length } from '../quantities/index.js';
import { type ReadClass, readOne } from './designation.js';
import { GRADE_NAMES, placeOfGrade, type ToleranceGrade } from './iso-grades.js';

/** What a hole or a shaft of a class may measure. */
export interface LimitsOfSize {
  /** Basic size [m]. */
  readonly basic: Length;
  /** Whether the class is of a hole or of a shaft. */
  readonly part: 'hole' | 'shaft';
  /** Letter and grade, as they were written: `H7`. */
  readonly toleranceClass: string;
  /** The standard tolerance grade. */
  readonly grade: ToleranceGrade;
  /** Largest less smallest size [m]. */
  readonly tolerance: Length;
  /** How far the smallest and the largest size are from the basic size; below it is negative [m]. */
  readonly deviations: Span<Length>;
  /** Smallest and largest size [m]. */
  readonly limits: Span<Length>;
}

/**
 * What a part may measure by ISO 286: `40H7` is a hole of 40.000 to 40.025 mm, `40g6` a shaft of 39.975 to 39.991 mm.
 * Holes have capitals, shafts small letters. Basic sizes go up to 500 mm, grades from IT01 to IT18, letters from a to zc
 * and A to ZC. A size on the end of a range belongs to the range that ends there: 30 to the one over 18 up to 30.
 *
 * Holes K to N up to IT8 and P to ZC up to IT7 lie higher than the mirrored shaft by Δ, the tolerance less that of the
 * next finer grade. They start at IT3, since the standard gives no Δ below. M6 over 250 up to 315 mm is an exception. js
 * and JS lie evenly about the basic size, not rounded to whole micrometres as older editions allow for js7 to js11.
 *
 * Any letter is taken with any grade that the rules of part 1 give it; part 2 prints tables for fewer of them.
 *
 * @param designation - basic size in millimetres, letter and grade, as on a drawing: `40H7`, `12.5 js9`
 * @returns limits of size, deviations and tolerance [m]
 * @throws {RebuildInputError} when the designation is none, its size is not above 0 and up to 500 mm, its letter does not
 * exist, or its class is not defined at the size
 * @see Source: ISO 286-1:2010, tables 1 to 5, as Polish users copied PN-EN ISO 286-1:2011 out; the copies were held
 * against the formulae of the standard and against each other
 * @example
 * ```ts
 * const { limits, deviations, grade } = limitsOfSize('40H7');
 * format(limits.max, mm); // "40.025 mm"
 * format(deviations.max, micrometre); // "25.0 µm"
 * grade; // "IT7"
 * ```
 */
export function limitsOfSize(designation: string): LimitsOfSize {
  return limitsFrom(readOne(designation));
}

/** The limits of a class that was read. */
export function limitsFrom({ table, millimetres, upper, tolerance }: ReadClass): LimitsOfSize {
  const lower = upper - tolerance;
  const micrometres = millimetres * 1000;
  return {
    basic: (millimetres / 1000) as Length,
    part: table.isHole ? 'hole' : 'shaft',
    toleranceClass: table.name,
    grade: GRADE_NAMES[placeOfGrade(table.grade)] as ToleranceGrade,
    tolerance: (tolerance / 1e6) as Length,
    deviations: { min: (lower / 1e6) as Length, max: (upper / 1e6) as Length },
    limits: {
      min: ((micrometres + lower) / 1e6) as Length,
      max: ((micrometres + upper) / 1e6) as Length,
    },
  };
}
