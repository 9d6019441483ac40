import type {
  Angle,
  Flow,
  GaugePressure,
  Length,
  Power,
  Pressure,
  Ratio,
  Torque,
} from '../../quantities/index.js';
import type { FilmNumbers } from './film-numbers.js';
import { findFilm } from './finite-bearing.js';
import {
  guardOiledBearing,
  type LoadedBearing,
  type OiledBearing,
  slenderness,
} from './journal-bearing.js';
import { centredDrag, type Drag } from './petroff.js';
import { sommerfeldOf } from './sommerfeld.js';

/** A journal that floats on its oil. */
export interface FloatingFilm extends Drag {
  /** The journal floats, somewhere between the middle and the shell. */
  readonly outcome: 'floats';
  /** Least film [m]. */
  readonly film: Length;
  /** Distance of the two centres over the radial clearance [-]. */
  readonly eccentricity: Ratio;
  /** From the load line on, the way the journal turns, to the least film [rad]. */
  readonly attitude: Angle;
  /** Coefficient of friction: drag at the journal's surface over the load [-]. */
  readonly friction: Ratio;
  /** Oil that the journal draws through the widest gap in a time [m³/s]. */
  readonly flow: Flow;
  /** Oil that leaves at the two ends in a time and has to be fed again [m³/s]. */
  readonly sideFlow: Flow;
  /** Load over journal times length [Pa]. */
  readonly meanPressure: Pressure;
  /** Greatest pressure in the film [Pa]. */
  readonly peakPressure: GaugePressure;
  /** The film in plain ratios. */
  readonly numbers: FilmNumbers;
}

/** How a journal runs in its oil under a steady load. */
export type Film =
  | FloatingFilm
  | (Drag & {
      /** So little load that the journal runs in the middle. */
      readonly outcome: 'hardly loaded';
      /** Least film, at least: 0.99 of the radial clearance [m]. */
      readonly film: Length;
    })
  | {
      /** No film carries the journal. */
      readonly outcome: 'no film';
      /**
       * It stands still and draws in no oil, the load has it within a five-hundredth of the radial clearance,
       * or friction heats the oil past all that is known of it.
       */
      readonly because: 'it stands still' | 'the load is too great' | 'it runs too hot';
      /** None that can be counted on [m]. */
      readonly film: Length;
    };

/**
 * The oil film of a bearing under a steady load, in oil of one viscosity. A bearing with an oil groove
 * across its load, a worn or a split one carries less; a load that comes and goes is for `bigEndOrbit`.
 *
 * A loose bearing can show a thicker film than a tight one at the same viscosity. That does not make
 * it safe: judge a clearance by its oil flow, its temperature (`heatBalance`) and the knock of the load.
 *
 * @param bearing - sizes, viscosity of the oil in the film, speed and load
 * @returns the film, or why there is none: a journal that stands still has none, which is a verdict
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, the bearing is
 * too short for its journal, or the clearance leaves no room to turn
 * @see Source: as `finiteBearing`; worked checks in tests/published/film.test.ts
 * @example
 * ```ts
 * const film = filmThickness({
 *   journal: inch(1.5), length: inch(1.5), clearance: inch(0.003),
 *   viscosity: reyn(4e-6), speed: rpm(1800), load: lbf(500),
 * });
 * film.outcome; // "floats"
 * format(film.film, tenth); // "6.4 tenth"
 * ```
 */
export function filmThickness(bearing: OiledBearing): Film {
  return filmOf(guardOiledBearing(bearing));
}

/** The film of a bearing that was checked. */
export function filmOf(bearing: OiledBearing): Film {
  const { journal, length, clearance, viscosity, speed, load } = bearing;
  if (speed === 0) return noFilm('it stands still');
  const found = load === 0 ? 'lighter' : findFilm(sommerfeldOf(bearing), slenderness(bearing));
  if (found === 'heavier') return noFilm('the load is too great');
  if (found === 'lighter') {
    const drag = centredDrag({ journal, length, clearance, viscosity, speed });
    return { outcome: 'hardly loaded', film: (0.495 * clearance) as Length, ...drag };
  }
  const friction = (found.friction * clearance) / journal;
  const torque = (friction * load * journal) / 2;
  const meanPressure = load / (journal * length);
  return {
    outcome: 'floats',
    film: ((found.leastFilm * clearance) / 2) as Length,
    eccentricity: found.eccentricity,
    attitude: found.attitude,
    friction: friction as Ratio,
    torque: torque as Torque,
    power: (torque * speed) as Power,
    ...flowsOf(bearing, found),
    meanPressure: meanPressure as Pressure,
    peakPressure: (meanPressure / found.pressureRatio) as GaugePressure,
    numbers: found,
  };
}

/** The verdict that no film carries the journal. */
export const noFilm = (because: (Film & { outcome: 'no film' })['because']): Film => ({
  outcome: 'no film',
  because,
  film: 0 as Length,
});

/** Flow through the widest gap, and what of it leaves at the ends. */
export function flowsOf(
  { journal, length, clearance, speed }: LoadedBearing,
  numbers: FilmNumbers,
): Pick<FloatingFilm, 'flow' | 'sideFlow'> {
  // rcNL of the radius and the radial clearance.
  const unit = (journal * clearance * length * speed) / (8 * Math.PI);
  const flow = numbers.flow * unit;
  return { flow: flow as Flow, sideFlow: (flow * numbers.sideFlow) as Flow };
}
