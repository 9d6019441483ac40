import type { Basis } from '../judging/index.js';
import { guardFields, guardWord, NANOMETRE, showLength } from '../judging/internal.js';
import {
  inch,
  type Length,
  MPa,
  mm,
  type Pressure,
  psi,
  RebuildInputError,
} from '../quantities/index.js';
import { threadDiameter } from './domains.js';

/** A grade of SAE J429, as marks on the head tell it, or a property class of ISO 898-1, as the head says it. */
export type BoltGrade =
  | 'SAE 1'
  | 'SAE 2'
  | 'SAE 4'
  | 'SAE 5'
  | 'SAE 5.2'
  | 'SAE 7'
  | 'SAE 8'
  | 'SAE 8.2'
  | 'ISO 3.6'
  | 'ISO 4.6'
  | 'ISO 4.8'
  | 'ISO 5.6'
  | 'ISO 5.8'
  | 'ISO 6.8'
  | 'ISO 8.8'
  | 'ISO 9.8'
  | 'ISO 10.9'
  | 'ISO 12.9';

/** Least strength of a bolt of a grade. */
export interface BoltStrength {
  /** Stress that it bears without staying longer [Pa]. */
  readonly proofStress: Pressure;
  /** Stress at which it yields; of the softest classes the lower yield point, else the stress at 0.2 % [Pa]. */
  readonly yieldStrength: Pressure;
  /** Stress at which it breaks [Pa]. */
  readonly tensileStrength: Pressure;
  /** The standard that says so. */
  readonly basis: Basis;
}

/** Largest diameter, then least proof, yield and tensile strength up to it. Inches and ksi, or mm and MPa. */
type Row = readonly [upTo: number, proof: number, yields: number, tensile: number];

const SAE = 'SAE J429';
const ISO = 'ISO 898-1:1999';

// source: SAE J429, read in tables of it and in Shigley and Mischke, 5th ed., p. 341 (grade 7 only there).
// source: ISO 898-1:1999, Table 3, read in a table of it; class 3.6 is left out of later editions.
const GRADES: Readonly<Record<BoltGrade, readonly Row[]>> = {
  'SAE 1': [[1.5, 33, 36, 60]],
  'SAE 2': [
    [0.75, 55, 57, 74],
    [1.5, 33, 36, 60],
  ],
  'SAE 4': [[1.5, 65, 100, 115]],
  'SAE 5': [
    [1, 85, 92, 120],
    [1.5, 74, 81, 105],
  ],
  'SAE 5.2': [[1, 85, 92, 120]],
  'SAE 7': [[1.5, 105, 115, 133]],
  'SAE 8': [[1.5, 120, 130, 150]],
  'SAE 8.2': [[1, 120, 130, 150]],
  'ISO 3.6': [[39, 180, 190, 330]],
  'ISO 4.6': [[39, 225, 240, 400]],
  'ISO 4.8': [[39, 310, 340, 420]],
  'ISO 5.6': [[39, 280, 300, 500]],
  'ISO 5.8': [[39, 380, 420, 520]],
  'ISO 6.8': [[39, 440, 480, 600]],
  'ISO 8.8': [
    [16, 580, 640, 800],
    [39, 600, 660, 830],
  ],
  'ISO 9.8': [[16, 650, 720, 900]],
  'ISO 10.9': [[39, 830, 940, 1040]],
  'ISO 12.9': [[39, 970, 1100, 1220]],
};

/** Every grade. */
export const BOLT_GRADES = /* @__PURE__ */ Object.keys(GRADES) as readonly BoltGrade[];
const BOLT = ['grade', 'diameter'] as const;

/**
 * Least strength of a bolt whose head tells its grade. Both standards depend on the diameter.
 *
 * The marks say what a new bolt was sold as. One that has been hot, bent, rusted, welded or stretched is not that bolt
 * any more, marks are forged, and bolts from before the standards carry none: see `unknownBolt`. Grade 2 is that of
 * bolts up to 6 in long; longer ones are grade 1. Never put a bolt of a lower grade where a higher one was, nor a soft
 * nut on a hard bolt.
 *
 * @param bolt - the grade on its head, and its diameter
 * @returns least proof stress, yield and tensile strength, with the standard
 * @throws {RebuildInputError} when a field is misspelt, the grade is unknown, the diameter is not finite or out of range,
 * or the grade has no bolt of that size
 * @see Source: SAE J429; ISO 898-1:1999, Table 3
 * @example
 * ```ts
 * const { proofStress } = boltStrength({ grade: 'SAE 5', diameter: inch(0.375) });
 * format(proofStress, psi, 0); // "85000 psi"
 * ```
 */
export function boltStrength(bolt: {
  /** The grade, by its standard and its number. */
  readonly grade: BoltGrade;
  /** Diameter of the thread [m]. */
  readonly diameter: Length;
}): BoltStrength {
  guardFields('bolt', bolt, BOLT);
  const grade = guardWord('grade', bolt.grade, BOLT_GRADES);
  const diameter = threadDiameter('diameter', bolt.diameter);
  const inInches = grade.startsWith('SAE');
  const [size, stress] = inInches ? [inch, (ksi: number) => psi(ksi * 1000)] : [mm, MPa];
  const rows = GRADES[grade];
  const least = inInches ? inch(0.25) : mm(1.6);
  const row = rows.find(([upTo]) => diameter <= size(upTo) + NANOMETRE);
  if (row === undefined || diameter < least - NANOMETRE) {
    const most = size((rows.at(-1) as Row)[0]);
    throw new RebuildInputError({
      parameter: 'diameter',
      value: diameter,
      shown: showLength(diameter),
      expected: `a bolt of ${showLength(least)} to ${showLength(most)}, the sizes of ${grade}`,
      hint: 'Is it another grade, or is the unit missing?',
    });
  }
  const [, proof, yields, tensile] = row;
  return {
    proofStress: stress(proof),
    yieldStrength: stress(yields),
    tensileStrength: stress(tensile),
    basis: {
      kind: 'published',
      source: inInches ? `${SAE}, grade ${grade.slice(4)}` : `${ISO}, class ${grade.slice(4)}`,
    },
  };
}
