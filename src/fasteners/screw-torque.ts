import type { SizeOrSpan, Span } from '../judging/index.js';
import { guardFields, guardLength, guardSpan } from '../judging/internal.js';
import type { Force, Length, Ratio, Torque } from '../quantities/index.js';
import { bearingFace, boltLoad, screwFriction } from './domains.js';
import { guardThread } from './guard-thread.js';
import type { ThreadSize } from './thread-forms.js';
import type { Thread } from './thread-series.js';

/** A bolt with its frictions. */
export interface ScrewedBolt {
  /** Its thread. */
  readonly thread: ThreadSize | Thread;
  /** The pull that is wanted [N]. */
  readonly preload: Force;
  /** Coefficient of friction in the thread, or its span [-]. */
  readonly threadFriction: SizeOrSpan<Ratio>;
  /** Coefficient of friction under what is turned, nut or head, or its span [-]. */
  readonly faceFriction: SizeOrSpan<Ratio>;
  /** Mean diameter of the face that rubs: by default 1.25 of the thread's, that of a plain nut [m]. */
  readonly faceDiameter?: Length;
}

/** Where the torque on a bolt goes. */
export interface ScrewTorque {
  /** Torque on nut or head [N·m]. */
  readonly torque: Span<Torque>;
  /** What of it stretches the bolt; the rest is friction [N·m]. */
  readonly toStretch: Torque;
  /** The nut factor that comes to [-]. */
  readonly nutFactor: Span<Ratio>;
}

const SCREW = ['thread', 'preload', 'threadFriction', 'faceFriction', 'faceDiameter'] as const;

/**
 * The torque that pulls a bolt to a preload, by the full equation of the screw: up the slope of the thread, against the
 * friction of its flanks, and against that under the nut.
 *
 *     dm = diameter - f * pitch
 *     slope = pitch / (π * dm)
 *     torque = preload * (dm / 2 * (slope + threadFriction / cos(a)) / (1 - threadFriction * slope / cos(a)) + faceFriction * faceDiameter / 2)
 *     toStretch = preload * pitch / (2 * π)
 *     nutFactor = torque / (preload * diameter)
 *
 * f is the depth of the flanks as in {@link threadAreas}, and a is half the angle between them: 30° for metric, unified
 * and cycle threads, 27.5° for Whitworth's, 23.75° for BA. It is no more exact than the frictions, which nobody measures
 * on a bolt at hand. It shows where the torque goes, and what a finer thread or a wider nut changes.
 *
 * @param bolt - thread, preload, both frictions, and the mean diameter of the face that rubs
 * @returns the torque, the part of it that stretches the bolt, and the nut factor
 * @throws {RebuildInputError} when a field is misspelt, the form is unknown, a value is not finite or out of range, the
 * pitch is too coarse for the diameter, a span is reversed, or the face is smaller than the thread
 * @see Source: Shigley's Mechanical Engineering Design, 9th ed., Eq. 8-26 and Example 8-3
 * @example
 * ```ts
 * const { torque } = screwTorque({
 *   thread: threadOf('3/4-16 UNF'), preload: lbf(25_000),
 *   threadFriction: ratio(0.15), faceFriction: ratio(0.15),
 * });
 * format(torque.max, lbfInch, 0); // "3551 lbf·in"
 * ```
 */
export function screwTorque(bolt: ScrewedBolt): ScrewTorque {
  guardFields('bolt', bolt, SCREW);
  const { flanks, halfAngle } = guardThread(bolt.thread, 'within');
  const { diameter, pitch } = bolt.thread;
  const preload = boltLoad('preload', bolt.preload);
  const inThread = guardSpan('threadFriction', bolt.threadFriction, screwFriction, 'ratio');
  const under = guardSpan('faceFriction', bolt.faceFriction, screwFriction, 'ratio');
  const { faceDiameter: face = (1.25 * diameter) as Length } = bolt;
  // No face is three times as wide as its thread, on average: a slipped digit.
  guardLength(
    'faceDiameter',
    bearingFace('faceDiameter', face),
    [diameter, 3 * diameter],
    bearingFace.example,
  );
  const mean = diameter - flanks * pitch;
  const rise = pitch / (Math.PI * mean);
  const across = 1 / Math.cos(halfAngle);
  const torqueAt = (thread: Ratio, nut: Ratio) =>
    (preload *
      ((mean / 2) * ((rise + thread * across) / (1 - thread * rise * across)) +
        (nut * face) / 2)) as Torque;
  const torque = { min: torqueAt(inThread.min, under.min), max: torqueAt(inThread.max, under.max) };
  const arm = preload * diameter;
  return {
    torque,
    toStretch: ((preload * pitch) / (2 * Math.PI)) as Torque,
    nutFactor: { min: (torque.min / arm) as Ratio, max: (torque.max / arm) as Ratio },
  };
}
