import { showIn } from '../judging/internal.js';
import { type Angle, degree, RebuildInputError } from '../quantities/index.js';
import { type CrankPlace, guardCrankPlace } from './crank-place.js';
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
 * The dead centre that each event belongs to, in a cycle of two turns that begins at the firing top: bottom at a half, top
 * between exhaust and inlet at a whole, bottom at one and a half. A reading is taken to be near its own.
 */
const HOME: Readonly<Record<ValveEvent, number>> = {
  exhaustOpens: HALF,
  exhaustCloses: WHOLE,
  inletOpens: WHOLE,
  inletCloses: /* @__PURE__ */ degree(540),
};

/** The names of all readings. */
export const VALVE_EVENTS = ['inletOpens', 'inletCloses', 'exhaustOpens', 'exhaustCloses'] as const;

/** Where the events are in the cycle, those that were read. */
export type InCycle = { readonly [Event in ValveEvent]?: Angle };

/** The least that a valve is open for, and how far an event may be from its own dead centre, with what rounding may add. */
const SHORTEST = /* @__PURE__ */ degree(19.99999);
const FARTHEST = /* @__PURE__ */ degree(100.00001);

/** Refuses readings that are no places, or in no order; gives where they are in the cycle. `at` is put before each name. */
export function guardValveReadings(at: string, readings: ValveReadings): InCycle {
  const cycle: { -readonly [Event in ValveEvent]?: Angle } = {};
  for (const event of VALVE_EVENTS) {
    const place = readings[event];
    if (place !== undefined) cycle[event] = placeInCycle(`${at}${event}`, event, place);
  }
  guardOpenFirst(`${at}inletCloses`, cycle.inletOpens, cycle.inletCloses);
  guardOpenFirst(`${at}exhaustCloses`, cycle.exhaustOpens, cycle.exhaustCloses);
  return cycle;
}

/** Where an event is in the cycle. What is far from its own dead centre was written down wrongly. */
function placeInCycle(parameter: string, event: ValveEvent, place: CrankPlace): Angle {
  const home = HOME[event];
  const angle = turnedNear(guardCrankPlace(parameter, place), home) as Angle;
  if (Math.abs(angle - home) <= FARTHEST) return angle;
  throw new RebuildInputError({
    parameter,
    value: place,
    shown: `${showIn(place.angle, degree)} ${place.before === undefined ? 'after' : 'before'} ${place.before ?? place.after}`,
    expected: `within 100 degrees of ${home === WHOLE ? 'top' : 'bottom'} dead centre`,
    hint: 'Inlet opens and exhaust closes near the top, inlet closes and exhaust opens near the bottom. Are before and after swapped, or top and bottom?',
  });
}

/** Refuses a valve that closes before it opens, or as good as at once. */
function guardOpenFirst(parameter: string, opens?: Angle, closes?: Angle): void {
  if (opens === undefined || closes === undefined || closes - opens >= SHORTEST) return;
  const degrees = Math.round((Math.abs(closes - opens) / HALF) * 180);
  throw new RebuildInputError({
    parameter,
    value: closes,
    shown: `${degrees} degrees ${closes > opens ? 'after' : 'before'} it opens`,
    expected: 'at least 20 degrees of the crank after the valve opens',
    hint: 'A valve closes after it opens. Are before and after swapped, or the two places?',
  });
}
