import type { SizeOrSpan, Span } from '../../judging/index.js';
import { guardFields, guardList, guardSpan } from '../../judging/internal.js';
import type { Area, Length } from '../../quantities/index.js';
import { smallestOf } from '../../quantities/internal.js';
import { landClearance, ringGap } from '../domains.js';

/** The gap of a ring, and the piston beside it. */
export interface LeakingRing {
  /** Gap of the ring in its bore [m]. */
  readonly gap: SizeOrSpan<Length>;
  /** Diametral clearance in the bore of the land that the ring lies on, the one below it [m]. */
  readonly landClearance: SizeOrSpan<Length>;
}

/** What rings leave open. */
export interface RingLeakArea {
  /** What the gap of every ring leaves open, in the order given [m²]. */
  readonly rings: readonly Span<Area>[];
  /** The one opening that leaks as much as all of them in a row [m²]. */
  readonly area: Span<Area>;
  /** Diameter of a round hole of that area [m]. */
  readonly asHole: Span<Length>;
}

const PISTON = ['rings'] as const;
const RING = ['gap', 'landClearance'] as const;
const ENDS = ['min', 'max'] as const;

/**
 * What the gaps of rings leave open for gas to leak by, of one ring or of rings in a row.
 *
 *     gapArea = gap * landClearance / 2
 *
 * Of two in a row, and likewise of more:
 *
 *     firstArea = firstGap * firstLand / 2
 *     secondArea = secondGap * secondLand / 2
 *     area = 1 / sqrt(1 / firstArea² + 1 / secondArea²)
 *     asHole = sqrt(4 * area / π)
 *
 * It is taken that the piston stands in the middle of its bore, that each ring lies flat on the lower side of its
 * groove and touches the bore all round, that the gaps are out of line, and that gas comes to rest between rings as it
 * does in a labyrinth. A piston that leans makes a gap leak anything from nothing to twice as much. So this is what
 * sound rings cannot help leaking and no forecast: rings that are worn, stuck, or not bedded in leak past their faces,
 * and valves and gasket past the rings. Where a leak test finds far more than this, the gaps are not to blame: hold
 * the hole against the orifice of the tester.
 *
 * @param piston - the rings that hold the pressure, with their gaps and lands [m]
 * @returns area of every gap, of all of them in a row, and the hole of that area
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, a span is reversed, or
 * there is no ring
 * @see Source: geometry; throttlings in a row, from memory
 * @example
 * ```ts
 * const ring = { gap: mm(0.3), landClearance: mm(0.5) };
 * const { rings, area, asHole } = ringLeakArea({ rings: [ring, ring] });
 * // 0.3 * 0.5 / 2 = 0.075 mm² each, and 0.075 / √2 in a row.
 * rings[0] && format(rings[0].max, squareMm, 3); // "0.075 mm²"
 * format(area.max, squareMm, 3); // "0.053 mm²"
 * format(asHole.max, mm, 2); // "0.26 mm"
 * ```
 */
export function ringLeakArea(piston: {
  /** The rings, from the top. */
  readonly rings: readonly LeakingRing[];
}): RingLeakArea {
  guardFields('piston', piston, PISTON);
  guardList('rings', piston.rings, 1, 'ring');
  const rings = piston.rings.map((ring, i): Span<Area> => {
    const at = `rings[${i}]`;
    guardFields(at, ring, RING);
    const gap = guardSpan(`${at}.gap`, ring.gap, ringGap);
    const land = guardSpan(`${at}.landClearance`, ring.landClearance, landClearance);
    return {
      min: ((gap.min * land.min) / 2) as Area,
      max: ((gap.max * land.max) / 2) as Area,
    };
  });
  const [min, max] = ENDS.map((end) => inARow(rings.map((ring) => ring[end])));
  const area = { min, max } as Span<Area>;
  return { rings, area, asHole: { min: holeOf(area.min), max: holeOf(area.max) } };
}

/** One opening that is shut shuts them all. */
function inARow(areas: readonly Area[]): Area {
  // Squares of areas would vanish among the smallest numbers: they are taken of the smallest area.
  const least = smallestOf(areas) as Area;
  if (least === 0) return least;
  const resistance = areas.reduce((sum, area) => sum + (least / area) ** 2, 0);
  return (least / Math.sqrt(resistance)) as Area;
}

const holeOf = (area: Area): Length => Math.sqrt((4 * area) / Math.PI) as Length;
