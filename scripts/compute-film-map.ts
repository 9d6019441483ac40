import {
  diameterToLengthAt,
  eccentricityAt,
  FILM_ORDER,
  type MappedFilm,
  simpleOutflow,
  simpleSommerfeld,
} from '../src/bearings/film/film-map.js';
import type { FilmNumbers } from '../src/bearings/film/film-numbers.js';
import { solveReynolds } from '../src/bearings/film/solve-reynolds.js';
import type { Ratio } from '../src/quantities/dimensions.js';

/** Rows of coefficients over diameter over length, a row for each degree over eccentricity. */
export type FilmMap = Readonly<Record<keyof MappedFilm, readonly (readonly number[])[]>>;

/** Quantities of the map. */
const MAPPED = [
  'sommerfeld',
  'attitude',
  'outflow',
  'through',
  'pressureRatio',
  'peakAt',
  'ruptureAt',
] as const satisfies readonly (keyof MappedFilm)[];

/** Films in each direction that the map is made from: some more than it has coefficients. */
const NODES = 18;
/** Coefficients that end a row and come to less than this are left out. */
const SMALL = 4e-5;

/** The coefficients of the film map, from films at the Chebyshev nodes. */
export function computeFilmMap(placesAround: number): FilmMap {
  const nodes = Array.from({ length: NODES }, (_, n) => Math.cos((Math.PI * (n + 0.5)) / NODES));
  const films = nodes.map((x) => nodes.map((y) => mapped(x, y, placesAround)));
  const coefficient = (quantity: keyof MappedFilm, i: number, j: number) =>
    films
      .flatMap((row, n) => row.map((film, m) => film[quantity] * wave(i, n) * wave(j, m)))
      .reduce((total, term) => total + term, 0) *
    share(i) *
    share(j);
  const rowsOf = (quantity: keyof MappedFilm) =>
    count(FILM_ORDER.along).map((i) =>
      withoutEnd(count(FILM_ORDER.across).map((j) => coefficient(quantity, i, j))),
    );
  const rows = MAPPED.map((quantity) => [quantity, rowsOf(quantity)] as const);
  return Object.fromEntries(rows) as unknown as FilmMap;
}

const count = (length: number) => Array.from({ length }, (_, degree) => degree);
const wave = (degree: number, node: number) => Math.cos((Math.PI * degree * (node + 0.5)) / NODES);
const share = (degree: number) => (degree === 0 ? 1 : 2) / NODES;
const withoutEnd = (row: readonly number[]) =>
  row.slice(0, row.findLastIndex((value) => Math.abs(value) >= SMALL) + 1);

/** A film in the terms of the map. */
function mapped(x: number, y: number, placesAround: number): MappedFilm {
  const e = eccentricityAt(x);
  const diameterToLength = diameterToLengthAt(y);
  const film: FilmNumbers = solveReynolds({
    eccentricity: e as Ratio,
    lengthToDiameter: (1 / diameterToLength) as Ratio,
    placesAround,
  });
  const inflow = film.flow / Math.PI;
  const loadLine = Math.PI - film.attitude;
  return {
    sommerfeld: Math.log(film.sommerfeld / simpleSommerfeld(e, diameterToLength)),
    attitude: film.attitude,
    outflow: (inflow * film.sideFlow) / simpleOutflow(e, diameterToLength),
    through: (inflow * (1 - film.sideFlow)) / (1 - e * e),
    pressureRatio: Math.log(film.pressureRatio),
    peakAt: film.peakAngle + loadLine,
    ruptureAt: film.ruptureAngle + loadLine,
  };
}
