import {
  blendViscosity,
  celsius,
  centistokes,
  dilutedOil,
  type Flow,
  fractionByMass,
  fractionByVolume,
  fuelFraction,
  fuelFractionSpan,
  fuelFromLevelRise,
  fuelInSump,
  kilogramPerCubicMetre,
  litre,
  petrol,
  sumpLog,
  timeToDilution,
} from 'crankwright';

/** Values of a card's letters. */
type Letters = (symbol: string) => never;

const line = [
  { temperature: celsius(40), viscosity: centistokes(100) },
  { temperature: celsius(100), viscosity: centistokes(11) },
] as const;

/** The library's own code for the newer cards of the oil room, fed with the same letters. */
export const oilCode = {
  blendLogMean: (v: Letters) => {
    const fuel: number = v('x');
    return blendViscosity({
      law: 'log-mean',
      parts: [
        { viscosity: v('nu_o'), fraction: (1 - fuel) as never },
        { viscosity: v('nu_f'), fraction: fuel as never },
      ],
    });
  },
  fuelLogMean: (v: Letters) =>
    fuelFraction({ law: 'log-mean', oil: v('nu_o'), fuel: v('nu_f'), sample: v('nu_s') }),
  fractionByMass: (v: Letters) =>
    fractionByMass({ byVolume: v('x'), oilDensity: v('rho_o'), fuelDensity: v('rho_f') }),
  fractionByVolume: (v: Letters) =>
    fractionByVolume({ byMass: v('w'), oilDensity: v('rho_o'), fuelDensity: v('rho_f') }),
  dilutedDensity: (v: Letters) =>
    dilutedOil({
      oil: { line, density: v('rho_o') },
      fuel: { ...petrol, density: v('rho_f') },
      fraction: v('x'),
    }).density,
  dilutedExpansion: (v: Letters) =>
    dilutedOil({
      oil: { line, density: kilogramPerCubicMetre(880), expansion: v('alpha_o') },
      fuel: { ...petrol, expansion: v('alpha_f') },
      fraction: v('x'),
    }).expansion ?? Number.NaN,
  fuelByVolumeRefutas: (v: Letters) => {
    const densities = { oilDensity: v('rho_o'), fuelDensity: v('rho_f') };
    const viscosities = { oil: v('nu_o'), fuel: v('nu_f'), sample: v('nu_s') };
    return fuelFractionSpan({ ...viscosities, ...densities }).byLaw.Refutas;
  },
  fuelInSumpFromStart: (v: Letters) =>
    fuelInSump({
      leak: v('q'),
      evaporation: v('k'),
      time: v('t'),
      fuel: v('V_1'),
      oil: litre(1),
    }).fuel,
  timeToDilutionFromStart: (v: Letters) => {
    const sump = { leak: v('q'), oil: v('V_o'), fuel: v('V_1'), evaporation: v('k') };
    const until = timeToDilution({ ...sump, fraction: v('x') });
    return until.reached ? until.time : Number.NaN;
  },
  fuelLeftWhenDrained: (v: Letters) =>
    sumpLog({ oil: v('V_o'), fuel: v('V_1'), leak: 0 as Flow, log: [{ drained: v('V_d') }] }).end
      .fuel,
  fuelFromLevelRise: (v: Letters) =>
    fuelFromLevelRise({ rise: v('h'), surface: v('A'), oil: litre(1) }).fuel,
};
