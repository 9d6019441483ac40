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

/** An oil at 100 °C, where its grade is told. */
export interface HotOil {
  /** Kinematic viscosity at 100 °C [m²/s]. */
  readonly viscosity: KinematicViscosity;
  /** The grades that it satisfies. */
  readonly grades: SaeGrades;
}

/** What was found of the film in the bearing that the oil must carry. */
export interface FilmReport {
  /** What the bearing is called. */
  readonly bearing: string;
  /** The steady load that it was judged under [N]. */
  readonly load: Force;
  /** The bearing in the oil as it is now. */
  readonly now: WarmFilm;
  /** Its film against the roughness of its surfaces. */
  readonly finding: FilmFinding;
  /** What fuel the film stands. */
  readonly stand: FilmStand;
}

/** The density that is reckoned with where the sheet gives none. */
const USUAL_DENSITY = 880 as Density;

/** Who says how dense the oil is. */
export const densityBasis = ({ density }: OilSheet): Basis =>
  density === undefined
    ? { kind: 'common practice', rule: 'oil of 880 kg/m³ at 15 °C' }
    : { kind: 'specified' };

/** The clean oil of a sheet. */
export const cleanOil = ({ line, density }: OilSheet): Oil => ({
  line,
  density: density ?? USUAL_DENSITY,
});

/** The oil as it is with so much fuel in it. */
export function oilNow(oil: OilSheet, fuel: VolumeFraction): Oil {
  const clean = cleanOil(oil);
  return dilutedOil({ oil: clean, fraction: fuel, ...(oil.fuel && { fuel: oil.fuel }) });
}

/** The grades of an oil. */
export function hotOil({ line }: Oil): HotOil {
  const viscosity = alongLine(line, 373.15 as Temperature);
  return { viscosity, grades: saeGrade(viscosity) };
}

/** Inspects the film of a bearing in oil with so much fuel in it. */
export function inspectFilm(oil: OilSheet, bearing: FilmSheet, fuel: VolumeFraction): FilmReport {
  if (oil.fuelViscosity !== undefined && oil.fuel === undefined) {
    throw new RebuildInputError({
      parameter: 'fuel',
      value: undefined,
      shown: 'the line of the fuel',
      expected: 'two points and a density',
      problem: 'is missing',
      hint: 'With a viscosity of its own the fuel is not petrol, and the film needs its line.',
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
