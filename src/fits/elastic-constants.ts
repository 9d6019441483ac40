import { guardWord } from '../judging/internal.js';
import { MPa, type Pressure, type Ratio, ratio } from '../quantities/index.js';

/** Metals that parts of a fit are made of. */
export type FitMetal =
  | 'steel'
  | 'grey iron'
  | 'aluminium alloy'
  | 'magnesium alloy'
  | 'bronze'
  | 'brass';

/** How stiff a metal is. */
export interface ElasticConstants {
  /** Modulus of elasticity [Pa]. */
  readonly elasticity: Pressure;
  /** Poisson's ratio [-]. */
  readonly poisson: Ratio;
}

/** Modulus [MPa] and Poisson's ratio. */
const CONSTANTS = {
  steel: [207_000, 0.292],
  'grey iron': [100_000, 0.211],
  'aluminium alloy': [71_700, 0.333],
  'magnesium alloy': [44_800, 0.35],
  bronze: [111_000, 0.349],
  brass: [106_000, 0.324],
} as const satisfies Record<FitMetal, readonly [elasticity: number, poisson: number]>;

const METALS = /* @__PURE__ */ Object.keys(CONSTANTS) as FitMetal[];

/**
 * Modulus of elasticity and Poisson's ratio of a metal, to be spread into a part of a fit. Steels hardly differ. Grey
 * irons do, from about 66 to 160 GPa by grade, and so does the pressure of a fit in them.
 *
 * @param metal - what the part is made of
 * @returns modulus of elasticity and Poisson's ratio
 * @throws {RebuildInputError} when the metal is not in the table
 * @see Source: Shigley, Mechanical Engineering Design, 9th ed., tables, from memory
 * @example
 * ```ts
 * const shaft = { ...elasticConstants('steel'), bore: mm(12) };
 * format(shaft.elasticity, MPa); // "207000.00 MPa"
 * ```
 */
export function elasticConstants(metal: FitMetal): ElasticConstants {
  const [elasticity, poisson] = CONSTANTS[guardWord('metal', metal, METALS)];
  return { elasticity: MPa(elasticity), poisson: ratio(poisson) };
}
