import type { SizeOrSpan, Span } from '../judging/index.js';
import { guardFields, guardSpan, guardWhole } from '../judging/internal.js';
import type { Angle, Force, Length, Ratio, Stiffness, Torque } from '../quantities/index.js';
import {
  clampStiffness,
  fastenerTorque,
  nutFactorBounds,
  slotTurn,
  threadDiameter,
  threadPitch,
} from './domains.js';

/** A slotted nut that a pin is to lock. */
export interface SlottedNut {
  /** Least and most torque that the maker allows [N·m]. */
  readonly torque: Span<Torque>;
  /** Diameter of the thread [m]. */
  readonly diameter: Length;
  /** Pitch of the thread [m]. */
  readonly pitch: Length;
  /** Nut factor, or its span, as `nutFactor` gives it [-]. */
  readonly nutFactor: SizeOrSpan<Ratio>;
  /** Stiffness of the bolt, as `boltStretch` gives it [N/m]. */
  readonly boltStiffness: Stiffness;
  /** Stiffness of what it clamps, as `memberStiffness` gives it [N/m]. */
  readonly memberStiffness: Stiffness;
  /** How far it is to the next slot from where the least torque is reached; by default anywhere up to one [rad]. */
  readonly turn?: Angle;
  /** How many slots the nut has: 4, 6, 8, 10 or 12; by default 6. */
  readonly slots?: number;
  /** How many holes the bolt has, at right angles to each other; by default 1. */
  readonly holes?: 1 | 2;
}

/** What it takes to bring a slot to the hole. */
export interface NextSlot {
  /** It gets there within the torque; it may; or another nut or washer is to be tried. */
  readonly outcome: 'within the torque' | 'may pass the torque' | 'another nut or washer';
  /** From one place where a slot meets a hole to the next [rad]. */
  readonly slotPitch: Angle;
  /** How far the nut is turned from the least torque on [rad]. */
  readonly turn: Span<Angle>;
  /** Torque that is reached at the slot [N·m]. */
  readonly torque: Span<Torque>;
  /** How much that adds to the preload [N]. */
  readonly preloadGain: Span<Force>;
}

const NUT = [
  'torque',
  'diameter',
  'pitch',
  'nutFactor',
  'boltStiffness',
  'memberStiffness',
  'turn',
  'slots',
  'holes',
] as const;

/**
 * The torque that brings the next slot of a castle nut to its hole. The nut is tightened to the least torque and from
 * there on to the slot, never slackened back to one: what is turned back is loose.
 *
 *     stiffness = boltStiffness * memberStiffness / (boltStiffness + memberStiffness)
 *     preloadGain = turn / (2 * π) * pitch * stiffness
 *     torqueAtSlot = torque + nutFactor * diameter * preloadGain
 *
 * A turn of a sixth stretches a short stiff bolt by a great deal: a slot that is out of reach within the most torque
 * takes another nut, another washer, or a nut rubbed down on its face, and a new pin in any case. Where the turn was not
 * measured it is anything up to a slot, and the wrench decides.
 *
 * @param nut - the torque allowed, thread, nut factor and stiffnesses, and the slots
 * @returns whether a slot is reached within the torque, the turn, the torque there and what it adds to the preload
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, or a span is reversed
 * @see Source: AC 43.13-1B, paragraph 7-40, for how a castle nut is set; geometry and Hooke's law
 * @example
 * ```ts
 * const next = nextSlot({
 *   torque: { min: lbfFoot(20), max: lbfFoot(30) },
 *   diameter: inch(0.375), pitch: inch(1 / 24), nutFactor: ratio(0.18),
 *   boltStiffness: lbfPerInch(1_750_000), memberStiffness: lbfPerInch(7_000_000),
 *   turn: degree(20),
 * });
 * next.outcome; // "another nut or washer"
 * format(next.torque.max, lbfFoot); // "38.2 lbf·ft"
 * ```
 */
export function nextSlot(nut: SlottedNut): NextSlot {
  guardFields('nut', nut, NUT);
  const allowed = guardSpan('torque', nut.torque, fastenerTorque, 'torque');
  const diameter = threadDiameter('diameter', nut.diameter);
  const pitch = threadPitch('pitch', nut.pitch);
  const factor = guardSpan('nutFactor', nut.nutFactor, nutFactorBounds, 'ratio');
  const bolt = clampStiffness('boltStiffness', nut.boltStiffness);
  const members = clampStiffness('memberStiffness', nut.memberStiffness);
  const { slots = 6, holes = 1 } = nut;
  guardWhole('slots', slots, [4, 12], 'A castle nut has 6 slots, a few have 4 or more.', 2);
  guardWhole('holes', holes, [1, 2], 'Count a hole that goes through as one.');
  const slotPitch = pitchOf(slots, holes) as Angle;
  const turn =
    nut.turn === undefined
      ? { min: 0 as Angle, max: slotPitch }
      : guardSpan('turn', nut.turn, slotTurn, 'angle');
  const gainAt = (angle: Angle) =>
    (((angle / (2 * Math.PI)) * pitch * bolt * members) / (bolt + members)) as Force;
  const preloadGain = { min: gainAt(turn.min), max: gainAt(turn.max) };
  const torque = {
    min: (allowed.min + factor.min * diameter * preloadGain.min) as Torque,
    max: (allowed.min + factor.max * diameter * preloadGain.max) as Torque,
  };
  return {
    outcome:
      torque.max <= allowed.max
        ? 'within the torque'
        : torque.min > allowed.max
          ? 'another nut or washer'
          : 'may pass the torque',
    slotPitch,
    turn,
    torque,
    preloadGain,
  };
}

/** Slots stand evenly around; a second hole, at a right angle, halves the way unless a slot falls on both. */
function pitchOf(slots: number, holes: number): number {
  const step = (2 * Math.PI) / slots;
  return holes === 2 && slots % 4 !== 0 ? step / 2 : step;
}
