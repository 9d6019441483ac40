import type { Finding, OwnLimits, Span } from '../../judging/index.js';
import { guardFields, guardLength, guardList, type WithTarget } from '../../judging/internal.js';
import { gapOf } from '../../measuring/internal.js';
import type { Length } from '../../quantities/index.js';
import { largestOf, smallestOf } from '../../quantities/internal.js';
import { ringRoom, ringWidth } from '../domains.js';
import { type Contact, findingsOn, ownLimitsOnly } from '../warm/contact.js';

/** A ring and its groove, read in as many places as may be, and the limits of the room between them if they are known. */
export interface RingInGroove extends OwnLimits<'length'> {
  /** Width of the groove, read around it [m]. */
  readonly grooveWidths: readonly Length[];
  /** Width of the ring, read around it [m]. */
  readonly ringWidths: readonly Length[];
}

/** The room of a ring between the sides of its groove. */
export interface RingSideClearance {
  /** From the narrowest groove on the widest ring to the widest on the narrowest; negative, it does not go in [m]. */
  readonly clearance: Span<Length>;
  /** What was read in one place only: of how it is elsewhere nothing is known. */
  readonly readInOnePlace: readonly ('groove' | 'ring')[];
  /** The worse end against the caller's limits; and that the ring may stick, if it may. Empty is no pass: without limits only that is judged. */
  readonly findings: readonly Finding<'length'>[];
}

const SIDE = [
  'grooveWidths',
  'ringWidths',
  'limits',
  'basis',
  'service',
  'uncertainty',
  'rule',
  'target',
] as const;

const STICKS: Contact = {
  limits: { min: 0 as Length },
  basis: {
    kind: 'computed',
    how: 'a ring as wide as its groove sticks in it and does not seal; how much room it needs this does not say',
  },
};

/**
 * The room of a ring between the sides of its groove, from readings of both around the piston.
 *
 *     least = smallestGroove - widestRing
 *     most = largestGroove - narrowestRing
 *
 * Clean the groove first, and do not cut its sides. A groove wears like a bell, most at its outside, where a feeler
 * beside the ring reads it; a gauge at its root reads less. Too little room and the ring sticks; too much and it
 * hammers the groove wider, turns over and pumps oil. It is judged by the caller's limits alone.
 *
 * @param ring - readings of groove and ring, and the limits if they are known [m]
 * @returns side clearance, what was read in one place only, and what was found [m]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, a list is empty, limits
 * have no bound, or the groove was never of the ring
 * @see Source: geometry
 * @example
 * ```ts
 * const { clearance, findings } = ringSideClearance({
 *   grooveWidths: [inch(0.0956), inch(0.0971)], ringWidths: [inch(0.0935), inch(0.0933)], limits: { max: thou(3) },
 * });
 * format(clearance.max, thou); // "3.8 thou"
 * findings[0]?.verdict; // "above"
 * ```
 */
export function ringSideClearance(ring: RingInGroove): RingSideClearance {
  guardFields('ring', ring as WithTarget<RingInGroove>, SIDE);
  const { grooveWidths, ringWidths } = ring;
  const widths = spanRead('ringWidths', ringWidths);
  const grooves = spanRead('grooveWidths', grooveWidths);
  for (const [i, width] of grooveWidths.entries()) {
    const of = [0.8 * widths.max, 1.5 * widths.min] as const;
    guardLength(`grooveWidths[${i}]`, width, of, ringWidth.example);
  }
  const allowed = ownLimitsOnly('ring', ring, ringRoom);
  const clearance = gapOf(grooves, widths);
  return {
    clearance,
    readInOnePlace: [
      ...(grooveWidths.length === 1 ? (['groove'] as const) : []),
      ...(ringWidths.length === 1 ? (['ring'] as const) : []),
    ],
    findings: findingsOn('ring side clearance', clearance, allowed, STICKS),
  };
}

function spanRead(parameter: string, readings: readonly Length[]): Span<Length> {
  guardList(parameter, readings, 1, 'reading');
  readings.forEach((width, i) => {
    ringWidth(`${parameter}[${i}]`, width);
  });
  return { min: smallestOf(readings) as Length, max: largestOf(readings) as Length };
}
