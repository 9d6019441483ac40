import type { Basis } from '../../judging/index.js';
import { diameter } from '../../judging/internal.js';
import {
  fahrenheit,
  inch,
  type Length,
  type Pressure,
  psi,
  type Ratio,
  type Temperature,
} from '../../quantities/index.js';

/** Who set the rule. */
export const TRUMPLER: Basis = {
  kind: 'published',
  source:
    "Trumpler's criteria as in Shigley's Mechanical Engineering Design, 9th ed., section 12-7 (from memory)",
};

/** The load that the film has to stand, over that in service [-]. */
export const trumplerLoad = 2 as Ratio;
/** The hottest that the oil may become [K]. */
export const trumplerHottest = (): Temperature => fahrenheit(250);
/** The most load over projected area while the shaft starts to turn [Pa]. */
export const trumplerStart = (): Pressure => psi(300);

/**
 * The least film that Trumpler asks for, so that what is worn off by starting and stopping passes through.
 *
 *     film = 0.0002 in + 0.00004 * journal
 *
 * @param journal - journal diameter [m]
 * @returns least film [m]
 * @throws {RebuildInputError} when a value is not finite or out of range
 * @see Source: Shigley's Mechanical Engineering Design, 9th ed., section 12-7, from memory
 * @example
 * ```ts
 * format(trumplerFilm(inch(1.5948)), micrometre); // "6.7 µm"
 * ```
 */
export function trumplerFilm(journal: Length): Length {
  return (inch(0.0002) + 0.00004 * diameter('journal', journal)) as Length;
}
