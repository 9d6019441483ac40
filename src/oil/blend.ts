import { guardFields, guardList, ROUNDING, showIn } from '../judging/internal.js';
import {
  centistokes,
  type KinematicViscosity,
  type MassFraction,
  RebuildInputError,
  type VolumeFraction,
} from '../quantities/index.js';
import { rounded } from '../quantities/internal.js';
import { fuelShare, liquidViscosity } from './domains.js';
import { type BlendingFractions, type BlendingLaw, lawNamed } from './laws.js';

/** One part of a blend. */
export interface BlendPart<L extends BlendingLaw> {
  /** Kinematic viscosity of the part, at the temperature of the blend [m²/s]. */
  readonly viscosity: KinematicViscosity;
  /** Its share, by volume or by mass as the law asks [-]. */
  readonly fraction: BlendingFractions[L];
}

const BLEND = ['law', 'parts'] as const;
const PART = ['viscosity', 'fraction'] as const;
const DILUTED = ['law', 'oil', 'fuel', 'sample'] as const;

/**
 * Kinematic viscosity of a blend from those of its parts, all at one
 * temperature, by the law named: by volume for ASTM D7152 and the log-mean, by mass for Refutas.
 *
 *     viscosity = V(Y(fraction * W(viscosity_1) + (1 - fraction) * W(viscosity_2)))   ASTM D7152
 *     R(v) = 14.534 * ln(ln(v + 0.8)) + 10.975
 *     S(r) = exp(exp((r - 10.975) / 14.534)) - 0.8
 *     viscosity = S(fraction * R(viscosity_1) + (1 - fraction) * R(viscosity_2))   Refutas
 *     viscosity = exp(fraction * ln(viscosity_1) + (1 - fraction) * ln(viscosity_2))   log-mean
 *
 * Written out for two parts, with viscosities in mm²/s; with more of them, each adds a product. W, Y and V are
 * those of {@link viscosityAt}.
 *
 * @param blend - the law and the parts, whose fractions add up to one
 * @returns kinematic viscosity of the blend at that temperature [m²/s]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, the law is unknown,
 * there are fewer than two parts, or the fractions do not add up to one
 * @see Source: ASTM D7152, ASTM blending method; Refutas blending number; log-mean rule; worked checks in tests/published/oil.test.ts
 * @example
 * ```ts
 * const thinned = blendViscosity({
 *   law: 'ASTM D7152',
 *   parts: [
 *     { viscosity: centistokes(100), fraction: percentByVolume(95) },
 *     { viscosity: centistokes(0.5), fraction: percentByVolume(5) },
 *   ],
 * });
 * format(thinned, centistokes, 0); // "53 cSt"
 * ```
 */
export function blendViscosity<L extends BlendingLaw>(blend: {
  /** The law to blend by. */
  readonly law: L;
  /** Two or more parts. */
  readonly parts: readonly BlendPart<L>[];
}): KinematicViscosity {
  guardFields('blend', blend, BLEND);
  const law = lawNamed('law', blend.law);
  guardList('parts', blend.parts, 2, 'parts');
  let index = 0;
  let whole = 0;
  blend.parts.forEach((part, i) => {
    guardFields(`parts[${i}]`, part, PART);
    const fraction = guardShare(`parts[${i}].fraction`, part.fraction);
    whole += fraction;
    index += fraction * law.index(liquidViscosity(`parts[${i}].viscosity`, part.viscosity));
  });
  if (Math.abs(whole - 1) > ROUNDING) {
    throw new RebuildInputError({
      parameter: 'parts',
      value: whole,
      shown: `the sum of the fractions, ${rounded(whole)},`,
      expected: 'one',
      hint: 'Every part counts, the oil itself too; are they percent wrapped as plain numbers?',
    });
  }
  return law.viscosity(index);
}

/** What `fuelFraction` compares. */
export interface ThinnedSample<L extends BlendingLaw> {
  /** The law to blend by; it decides whether the answer is by volume or by mass. */
  readonly law: L;
  /** Kinematic viscosity of the oil when it was new [m²/s]. */
  readonly oil: KinematicViscosity;
  /** Kinematic viscosity of the fuel; `petrolAt20C` is a default for petrol at 20 °C [m²/s]. */
  readonly fuel: KinematicViscosity;
  /** Kinematic viscosity of the sample, all three at one temperature [m²/s]. */
  readonly sample: KinematicViscosity;
}

/**
 * How much fuel is in an oil, from how far it has thinned: `blendViscosity`
 * of oil and fuel, turned round.
 *
 *     fraction = (W(oil) - W(sample)) / (W(oil) - W(fuel))   ASTM D7152, W of {@link viscosityAt}
 *     fraction = (R(oil) - R(sample)) / (R(oil) - R(fuel))   Refutas, R of {@link blendViscosity}
 *     fraction = ln(oil / sample) / ln(oil / fuel)   log-mean
 *
 * @param diluted - the law and the three viscosities, all at one temperature [m²/s]
 * @returns fuel fraction, by volume for ASTM D7152 and the log-mean, by mass for Refutas; negative if the sample is
 * thicker than the new oil, as oxidised or topped-up oil can be [-]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, the law is unknown,
 * the fuel is no thinner than the oil, or the sample is thinner than the fuel
 * @see Source: ASTM D7152, inverse ASTM blending method; Refutas blending number; log-mean rule
 * @example
 * ```ts
 * const fraction = fuelFraction({
 *   law: 'ASTM D7152',
 *   oil: centistokes(100), fuel: centistokes(0.5), sample: centistokes(53),
 * });
 * format(fraction, percentByVolume); // "5.0 vol%"
 * ```
 */
export function fuelFraction<L extends BlendingLaw>(
  diluted: ThinnedSample<L>,
): BlendingFractions[L] {
  guardFields('diluted', diluted, DILUTED);
  const law = lawNamed('law', diluted.law);
  const oil = liquidViscosity('oil', diluted.oil);
  const fuel = liquidViscosity('fuel', diluted.fuel);
  const sample = liquidViscosity('sample', diluted.sample);
  if (fuel >= oil || sample < fuel) {
    throw new RebuildInputError({
      parameter: fuel >= oil ? 'fuel' : 'sample',
      value: fuel >= oil ? fuel : sample,
      shown: showIn(fuel >= oil ? fuel : sample, centistokes),
      expected: fuel >= oil ? 'thinner than the oil' : 'at least as thick as the fuel',
      hint: 'Give all three viscosities at one temperature, in centistokes(…).',
    });
  }
  const top = law.index(oil);
  return ((top - law.index(sample)) / (top - law.index(fuel))) as BlendingFractions[L];
}

function guardShare<F extends VolumeFraction | MassFraction>(parameter: string, value: F): F {
  fuelShare(parameter, value as VolumeFraction);
  return value;
}
