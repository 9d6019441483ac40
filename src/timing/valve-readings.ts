import { showIn } from '../judging/internal.js';
import { type Angle, degree, RebuildInputError } from '../quantities/index.js';
import { type CrankPlace, pastTopOf, refuseCrankPlace } from './crank-place.js';
import { HALF, turnedNear, WHOLE } from './turns.js';

/**
 * Where the valves of a cylinder open and close, each read at the same lift. What was not read is left out.
 */
export interface ValveReadings {
  /** Where the inlet valve opens. */
  readonly inletOpens?: CrankPlace;
  /** Where it closes. */
  readonly inletCloses?: CrankPlace;
  /** Where the exhaust valve opens. */
  readonly exhaustOpens?: CrankPlace;
  /** Where it closes. */
  readonly exhaustCloses?: CrankPlace;
}

/** What opens or closes. */
export type ValveEvent = 'inletOpens' | 'inletCloses' | 'exhaustOpens' | 'exhaustCloses';

/**
 * The bottom at the end of the inlet stroke, in a cycle of two turns that begins at the firing top. The exhaust valve
 * opens near the bottom at a half; it closes, and the inlet valve opens, near the top at a whole.
 */
const LAST_BOTTOM = /* @__PURE__ */ degree(540);

/** The names of all readings. */
export const VALVE_EVENTS = ['inletOpens', 'inletCloses', 'exhaustOpens', 'exhaustCloses'] as const;

/** Where the events are in the cycle, those that were read. */
export type InCycle = Readonly<Record<ValveEvent, Angle | undefined>>;

/**
 * The least that a valve is open for, and how far an event may be from its own dead centre, with what rounding may
 * add.
 */
const SHORTEST = /* @__PURE__ */ degree(19.99999);
const FARTHEST = /* @__PURE__ */ degree(100.00001);

/** Refuses readings that are no places, or in no order; gives where they are in the cycle. */
export function guardValveReadings(at: string, readings: ValveReadings): InCycle {
  const cycle = {
    inletOpens: placeInCycle(at, 'inletOpens', WHOLE, readings.inletOpens),
    inletCloses: placeInCycle(at, 'inletCloses', LAST_BOTTOM, readings.inletCloses),
    exhaustOpens: placeInCycle(at, 'exhaustOpens', HALF, readings.exhaustOpens),
    exhaustCloses: placeInCycle(at, 'exhaustCloses', WHOLE, readings.exhaustCloses),
  };
  guardOpenFirst(at, 'inletCloses', cycle.inletOpens, cycle.inletCloses);
  guardOpenFirst(at, 'exhaustCloses', cycle.exhaustOpens, cycle.exhaustCloses);
  return cycle;
}

/**
 * Where an event is in the cycle; `at` is put before its name. What is far from its own dead centre was written down
 * wrongly.
 */
function placeInCycle(
  at: string,
  event: ValveEvent,
  home: number,
  place: CrankPlace | undefined,
): Angle | undefined {
  if (place === undefined) return undefined;
  const angle = turnedNear(pastTopOf(place), home) as Angle;
  if (Math.abs(angle - home) <= FARTHEST) return angle;
  const parameter = `${at}${event}`;
  if (Number.isNaN(angle)) refuseCrankPlace(parameter, place);
  throw new RebuildInputError({
    parameter,
    value: place,
    shown: `${showIn(place.angle, degree)} ${place.before === undefined ? 'after' : 'before'} ${place.before ?? place.after}`,
    expected: `within 100 degrees of ${home === WHOLE ? 'top' : 'bottom'} dead centre`,
    hint: 'Inlet opens and exhaust closes near the top, inlet closes and exhaust opens near the bottom. Are before and after swapped, or top and bottom?',
  });
}

/** Refuses a valve that closes before it opens, or as good as at once. */
function guardOpenFirst(
  at: string,
  closing: ValveEvent,
  opens: Angle | undefined,
  closes: Angle | undefined,
): void {
  if (opens === undefined || closes === undefined || closes - opens >= SHORTEST) return;
  const degrees = Math.round((Math.abs(closes - opens) / HALF) * 180);
  throw new RebuildInputError({
    parameter: `${at}${closing}`,
    value: closes,
    shown: `${degrees} degrees ${closes > opens ? 'after' : 'before'} it opens`,
    expected: 'at least 20 degrees of the crank after the valve opens',
    hint: 'A valve closes after it opens. Are before and after swapped, or the two places?',
  });
}
