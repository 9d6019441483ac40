import { chebyshevSum, polynomials } from '../../numerics/index.js';
import { eccentricityRatio } from './domains.js';
import { filmMapData } from './film-map-data.js';

/**
 * The film over eccentricity and diameter over length, as sums of Chebyshev polynomials whose
 * coefficients `npm run maps` computes with `solveReynolds`. Each quantity is taken
 * relative to something simple that it follows closely, so that few coefficients do.
 */
export interface MappedFilm {
  /** Sommerfeld number. */
  readonly sommerfeld: number;
  /** Attitude angle [rad]. */
  readonly attitude: number;
  /** Flow over both ends, in units of πrcNL. */
  readonly outflow: number;
  /** What is left where the film breaks of the flow through the widest gap, in the same unit. */
  readonly through: number;
  /** Mean pressure over the greatest. */
  readonly pressureRatio: number;
  /** From the widest gap on to the greatest pressure [rad]. */
  readonly peakAt: number;
  /** From the widest gap on to where the film breaks [rad]. */
  readonly ruptureAt: number;
}

/** Most coefficients over eccentricity and over diameter over length. */
export const FILM_ORDER = { along: 14, across: 12 } as const;

const NEAREST = /* @__PURE__ */ (() => Math.log(1 - eccentricityRatio.least))();
const FARTHEST = /* @__PURE__ */ (() => Math.log(1 - eccentricityRatio.most))();

/** Where an eccentricity lies on the map, from -1 to 1. */
const placeOf = (eccentricity: number): number =>
  (2 * (Math.log(1 - eccentricity) - NEAREST)) / (FARTHEST - NEAREST) - 1;

/** The eccentricity at a place on the map. */
export const eccentricityAt = (place: number): number =>
  1 - Math.exp(NEAREST + ((place + 1) / 2) * (FARTHEST - NEAREST));

/** Where a diameter over length lies on the map, from -1 for an infinitely long bearing to 1. */
const slendernessOf = (diameterToLength: number): number =>
  (2.2 * diameterToLength) / (1 + diameterToLength) - 1;

/** The diameter over length at a place on the map. */
export const diameterToLengthAt = (place: number): number => (place + 1) / (1.2 - place);

/** What the Sommerfeld number is mapped over: it of a very short and of a very long bearing, added. */
export function simpleSommerfeld(e: number, diameterToLength: number): number {
  const root = 1 - e * e;
  const short =
    (diameterToLength * root) ** 2 / (Math.PI * e * Math.sqrt(Math.PI ** 2 * root + 16 * e * e));
  return short + ((2 + e * e) * Math.sqrt(root)) / (12 * Math.PI ** 2 * e);
}

/** What the flow over both ends is mapped over: the less, the longer the bearing. */
export const simpleOutflow = (e: number, diameterToLength: number): number =>
  (e * diameterToLength) / (1 + diameterToLength);

/** The film at an eccentricity and a diameter over length. */
export function mapFilm(e: number, diameterToLength: number): MappedFilm {
  const along = polynomials(placeOf(e), FILM_ORDER.along);
  const across = polynomials(slendernessOf(diameterToLength), FILM_ORDER.across);
  return {
    sommerfeld:
      Math.exp(chebyshevSum(filmMapData.sommerfeld, along, across)) *
      simpleSommerfeld(e, diameterToLength),
    attitude: chebyshevSum(filmMapData.attitude, along, across),
    outflow: chebyshevSum(filmMapData.outflow, along, across) * simpleOutflow(e, diameterToLength),
    through: chebyshevSum(filmMapData.through, along, across) * (1 - e * e),
    pressureRatio: Math.exp(chebyshevSum(filmMapData.pressureRatio, along, across)),
    peakAt: chebyshevSum(filmMapData.peakAt, along, across),
    ruptureAt: chebyshevSum(filmMapData.ruptureAt, along, across),
  };
}

/**
 * The Sommerfeld number over the eccentricities of bearings of one length, for a search: the map
 * summed up in one direction.
 */
export function mapSommerfeld(diameterToLength: number): (e: number) => number {
  const across = polynomials(slendernessOf(diameterToLength), FILM_ORDER.across);
  const rows = filmMapData.sommerfeld.map((row) => chebyshevSum([row], [1], across));
  return (e) => {
    const logarithm = chebyshevSum([rows], [1], polynomials(placeOf(e), FILM_ORDER.along));
    return Math.exp(logarithm) * simpleSommerfeld(e, diameterToLength);
  };
}
