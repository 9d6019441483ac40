import { guardFields, guardList, showIn, showNumber } from '../judging/internal.js';
import {
  celsius,
  centistokes,
  type KinematicViscosity,
  RebuildInputError,
  type Temperature,
} from '../quantities/index.js';
import { liquidViscosity, oilTemperature } from './domains.js';

/** One point of an oil's viscosity line. */
export interface ViscosityPoint {
  /** Temperature [K]. */
  readonly temperature: Temperature;
  /** Kinematic viscosity at it [m²/s]. */
  readonly viscosity: KinematicViscosity;
}

const POINT = ['temperature', 'viscosity'] as const;

/** Two points of an oil's viscosity line, usually 40 °C and 100 °C from its data sheet. More or fewer are refused. */
export type ViscosityLine = readonly ViscosityPoint[];

/** A line that has two points. */
export type TwoPoints = readonly [ViscosityPoint, ViscosityPoint];

/**
 * Kinematic viscosity of an oil at a temperature, on the straight line that
 * ASTM D341 draws through two known points.
 *
 *     W(v) = log10(log10(v + 0.7 + exp(-1.47 - 1.84 * v - 0.51 * v²)))
 *     Y(w) = 10^(10^w) - 0.7
 *     V(y) = y - exp(-0.7487 - 3.295 * y + 0.6119 * y² - 0.3193 * y³)
 *     w_1 = W(viscosity_1)
 *     w_2 = W(viscosity_2)
 *     B = (w_2 - w_1) / (log10(temperature_2) - log10(temperature_1))
 *     viscosity = V(Y(w_1 + B * (log10(temperature) - log10(temperature_1))))
 *
 * Viscosities are in mm²/s there, and temperatures in kelvin.
 *
 * @param line - two points of the oil, at different temperatures
 * @param temperature - where the viscosity is wanted, from -40 to 150 °C [K]
 * @returns kinematic viscosity [m²/s]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, there are not two
 * points, the two temperatures are equal, the oil would thicken when heated, the line would have to be taken too
 * far, or the result is outside the range of the equation
 * @see Source: ASTM D341, equations and Appendix X1
 * @example
 * ```ts
 * const line = [
 *   { temperature: celsius(40), viscosity: centistokes(32) },
 *   { temperature: celsius(100), viscosity: centistokes(5.4) },
 * ];
 * format(viscosityAt(line, celsius(80)), centistokes); // "8.53 cSt"
 * ```
 */
export function viscosityAt(line: ViscosityLine, temperature: Temperature): KinematicViscosity {
  guardLine('line', line);
  oilTemperature('temperature', temperature);
  guardOnLine(temperature);
  return alongLine(line, temperature);
}

/** Where a temperature lies against the -40 to 150 °C that a viscosity line is trusted in. */
export type LineRange = 'within' | 'below' | 'above';

/** A viscosity from a line that may have been taken further than it is trusted. */
export interface ExtrapolatedViscosity {
  /** Kinematic viscosity at the temperature [m²/s]. */
  readonly viscosity: KinematicViscosity;
  /** Within -40 to 150 °C, or below or above it: then an estimate. */
  readonly range: LineRange;
}

/**
 * The same line as `viscosityAt`, taken further where the temperature is
 * outside -40 to 150 °C, and flagged there. Below, wax can make the oil far
 * thicker than the line says; above, it cracks and boils.
 *
 *     viscosity = V(Y(w_1 + B * (log10(temperature) - log10(temperature_1))))
 *
 * W, Y, V, B and the units are those of {@link viscosityAt}.
 *
 * @param line - two points of the oil, at different temperatures
 * @param temperature - where the viscosity is wanted, from -73 to 227 °C [K]
 * @returns kinematic viscosity [m²/s], and whether the temperature is within -40 to 150 °C
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, there are not two
 * points, the two temperatures are equal, the oil would thicken when heated, or the result is outside the range
 * of the equation
 * @see Source: ASTM D341, equations and Appendix X1
 * @example
 * ```ts
 * const line = [
 *   { temperature: celsius(40), viscosity: centistokes(32) },
 *   { temperature: celsius(100), viscosity: centistokes(5.4) },
 * ];
 * const { viscosity, range } = extrapolatedViscosity(line, celsius(180));
 * format(viscosity, centistokes); // "1.69 cSt"
 * range; // "above"
 * ```
 */
export function extrapolatedViscosity(
  line: ViscosityLine,
  temperature: Temperature,
): ExtrapolatedViscosity {
  guardLine('line', line);
  oilTemperature('temperature', temperature);
  return { viscosity: alongLine(line, temperature), range: lineRangeOf(temperature) };
}

