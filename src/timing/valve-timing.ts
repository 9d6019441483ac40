import { guardFields } from '../judging/internal.js';
import { type Angle, RebuildInputError } from '../quantities/index.js';
import { angleWithin } from './domains.js';
import { WHOLE } from './turns.js';
import { guardValveReadings, type ValveReadings } from './valve-readings.js';

/** One lobe of a cam, as the crank sees it. */
export interface LobeTiming {
  /** Where the valve opens, in a cycle of two turns that begins at the firing top [rad]. */
  readonly opens: Angle;
  /** Where it closes [rad]. */
  readonly closes: Angle;
  /** How far the crank turns while it is open [rad]. */
  readonly duration: Angle;
  /**
   * How far the middle is from the top between exhaust and inlet: after it for the inlet, before it for the exhaust
   * [rad].
   */
  readonly centreline: Angle;
}

/** How the valves of a cylinder are timed. What the readings do not tell is left out. */
export interface ValveTiming {
  /** The inlet lobe, where both of its readings are given. */
  readonly inlet?: LobeTiming;
  /** The exhaust lobe likewise. */
  readonly exhaust?: LobeTiming;
  /** How far the crank turns with both valves open; negative is with both closed [rad]. */
  readonly overlap?: Angle;
  /** How far the middles of the lobes are apart, in turn of the cam [rad]. */
  readonly lobeSeparation?: Angle;
  /** How far the cam is ahead of an even overlap, in turn of the crank; negative is behind [rad]. */
  readonly camAdvance?: Angle;
  /** How far a duration and the overlap may be off: both of its readings, each the other way [rad]. */
  readonly durationWithin?: Angle;
  /**
   * How far a centreline, the separation of the lobes and the advance of the cam may be off: readings off one way
   * [rad].
   */
  readonly centrelineWithin?: Angle;
}

const READINGS = ['inletOpens', 'inletCloses', 'exhaustOpens', 'exhaustCloses', 'within'] as const;

/**
 * Duration, overlap and centrelines of the valves, from the places where they open and close at equal lift.
 *
 *     inletDuration = inletOpens + 180° + inletCloses
 *     exhaustDuration = exhaustOpens + 180° + exhaustCloses
 *     overlap = inletOpens + exhaustCloses
 *     inletCentreline = (180° + inletCloses - inletOpens) / 2
 *     exhaustCentreline = (180° + exhaustOpens - exhaustCloses) / 2
 *     lobeSeparation = (inletCentreline + exhaustCentreline) / 2
 *     camAdvance = (exhaustCentreline - inletCentreline) / 2
 *
 * The letters stand for an inlet that opens before top and closes after bottom, an exhaust that opens before bottom and
 * closes after top; the function takes any of them before or after, about either dead centre. Angles are turns of the
 * crank, but for the separation of the lobes, which is told in turns of the cam.
 *
 * Read opening and closing at the same lift, well off the seat, with the lash that the figures are for: the middle then
 * holds whatever the lift. A maker's figures are for the lift that he names, and a duration read at another is no
 * fault. The last of the rise is slow, so that two thou of lash move an opening by several degrees. A reading off by a
 * whole turn reads the same: look which stroke the piston is on.
 *
 * Before a crank is turned by hand, switch the ignition off and earth the magneto lead, and take the plugs out.
 *
 * @param readings - where the valves open and close, those that were read, and how far each may be off
 * @returns what they tell of each lobe, and of both together
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, there is no reading, a
 * place is both before and after, a dead centre is unknown, a place is far from the valve's own dead centre, or a valve
 * opens after it closes
 * @see Source: geometry; definitions as cam makers print them
 * @example
 * ```ts
 * const timing = valveTiming({
 *   inletOpens: { angle: degree(10), before: 'top' },
 *   inletCloses: { angle: degree(30), after: 'bottom' },
 *   exhaustOpens: { angle: degree(40), before: 'bottom' },
 *   exhaustCloses: { angle: degree(20), after: 'top' },
 * });
 * timing.inlet && format(timing.inlet.duration, degree); // "220.0 deg"
 * timing.exhaust && format(timing.exhaust.duration, degree); // "240.0 deg"
 * timing.overlap && format(timing.overlap, degree); // "30.0 deg"
 * timing.inlet && format(timing.inlet.centreline, degree); // "100.0 deg"
 * ```
 */
export function valveTiming(
  readings: ValveReadings & {
    /** How far each reading may be off, either way, top dead centre included [rad]. */
    readonly within?: Angle;
  },
): ValveTiming {
  guardFields('readings', readings, READINGS);
  const { inletOpens, inletCloses, exhaustOpens, exhaustCloses } = guardValveReadings('', readings);
  const within = readings.within === undefined ? 0 : angleWithin('within', readings.within);
  if ((inletOpens ?? inletCloses ?? exhaustOpens ?? exhaustCloses) === undefined) {
    throw new RebuildInputError({
      parameter: 'readings',
      value: readings,
      expected: 'where a valve opens or closes',
      hint: "Give what was read, e.g. inletOpens: { angle: degree(10), before: 'top' }.",
    });
  }
  const inlet = lobeOf(inletOpens, inletCloses, 1);
  const exhaust = lobeOf(exhaustOpens, exhaustCloses, -1);
  const timing: { -readonly [Name in keyof ValveTiming]: ValveTiming[Name] } = {};
  if (inlet) timing.inlet = inlet;
  if (exhaust) timing.exhaust = exhaust;
  if (inletOpens !== undefined && exhaustCloses !== undefined) {
    timing.overlap = (exhaustCloses - inletOpens) as Angle;
  }
  if (inlet && exhaust) {
    timing.lobeSeparation = ((inlet.centreline + exhaust.centreline) / 2) as Angle;
    timing.camAdvance = ((exhaust.centreline - inlet.centreline) / 2) as Angle;
  }
  if (within > 0) {
    timing.durationWithin = (2 * within) as Angle;
    timing.centrelineWithin = within as Angle;
  }
  return timing;
}

/** A lobe whose middle is after the top between exhaust and inlet, or before it. */
function lobeOf(
  opens: Angle | undefined,
  closes: Angle | undefined,
  side: 1 | -1,
): LobeTiming | undefined {
  if (opens === undefined || closes === undefined) return undefined;
  const centreline = (side * ((opens + closes) / 2 - WHOLE)) as Angle;
  return { opens, closes, duration: (closes - opens) as Angle, centreline };
}
