import { guardFields } from '../../judging/internal.js';
import type { Ratio } from '../../quantities/index.js';
import { eccentricityRatio, shortLengthToDiameter } from './domains.js';
import { type FilmNumbers, filmNumbers } from './film-numbers.js';

/** The film of a very short bearing, and whether this one is short enough. */
export interface ShortFilm extends FilmNumbers {
  /**
   * `'within'` where (L/D)² is at most 0.16 (1 - e): there the Sommerfeld number is at most a
   * tenth below that of `finiteBearing`. Beyond, the bearing carries less than this says.
   */
  readonly range: 'within' | 'too long';
}

const PLACE = ['eccentricity', 'lengthToDiameter'] as const;

/**
 * The oil film of a very short bearing in closed form, Ocvirk's half film: pressure drives oil only
 * towards the ends, and the film is whole from the widest gap to the narrowest.
 *
 *     S (L/D)² = (1 - e²)² / (π e √(π² (1 - e²) + 16 e²))
 *     tan φ = π √(1 - e²) / (4 e)
 *
 * Flow is net of what pressure sends back at the widest gap, which Ocvirk leaves out.
 *
 * It promises more than a bearing holds: at L/D of 1/2 and an eccentricity of 0.9 its Sommerfeld number is
 * 58 % low. Use `finiteBearing` for a decision, this one to see how a film works.
 *
 * @param place - eccentricity and length over diameter [-]
 * @returns the film in plain ratios, and whether the bearing is short enough for them
 * @throws {RebuildInputError} when a field is misspelt, the eccentricity is outside 0.01 … 0.998, or the length
 * over diameter outside 0.01 … 100
 * @see Source: Ocvirk, NACA TN 2808 (1952)
 * @example
 * ```ts
 * const film = shortBearing({ eccentricity: ratio(0.4), lengthToDiameter: ratio(0.25) });
 * format(film.attitude, degree, 2); // "60.94 deg"
 * film.range; // "within"
 * ```
 */
export function shortBearing(place: {
  /** Distance of the two centres over the radial clearance, from 0.01 to 0.998 [-]. */
  readonly eccentricity: Ratio;
  /** Length over diameter [-]. */
  readonly lengthToDiameter: Ratio;
}): ShortFilm {
  guardFields('place', place, PLACE);
  const { eccentricity: e, lengthToDiameter } = place;
  eccentricityRatio('eccentricity', e);
  shortLengthToDiameter('lengthToDiameter', lengthToDiameter);
  const slender = lengthToDiameter ** 2;
  const root = 1 - e * e;
  // Where d/dθ (sin θ / h³) is zero.
  const cosine = (1 - Math.sqrt(1 + 24 * e * e)) / (4 * e);
  const peak = (slender * e * Math.sqrt(1 - cosine ** 2)) / (2 * (1 + e * cosine) ** 3);
  const inflow = 1 + e - (slender * e) / 3;
  const numbers = filmNumbers(
    { eccentricity: e, lengthToDiameter },
    {
      along: (slender * e * e) / (3 * root ** 2),
      across: (slender * Math.PI * e) / (12 * root ** 1.5),
      inflow,
      outflow: inflow - (1 - e),
      peak,
      peakAt: Math.acos(cosine),
      ruptureAt: Math.PI,
    },
  );
  return { ...numbers, range: slender <= 0.16 * (1 - e) ? 'within' : 'too long' };
}
