import { guardBetween, ROUNDING } from '../judging/internal.js';
import {
  type KinematicViscosity,
  second,
  type Temperature,
  type Time,
} from '../quantities/index.js';
import { sayboltTemperature, sayboltViscosity } from './domains.js';

/**
 * Saybolt Universal viscosity of an oil: the seconds that 60 mL of it take to
 * run out of the standard tube.
 *
 *     divisor = (3930.2 + 262.7 * viscosity + 23.97 * viscosity² + 1.646 * viscosity³) * 1e-5
 *     secondsAt100F = 4.6324 * viscosity + (1 + 0.03264 * viscosity) / divisor   viscosity in mm²/s
 *     f = 1 + 0.000061 * (temperature * 1.8 - 459.67 - 100)
 *     time = secondsAt100F * f
 *
 * @param viscosity - kinematic viscosity, at least 1.77 mm²/s [m²/s]
 * @param temperature - temperature of both viscosities, from 0 to 350 °F [K]
 * @returns Saybolt Universal seconds [s]
 * @throws {RebuildInputError} when a value is not finite or out of range
 * @see Source: ASTM D2161, equations for Saybolt Universal viscosity
 * @example
 * ```ts
 * format(sayboltUniversal(centistokes(100), fahrenheit(100)), second); // "463.5 s"
 * ```
 */
export function sayboltUniversal(viscosity: KinematicViscosity, temperature: Temperature): Time {
  sayboltViscosity('viscosity', viscosity);
  return secondsAt(viscosity * 1e6, factorAt(temperature)) as Time;
}

/**
 * Kinematic viscosity of an oil from its Saybolt Universal seconds:
 * `sayboltUniversal` turned round, by halving what it lies between until
 * nothing is left to halve.
 *
 *     sayboltUniversal(viscosity, temperature) = time
 *
 * @param time - Saybolt Universal seconds, from about 32 [s]
 * @param temperature - temperature of both viscosities, from 0 to 350 °F [K]
 * @returns kinematic viscosity [m²/s]
 * @throws {RebuildInputError} when a value is not finite or out of range
 * @see Source: ASTM D2161, equations for Saybolt Universal viscosity
 * @example
 * ```ts
 * format(kinematicFromSaybolt(second(150), fahrenheit(100)), centistokes); // "31.89 cSt"
 * ```
 */
export function kinematicFromSaybolt(time: Time, temperature: Temperature): KinematicViscosity {
  const factor = factorAt(temperature);
  // Where the two are known of each other, mm²/s.
  const [thinnest, thickest] = [sayboltViscosity.least * 1e6, sayboltViscosity.most * 1e6];
  const [least, most] = [secondsAt(thinnest, factor), secondsAt(thickest, factor)];
  // What the other direction gives at its ends is taken back, rounding and all.
  guardBetween(
    'time',
    time,
    second,
    [least * (1 - ROUNDING), most * (1 + ROUNDING)],
    'second(150)',
  );
  // The second term of the equation is never below zero nor above 25.5.
  let high = Math.min(thickest, time / (4.6324 * factor));
  let low = Math.max(thinnest, high - 6);
  for (;;) {
    const middle = low + (high - low) / 2;
    if (middle <= low || middle >= high) return (middle / 1e6) as KinematicViscosity;
    if (secondsAt(middle, factor) < time) low = middle;
    else high = middle;
  }
}

/** The equation for 100 °F, times the factor of another temperature. */
function secondsAt(v: number, factor: number): number {
  const slow = (3930.2 + 262.7 * v + 23.97 * v * v + 1.646 * v * v * v) * 1e-5;
  return factor * (4.6324 * v + (1 + 0.03264 * v) / slow);
}

/** How much longer the tube, grown by the warmth, takes than at 100 °F. */
function factorAt(temperature: Temperature): number {
  sayboltTemperature('temperature', temperature);
  return 1 + 0.000061 * (temperature * 1.8 - 459.67 - 100);
}
