import type { Span } from '../../judging/index.js';
import { diameter, guardFields, guardList, showIn } from '../../judging/internal.js';
import { type Length, mL, RebuildInputError, type Volume } from '../../quantities/index.js';
import { largestOf, smallestOf } from '../../quantities/internal.js';
import { chamberVolume, depthInBore, pouringError } from './domains.js';
import { sweptBy } from './swept-volume.js';

/** What ran out of a burette into a space under a plate, once or again and again. */
export interface PouredSpace {
  /** What ran in at each pouring, up to the underside of the plate or to a mark in its hole [m³]. */
  readonly poured: readonly Volume[];
  /** What stands in the plate's hole or in a plug hole and is no part of the space; by default nothing [m³]. */
  readonly besides?: Volume;
  /** How far one pouring may be off by the burette, either way; by default it is taken as right [m³]. */
  readonly within?: Volume;
}

/** A space as it was poured. */
export interface PouredVolume {
  /** From the least pouring to the most, the burette's error either way [m³]. */
  readonly volume: Span<Volume>;
  /** Mean of all pourings [m³]. */
  readonly mean: Volume;
  /** How far the pourings are apart. Absent with one pouring, which does not tell [m³]. */
  readonly spread?: Volume;
}

const POURED = ['poured', 'besides', 'within'] as const;
const CROWNED = ['bore', 'depth', 'poured', 'besides', 'within'] as const;

/**
 * The volume of a space that was filled from a burette through the hole of a plate: the chamber of a head with valves
 * and plug in place, or all that is left above a piston at top dead centre.
 *
 *     volume.min = leastPoured - besides - within
 *     volume.max = mostPoured - besides + within
 *
 * Grease the plate's rim, the valves and the piston's edge, tilt the hole up, and chase the bubbles: air that is left
 * in reads as a chamber too small, a leak as one too large. Pour at least three times. Pourings that grow each time
 * leak. Liquid between piston and bore down to the top ring belongs to the clearance and is mostly left out by the
 * grease: it is a millilitre or less in a small engine. Petrol burns and fumes; use paraffin, spirit or thin oil, away
 * from flames, and none that softens the plate.
 *
 * @param space - what was poured, and what of that is no part of the space [m³]
 * @returns its volume as a span, its mean, and how well the pourings repeat [m³]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, there is no pouring, or
 * nothing is left of a pouring
 * @see Source: definition
 * @example
 * ```ts
 * const { volume, spread } = clearanceVolumeByBurette({
 *   poured: [mL(62.9), mL(63.2), mL(63.0)], besides: mL(0.4), within: mL(0.1),
 * });
 * format(volume.min, mL); // "62.4 mL"
 * format(volume.max, mL); // "62.9 mL"
 * spread && format(spread, mL); // "0.3 mL"
 * ```
 */
export function clearanceVolumeByBurette(space: PouredSpace): PouredVolume {
  guardFields('space', space, POURED);
  return pouredVolumeOf(space);
}

/**
 * What the crown of a piston fills above its flat edge, from a pouring above it: the piston is set so far below the
 * deck that all of its dome lies in the bore, a plate is laid on the deck, and what runs in is taken from the volume of
 * plain bore.
 *
 *     crown.min = π / 4 * bore² * depth - mostPoured
 *     crown.max = π / 4 * bore² * depth - leastPoured
 *
 * A dome is positive, a dish negative. Read the depth at the flat edge, over the pin, where the piston does not rock,
 * and seal the edge with grease.
 *
 * @param crowned - bore, depth of the flat edge below the deck, and what was poured above it
 * @returns volume of the crown as a span [m³]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, there is no pouring, or
 * nothing is left of a pouring
 * @see Source: geometry
 * @example
 * ```ts
 * const crown = crownVolumeByBurette({ bore: mm(80), depth: mm(12), poured: [mL(54.1), mL(54.3)] });
 * // π / 4 * 8² * 1.2 = 60.3 mL
 * format(crown.min, mL); // "6.0 mL"
 * format(crown.max, mL); // "6.2 mL"
 * ```
 */
export function crownVolumeByBurette(
  crowned: PouredSpace & {
    /** Bore diameter [m]. */
    readonly bore: Length;
    /** How far the flat edge of the crown stands below the deck [m]. */
    readonly depth: Length;
  },
): Span<Volume> {
  guardFields('crowned', crowned, CROWNED);
  const bore = diameter('bore', crowned.bore);
  const plain = sweptBy(bore, depthInBore('depth', crowned.depth));
  const { volume } = pouredVolumeOf(crowned);
  return { min: plain - volume.max, max: plain - volume.min } as Span<Volume>;
}

function pouredVolumeOf({ poured, besides, within }: PouredSpace): PouredVolume {
  guardList('poured', poured, 1, 'pourings');
  const off = besides === undefined ? 0 : pouringError('besides', besides);
  const error = within === undefined ? 0 : pouringError('within', within);
  let sum = 0;
  poured.forEach((one, i) => {
    sum += chamberVolume(`poured[${i}]`, one);
    if (one - off - error <= 0) throw nothingLeft(`poured[${i}]`, one);
  });
  const [least, most] = [smallestOf(poured), largestOf(poured)];
  return {
    volume: { min: least - off - error, max: most - off + error } as Span<Volume>,
    mean: (sum / poured.length - off) as Volume,
    ...(poured.length > 1 && { spread: (most - least) as Volume }),
  };
}

function nothingLeft(parameter: string, value: Volume): RebuildInputError {
  return new RebuildInputError({
    parameter,
    value,
    shown: showIn(value, mL),
    expected: 'more than what stands besides it and the error of the burette',
    hint: 'A space holds something: is it in millilitres, e.g. mL(62.5)?',
  });
}
