import type { SizeOrSpan, Span } from '../../judging/index.js';
import { diameter, guardFields, guardLength, guardSpan } from '../../judging/internal.js';
import { elasticModulus } from '../../measuring/internal.js';
import type { Force, Length, Pressure } from '../../quantities/index.js';
import { openRingGap, ringGap, ringThickness, ringWidth } from '../domains.js';

/** A ring of rectangular section, as thick all round. */
export interface SpringingRing {
  /** Bore that it is for [m]. */
  readonly bore: Length;
  /** Gap of the ring on the bench [m]. */
  readonly freeGap: Length;
  /** Gap of the ring in its bore [m]. */
  readonly closedGap: Length;
  /** Radial thickness [m]. */
  readonly radialThickness: Length;
  /** Axial width [m]. */
  readonly width: Length;
  /** Modulus of elasticity of the ring, best as a span [Pa]. */
  readonly elasticity: SizeOrSpan<Pressure>;
  /** Gap of the ring spread just so far that it goes over its piston [m]. */
  readonly spreadGap?: Length;
}

/** How a ring springs, for the least and the most that its modulus may be. */
export interface RingTension {
  /** Pull on a band around the ring that closes it to its gap [N]. */
  readonly tangentialForce: Span<Force>;
  /** Pressure of the ring on its bore, without gas behind it [Pa]. */
  readonly wallPressure: Span<Pressure>;
  /** Most bending stress in the bore, opposite the gap [Pa]. */
  readonly closedStress: Span<Pressure>;
  /** Most bending stress when spread over the piston, opposite the gap; absent without a spread gap [Pa]. */
  readonly spreadStress?: Span<Pressure>;
}

const RING = [
  'bore',
  'freeGap',
  'closedGap',
  'radialThickness',
  'width',
  'elasticity',
  'spreadGap',
] as const;

/**
 * How hard a ring presses on its bore, from how far it springs open: its tangential force, its pressure on the wall,
 * and the stress opposite its gap.
 *
 *     meanDiameter = bore - radialThickness
 *     wallPressure = 4 * elasticity * (freeGap - closedGap) * radialThickness³ / (9 * π * bore * meanDiameter³)
 *     tangentialForce = wallPressure * width * bore / 2
 *     closedStress = 4 * elasticity * (freeGap - closedGap) * radialThickness / (3 * π * meanDiameter²)
 *     spreadStress = 4 * elasticity * (spreadGap - freeGap) * radialThickness / (3 * π * meanDiameter²)
 *
 * It is for a plain ring of rectangular section that presses evenly all round, taken as a thin curved beam; a ring
 * that opens by an eighth of its bore presses some 2 % less than this. Rings that press harder at their ends, oil
 * rings with slots or springs, tapered and stepped ones and faces that are chromed or filled press otherwise. The
 * modulus of grey ring iron is about 100 GPa and that of nodular iron about 160 GPa, but they vary: it is no better
 * than that. Its best use is to hold two rings of one kind against each other: one that has lost free gap has lost
 * force by the same share.
 *
 * The stress when spread is for ends that are drawn straight apart. Open a ring no further than it needs, with pliers
 * that stop, and never by twisting it: brittle iron snaps without a sign, and its ends are sharp. Cover your eyes.
 *
 * @param ring - bore, gaps, section and modulus of the ring
 * @returns force, pressure on the wall and stresses
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, a span is reversed, the free gap
 * is not wider than the gap in the bore, the free gap is more than three tenths of the bore, the ring is thicker than
 * a tenth of the bore, the closed gap is more than a tenth of the bore, or the ring is not spread wider than it is
 * free
 * @see Source: thin curved beam (Castigliano), worked out anew and held against a numerical integration in
 * tests/cylinders/rings.test.ts; the pull of the band after a ring maker's manual, section on tangential force
 * @example
 * ```ts
 * const { tangentialForce, wallPressure } = ringTension({
 *   bore: mm(80), freeGap: mm(10.3), closedGap: mm(0.3), radialThickness: mm(3.3), width: mm(2), elasticity: MPa(100_000),
 * });
 * // 4 * 100000 * 10 * 3.3³ / (9π * 80 * 76.7³) = 0.141 N/mm², times 2 * 40 mm².
 * format(wallPressure.max, MPa); // "0.14 MPa"
 * format(tangentialForce.max, newton); // "11.3 N"
 * ```
 */
export function ringTension(ring: SpringingRing): RingTension {
  guardFields('ring', ring, RING);
  const { spreadGap } = ring;
  const bore = diameter('bore', ring.bore);
  const closed = within('closedGap', ringGap('closedGap', ring.closedGap), 0, 0.1 * bore);
  const free = within('freeGap', openRingGap('freeGap', ring.freeGap), closed, 0.3 * bore);
  const a = within(
    'radialThickness',
    ringThickness('radialThickness', ring.radialThickness),
    0,
    0.1 * bore,
  );
  const width = ringWidth('width', ring.width);
  const { min: soft, max: stiff } = guardSpan(
    'elasticity',
    ring.elasticity,
    elasticModulus,
    'pressure',
  );
  const mean = bore - a;
  const closing = (4 * (free - closed) * a) / (3 * Math.PI * mean * mean);
  const pressing = (closing * a * a) / (3 * bore * mean);
  const pulling = (pressing * width * bore) / 2;
  const tension = {
    tangentialForce: { min: soft * pulling, max: stiff * pulling } as Span<Force>,
    wallPressure: { min: soft * pressing, max: stiff * pressing } as Span<Pressure>,
    closedStress: { min: soft * closing, max: stiff * closing } as Span<Pressure>,
  };
  if (spreadGap === undefined) return tension;
  const spread = within('spreadGap', openRingGap('spreadGap', spreadGap), free, bore);
  const spreading = (4 * (spread - free) * a) / (3 * Math.PI * mean * mean);
  return {
    ...tension,
    spreadStress: { min: soft * spreading, max: stiff * spreading } as Span<Pressure>,
  };
}

const within = (parameter: string, size: Length, least: number, most: number) =>
  guardLength(parameter, size, [least, most], openRingGap.example);
