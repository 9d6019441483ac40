import { guardFields, guardObject, guardWord } from '../judging/internal.js';
import { type Angle, RebuildInputError } from '../quantities/index.js';
import { turnFromCentre, wheelReading } from './domains.js';
import { HALF, turnedNear } from './turns.js';

/** A dead centre of the crank. */
export type DeadCentre = 'top' | 'bottom';

/** A place of the crank as the trade writes it: 10° before top, `{ angle: degree(10), before: 'top' }`. */
export type CrankPlace =
  | {
      /** How far from the dead centre, up to half a turn [rad]. */
      readonly angle: Angle;
      /** The dead centre that comes next. */
      readonly before: DeadCentre;
      /** Not both. */
      readonly after?: never;
    }
  | {
      /** How far from the dead centre, up to half a turn [rad]. */
      readonly angle: Angle;
      /** The dead centre that was passed. */
      readonly after: DeadCentre;
      /** Not both. */
      readonly before?: never;
    };

const PLACE = ['angle', 'before', 'after'] as const;
const ON_WHEEL = ['reading', 'top', 'numbersRise'] as const;
const CENTRES = ['top', 'bottom'] as const;
const WAYS = ['forwards', 'backwards'] as const;

/**
 * How far a place is past the top, from half a turn before to a whole one after; NaN of what is no place. Sound
 * readings pass through this, which makes no names for errors.
 */
export function pastTopOf(place: CrankPlace): number {
  if (typeof place !== 'object' || place === null) return Number.NaN;
  for (const field in place) {
    if (field !== 'angle' && field !== 'before' && field !== 'after') return Number.NaN;
  }
  const { angle, before, after } = place;
  if (typeof angle !== 'number' || !(angle >= 0 && angle <= turnFromCentre.most)) return Number.NaN;
  if (after === undefined) {
    return before === 'top' ? -angle : before === 'bottom' ? HALF - angle : Number.NaN;
  }
  if (before !== undefined) return Number.NaN;
  return after === 'top' ? angle : after === 'bottom' ? HALF + angle : Number.NaN;
}

/** Refuses what is no place of the crank, by the name of what is wrong with it. */
export function refuseCrankPlace(parameter: string, place: CrankPlace): void {
  guardObject(parameter, place);
  guardFields(parameter, place, PLACE);
  const { before, after } = place;
  turnFromCentre(`${parameter}.angle`, place.angle);
  if (before === undefined) {
    guardWord(`${parameter}.after`, after, CENTRES);
    return;
  }
  guardWord(`${parameter}.before`, before, CENTRES);
  throw new RebuildInputError({
    parameter: `${parameter}.after`,
    value: after,
    expected: 'a place before a dead centre or after it',
    hint: "Leave out one of the two: { angle: degree(10), before: 'top' }.",
  });
}

/** The place that is so far past the top, from the dead centre that is given. */
export function placeFrom(centre: DeadCentre, pastTop: number): CrankPlace {
  const past = turnedNear(centre === 'top' ? pastTop : pastTop - HALF, 0);
  const angle = Math.abs(past) as Angle;
  return past < 0 ? { angle, before: centre } : { angle, after: centre };
}

/**
 * A reading of a degree wheel as a place of the crank: so far before or after the nearer dead centre.
 *
 *     angle = reading - top
 *
 * That holds just after the top, on a wheel whose numbers rise as the engine turns in its running direction. On a wheel
 * that is marked the other way before and after change places, so say which it is: turn the engine forwards a little
 * and look. At both dead centres the place is after them, by nothing. Take every reading with the crank turned in its
 * running direction, so that the gears have their slack on the same side.
 *
 * @param wheel - the reading, the reading at top dead centre as `topDeadCentre` gives it, and which way the numbers
 * rise
 * @returns the angle before or after top or bottom
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, or the way is unknown
 * @see Source: geometry
 * @example
 * ```ts
 * const place = crankPlace({ reading: degree(353), top: degree(3), numbersRise: 'forwards' });
 * place.before; // "top"
 * format(place.angle, degree); // "10.0 deg"
 * ```
 */
export function crankPlace(wheel: {
  /** What the degree wheel reads [rad]. */
  readonly reading: Angle;
  /** What it reads at top dead centre [rad]. */
  readonly top: Angle;
  /** Whether its numbers rise as the engine turns in its running direction. */
  readonly numbersRise: 'forwards' | 'backwards';
}): CrankPlace {
  guardFields('wheel', wheel, ON_WHEEL);
  const reading = wheelReading('reading', wheel.reading);
  const top = wheelReading('top', wheel.top);
  const way = guardWord('numbersRise', wheel.numbersRise, WAYS);
  const past = turnedNear(way === 'forwards' ? reading - top : top - reading, 0);
  return placeFrom(Math.abs(past) <= HALF / 2 ? 'top' : 'bottom', past);
}
