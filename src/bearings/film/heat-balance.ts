import { guardFields, showIn } from '../../judging/internal.js';
import { rootOfFalling } from '../../numerics/index.js';
import type { Oil } from '../../oil/index.js';
import { filmOilAt, guardOil, oilTemperature, temperatureOn } from '../../oil/internal.js';
import {
  celsius,
  type Density,
  type DynamicViscosity,
  type Flow,
  type KinematicViscosity,
  type Ratio,
  RebuildInputError,
  type SpecificHeat,
  type Temperature,
  type TemperatureDifference,
  valueIn,
} from '../../quantities/index.js';
import { eccentricityRatio, heatShare, oilSpecificHeat } from './domains.js';
import { type Film, filmOf, flowsOf, noFilm } from './film-thickness.js';
import { finiteBearing } from './finite-bearing.js';
import { guardLoadedBearing, type LoadedBearing, slenderness } from './journal-bearing.js';
import { commonSpecificHeat, riseOf } from './temperature-rise.js';

/** A bearing in its oil, and what cools it. */
export interface FedBearing extends LoadedBearing {
  /** The oil. */
  readonly oil: Oil;
  /** Temperature at which the oil comes in [K]. */
  readonly inlet: Temperature;
  /** Specific heat of the oil; by default 2000 J/(kg·K), a rule of thumb [J/(kg·K)]. */
  readonly specificHeat?: SpecificHeat;
  /**
   * Share of the heat that the oil carries away, the rest goes through shell and shaft; by default
   * all of it, which errs to the warm side [-].
   */
  readonly carried?: Ratio;
}

/** A bearing at the temperature that its own friction brings it to. */
export interface WarmFilm {
  /** Temperature of the film: the oil's on the way in and half of what it gains [K]. */
  readonly temperature: Temperature;
  /** What the oil gains from the way in to the way out [K]. */
  readonly rise: TemperatureDifference;
  /** Viscosity of the oil in the film [Pa·s]. */
  readonly viscosity: DynamicViscosity;
  /** Whether the temperature is within the -40 to 150 °C of ASTM D341, below or above. */
  readonly range: 'within' | 'below' | 'above';
  /** The film at that viscosity. */
  readonly film: Film;
}

const FED = [
  'journal',
  'length',
  'clearance',
  'speed',
  'load',
  'oil',
  'inlet',
  'specificHeat',
  'carried',
] as const;

/**
 * The temperature that a bearing comes to, and its film there. Friction warms the oil that flows
 * through; warmer oil is thinner and rubs less; the answer is where both agree.
 *
 *     carried * power = ρ C flow (1 - sideFlow/2) rise       temperature = inlet + rise / 2
 *
 * @param bearing - sizes, speed, load, the oil and how it comes in
 * @returns temperature, viscosity and film; if no film lasts, those of the oil on its way in
 * @throws {RebuildInputError} when a field is misspelt, a value cannot belong to a bearing or an oil, or the
 * clearance leaves no room to turn
 * @see Source: Raimondi and Boyd, Trans. ASLE 1 (1958); Shigley's Mechanical Engineering Design, 9th ed., section 12-9
 * @example
 * ```ts
 * const warm = heatBalance({
 *   journal: inch(1.625), length: inch(1), clearance: thou(1.6), speed: rpm(1800), load: lbf(400),
 *   inlet: celsius(70),
 *   oil: {
 *     line: [
 *       { temperature: celsius(40), viscosity: centistokes(100) },
 *       { temperature: celsius(100), viscosity: centistokes(11.1) },
 *     ],
 *     density: kilogramPerCubicMetre(885),
 *   },
 * });
 * warm.film.outcome; // "floats"
 * format(warm.temperature, celsius); // "83.7 °C"
 * ```
 */
export function heatBalance(bearing: FedBearing): WarmFilm {
  guardFields('bearing', bearing, FED);
  return warmFilmOf(guardFedBearing(bearing));
}

/** A bearing that was checked, nothing of it left out. */
export type CheckedBearing = Required<FedBearing>;

