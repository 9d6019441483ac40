import { guardFields, guardWhole } from '../../judging/internal.js';
import { richardson } from '../../numerics/index.js';
import { type FilmGrid, layGrid } from './film-grid.js';
import {
  type FilmNumbers,
  type FilmPlace,
  filmNumbers,
  guardPlace,
  type RawFilm,
} from './film-numbers.js';
import { infiniteFilm, infiniteRupture } from './infinite-film.js';
import { rawFilm } from './raw-film.js';
import { dragged, type FilmPressure, solveFilm } from './solve-film.js';

/** Places around of the finer of the two grids, where nothing else is asked for. */
const AROUND = 48;

const PLACE = ['eccentricity', 'lengthToDiameter', 'placesAround'] as const;

/**
 * The oil film of a steadily loaded full bearing, straight from the Reynolds equation. The film
 * begins at the widest gap with no pressure, and breaks where pressure and its slope both come to zero
 * (Swift and Stieber). Solved on two grids, and extrapolated from both to an infinitely fine one (Richardson). An infinitely
 * long bearing has its solution in closed form.
 *
 *     ∂/∂θ(h³ ∂p/∂θ) + (D/L)² ∂/∂ζ(h³ ∂p/∂ζ) = ∂h/∂θ      h = 1 + e cos θ, p in 6 µω(r/c)²
 *
 * `finiteBearing` gives the same from a map that was made by this, a hundred times faster.
 *
 * @param place - eccentricity and length over diameter [-], and how fine the grid is
 * @returns the film in plain ratios; with the usual grid the Sommerfeld number to 0.5 %, side flow
 * to 0.5 % of the flow, the place where the film breaks to 3°
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, or the grid is
 * not one
 * @see Source: Raimondi and Boyd, Trans. ASLE 1 (1958), for the numbers and their definitions
 * @example
 * ```ts
 * const film = solveReynolds({ eccentricity: ratio(0.6), lengthToDiameter: ratio(1) });
 * format(film.sommerfeld, ratio, 3); // "0.121 -"
 * format(film.attitude, degree); // "50.5 deg"
 * ```
 */
export function solveReynolds(
  place: FilmPlace & {
    /** Places around on the finer grid, a multiple of 12 from 24 to 384; 48 unless asked. */
    readonly placesAround?: number;
  },
): FilmNumbers {
  guardFields('place', place, PLACE);
  const { eccentricity, lengthToDiameter } = guardPlace(place);
  const { placesAround = AROUND } = place;
  const around = guardWhole(
    'placesAround',
    placesAround,
    [24, 384],
    'More of them take longer and tell little more.',
    12,
  );
  const raw =
    lengthToDiameter === 'infinite'
      ? infiniteFilm(eccentricity)
      : finiteFilm(eccentricity, lengthToDiameter, around);
  return filmNumbers({ eccentricity, lengthToDiameter }, raw);
}

function finiteFilm(eccentricity: number, lengthToDiameter: number, around: number): RawFilm {
  const lay = (count: number) => layGrid(eccentricity, 1 / lengthToDiameter, count, count / 6);
  const coarse = lay(around / 2);
  const fine = lay(around);
  const last = infiniteRupture(eccentricity);
  const rough = solveFilm(coarse, dragged(coarse), (i) => (coarse.angle[i] as number) < last);
  const exact = solveFilm(fine, dragged(fine), filmOf(coarse, rough));
  return beyond(rawFilm(coarse, rough), rawFilm(fine, exact));
}

/** Whether the film was whole on the coarser grid at the place nearest to one on the finer. */
function filmOf({ along }: FilmGrid, pressure: FilmPressure) {
  return (i: number, j: number) =>
    (pressure[Math.floor(i / 2) * along + Math.floor(j / 2)] as number) > 0;
}

/** What two grids tell together. */
function beyond(coarse: RawFilm, fine: RawFilm): RawFilm {
  const mean = (key: keyof RawFilm) => richardson(coarse[key], fine[key]);
  return {
    along: mean('along'),
    across: mean('across'),
    inflow: mean('inflow'),
    outflow: mean('outflow'),
    peak: mean('peak'),
    peakAt: mean('peakAt'),
    // Where the film breaks moves from place to place, and not evenly.
    ruptureAt: fine.ruptureAt,
  };
}
