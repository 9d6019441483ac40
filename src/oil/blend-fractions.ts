import { guardFields } from '../judging/internal.js';
import type { Density, MassFraction, VolumeFraction } from '../quantities/index.js';
import { fuelByMass, fuelShare, liquidDensity } from './domains.js';
import { petrolDensity } from './petrol.js';

/** The densities of an oil and of the fuel in it, both at one temperature, usually 15 °C. */
export interface BlendDensities {
  /** Density of the oil [kg/m³]. */
  readonly oilDensity: Density;
  /** Density of the fuel; by default `petrolDensity` [kg/m³]. */
  readonly fuelDensity?: Density;
}

const BY_VOLUME = ['byVolume', 'oilDensity', 'fuelDensity'] as const;
const BY_MASS = ['byMass', 'oilDensity', 'fuelDensity'] as const;

/**
 * Fuel in oil by mass, from what it is by volume. Ideal mixing: the volumes add up.
 *
 *     byMass = byVolume * fuelDensity / (byVolume * fuelDensity + (1 - byVolume) * oilDensity)
 *
 * @param blend - the fraction by volume, and the two densities
 * @returns fuel by mass [-]
 * @throws {RebuildInputError} when a field is misspelt, or a value is not finite or out of range
 * @see Source: definition; ideal mixing
 * @example
 * ```ts
 * const byMass = fractionByMass({
 *   byVolume: percentByVolume(5), oilDensity: kilogramPerCubicMetre(880),
 * });
 * format(byMass, percentByMass, 2); // "4.27 mass%"
 * ```
 */
export function fractionByMass(
  blend: BlendDensities & {
    /** Fuel by volume [-]. */
    readonly byVolume: VolumeFraction;
  },
): MassFraction {
  guardFields('blend', blend, BY_VOLUME);
  const byVolume = fuelShare('byVolume', blend.byVolume);
  const { oilDensity, fuelDensity } = guardDensities(blend);
  const fuel = byVolume * fuelDensity;
  return (fuel / (fuel + (1 - byVolume) * oilDensity)) as MassFraction;
}

/**
 * Fuel in oil by volume, from what it is by mass. Ideal mixing: the volumes add up.
 *
 *     byVolume = byMass / fuelDensity / (byMass / fuelDensity + (1 - byMass) / oilDensity)
 *
 * @param blend - the fraction by mass, and the two densities
 * @returns fuel by volume [-]
 * @throws {RebuildInputError} when a field is misspelt, or a value is not finite or out of range
 * @see Source: definition; ideal mixing
 * @example
 * ```ts
 * const byVolume = fractionByVolume({
 *   byMass: percentByMass(5), oilDensity: kilogramPerCubicMetre(880),
 * });
 * format(byVolume, percentByVolume, 2); // "5.85 vol%"
 * ```
 */
export function fractionByVolume(
  blend: BlendDensities & {
    /** Fuel by mass [-]. */
    readonly byMass: MassFraction;
  },
): VolumeFraction {
  guardFields('blend', blend, BY_MASS);
  const byMass = fuelByMass('byMass', blend.byMass);
  return volumeOfMass(byMass, guardDensities(blend));
}

/** Fuel by volume, also where it comes out below none. */
export function volumeOfMass(
  byMass: MassFraction,
  { oilDensity, fuelDensity }: Required<BlendDensities>,
): VolumeFraction {
  const fuel = byMass / fuelDensity;
  return (fuel / (fuel + (1 - byMass) / oilDensity)) as VolumeFraction;
}

/** Refuses densities that no oil or fuel has; petrol's where none is given. */
export function guardDensities({
  oilDensity,
  fuelDensity = petrolDensity,
}: BlendDensities): Required<BlendDensities> {
  return {
    oilDensity: liquidDensity('oilDensity', oilDensity),
    fuelDensity: liquidDensity('fuelDensity', fuelDensity),
  };
}
