import {
  filmRegime,
  petroff,
  type Ratio,
  shortBearing,
  sommerfeldNumber,
  temperatureRise,
} from 'crankwright';

/** Values of a card's letters. */
type Letters = (symbol: string) => never;

/** The library's own code for the cards of the oil film. */
export const filmCode = {
  sommerfeldNumber: (v: Letters) =>
    sommerfeldNumber({ ...turning(v), viscosity: v('mu'), load: v('W') }),
  petroffTorque: (v: Letters) => petroff({ ...turning(v), viscosity: v('mu') }).torque,
  shortBearingSommerfeld: (v: Letters) =>
    shortBearing({ eccentricity: v('e'), lengthToDiameter: v('lambda') }).sommerfeld,
  shortBearingAttitude: (v: Letters) =>
    shortBearing({ eccentricity: v('e'), lengthToDiameter: 0.25 as Ratio }).attitude,
  journalFriction: (v: Letters) =>
    shortBearing({ eccentricity: v('e'), lengthToDiameter: v('lambda') }).friction,
  filmRatio: (v: Letters) =>
    filmRegime(v('h'), { journal: v('q_j'), shell: v('q_s') }).finding.value,
  temperatureRise: (v: Letters) =>
    temperatureRise({
      power: v('P'),
      flow: v('Q'),
      sideFlow: v('Q_s'),
      density: v('rho'),
      specificHeat: v('H'),
    }),
};

const turning = (v: Letters) => ({
  journal: v('D'),
  length: v('L'),
  clearance: v('C'),
  speed: v('omega'),
});
