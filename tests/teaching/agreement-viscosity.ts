import {
  apiGravity,
  celsius,
  densityAt,
  densityFromApiGravity,
  dynamicViscosityAt,
  extrapolatedDynamicViscosity,
  extrapolatedViscosity,
  type Oil,
  sayboltUniversal,
  type ViscosityLine,
  viscosityIndex,
} from 'crankwright';

/** Values of a card's letters. */
type Letters = (symbol: string) => never;

/** The library's own code for the cards of one oil, fed with the same letters. */
export const viscosityCode = {
  extrapolatedViscosity: (v: Letters) => extrapolatedViscosity(lineOf(v), v('T')).viscosity,
  densityFromApiGravity: (v: Letters) => densityFromApiGravity(v('G')),
  apiGravity: (v: Letters) => apiGravity(v('rho')),
  densityAt: (v: Letters) =>
    densityAt({ density: v('rho_15'), at: celsius(15), temperature: v('T') }),
  densityWithExpansion: (v: Letters) =>
    densityAt({ density: v('rho_0'), at: v('T_0'), temperature: v('T'), expansion: v('a') }),
  dynamicViscosityAt: (v: Letters) => dynamicViscosityAt(oilOf(v), v('T')),
  extrapolatedDynamicViscosity: (v: Letters) =>
    extrapolatedDynamicViscosity(oilOf(v), v('T')).viscosity,
  viscosityIndex: indexOf,
  viscosityIndexOfThickOil: indexOf,
  viscosityIndexAbove100: indexOf,
  sayboltUniversal: (v: Letters) => sayboltUniversal(v('nu'), v('T')),
};

function lineOf(v: Letters): ViscosityLine {
  return [
    { temperature: v('T_1'), viscosity: v('nu_1') },
    { temperature: v('T_2'), viscosity: v('nu_2') },
  ];
}

function oilOf(v: Letters): Oil {
  return { line: lineOf(v), density: v('rho_15') };
}

function indexOf(v: Letters): number {
  return viscosityIndex({ at40C: v('U'), at100C: v('nu') });
}
