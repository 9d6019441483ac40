import type { Span } from '../judging/index.js';
import { guardFields, showIn } from '../judging/internal.js';
import {
  centistokes,
  type KinematicViscosity,
  RebuildInputError,
  type VolumeFraction,
} from '../quantities/index.js';
import { largestOf, smallestOf } from '../quantities/internal.js';
import { fuelFraction } from './blend.js';
import { type BlendDensities, guardDensities, volumeOfMass } from './blend-fractions.js';
import type { BlendingLaw } from './laws.js';

/** Fuel in an oil by every blending law. */
export interface FuelFractionSpan {
  /** What each law makes of it, all by volume. */
  readonly byLaw: {
    /** By the ASTM blending method of D7152 [-]. */
    readonly 'ASTM D7152': VolumeFraction;
    /** By Refutas, turned from mass to volume by the densities [-]. */
    readonly Refutas: VolumeFraction;
    /** By the log-mean [-]. */
    readonly 'log-mean': VolumeFraction;
  };
  /** From the law that finds least to the law that finds most [-]. */
  readonly span: Span<VolumeFraction>;
}

const DILUTED = ['oil', 'fuel', 'sample', 'oilDensity', 'fuelDensity'] as const;

/**
 * How much fuel is in an oil, from how far it has thinned, by every blending law. No law is
 * right for fuel in oil: what lies between them is the honest uncertainty. To be safe,
 * judge the upper end.
 *
 *     byMass = (R(oil) - R(sample)) / (R(oil) - R(fuel))   Refutas, R of {@link blendViscosity}
 *     byVolume = byMass / fuelDensity / (byMass / fuelDensity + (1 - byMass) / oilDensity)
 *
 * By ASTM D7152 and by the log-mean it is what {@link fuelFraction} gives.
 *
 * A sample a little thicker than the new oil gives fractions below none, as `fuelFraction` does:
 * by what was measured there is no fuel in it, or it has thickened by more than the fuel thins it.
 *
 * @param diluted - the viscosities, all at one temperature, and the densities, both at one
 * @returns the fuel by each law, and the span between them
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, the fuel is no
 * thinner than the oil, the sample is thinner than the fuel, or the sample is so thick that it cannot be that oil
 * @see Source: ASTM D7152, inverse ASTM blending method; Refutas blending number; log-mean rule
 * @example
 * ```ts
 * const { span } = fuelFractionSpan({
 *   oil: centistokes(100), fuel: centistokes(0.5), sample: centistokes(53),
 *   oilDensity: kilogramPerCubicMetre(880),
 * });
 * format(span.min, percentByVolume); // "5.0 vol%"
 * format(span.max, percentByVolume); // "12.0 vol%"
 * ```
 */
export function fuelFractionSpan(
  diluted: BlendDensities & {
    /** Kinematic viscosity of the oil when it was new [m²/s]. */
    readonly oil: KinematicViscosity;
    /** Kinematic viscosity of the fuel; `petrolLine` gives petrol's at any temperature [m²/s]. */
    readonly fuel: KinematicViscosity;
    /** Kinematic viscosity of the sample, all three at one temperature [m²/s]. */
    readonly sample: KinematicViscosity;
  },
): FuelFractionSpan {
  guardFields('diluted', diluted, DILUTED);
  const { oil, fuel, sample } = diluted;
  const by = <L extends BlendingLaw>(law: L) => fuelFraction({ law, oil, fuel, sample });
  const byMass = by('Refutas');
  const byVolume = { 'ASTM D7152': by('ASTM D7152'), 'log-mean': by('log-mean') };
  const densities = guardDensities(diluted);
  if (smallestOf<number>([byMass, ...Object.values(byVolume)]) < -1) {
    throw new RebuildInputError({
      parameter: 'sample',
      value: sample,
      shown: showIn(sample, centistokes),
      expected: 'near the new oil, or thinner',
      problem: 'is far thicker than the new oil',
      hint: 'Is it a sample of that oil, and are all three viscosities of one temperature?',
    });
  }
  const byLaw = {
    ...byVolume,
    Refutas: volumeOfMass(byMass, densities),
  } satisfies Record<BlendingLaw, VolumeFraction>;
  const all = Object.values(byLaw);
  const span = {
    min: smallestOf(all),
    max: largestOf(all),
  };
  return { byLaw, span };
}
