import type { SizeOrSpan, Span } from '../judging/index.js';
import { guardFields, guardSpan } from '../judging/internal.js';
import type { Force, Length, Ratio, Torque } from '../quantities/index.js';
import { boltLoad, fastenerTorque, nutFactorBounds, threadDiameter } from './domains.js';

/** A bolt that is tightened by torque. */
export interface TorquedBolt {
  /** Diameter of its thread [m]. */
  readonly diameter: Length;
  /** Nut factor, or the span that it lies in, as `nutFactor` gives it [-]. */
  readonly nutFactor: SizeOrSpan<Ratio>;
}

const TO_TORQUE = ['preload', 'diameter', 'nutFactor'] as const;
const TO_PRELOAD = ['torque', 'diameter', 'nutFactor'] as const;

/**
 * The torque that pulls a bolt to a preload.
 *
 *     torque = nutFactor * preload * diameter
 *
 * Of a span of nut factors it gives the span of torques: the least of them overloads no bolt.
 *
 * @param bolt - preload, diameter, and the nut factor or its span
 * @returns the span of torques [N·m]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, or a span is reversed
 * @see Source: Shigley's Mechanical Engineering Design, 9th ed., Eq. 8-27
 * @example
 * ```ts
 * const bolt = { preload: lbf(25_000), diameter: inch(0.75), nutFactor: ratio(0.2) };
 * format(tighteningTorque(bolt).max, lbfInch, 0); // "3750 lbf·in"
 * ```
 */
export function tighteningTorque(
  bolt: TorquedBolt & {
    /** The pull that is wanted [N]. */
    readonly preload: Force;
  },
): Span<Torque> {
  guardFields('bolt', bolt, TO_TORQUE);
  const arm = boltLoad('preload', bolt.preload) * threadDiameter('diameter', bolt.diameter);
  const { min, max } = guardSpan('nutFactor', bolt.nutFactor, nutFactorBounds, 'ratio');
  return { min: (min * arm) as Torque, max: (max * arm) as Torque };
}

/**
 * The preload that a torque may have given. With a span of nut factors, the pull lies anywhere in a span that is as
 * wide: the same torque on the same bolt, dry or oiled, is another preload.
 *
 *     preload = torque / (nutFactor * diameter)
 *
 * @param bolt - torque at the fastener, diameter, and the nut factor or its span
 * @returns the span of preloads [N]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, or a span is reversed
 * @see Source: Shigley's Mechanical Engineering Design, 9th ed., Eq. 8-27
 * @example
 * ```ts
 * const { span } = nutFactor('dry');
 * const bolt = { torque: lbfFoot(30), diameter: inch(0.375), nutFactor: span };
 * const { min, max } = preloadFromTorque(bolt);
 * format(min, lbf, 0); // "3200 lbf"
 * format(max, lbf, 0); // "5333 lbf"
 * ```
 */
export function preloadFromTorque(
  bolt: TorquedBolt & {
    /** Torque at the fastener [N·m]. */
    readonly torque: Torque;
  },
): Span<Force> {
  guardFields('bolt', bolt, TO_PRELOAD);
  const pull = fastenerTorque('torque', bolt.torque) / threadDiameter('diameter', bolt.diameter);
  const { min, max } = guardSpan('nutFactor', bolt.nutFactor, nutFactorBounds, 'ratio');
  return { min: (pull / max) as Force, max: (pull / min) as Force };
}
