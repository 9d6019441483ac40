import type { Span } from '../judging/index.js';
import { ROUNDING } from '../judging/internal.js';
import type { KinematicViscosity } from '../quantities/index.js';
import { liquidViscosity, viscosityWhenHot } from './domains.js';

/** A grade of engine oil by its viscosity when hot. */
export type SaeGrade = '8' | '12' | '16' | '20' | '30' | '40' | '50' | '60';

/** A grade of engine oil that is also tested cold: W for winter. */
export type SaeWinterGrade = '0W' | '5W' | '10W' | '15W' | '20W' | '25W';

/** The grades that a viscosity at 100 °C satisfies, thin to thick. */
export interface SaeGrades {
  /** Grades whose range it is in: one or two, or none. */
  readonly grades: readonly SaeGrade[];
  /**
   * Winter grades that this viscosity does not rule out. It does not make the oil one of them: they are set by how
   * the oil cranks and pumps in the cold, which was not measured.
   */
  readonly winterNotRuledOut: readonly SaeWinterGrade[];
  /** Whether it has a grade, or is thinner than SAE 8 or thicker than SAE 60. */
  readonly standing: 'graded' | 'thinner' | 'thicker';
}

// source: SAE J300 (2015), kinematic viscosity at 100 °C, mm²/s; the most is just not reached.
const HOT: readonly (readonly [grade: SaeGrade, least: number, below: number])[] = [
  ['8', 4, 6.1],
  ['12', 5, 7.1],
  ['16', 6.1, 8.2],
  ['20', 6.9, 9.3],
  ['30', 9.3, 12.5],
  ['40', 12.5, 16.3],
  ['50', 16.3, 21.9],
  ['60', 21.9, 26.1],
];
const WINTER: readonly (readonly [grade: SaeWinterGrade, least: number])[] = [
  ['0W', 3.8],
  ['5W', 3.8],
  ['10W', 4.1],
  ['15W', 5.6],
  ['20W', 5.6],
  ['25W', 9.3],
];

/**
 * The SAE grades of engine oil that a kinematic viscosity at 100 °C satisfies.
 * Thinner than every grade is a result, and so is thicker.
 *
 * This is one of the things a grade asks. The thin grades overlap, and the
 * viscosity at 150 °C under high shear decides there. A winter grade also asks that the oil cranks and
 * pumps in the cold. Neither can be known from this viscosity, so every winter grade that it is thick
 * enough for stands in `winterNotRuledOut`. That does not say that the oil has them.
 *
 * @param viscosityAt100C - kinematic viscosity at 100 °C [m²/s]
 * @returns the grades, and whether it is thinner or thicker than all of them
 * @throws {RebuildInputError} when a value is not finite or out of range
 * @see Source: SAE J300 (2015), table 1
 * @example
 * ```ts
 * const { grades, winterNotRuledOut } = saeGrade(centistokes(8.1));
 * grades; // ["16", "20"]
 * winterNotRuledOut; // ["0W", "5W", "10W", "15W", "20W"]
 * ```
 */
export function saeGrade(viscosityAt100C: KinematicViscosity): SaeGrades {
  const v = viscosityWhenHot('viscosityAt100C', viscosityAt100C) * 1e6;
  const grades = HOT.filter(([, least, below]) => reaches(v, least) && !reaches(v, below));
  const winter = WINTER.filter(([, least]) => reaches(v, least));
  return {
    grades: grades.map(([grade]) => grade),
    winterNotRuledOut: winter.map(([grade]) => grade),
    standing: grades.length > 0 ? 'graded' : reaches(v, 26.1) ? 'thicker' : 'thinner',
  };
}

/** A grade of industrial oil. */
export interface IsoGrade {
  /** Its name, for example ISO VG 32. */
  readonly name: `ISO VG ${number}`;
  /** Midpoint of its kinematic viscosity at 40 °C [m²/s]. */
  readonly midpoint: KinematicViscosity;
  /** What its kinematic viscosity at 40 °C lies between [m²/s]. */
  readonly limits: Span<KinematicViscosity>;
}

/** Where a viscosity at 40 °C stands among the grades of industrial oil. */
export interface IsoGrading {
  /** The grade that it is in; left out where it is between two or past all of them. */
  readonly grade?: IsoGrade;
  /** The next grade that is thinner, if there is one. */
  readonly thinner?: IsoGrade;
  /** The next grade that is thicker, if there is one. */
  readonly thicker?: IsoGrade;
}

// source: ISO 3448:1992, midpoints of kinematic viscosity at 40 °C, mm²/s.
const MIDPOINTS = [
  2.2, 3.2, 4.6, 6.8, 10, 15, 22, 32, 46, 68, 100, 150, 220, 320, 460, 680, 1000, 1500, 2200, 3200,
] as const;

/**
 * The ISO viscosity grade of an oil: the midpoint of a grade, give or take
 * 10 %. The grades do not touch, so an oil may be in none.
 *
 * @param viscosityAt40C - kinematic viscosity at 40 °C [m²/s]
 * @returns the grade, if it is in one, and the next thinner and thicker ones
 * @throws {RebuildInputError} when a value is not finite or out of range
 * @see Source: ISO 3448:1992, table 1
 * @example
 * ```ts
 * isoGrade(centistokes(67)).grade?.name; // "ISO VG 68"
 * const { grade, thinner, thicker } = isoGrade(centistokes(55));
 * [grade?.name, thinner?.name, thicker?.name]; // [undefined, "ISO VG 46", "ISO VG 68"]
 * ```
 */
export function isoGrade(viscosityAt40C: KinematicViscosity): IsoGrading {
  const v = liquidViscosity('viscosityAt40C', viscosityAt40C) * 1e6;
  const grade = MIDPOINTS.find((middle) => reaches(v, middle * 0.9) && reaches(middle * 1.1, v));
  const thinner = MIDPOINTS.findLast((middle) => middle !== grade && middle < v);
  const thicker = MIDPOINTS.find((middle) => middle !== grade && middle > v);
  return {
    ...(grade !== undefined && { grade: isoGradeOf(grade) }),
    ...(thinner !== undefined && { thinner: isoGradeOf(thinner) }),
    ...(thicker !== undefined && { thicker: isoGradeOf(thicker) }),
  };
}

const isoGradeOf = (middle: number): IsoGrade => ({
  name: `ISO VG ${Math.round(middle)}`,
  midpoint: (middle / 1e6) as KinematicViscosity,
  limits: {
    min: ((middle * 0.9) / 1e6) as KinematicViscosity,
    max: ((middle * 1.1) / 1e6) as KinematicViscosity,
  },
});

/** At least so much, to a part in a thousand million: a viscosity at a limit is not lost by noise. */
const reaches = (value: number, least: number) => value >= least * (1 - ROUNDING);
