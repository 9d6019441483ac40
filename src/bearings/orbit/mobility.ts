import { guardFields } from '../../judging/internal.js';
import { type Ratio, RebuildInputError } from '../../quantities/index.js';
import { rounded } from '../../quantities/internal.js';
import { eccentricityAlong, orbitLengthToDiameter } from './domains.js';

/** Where the journal stands in its bearing, in clearance circles, seen from the load. */
export interface PlaceInBearing {
  /** Eccentricity ratio in the direction of the load [-]. */
  readonly along: Ratio;
  /** Eccentricity ratio across it [-]. */
  readonly across: Ratio;
  /** Length of the bearing over its diameter [-]. */
  readonly lengthToDiameter: Ratio;
}

/** How readily the journal gives way, in units of load * (clearance / diameter)² / (viscosity * length * diameter). */
export interface JournalMobility {
  /** In the direction of the load [-]. */
  readonly along: Ratio;
  /** Across it; it points back to the middle [-]. */
  readonly across: Ratio;
}

const PLACE = ['along', 'across', 'lengthToDiameter'] as const;

/**
 * How readily a journal gives way to a load: its mobility, of a short bearing. Times the load it is
 * the speed of the journal, as seen by one who turns halfway between journal and shell.
 *
 *     (L/D)² along = (1 - x)^2.5 / π
 *     (L/D)² across = -4 y (1 - x)^1.5 / π²
 *     d(x, y)/dt = load * (radial clearance / radius)² / (viscosity * L * D) * mobility
 *
 * A fit to the half film of a short bearing: within 6 % of it to an eccentricity of 0.8, 8 % to 0.9, 11 % to
 * 0.99. A short bearing takes no account of the oil that flows around, so that a longer one gives way
 * more readily than this.
 *
 * @param place - where the journal stands, seen from the load, and length over diameter [-]
 * @returns mobility along and across the load [-]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite, the length is not from a
 * fiftieth of the diameter to twice it, or the journal is not inside its clearance
 * @see Source: J. F. Booker, short-bearing mobility, from memory; derived again in the tests
 * @example
 * ```ts
 * const place = { along: ratio(0.6), across: ratio(-0.2), lengthToDiameter: ratio(0.5) };
 * shortBearingMobility(place).along.toFixed(4); // "0.1288"
 * shortBearingMobility(place).across.toFixed(4); // "0.0820"
 * ```
 */
export function shortBearingMobility(place: PlaceInBearing): JournalMobility {
  guardFields('place', place, PLACE);
  const along = eccentricityAlong('along', place.along);
  const across = eccentricityAlong('across', place.across);
  const lengthToDiameter = orbitLengthToDiameter('lengthToDiameter', place.lengthToDiameter);
  if (Math.hypot(along, across) >= 1) {
    throw new RebuildInputError({
      parameter: 'place',
      value: place,
      shown: `an eccentricity ratio of ${rounded(Math.hypot(along, across))}`,
      expected: 'below 1',
      problem: 'leaves no film',
      hint: 'Eccentricity is counted in clearance circles: 0 is the middle, 1 touches.',
    });
  }
  const mobility = shortMobility(lengthToDiameter);
  mobility.set(along, across);
  return { along: mobility.along as Ratio, across: (mobility.across + 0) as Ratio };
}

/** A mobility for the inner loop: set to a place, it holds the result, and nothing is allocated. */
export interface Mobility {
  along: number;
  across: number;
  set(along: number, across: number): void;
}

/** The short bearing's. Outside of the clearance it is not a number. */
export function shortMobility(lengthToDiameter: number): Mobility {
  const perSquare = 1 / (lengthToDiameter * lengthToDiameter);
  const alongScale = perSquare / Math.PI;
  const acrossScale = (-4 * perSquare) / (Math.PI * Math.PI);
  const mobility: Mobility = {
    along: 0,
    across: 0,
    set(x, y) {
      const gap = 1 - x;
      const power = gap * Math.sqrt(gap);
      mobility.along = alongScale * power * gap;
      mobility.across = acrossScale * power * y;
    },
  };
  return mobility;
}
