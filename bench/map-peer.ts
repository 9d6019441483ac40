import { Matrix } from 'ml-matrix';
import { eccentricityAt, FILM_ORDER, simpleSommerfeld } from '../src/bearings/film/film-map.js';
import { filmMapData } from '../src/bearings/film/film-map-data.js';

const MAPS: readonly (readonly (readonly number[])[])[] = Object.values(filmMapData);

const NEAREST = Math.log(1 - eccentricityAt(-1));
const FARTHEST = Math.log(1 - eccentricityAt(1));

/** The coefficients of all seven quantities below each other, rows filled up with noughts. */
const stacked = new Matrix(
  MAPS.flatMap((rows) =>
    Array.from({ length: FILM_ORDER.along }, (_, i) =>
      Array.from({ length: FILM_ORDER.across }, (_, j) => rows[i]?.[j] ?? 0),
    ),
  ),
);

/**
 * The film map summed up by a matrix library, all quantities at once. Only the Sommerfeld number, which
 * comes first, is made of its sum; the others are left as they come, which spares the peer some work.
 */
export function sommerfeldByMatrix(eccentricity: number, lengthToDiameter: number): number {
  const slender = 1 / lengthToDiameter;
  const place = (2 * (Math.log(1 - eccentricity) - NEAREST)) / (FARTHEST - NEAREST) - 1;
  const across = Matrix.columnVector(
    polynomials(2.2 / (1 + lengthToDiameter) - 1, FILM_ORDER.across),
  );
  const along = Matrix.columnVector(polynomials(place, FILM_ORDER.along));
  const rows = stacked.mmul(across).to1DArray();
  const sums = Matrix.from1DArray(MAPS.length, FILM_ORDER.along, rows).mmul(along);
  return Math.exp(sums.get(0, 0)) * simpleSommerfeld(eccentricity, slender);
}

function polynomials(x: number, count: number): number[] {
  const values = [1, x];
  for (let i = 2; i < count; i++) {
    values.push(2 * x * (values[i - 1] as number) - (values[i - 2] as number));
  }
  return values;
}
