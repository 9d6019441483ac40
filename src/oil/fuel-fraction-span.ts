import type { SizeOrSpan, Span } from '../judging/index.js';
import { guardFields, guardSpan, showIn } from '../judging/internal.js';
import {
  centistokes,
  type KinematicViscosity,
  RebuildInputError,
  type VolumeFraction,
} from '../quantities/index.js';
import { largestOf, smallestOf } from '../quantities/internal.js';
import { fuelFraction } from './blend.js';
import { type BlendDensities, guardDensities, volumeOfMass } from './blend-fractions.js';
import { liquidViscosity } from './domains.js';
import { type BlendingLaw, LAWS } from './laws.js';

/** Fuel in an oil by every blending law. */
export interface FuelFractionSpan {
  /** What each law makes of it, all by volume, from the fuel of which least is needed to that of which most is. */
  readonly byLaw: {
    /** By the ASTM blending method of D7152 [-]. */
    readonly 'ASTM D7152': Span<VolumeFraction>;
    /** By Refutas, turned from mass to volume by the densities [-]. */
    readonly Refutas: Span<VolumeFraction>;
    /** By the log-mean [-]. */
    readonly 'log-mean': Span<VolumeFraction>;
  };
  /** From the law that finds least to the law that finds most [-]. */
  readonly span: Span<VolumeFraction>;
  /** The laws at the two ends of the span. */
  readonly lawOf: {
    /** The law that finds least. */
    readonly min: BlendingLaw;
    /** The law that finds most. */
    readonly max: BlendingLaw;
  };
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
 * By ASTM D7152 and by the log-mean it is what {@link fuelFraction} gives. ASTM D7152 warns that it may not hold
 * for viscosity index improvers and additive packages (section 1.3), and found mass fractions
 * more accurate for fuel blends (section 5.4); here it takes volume fractions.
 *
 * Give the fuel as a span where it is fresh or weathered, nobody knows which: `petrolSpanAt20C`.
 *
 * A sample a little thicker than the new oil gives fractions below none, as `fuelFraction` does:
 * by what was measured there is no fuel in it, or it has thickened by more than the fuel thins it.
 *
 * @param diluted - the viscosities, all at one temperature, and the densities, both at one
 * @returns the fuel by each law, the span between them, and the laws at its ends
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, a span is
 * reversed, the fuel is no thinner than the oil, the sample is thinner than the fuel, or the sample is so thick that
 * it cannot be that oil
 * @see Source: ASTM D7152, inverse ASTM blending method; Refutas blending number; log-mean rule
 * @example
 * ```ts
 * const { span, lawOf } = fuelFractionSpan({
 *   oil: centistokes(100), fuel: centistokes(0.5), sample: centistokes(53),
 *   oilDensity: kilogramPerCubicMetre(880),
 * });
 * format(span.min, percentByVolume); // "5.0 vol%"
 * format(span.max, percentByVolume); // "12.0 vol%"
 * lawOf.max; // "log-mean"
 * ```
 */
export function fuelFractionSpan(
  diluted: BlendDensities & {
    /** Kinematic viscosity of the oil when it was new [m²/s]. */
    readonly oil: KinematicViscosity;
    /** Kinematic viscosity of the fuel, or the span it lies in; `petrolLine` gives petrol's at any temperature [m²/s]. */
    readonly fuel: SizeOrSpan<KinematicViscosity>;
    /** Kinematic viscosity of the sample, all three at one temperature [m²/s]. */
    readonly sample: KinematicViscosity;
  },
): FuelFractionSpan {
  guardFields('diluted', diluted, DILUTED);
  const { oil, sample } = diluted;
  const fuels = guardSpan('fuel', diluted.fuel, liquidViscosity, 'kinematicViscosity');
  const densities = guardDensities(diluted);
  const ends = [fuels.min, fuels.max].map((fuel) => byVolumeOf({ oil, fuel, sample }, densities));
  const of = (law: BlendingLaw) => endsOf(ends.map((found) => found[law]));
  const byLaw = {
    'ASTM D7152': of('ASTM D7152'),
    Refutas: of('Refutas'),
    'log-mean': of('log-mean'),
  };
  const span = endsOf(Object.values(byLaw).flatMap(({ min, max }) => [min, max]));
  const lawAt = (end: 'min' | 'max') =>
    LAWS.find((law) => byLaw[law][end] === span[end]) ?? 'ASTM D7152';
  return { byLaw, span, lawOf: { min: lawAt('min'), max: lawAt('max') } };
}

/** What every law finds for one fuel, by volume. */
function byVolumeOf(
  viscosities: Readonly<Record<'oil' | 'fuel' | 'sample', KinematicViscosity>>,
  densities: Required<BlendDensities>,
): Readonly<Record<BlendingLaw, VolumeFraction>> {
  const by = <L extends BlendingLaw>(law: L) => fuelFraction({ law, ...viscosities });
  const byMass = by('Refutas');
  const byVolume = { 'ASTM D7152': by('ASTM D7152'), 'log-mean': by('log-mean') };
  if (smallestOf<number>([byMass, ...Object.values(byVolume)]) < -1) {
    const { sample } = viscosities;
    throw new RebuildInputError({
      parameter: 'sample',
      value: sample,
      shown: showIn(sample, centistokes),
      expected: 'near the new oil, or thinner',
      problem: 'is far thicker than the new oil',
      hint: 'Is it a sample of that oil, and are all three viscosities of one temperature?',
    });
  }
  return { ...byVolume, Refutas: volumeOfMass(byMass, densities) };
}

const endsOf = (fractions: readonly VolumeFraction[]): Span<VolumeFraction> => ({
  min: smallestOf(fractions),
  max: largestOf(fractions),
});
