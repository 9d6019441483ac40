import { guardBetween, guardList, guardObject, guardWord } from '../judging/guards.js';
import type { KinematicViscosity, MassFraction, VolumeFraction } from '../quantities/dimensions.js';
import { RebuildInputError } from '../quantities/error.js';
import { guardViscosity } from './guards.js';
import { doubleLog, viscosityOf } from './viscosity.js';

/**
 * The blending laws, and the kind of fraction each was made for. They disagree
 * by several per cent on fuel in oil, so the law is always named.
 */
export interface BlendingFractions {
  /** What ASTM D7152 blends by: log log Z, by volume [-]. */
  readonly 'ASTM D7152': VolumeFraction;
  /** Blending number 14.534 ln ln(ν + 0.8) + 10.975, by mass [-]. */
  readonly Refutas: MassFraction;
}

/** The name of a blending law. */
export type BlendingLaw = keyof BlendingFractions;

/** One part of a blend. */
export interface BlendPart<L extends BlendingLaw> {
  /** Kinematic viscosity of the part, at the temperature of the blend [m²/s]. */
  readonly viscosity: KinematicViscosity;
  /** Its share, by volume or by mass as the law asks [-]. */
  readonly fraction: BlendingFractions[L];
}

/**
 * Kinematic viscosity of a blend from those of its parts, all at one
 * temperature, by the law named: by volume for ASTM D7152, by mass for Refutas.
 *
 *     ASTM D7152: W = log10(log10(Z)), W of the blend = Σ fraction * W
 *     Refutas:    V = 14.534 ln(ln(ν + 0.8)) + 10.975, V of the blend = Σ fraction * V
 *
 * @param blend - the law and the parts, whose fractions add up to one
 * @returns kinematic viscosity of the blend at that temperature [m²/s]
 * @throws {RebuildInputError} when the fractions do not add up to one, or a viscosity is out of range
 * @see Source: ASTM D7152; Refutas blending number; worked checks in tests/published/oil.test.ts
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
  guardObject('blend', blend);
  const law = lawNamed(blend.law);
  guardList('parts', blend.parts, 2, 'parts');
  let index = 0;
  let whole = 0;
  blend.parts.forEach((part, i) => {
    guardObject(`parts[${i}]`, part);
    const fraction = guardShare(`parts[${i}].fraction`, part.fraction);
    whole += fraction;
    index += fraction * law.index(guardViscosity(`parts[${i}].viscosity`, part.viscosity));
  });
  if (Math.abs(whole - 1) > 1e-9) {
    throw new RebuildInputError({
      parameter: 'parts',
      value: whole,
      shown: `the sum of the fractions, ${whole},`,
      expected: 'one',
      hint: 'Every part counts, the oil itself too; are they percent wrapped as plain numbers?',
    });
  }
  return law.viscosity(index);
}

/**
 * Petrol at 20 °C, taken as 0.55 mm²/s. Common practice, from memory: grades run
 * from 0.5 to 0.6, and it thins as it warms [m²/s].
 */
export const petrolAt20C = 0.55e-6 as KinematicViscosity;

/** What `fuelFraction` compares. */
export interface DilutedOil<L extends BlendingLaw> {
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
 *     fraction = (index(oil) - index(sample)) / (index(oil) - index(fuel))
 *
 * @param diluted - the law and the three viscosities, all at one temperature [m²/s]
 * @returns fuel fraction, by volume for ASTM D7152, by mass for Refutas; negative if the sample is
 * thicker than the new oil, as oxidised or topped-up oil can be [-]
 * @throws {RebuildInputError} when a viscosity is out of range, or the sample is thinner than the fuel
 * @see Source: ASTM D7152; Refutas blending number
 * @example
 * ```ts
 * const fraction = fuelFraction({
 *   law: 'ASTM D7152',
 *   oil: centistokes(100), fuel: centistokes(0.5), sample: centistokes(53),
 * });
 * format(fraction, percentByVolume); // "5.0 vol%"
 * ```
 */
export function fuelFraction<L extends BlendingLaw>(diluted: DilutedOil<L>): BlendingFractions[L] {
  guardObject('diluted', diluted);
  const law = lawNamed(diluted.law);
  const oil = guardViscosity('oil', diluted.oil);
  const fuel = guardViscosity('fuel', diluted.fuel);
  const sample = guardViscosity('sample', diluted.sample);
  if (fuel >= oil || sample < fuel) {
    throw new RebuildInputError({
      parameter: fuel >= oil ? 'fuel' : 'sample',
      value: fuel >= oil ? fuel : sample,
      expected: fuel >= oil ? 'thinner than the oil' : 'at least as thick as the fuel',
      hint: 'Give all three viscosities at one temperature, in centistokes(…).',
    });
  }
  const top = law.index(oil);
  return ((top - law.index(sample)) / (top - law.index(fuel))) as BlendingFractions[L];
}

interface Law {
  readonly index: (viscosity: KinematicViscosity) => number;
  readonly viscosity: (index: number) => KinematicViscosity;
}

const laws: Readonly<Record<BlendingLaw, Law>> = {
  'ASTM D7152': { index: doubleLog, viscosity: (index) => viscosityOf(index, index) },
  Refutas: {
    index: (viscosity) => 14.534 * Math.log(Math.log(viscosity * 1e6 + 0.8)) + 10.975,
    viscosity: (index) =>
      ((Math.exp(Math.exp((index - 10.975) / 14.534)) - 0.8) * 1e-6) as KinematicViscosity,
  },
};

function lawNamed(name: BlendingLaw): Law {
  return laws[guardWord('law', name, ['ASTM D7152', 'Refutas'])];
}

function guardShare<F extends VolumeFraction | MassFraction>(parameter: string, value: F): F {
  guardBetween(parameter, value as VolumeFraction, 'volumeFraction', [0, 1], 'percentByVolume(5)');
  return value;
}