/** Where a temperature lies against -40 to 150 °C. */
export function lineRangeOf(temperature: Temperature): LineRange {
  if (temperature < 233.15) return 'below';
  return temperature > 423.15 ? 'above' : 'within';
}

/** Refuses a temperature that the line would have to be taken further for. */
export function guardOnLine(temperature: Temperature): void {
  if (lineRangeOf(temperature) === 'within') return;
  throw new RebuildInputError({
    parameter: 'temperature',
    value: temperature,
    shown: showIn(temperature, celsius),
    expected: 'from -40 to 150 °C',
    problem: 'is outside -40 … 150 °C',
    hint: 'Past it the line is an estimate: extrapolatedViscosity takes it further and says so.',
  });
}

/** The line of a sound oil, however far. */
export function alongLine(line: ViscosityLine, temperature: Temperature): KinematicViscosity {
  const { w, t, slope } = straight(line);
  return viscosityOf(w + slope * (Math.log10(temperature) - t), temperature);
}

/** Where the line of a sound oil comes to a viscosity. */
export function temperatureOn(line: ViscosityLine, viscosity: KinematicViscosity): Temperature {
  const { w, t, slope } = straight(line);
  return (10 ** (t + (doubleLog(viscosity) - w) / slope)) as Temperature;
}

/** A point of the straight line, log log Z over log T, and its slope. */
function straight(line: ViscosityLine) {
  const [first, second] = line as TwoPoints;
  const w = doubleLog(first.viscosity);
  const t = Math.log10(first.temperature);
  const slope = (doubleLog(second.viscosity) - w) / (Math.log10(second.temperature) - t);
  return { w, t, slope };
}

const SQUARE_MM = 1e-6;

/** log10 log10 Z of ASTM D341: a straight line in log T, and what ASTM D7152 blends. */
export function doubleLog(viscosity: KinematicViscosity): number {
  const v = viscosity / SQUARE_MM;
  return Math.log10(Math.log10(v + 0.7 + Math.exp(-1.47 - 1.84 * v - 0.51 * v * v)));
}

/** The inverse that ASTM D341 gives. */
export function viscosityOf(w: number, cause: unknown): KinematicViscosity {
  const y = 10 ** (10 ** w) - 0.7;
  const v = y - Math.exp(-0.7487 - 3.295 * y + 0.6119 * y * y - 0.3193 * y ** 3);
  // The inverse is itself a fit, a hair off at the low end of the range.
  if (v > 0.2 && v < 2e7) return (v * SQUARE_MM) as KinematicViscosity;
  throw new RebuildInputError({
    parameter: 'result',
    value: cause,
    shown: `a viscosity of ${showNumber(v)} mm²/s`,
    expected: 'from 0.2 to 20 000 000 mm²/s',
    problem: 'is outside 0.2 … 20 000 000 mm²/s, where ASTM D341 holds',
    hint: 'Check the two points of the line and the temperature.',
  });
}

/** Refuses what is not two points of one oil. */
export function guardLine(parameter: string, line: ViscosityLine): void {
  if (!Array.isArray(line as unknown) || line.length !== 2) {
    throw new RebuildInputError({
      parameter,
      value: line,
      expected: 'a list of two points',
      hint: 'Take them from the oil data sheet, usually at 40 and 100 °C.',
    });
  }
  // Of two places, one may still be a hole.
  guardList(parameter, line, 2, 'points');
  line.forEach((point, i) => {
    guardFields(`${parameter}[${i}]`, point, POINT);
    oilTemperature(`${parameter}[${i}].temperature`, point.temperature);
    liquidViscosity(`${parameter}[${i}].viscosity`, point.viscosity);
  });
  const [a, b] = line as TwoPoints;
  const apart = b.temperature - a.temperature;
  if (Math.abs(apart) < 1 || (b.viscosity - a.viscosity) * apart >= 0) {
    throw new RebuildInputError({
      parameter,
      value: line,
      shown: `${showPoint(a)} and ${showPoint(b)}`,
      expected: 'two points at least 1 K apart, the hotter one thinner',
      problem: 'cannot be two points of one oil',
      hint: 'Oil thins as it warms: are the two viscosities swapped?',
    });
  }
}

const showPoint = ({ temperature, viscosity }: ViscosityPoint) =>
  `${showIn(viscosity, centistokes)} at ${showIn(temperature, celsius)}`;