/** Refuses a bearing, an oil or a temperature that cannot be. */
export function guardFedBearing(bearing: FedBearing): CheckedBearing {
  return {
    ...guardLoadedBearing(bearing),
    oil: guardOil('oil', bearing.oil),
    inlet: guardInlet(bearing),
    specificHeat: oilSpecificHeat('specificHeat', bearing.specificHeat ?? commonSpecificHeat),
    carried: heatShare('carried', bearing.carried ?? (1 as Ratio)),
  };
}

/** Refuses oil that is too thick or too thin on its way in for its line to hold. */
function guardInlet({ inlet, oil }: FedBearing): Temperature {
  oilTemperature('inlet', inlet);
  const [coldest, warmest] = [temperatureOn(oil.line, THICKEST), warmestOf(oil)];
  if (inlet > coldest && inlet < warmest) return inlet;
  throw new RebuildInputError({
    parameter: 'inlet',
    value: inlet,
    shown: showIn(inlet, celsius),
    expected: `from ${Math.ceil(valueIn(coldest, celsius))} to ${Math.floor(valueIn(warmest, celsius))} °C for this oil`,
    hint: 'Past that the oil is too thick to flow or thinner than petrol: check the inlet and the line.',
  });
}

/** The thickest oil that ASTM D341 holds for, less a hair. */
const THICKEST = 19.9 as KinematicViscosity;
/** And the thinnest. */
const THINNEST = 0.22e-6 as KinematicViscosity;

/** Where an oil is as thin as its line can tell. */
export const warmestOf = ({ line }: Oil): Temperature => temperatureOn(line, THINNEST);

/** The film of a bearing that was checked. */
export function warmFilmOf(bearing: CheckedBearing): WarmFilm {
  const at = (kelvin: number): WarmFilm => {
    const temperature = kelvin as Temperature;
    const { viscosity, density, range } = filmOilAt(bearing.oil, temperature);
    const film = filmOf({ ...bearing, viscosity });
    const rise = riseIn(bearing, film, density);
    return { temperature, rise, viscosity, range, film };
  };
  const inlet = at(bearing.inlet);
  if (inlet.film.outcome === 'no film') return inlet;
  // What friction would still add: above the answer the oil does not warm itself so far, and without a film
  // it could not be there at all.
  const spare = ({ film, rise, temperature }: WarmFilm) =>
    film.outcome === 'no film' ? -1 : bearing.inlet + rise / 2 - temperature;
  // Oil thins and rubs less as it warms, so it comes no farther than if it did not.
  const most = Math.min(
    oilTemperature.most,
    warmestOf(bearing.oil),
    bearing.inlet + inlet.rise / 2,
  );
  const hottest = at(most);
  if (spare(hottest) > 0.01) return { ...hottest, film: noFilm('it runs too hot') };
  const warm = at(rootOfFalling((kelvin) => spare(at(kelvin)), bearing.inlet, most));
  // Where it does not settle, the film gives way before the oil is warm enough.
  const settled = Math.abs(spare(warm)) < 0.01;
  return settled ? warm : { ...warm, film: noFilm('the load is too great') };
}

/** What the oil gains on its way through. */
function riseIn(bearing: CheckedBearing, film: Film, density: Density): TemperatureDifference {
  const { specificHeat, carried } = bearing;
  if (film.outcome === 'no film') return 0 as TemperatureDifference;
  const { power } = film;
  const { flow, sideFlow } = film.outcome === 'floats' ? film : centredFlow(bearing);
  return riseOf({ power, flow, sideFlow, density, specificHeat, carried });
}

/** Flow of a journal that is nearly centred: that of the least eccentricity on the map. */
function centredFlow(bearing: CheckedBearing): { readonly flow: Flow; readonly sideFlow: Flow } {
  const place = {
    eccentricity: eccentricityRatio.least as Ratio,
    lengthToDiameter: slenderness(bearing),
  };
  return flowsOf(bearing, finiteBearing(place));
}
