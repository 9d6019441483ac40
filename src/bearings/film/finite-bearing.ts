import { guardFields, showNumber } from '../../judging/internal.js';
import { rootOfFalling } from '../../numerics/index.js';
import { type Angle, type Ratio, RebuildInputError } from '../../quantities/index.js';
import { eccentricityRatio, sommerfeldRatio } from './domains.js';
import { type MappedFilm, mapFilm, mapSommerfeld } from './film-map.js';
import {
  type FilmNumbers,
  type FilmPlace,
  guardLengthToDiameter,
  guardPlace,
  journalFriction,
  type LengthToDiameter,
} from './film-numbers.js';

const PLACE = ['eccentricity', 'lengthToDiameter'] as const;
const LOADED_PLACE = ['sommerfeld', 'lengthToDiameter'] as const;

/**
 * The oil film of a steadily loaded full bearing of finite length, from its eccentricity. It reads a
 * map of solutions of the Reynolds equation (`solveReynolds` computes one directly) and differs from them
 * by less than 0.5 %: side flow by so much of the flow, angles by less than 1°, and the
 * place where the film breaks by 2°. The tables as printed are 3 and 6 % off the exact flow of an
 * infinitely long bearing at eccentricities of 0.8 and 0.9.
 *
 * @param place - eccentricity and length over diameter [-]
 * @returns the film in plain ratios
 * @throws {RebuildInputError} when a field is misspelt, the eccentricity is outside 0.01 … 0.998, or the
 * bearing is shorter than a tenth of its diameter
 * @see Source: Raimondi and Boyd, Trans. ASLE 1 (1958), for the numbers and their definitions; worked
 * checks in tests/published/film.test.ts
 * @example
 * ```ts
 * const film = finiteBearing({ eccentricity: ratio(0.6), lengthToDiameter: ratio(1) });
 * format(film.sommerfeld, ratio, 3); // "0.121 -"
 * format(film.flow, ratio, 2); // "4.33 -"
 * ```
 */
export function finiteBearing(place: FilmPlace): FilmNumbers {
  guardFields('place', place, PLACE);
  const { eccentricity, lengthToDiameter } = guardPlace(place);
  return fromMap(eccentricity, lengthToDiameter);
}

/** A bearing's length and how hard it is loaded. */
export interface LoadedPlace {
  /** Sommerfeld number (r/c)² µN/P, as `sommerfeldNumber` gives it [-]. */
  readonly sommerfeld: Ratio;
  /** Length over diameter, from 0.1 up, or `'infinite'` [-]. */
  readonly lengthToDiameter: LengthToDiameter;
}

/**
 * The oil film of a steadily loaded full bearing of finite length, from its load: `finiteBearing`
 * turned round.
 *
 * @param place - Sommerfeld number and length over diameter [-]
 * @returns the film in plain ratios
 * @throws {RebuildInputError} when a field is misspelt, the Sommerfeld number is one of an eccentricity outside
 * 0.01 … 0.998, or the bearing is shorter than a tenth of its diameter
 * @see Source: as `finiteBearing`
 * @example
 * ```ts
 * const film = finiteBearingAt({ sommerfeld: ratio(0.135), lengthToDiameter: ratio(1) });
 * format(film.leastFilm, ratio, 2); // "0.43 -"
 * ```
 */
export function finiteBearingAt(place: LoadedPlace): FilmNumbers {
  guardFields('place', place, LOADED_PLACE);
  const lengthToDiameter = guardLengthToDiameter('lengthToDiameter', place.lengthToDiameter);
  const sommerfeld = sommerfeldRatio('sommerfeld', place.sommerfeld);
  const found = findFilm(sommerfeld, lengthToDiameter);
  if (typeof found !== 'string') return found;
  throw new RebuildInputError({
    parameter: 'sommerfeld',
    value: sommerfeld,
    shown: showNumber(sommerfeld),
    expected: 'a film with an eccentricity of 0.01 to 0.998',
    problem: `has the journal ${found === 'lighter' ? 'nearly centred' : 'all but touching'}, off the map`,
    hint: 'filmThickness gives a verdict there, too.',
  });
}

/** The film at a Sommerfeld number, or to which side of the map it lies. */
export function findFilm(
  sommerfeld: number,
  lengthToDiameter: LengthToDiameter,
): FilmNumbers | 'lighter' | 'heavier' {
  const at = mapSommerfeld(diameterToLength(lengthToDiameter));
  const { least, most } = eccentricityRatio;
  if (sommerfeld > at(least)) return 'lighter';
  if (sommerfeld < at(most)) return 'heavier';
  const wanted = Math.log(sommerfeld);
  const eccentricity = rootOfFalling((e) => Math.log(at(e)) - wanted, least, most);
  return fromMap(eccentricity as Ratio, lengthToDiameter);
}

const diameterToLength = (lengthToDiameter: LengthToDiameter): number =>
  lengthToDiameter === 'infinite' ? 0 : 1 / lengthToDiameter;

function fromMap(eccentricity: Ratio, lengthToDiameter: LengthToDiameter): FilmNumbers {
  const film: MappedFilm = mapFilm(eccentricity, diameterToLength(lengthToDiameter));
  const { sommerfeld, attitude, outflow, through, pressureRatio, peakAt, ruptureAt } = film;
  const loadLine = Math.PI - attitude;
  const inflow = through + outflow;
  return {
    eccentricity,
    lengthToDiameter,
    sommerfeld: sommerfeld as Ratio,
    leastFilm: (1 - eccentricity) as Ratio,
    attitude: attitude as Angle,
    friction: journalFriction(eccentricity, sommerfeld, attitude),
    flow: (Math.PI * inflow) as Ratio,
    sideFlow: (outflow / inflow) as Ratio,
    pressureRatio: pressureRatio as Ratio,
    peakAngle: (peakAt - loadLine) as Angle,
    ruptureAngle: (ruptureAt - loadLine) as Angle,
  };
}
