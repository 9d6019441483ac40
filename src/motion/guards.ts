import { guardList, ROUNDING, showIn, showLength } from '../judging/internal.js';
import { type Angle, degree, type Length, RebuildInputError } from '../quantities/index.js';
import { cycleAngle, rodCentres } from './domains.js';

/** Two turns of the crank: a whole four-stroke cycle. */
export const CYCLE = /* @__PURE__ */ degree(720);

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

/** Least number of places that a cycle may be described by. */
const FEWEST = 24;
/** The widest gap between two places. */
const WIDEST = /* @__PURE__ */ degree(30);
/** The narrowest: closer together than that, slopes between two places mean nothing. */
const NARROWEST = /* @__PURE__ */ degree(0.01);

/** Whether a gap between two places is neither too wide nor too narrow, however it was rounded. */
const isEven = (gap: number) => gap >= NARROWEST * (1 - ROUNDING) && gap <= WIDEST * (1 + ROUNDING);

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
    const angle = cycleAngle(`${at}.crankAngle`, place.crankAngle);
    if (i > 0 && !isEven(angle - before)) {
      throw unevenCycle(`${at}.crankAngle`, angle);
    }
    before = angle;
  });
  const first = places[0]?.crankAngle ?? 0;
  if (!isEven(first + CYCLE - before)) throw unevenCycle(parameter, places);
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
