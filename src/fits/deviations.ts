import {
  ABOVE_BY_RANGE,
  ABOVE_BY_STEP,
  BELOW_BY_RANGE,
  BELOW_BY_STEP,
  HOLE_J,
  RANGE_OF_STEP,
  SHAFT_J,
} from './iso-deviations.js';
import { placeOfGrade, TOLERANCES } from './iso-grades.js';

/** A letter and a grade at a basic size, as the tables are entered with it. */
export interface ClassAtSize {
  /** The letter in small, whether of a hole or a shaft. */
  readonly letter: string;
  readonly isHole: boolean;
  /** Number of the grade: -1 of IT01, 0 of IT0. */
  readonly grade: number;
  /** Place of the basic size among the steps. */
  readonly step: number;
}

/** The tolerance of a grade in a range of basic sizes [µm]. */
export const toleranceOf = (grade: number, range: number): number =>
  TOLERANCES[range]?.[placeOfGrade(grade)] as number;

/**
 * The upper deviation of a class at a size [µm]; the lower one is less by the tolerance. Undefined where ISO 286-1 has
 * no such class.
 */
export function upperDeviation(at: ClassAtSize): number | undefined {
  const range = RANGE_OF_STEP[at.step] as number;
  const tolerance = toleranceOf(at.grade, range);
  if (at.letter === 'js') return tolerance / 2;
  const below = BELOW_BY_RANGE[at.letter]?.[range] ?? BELOW_BY_STEP[at.letter]?.[at.step];
  if (below !== undefined) return at.isHole ? below + tolerance : 0 - below;
  if (at.isHole) return upperOfTightHole(at, range);
  const lower = lowerOfTightShaft(at, range);
  return lower === undefined ? undefined : lower + tolerance;
}

/** The lower deviation of a shaft j to zc. */
function lowerOfTightShaft({ letter, grade, step }: ClassAtSize, range: number) {
  if (letter === 'j') return SHAFT_J[grade]?.[range];
  if (letter === 'k' && (grade < 4 || grade > 7)) return 0;
  return aboveOf(letter, step, range);
}

/** Up to which grade a hole of a letter lies deeper by its Δ. */
const MOST_WITH_DELTA: Readonly<Record<string, number>> = { k: 8, m: 8, n: 8 };

/** The upper deviation of a hole J to ZC. */
function upperOfTightHole({ letter, grade, step }: ClassAtSize, range: number) {
  if (letter === 'j') return HOLE_J[grade]?.[range];
  const above = aboveOf(letter, step, range);
  if (above === undefined) return undefined;
  const upTo3mm = range === 0;
  if (grade <= (MOST_WITH_DELTA[letter] ?? 7)) {
    // Standardised apart from the rule: ISO 286-1 gives -9 there in place of -20 + 9.
    if (letter === 'm' && grade === 6 && range === M6_EXCEPTION) return -9;
    const delta = upTo3mm ? 0 : deltaOf(grade, range);
    return delta === undefined ? undefined : delta - above;
  }
  if (letter === 'k') return upTo3mm ? 0 : undefined;
  if (letter === 'n' && !upTo3mm) return 0;
  return 0 - above;
}

/** Over 250 up to and including 315 mm. */
const M6_EXCEPTION = 10;

/** By how much the tolerance is more than that of the next finer grade; tabulated from IT3 on [µm]. */
const deltaOf = (grade: number, range: number): number | undefined =>
  grade < 3 ? undefined : toleranceOf(grade, range) - toleranceOf(grade - 1, range);

function aboveOf(letter: string, step: number, range: number): number | undefined {
  const byRange = ABOVE_BY_RANGE[letter]?.[range];
  // Where a letter is not defined the table has 0; k, which has 0 with a meaning, stands in the other one.
  return byRange ?? (ABOVE_BY_STEP[letter]?.[step] || undefined);
}
