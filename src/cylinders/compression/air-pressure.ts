import { guardFields } from '../../judging/internal.js';
import { airPressure } from '../../motion/internal.js';
import {
  type GaugePressure,
  type Length,
  type Pressure,
  standardAtmosphere,
} from '../../quantities/index.js';
import { altitudeAboveSea, compressionReading } from './domains.js';

/**
 * Pressure of the air at a height above the sea, by the standard atmosphere. The weather moves the real one by some
 * hundredths either way: a barometer that shows the pressure on the spot, not that reduced to sea level, is better.
 *
 *     pressure = (1 - 0.0065 / 288.15 * altitude) ^ 5.25588 * 101325
 *
 * @param altitude - height above the sea [m]
 * @returns absolute pressure of the air [Pa]
 * @throws {RebuildInputError} when the altitude is not finite or out of range
 * @see Source: ISO 2533, the layer below 11 km; worked check in tests/published/compression.test.ts
 * @example
 * ```ts
 * format(standardAirPressure(foot(5000)), psi); // "12.2 psi"
 * ```
 */
export function standardAirPressure(altitude: Length): Pressure {
  const colder = 1 - LAPSE * altitudeAboveSea('altitude', altitude);
  return (standardAtmosphere * colder ** EXPONENT) as Pressure;
}

/** 0.0065 K for each metre, of 288.15 K. */
const LAPSE = 2.255_769_564_462_953e-5;
/** 9.80665 m/s² / (287.05287 J/(kg·K) * 0.0065 K/m). */
const EXPONENT = 5.255_88;

const MOVED = ['reading', 'from', 'to'] as const;

/**
 * What a compression gauge shows of the same cylinder in thinner or thicker air: a figure of a manual, which mostly is
 * for sea level, for a workshop on a hill. Every pressure in the cylinder goes with that of the air, and so does what
 * the gauge shows above it.
 *
 *     gauge = reading * to / from
 *
 * Some service tables go by the density of the air instead, which falls less: 0.862 at 5000 ft, where the
 * pressure is 0.832. By them a sound engine looks a little weak.
 *
 * @param moved - a gauge reading or figure, the air that it is of, and the air that it is wanted for
 * @returns what the gauge would show [Pa]
 * @throws {RebuildInputError} when a field is misspelt, or a value is not finite or out of range
 * @see Source: gas law; ISO 2533 for the standard atmosphere
 * @example
 * ```ts
 * const here = compressionInAir({
 *   reading: psiGauge(90), from: standardAtmosphere, to: standardAirPressure(foot(5000)),
 * });
 * format(here, psiGauge); // "74.9 psi gauge"
 * ```
 */
export function compressionInAir(moved: {
  /** What a gauge shows in the first air [Pa]. */
  readonly reading: GaugePressure;
  /** Absolute pressure of the air that it is of; `standardAtmosphere` at the sea [Pa]. */
  readonly from: Pressure;
  /** Absolute pressure of the air that it is wanted for [Pa]. */
  readonly to: Pressure;
}): GaugePressure {
  guardFields('moved', moved, MOVED);
  const reading = compressionReading('reading', moved.reading);
  const from = airPressure('from', moved.from);
  return ((reading * airPressure('to', moved.to)) / from) as GaugePressure;
}
