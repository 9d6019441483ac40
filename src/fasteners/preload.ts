import { guardFields } from '../judging/internal.js';
import type { Area, Force, Pressure, Ratio } from '../quantities/index.js';
import { boltArea, boltProofStress, proofShare } from './domains.js';

/** The part of a bolt that is loaded, and what it bears. */
export interface StressedBolt {
  /** Stress area of its thread, or the area of its shank where that is less [m²]. */
  readonly stressArea: Area;
  /** Stress that it bears without staying longer [Pa]. */
  readonly proofStress: Pressure;
}

const LOADED = ['stressArea', 'proofStress'] as const;
const PRELOADED = ['stressArea', 'proofStress', 'share'] as const;

/**
 * The pull that a bolt bears without staying longer.
 *
 *     proofLoad = stressArea * proofStress
 *
 * @param bolt - stress area and proof stress
 * @returns proof load [N]
 * @throws {RebuildInputError} when a field is misspelt, or a value is not finite or out of range
 * @see Source: ISO 898-1; SAE J429
 * @example
 * ```ts
 * const { stressArea } = threadAreas(threadOf('3/8-24 UNF'));
 * const { proofStress } = boltStrength({ grade: 'SAE 5', diameter: inch(0.375) });
 * format(proofLoad({ stressArea, proofStress }), lbf, 0); // "7465 lbf"
 * ```
 */
export function proofLoad(bolt: StressedBolt): Force {
  guardFields('bolt', bolt, LOADED);
  return loadOf(bolt);
}

/**
 * The pull to tighten a bolt to. Common practice is 0.75 of the proof load for a joint that is taken apart again, and
 * 0.90 for one that stays. Most of what a joint suffers comes from too little: a bolt that is pulled up well hardly
 * feels the load that comes and goes.
 *
 *     boltPreload = share * stressArea * proofStress
 *
 * The maker's figure wins. A part that crushes, strips or bends before the bolt does sets a lower one: threads in
 * aluminium or grey iron, a thin flange, a soft gasket.
 *
 * @param bolt - stress area, proof stress, and the share of the proof load, by default 0.75
 * @returns preload [N]
 * @throws {RebuildInputError} when a field is misspelt, or a value is not finite or out of range
 * @see Source: Shigley's Mechanical Engineering Design, 9th ed., Eq. 8-31, from memory
 * @example
 * ```ts
 * const bolt = { stressArea: squareMm(84.3), proofStress: MPa(600) };
 * format(boltPreload(bolt), kilonewton, 1); // "37.9 kN"
 * ```
 */
export function boltPreload(
  bolt: StressedBolt & {
    /** How much of the proof load; by default 0.75, that of a joint which is taken apart again [-]. */
    readonly share?: Ratio;
  },
): Force {
  guardFields('bolt', bolt, PRELOADED);
  const { share = 0.75 as Ratio } = bolt;
  return (proofShare('share', share) * loadOf(bolt)) as Force;
}

const loadOf = (bolt: StressedBolt) =>
  (boltArea('stressArea', bolt.stressArea) *
    boltProofStress('proofStress', bolt.proofStress)) as Force;
