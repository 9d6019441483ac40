import { diameter, guardFields, guardLength } from '../judging/internal.js';
import type { Length, Ratio } from '../quantities/index.js';
import { rockerArmRatio, valveLash } from './domains.js';

/** A lobe of a cam that works a flat tappet, and what stands between it and the valve. */
export interface LobeOfCam {
  /** Diameter of its base circle, where the valve is closed [m]. */
  readonly baseCircle: Length;
  /** From the heel to the tip of the nose [m]. */
  readonly acrossNose: Length;
  /** Arm of the rocker on the valve's side over the other arm; by default 1, no rocker [-]. */
  readonly rockerRatio?: Ratio;
  /** Lash at the end of the stem; by default nothing [m]. */
  readonly lash?: Length;
}

/** How far a cam lifts its tappet and its valve. */
export interface ValveLift {
  /** Lift of the tappet [m]. */
  readonly cam: Length;
  /** Lift of the valve; negative if it never opens [m]. */
  readonly valve: Length;
}

const LOBE = ['baseCircle', 'acrossNose', 'rockerRatio', 'lash'] as const;

/**
 * Greatest lift of a valve from two readings of its cam with a micrometer, for a flat tappet.
 *
 *     cam = acrossNose - baseCircle
 *     valve = (acrossNose - baseCircle) * rockerRatio - lash
 *
 * The base circle is read across the lobe at right angles to the nose, and only where the flanks do not reach that far: turn
 * the cam in the micrometer and take the smallest reading. A long-duration cam has no such place; then read the tappet
 * with a dial over one turn. The valve itself, read with a dial over one turn, tells what rocker and lash
 * leave of it, and worn lobes are told from one another by the difference.
 *
 * @param lobe - the two readings, and rocker and lash if there are any
 * @returns lift of the tappet and of the valve [m]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, or the nose does not
 * belong to the base circle
 * @see Source: common practice of camshaft data; geometry
 * @example
 * ```ts
 * const lift = valveLift({
 *   baseCircle: inch(1.13), acrossNose: inch(1.44), rockerRatio: ratio(1.6), lash: thou(16),
 * });
 * format(lift.cam, inch); // "0.3100 in"
 * format(lift.valve, inch); // "0.4800 in"
 * ```
 */
export function valveLift(lobe: LobeOfCam): ValveLift {
  guardFields('lobe', lobe, LOBE);
  const { rockerRatio: ratio = 1 as Ratio, lash = 0 as Length } = lobe;
  const base = diameter('baseCircle', lobe.baseCircle);
  const across = diameter('acrossNose', lobe.acrossNose);
  guardLength('acrossNose', across, [base, 2 * base], diameter.example);
  const rocker = rockerArmRatio('rockerRatio', ratio);
  valveLash('lash', lash);
  const cam = across - base;
  return { cam: cam as Length, valve: (cam * rocker - lash) as Length };
}
