import { guardFields, showIn } from '../judging/internal.js';
import {
  centistokes,
  type Density,
  type KinematicViscosity,
  type MassFraction,
  RebuildInputError,
  type ThermalExpansion,
  type VolumeFraction,
} from '../quantities/index.js';
import { blendViscosity } from './blend.js';
import { fractionByMass } from './blend-fractions.js';
import { expansionOfLubricating } from './density.js';
import { fuelShare, liquidDensity, liquidExpansion, liquidViscosity } from './domains.js';
import { type BlendingLaw, lawNamed } from './laws.js';
import { expansionOf, guardOil, OIL, type Oil } from './oil.js';
import { petrol } from './petrol.js';
import { alongLine, guardLine, type ViscosityPoint } from './viscosity.js';

const DILUTION = ['oil', 'fuel', 'fraction', 'law'] as const;

/**
 * The oil that fuel makes of an oil: its viscosity line, density and expansion.
 *
 *     density = fraction * fuelDensity + (1 - fraction) * oilDensity   at 15 °C
 *     expansion = fraction * fuelExpansion + (1 - fraction) * oilExpansion
 *
 * The line is the blend of both by `blendViscosity`, at the two temperatures of the oil's line.
 * ASTM D7152 blends log log Z, which is a straight line in log T for oil and fuel alike: by it, the
 * new line is the blend at every temperature. By the other laws it is the blend at its two
 * points, within a few per cent of it between them, and strays outside them, Refutas by a third at
 * 0 °C with 30 % of petrol. Up to a tenth of petrol, ASTM D7152 makes the thinnest blend: the safe
 * side. Ideal mixing: the volumes add up.
 *
 * @param dilution - the oil, the fuel, how much of it by volume, and the law
 * @returns the diluted oil
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, a line is none, what
 * has no expansion given is no lubricating oil, the law is unknown, the fuel is no thinner than the oil, or the
 * fuel is too thin where the line of the oil has a point
 * @see Source: ASTM D7152 and ASTM D341, by default; ideal mixing
 * @example
 * ```ts
 * const oil = {
 *   line: [
 *     { temperature: celsius(40), viscosity: centistokes(100) },
 *     { temperature: celsius(100), viscosity: centistokes(11) },
 *   ],
 *   density: kilogramPerCubicMetre(885),
 * } as const;
 * const thinned = dilutedOil({ oil, fraction: percentByVolume(5) });
 * format(viscosityAt(thinned.line, celsius(40)), centistokes, 0); // "52 cSt"
 * format(viscosityAt(thinned.line, celsius(100)), centistokes); // "7.48 cSt"
 * format(thinned.density, kilogramPerCubicMetre); // "878.0 kg/m³"
 * ```
 */
export function dilutedOil(dilution: {
  /** The oil before. */
  readonly oil: Oil;
  /**
   * The fuel; by default `petrol`. One below 800 kg/m³ without an expansion is taken to expand as
   * petrol does.
   */
  readonly fuel?: Oil;
  /** Fuel in the whole, by volume; for Refutas it is turned to mass by the densities [-]. */
  readonly fraction: VolumeFraction;
  /** The law to blend by; by default ASTM D7152. */
  readonly law?: BlendingLaw;
}): Oil {
  guardFields('dilution', dilution, DILUTION);
  const { fuel: poured = petrol, law = 'ASTM D7152' } = dilution;
  const oil = guardOil('oil', dilution.oil);
  const fuel = guardFuel(poured);
  const fraction = fuelShare('fraction', dilution.fraction);
  const { by } = lawNamed('law', law);

  const densities = { oilDensity: oil.density, fuelDensity: fuel.density };
  const share = by === 'mass' ? fractionByMass({ byVolume: fraction, ...densities }) : fraction;
  const thinned = ({ temperature, viscosity }: ViscosityPoint): ViscosityPoint => {
    const fuelThere = guardThinner(viscosity, alongLine(fuel.line, temperature));
    const parts = [
      { viscosity, fraction: (1 - share) as VolumeFraction & MassFraction },
      { viscosity: fuelThere, fraction: share as VolumeFraction & MassFraction },
    ];
    return { temperature, viscosity: blendViscosity({ law, parts }) };
  };
  const mixed = (ofFuel: number, ofOil: number) => fraction * ofFuel + (1 - fraction) * ofOil;
  return {
    line: oil.line.map(thinned),
    density: mixed(fuel.density, oil.density) as Density,
    expansion: mixed(fuel.expansion, expansionOf(oil)) as ThermalExpansion,
  };
}

/** Refuses what is not a fuel; gives it an expansion where it has none. */
function guardFuel(fuel: Oil): Required<Oil> {
  guardFields('fuel', fuel, OIL);
  const { line, density, expansion } = fuel;
  guardLine('fuel.line', line);
  liquidDensity('fuel.density', density);
  if (expansion !== undefined) liquidExpansion('fuel.expansion', expansion);
  const usual = density < 800 ? petrol.expansion : expansionOfLubricating('fuel.density', density);
  return { line, density, expansion: expansion ?? usual };
}

function guardThinner(oil: KinematicViscosity, fuel: KinematicViscosity): KinematicViscosity {
  liquidViscosity('fuel.line', fuel);
  if (fuel < oil) return fuel;
  throw new RebuildInputError({
    parameter: 'fuel.line',
    value: fuel,
    shown: showIn(fuel, centistokes),
    expected: 'thinner than the oil',
    problem: 'is no thinner than the oil at that temperature',
    hint: 'Are oil and fuel swapped?',
  });
}
