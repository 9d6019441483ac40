import {
  type FilmFinding,
  type FilmStand,
  filmRegime,
  heatBalance,
  maxFuelDilution,
  type WarmFilm,
} from '../bearings/index.js';
import type { Basis } from '../judging/index.js';
import { dilutedOil, type Oil, type SaeGrades, saeGrade } from '../oil/index.js';
import { alongLine } from '../oil/internal.js';
import {
  type Density,
  type Force,
  type KinematicViscosity,
  type Ratio,
  RebuildInputError,
  type Temperature,
  type VolumeFraction,
} from '../quantities/index.js';
import type { FilmSheet, OilSheet } from './sheet.js';

/** An oil at 100 °C, the temperature that defines its grade. */
export interface HotOil {
  /** Kinematic viscosity at 100 °C [m²/s]. */
  readonly viscosity: KinematicViscosity;
  /** The grades it satisfies. */
  readonly grades: SaeGrades;
}

/** Findings on the film in the bearing that the sheet names. */
export interface FilmReport {
  /** Name of the bearing. */
  readonly bearing: string;
  /** The steady load it was judged under [N]. */
  readonly load: Force;
  /** The bearing in the oil as it is now, or in clean oil if no sample shows its fuel. */
  readonly now: WarmFilm;
  /** Its film against the roughness of its surfaces. */
  readonly finding: FilmFinding;
  /** How much fuel the film stands. */
  readonly stand: FilmStand;
}

/** The density used if the sheet gives none. */
const USUAL_DENSITY = 880 as Density;

/** Who set the density of the oil. */
export const densityBasis = ({ density }: OilSheet): Basis =>
  density === undefined
    ? { kind: 'common practice', rule: 'oil of 880 kg/m³ at 15 °C' }
    : { kind: 'specified' };

/** The clean oil. */
export const cleanOil = ({ line, density }: OilSheet): Oil => ({
  line,
  density: density ?? USUAL_DENSITY,
});

/** The oil with this much fuel in it. */
export function oilNow(oil: OilSheet, fuel: VolumeFraction): Oil {
  const clean = cleanOil(oil);
  return dilutedOil({ oil: clean, fraction: fuel, ...(oil.fuel && { fuel: oil.fuel }) });
}

/** The grades of an oil. */
export function hotOil({ line }: Oil): HotOil {
  const viscosity = alongLine(line, 373.15 as Temperature);
  return { viscosity, grades: saeGrade(viscosity) };
}

/** Inspects the film of a bearing in oil with this much fuel in it. */
export function inspectFilm(oil: OilSheet, bearing: FilmSheet, fuel: VolumeFraction): FilmReport {
  if (oil.fuelViscosity !== undefined && oil.fuel === undefined) {
    throw new RebuildInputError({
      parameter: 'fuel',
      value: undefined,
      shown: 'the line of the fuel',
      expected: 'two points and a density',
      problem: 'is missing',
      hint: 'A fuel with its own viscosity is not taken as petrol, so the film needs its line.',
    });
  }
  const { name, roughness, filmRatio, ...loaded } = bearing;
  const now = heatBalance({ ...loaded, oil: oilNow(oil, fuel) });
  const stand = maxFuelDilution({
    ...loaded,
    oil: cleanOil(oil),
    roughness,
    ...(filmRatio !== undefined && { filmRatio }),
    ...(oil.fuel && { fuel: oil.fuel }),
  });
  const own = filmRatio !== undefined && {
    thresholds: { mixed: Math.min(1, filmRatio) as Ratio, full: filmRatio },
  };
  const finding = filmRegime(now.film.film, roughness, own || {});
  return { bearing: name, load: loaded.load, now, finding, stand };
}
