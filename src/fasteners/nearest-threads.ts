import { guardFields } from '../judging/internal.js';
import type { Length } from '../quantities/index.js';
import { threadDiameter, threadPitch } from './domains.js';
import { everyThread, type Thread } from './thread-series.js';

/** A thread as it was measured. */
export interface MeasuredThread {
  /** Diameter over the crests: a micrometer reads a little less than the nominal one [m]. */
  readonly diameter: Length;
  /** Pitch, by a gauge or counted over a length [m]. */
  readonly pitch: Length;
}

/** A thread that a measured one may be. */
export interface LikelyThread {
  /** The thread of a series. */
  readonly thread: Thread;
  /** Measured less nominal diameter; a sound bolt is a few thousandths of an inch under it [m]. */
  readonly diameterOff: Length;
  /** Measured less nominal pitch [m]. */
  readonly pitchOff: Length;
}

const MEASURED = ['diameter', 'pitch'] as const;

/**
 * The threads of the common series that a measured one is nearest to, the nearest first. Sizes alone do not tell the
 * form: of threads with the same diameter and pitch, look at the flanks with a 60° and a 55° gauge. Try nothing on by
 * force.
 *
 *     diameterOff = measured diameter - nominal diameter
 *
 * @param measured - diameter over the crests, and pitch [m]
 * @returns five threads, each with how far the measured one is off
 * @throws {RebuildInputError} when a field is misspelt, or a value is not finite or out of range
 * @see Source: ISO 261 and ISO 262, ASME B1.1, BS 84, BS 811 and BS 93
 * @example
 * ```ts
 * const [first, second] = nearestThreads({ diameter: inch(0.372), pitch: inch(1 / 16) });
 * first?.thread.designation; // "3/8-16 UNC"
 * second?.thread.designation; // "3/8-16 BSW"
 * ```
 */
export function nearestThreads(measured: MeasuredThread): readonly LikelyThread[] {
  guardFields('measured', measured, MEASURED);
  const diameter = threadDiameter('diameter', measured.diameter);
  const pitch = threadPitch('pitch', measured.pitch);
  return byLikeness({ diameter, pitch }, everyThread())
    .slice(0, 5)
    .map((thread) => ({
      thread,
      diameterOff: (diameter - thread.diameter) as Length,
      pitchOff: (pitch - thread.pitch) as Length,
    }));
}

/** Threads sorted by how like a size they are. A pitch is known more surely than a diameter, and shares count. */
export function byLikeness(
  { diameter, pitch }: { readonly diameter: Length; readonly pitch?: Length },
  threads: readonly Thread[],
): readonly Thread[] {
  const apart = (thread: Thread) =>
    Math.abs(Math.log(thread.diameter / diameter)) +
    (pitch === undefined ? 0 : Math.abs(Math.log(thread.pitch / pitch)));
  return threads
    .map((thread) => ({ thread, off: apart(thread) }))
    .sort((a, b) => a.off - b.off)
    .map(({ thread }) => thread);
}
