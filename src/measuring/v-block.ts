import { guardFields, guardWhole } from '../judging/internal.js';
import type { Angle, Ratio } from '../quantities/index.js';
import { lobeCount, vBlockAngle } from './domains.js';

const PART = ['lobes', 'includedAngle'] as const;

/**
 * What a dial over a V-block makes of the lobes of a part that turns in it: the swing of the dial over the height
 * of the lobes on the radius. The lobes lift the part in the block as they pass, so that the dial shows more than
 * they are, less, or nothing.
 *
 *     factor = 1 + cos(lobes * (π + includedAngle) / 2) / sin(includedAngle / 2)
 *
 * In a block of 90° an oval reads its height, three and five lobes read twice theirs, and seven read nothing. In
 * one of 60° three lobes read three times their height, but an oval, five and seven lobes read nothing. So no block
 * shows all lobes: use a micrometer as well. A flat plate, at 180°, is like one: it shows twice the height of even
 * lobes, and no odd ones.
 *
 * It holds for a dial above the block, pointing at its corner, and for lobes that are small beside the part.
 *
 * @param part - how many lobes, and the block
 * @returns swing of the dial over height of the lobes; where it is below zero, the dial falls as a lobe passes
 * under it [-]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, or the lobes are no
 * whole number
 * @see Source: J. Japan Soc. Precision Eng. 43 (1977) 1167, abstract; worked checks in
 * tests/published/roundness.test.ts
 * @example
 * ```ts
 * vBlockFactor({ lobes: ratio(3), includedAngle: degree(90) }).toFixed(2); // "2.00"
 * Math.abs(vBlockFactor({ lobes: ratio(2), includedAngle: degree(60) })).toFixed(2); // "0.00"
 * ```
 */
export function vBlockFactor(part: {
  /** Lobes that go round the part, evenly spaced; two are an oval [-]. */
  readonly lobes: Ratio;
  /** Angle between the faces of the block [rad]. */
  readonly includedAngle: Angle;
}): Ratio {
  guardFields('part', part, PART);
  const lobes = lobeCount('lobes', part.lobes);
  guardWhole('lobes', lobes, [lobeCount.least, lobeCount.most], 'Lobes go a whole number round.');
  const angle = vBlockAngle('includedAngle', part.includedAngle);
  return (1 + Math.cos((lobes * (Math.PI + angle)) / 2) / Math.sin(angle / 2)) as Ratio;
}
