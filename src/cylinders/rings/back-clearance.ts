import type { Finding, OwnLimits, SizeOrSpan, Span } from '../../judging/index.js';
import {
  diameter,
  guardAlike,
  guardFields,
  guardLength,
  guardSpan,
  type WithTarget,
} from '../../judging/internal.js';
import { worstCase } from '../../measuring/internal.js';
import { type Length, RebuildInputError } from '../../quantities/index.js';
import { landClearance, ringRoom, ringThickness } from '../domains.js';
import {
  type Contact,
  contactFindings,
  findingsOn,
  ownFindings,
  ownLimitsOnly,
} from '../warm/contact.js';

/** A ring and the groove behind it. Give the diameter at the root of the groove, or that of a land beside it and the depth. */
export interface RingOverRoot extends OwnLimits<'length'> {
  /** Bore diameter, where it is smallest [m]. */
  readonly bore: Length;
  /** Radial thickness of the ring [m]. */
  readonly radialThickness: SizeOrSpan<Length>;
  /** Diameter at the root of the groove [m]. */
  readonly root?: SizeOrSpan<Length>;
  /** Diameter of a land beside the groove; it goes with `depth` [m]. */
  readonly land?: SizeOrSpan<Length>;
  /** Depth of the groove below that land [m]. */
  readonly depth?: SizeOrSpan<Length>;
  /** Diametral clearance of the piston's skirt: by half of it the piston leans to one side [m]. */
  readonly pistonClearance?: SizeOrSpan<Length>;
}

/** The room behind a ring. */
export interface RingBackClearance {
  /** Radial room behind the ring with the piston in the middle of its bore; negative, the ring bottoms [m]. */
  readonly radialClearance: Span<Length>;
  /** The same where the piston leans against the wall; absent without its clearance [m]. */
  readonly radialAgainstWall?: Span<Length>;
  /** The room in the middle against the caller's limits; and that the ring may bottom, if it may. Empty is no pass: without limits only that is judged. */
  readonly findings: readonly Finding<'length'>[];
}

const BACK = [
  'bore',
  'radialThickness',
  'root',
  'land',
  'depth',
  'pistonClearance',
  'limits',
  'basis',
  'service',
  'uncertainty',
  'rule',
  'target',
] as const;

const BOTTOMS: Contact = {
  limits: { min: 0 as Length },
  basis: {
    kind: 'computed',
    how: 'a ring that bottoms in its groove is wedged between piston and bore; how much room it needs this does not say',
  },
};

/**
 * The radial room behind a ring in its bore, which it needs so that the piston never rests on it.
 *
 *     radialClearance = (bore - root) / 2 - radialThickness
 *     radialAgainstWall = radialClearance - pistonClearance / 2
 *
 * Where the depth of the groove was measured instead:
 *
 *     root = land - 2 * depth
 *
 * A ring of another engine may be too thick for its groove and still look right in the hand. It wedges the piston in
 * the bore, and scores both. The piston grows more than the ring and takes up some of the room as it warms: see {@link
 * coldPistonClearance}. Too much room behind a ring is slow to fill with gas, and holds carbon.
 *
 * @param ring - bore, ring and groove, the skirt's clearance if it is known, and the limits if they are known [m]
 * @returns radial clearance, and what was found [m]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, a span is reversed, limits
 * have no bound, the root is given twice or not at all, or the land is not of the bore
 * @see Source: geometry
 * @example
 * ```ts
 * const { radialClearance, radialAgainstWall } = ringBackClearance({
 *   bore: mm(80), radialThickness: mm(3.3), land: mm(79.5), depth: mm(3.6), pistonClearance: mm(0.1),
 * });
 * format(radialClearance.min, mm, 2); // "0.55 mm"
 * radialAgainstWall && format(radialAgainstWall.min, mm, 2); // "0.50 mm"
 * ```
 */
export function ringBackClearance(ring: RingOverRoot): RingBackClearance {
  guardFields('ring', ring as WithTarget<RingOverRoot>, BACK);
  const bore = diameter('bore', ring.bore);
  const thickness = guardSpan('radialThickness', ring.radialThickness, ringThickness);
  const root = rootOf(ring, bore);
  const leans =
    ring.pistonClearance === undefined
      ? undefined
      : guardSpan('pistonClearance', ring.pistonClearance, landClearance);
  const allowed = ownLimitsOnly('ring', ring, ringRoom);
  const radialClearance = worstCase([
    [0.5, { min: bore, max: bore }],
    [-0.5, root],
    [-1, thickness],
  ]);
  const feature = 'ring back clearance';
  if (leans === undefined) {
    return {
      radialClearance,
      findings: findingsOn(feature, radialClearance, allowed, BOTTOMS),
    };
  }
  const radialAgainstWall = worstCase([
    [1, radialClearance],
    [-0.5, leans],
  ]);
  return {
    radialClearance,
    radialAgainstWall,
    findings: [
      ...ownFindings(feature, radialClearance, allowed),
      ...contactFindings(`${feature} against the wall`, radialAgainstWall, allowed, BOTTOMS),
    ],
  };
}

/** The diameter at the root of the groove, as it was given or from the land beside it. */
function rootOf({ root, land, depth }: RingOverRoot, bore: Length): Span<Length> {
  if (root !== undefined && land === undefined && depth === undefined) {
    return guardSpan('root', root, (at, size) =>
      guardLength(at, size, [0.5 * bore, bore], diameter.example),
    );
  }
  if (root !== undefined || land === undefined || depth === undefined) throw rootUnclear(root);
  const lands = guardSpan('land', land, (at, size) =>
    guardAlike(at, diameter(at, size), 'bore', bore),
  );
  const depths = guardSpan('depth', depth, ringThickness);
  return worstCase([
    [1, lands],
    [-2, depths],
  ]);
}

function rootUnclear(root: unknown): RebuildInputError {
  return new RebuildInputError({
    parameter: 'root',
    value: root,
    expected: 'the root of the groove, or a land and the depth below it',
    hint: 'Give root alone, or land and depth without it.',
  });
}
