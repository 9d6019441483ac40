import { guardBetween, guardList, noneOr, showIn, showLength } from '../judging/internal.js';
import {
  type Angle,
  degree,
  kilogram,
  kPa,
  type Length,
  type Mass,
  type Pressure,
  type Ratio,
  RebuildInputError,
  type RotationalSpeed,
  ratio,
  rpm,
} from '../quantities/index.js';
import { rodCentres } from './domains.js';

/** Two turns of the crank: a whole four-stroke cycle. */
export const CYCLE = 12.566370614359172;

/** Standing still, or from a revolution in ten minutes to 47 000 rpm. */
export const guardSpeed = (parameter: string, value: RotationalSpeed): RotationalSpeed =>
  guardBetween(parameter, value, rpm, [noneOr(0.01, value), 5000], 'rpm(1800)');

/** Pistons and halves of rods; nothing where it is to be left out. */
export const guardMass = (parameter: string, value: Mass): Mass =>
  guardBetween(parameter, value, kilogram, [0, 2000], 'kilogram(0.45)');

/** Absolute pressures, from a deep vacuum to more than any cylinder holds. */
export const guardPressure = (parameter: string, value: Pressure): Pressure =>
  guardBetween(parameter, value, kPa, [1000, 5e7], 'kPa(95)');

/** A polytropic exponent. */
export const guardExponent = (parameter: string, value: Ratio): Ratio =>
  guardBetween(parameter, value, ratio, [1, 1.7], 'ratio(1.32)');

/** An angle of the crank within bounds, in degrees. */
export function guardDegrees(
  parameter: string,
  value: Angle,
  [least, most]: readonly [least: number, most: number],
): Angle {
  const radians = Math.PI / 180;
  return guardBetween(parameter, value, degree, [least * radians, most * radians], 'degree(15)');
}

/** Refuses a rod that could not follow its crank. */
export function guardRodLength(parameter: string, value: Length, stroke: Length): Length {
  rodCentres(parameter, value);
  const crank = stroke / 2;
  if (value >= 1.2 * crank && value <= 50 * crank) return value;
  throw new RebuildInputError({
    parameter,
    value,
    shown: showLength(value),
    expected: 'from 0.6 to 25 times the stroke',
    problem: `cannot belong to a stroke of ${showLength(stroke)}`,
    hint: 'The rod is measured from centre to centre. A digit has slipped, or the units are mixed.',
  });
}

/** Least number of places that a cycle may be described by, and the widest gap between two. */
const FEWEST = 24;
const WIDEST = 0.5235987761;

/**
 * Refuses a list that does not go once around the cycle: places in order, from 0 to
 * less than 720 degrees of the crank, with no gap of more than 30 degrees.
 */
export function guardCycle<T extends { readonly crankAngle: Angle }>(
  parameter: string,
  places: readonly T[],
  guardPlace: (parameter: string, place: T) => void,
): readonly T[] {
  guardList(parameter, places, FEWEST, 'places around the cycle');
  let before = Number.NEGATIVE_INFINITY;
  places.forEach((place, i) => {
    const at = `${parameter}[${i}]`;
    guardPlace(at, place);
    const angle = guardBetween(
      `${at}.crankAngle`,
      place.crankAngle,
      degree,
      [0, CYCLE * (1 - 1e-12)],
      'degree(90)',
    );
    // A hundredth of a degree apart at least, or slopes between them mean nothing.
    if (i > 0 && (angle - before < 1.7e-4 || angle - before > WIDEST)) {
      throw unevenCycle(`${at}.crankAngle`, angle);
    }
    before = angle;
  });
  const first = places[0]?.crankAngle ?? 0;
  const overTheEnd = first + CYCLE - before;
  if (overTheEnd < 1.7e-4 || overTheEnd > WIDEST) throw unevenCycle(parameter, places);
  return places;
}

function unevenCycle(parameter: string, value: unknown): RebuildInputError {
  return new RebuildInputError({
    parameter,
    value,
    ...(typeof value === 'number' && { shown: showIn(value as Angle, degree) }),
    expected:
      'in rising order once around the 720 degrees of a cycle, no more than 30 degrees apart',
    hint: 'Start at or after the firing top centre, 0, and end before 720 degrees.',
  });
}
