import { guardFields, guardLength, guardList } from '../judging/internal.js';
import { elasticModulus } from '../measuring/internal.js';
import type { Length, Pressure, Stiffness } from '../quantities/index.js';
import { bearingFace, boltHole, gripLength } from './domains.js';

/** One of the parts that a bolt clamps. */
export interface ClampedLayer {
  /** How thick it is [m]. */
  readonly thickness: Length;
  /** Its modulus of elasticity [Pa]. */
  readonly elasticity: Pressure;
}

/** What a bolt clamps. */
export interface ClampedParts {
  /** The hole through the parts [m]. */
  readonly hole: Length;
  /** Outer diameter of the face of nut, head or washer that bears on them [m]. */
  readonly face: Length;
  /** The parts in their order from the head to the nut, washers too. */
  readonly layers: readonly ClampedLayer[];
}

const CLAMPED = ['hole', 'face', 'layers'] as const;
const LAYER = ['thickness', 'elasticity'] as const;
/** By how much the pressed cone widens on each side for its depth: the tangent of 30°. */
const SPREAD = 0.577_350_269_189_625_8;

/**
 * How stiff the parts are that a bolt clamps: the pressure spreads from both faces in cones of 30° that meet halfway, and
 * their slices are springs one behind the other. Of parts of one material:
 *
 *     depth = thickness / √(3)
 *     memberStiffness = π * elasticity * hole / √(3) / (2 * ln((depth + face - hole) * (face + hole) / ((depth + face + hole) * (face - hole))))
 *
 * The cones need metal to spread in: for a flange that is narrower than they are, it is less stiff than this. A gasket
 * is left out; with a soft one the bolt takes nearly all of the load that comes and goes. Of a tapped hole count the
 * thread to a depth of half its diameter, and the same face at that end.
 *
 * @param parts - hole, bearing face, and the parts in their order
 * @returns stiffness of the parts [N/m]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, there is no layer, or the
 * face is not wider than the hole
 * @see Source: Shigley's Mechanical Engineering Design, 9th ed., Eq. 8-18 to 8-20
 * @example
 * ```ts
 * const stiffness = memberStiffness({
 *   hole: mm(12), face: mm(18),
 *   layers: [
 *     { thickness: mm(20), elasticity: MPa(207_000) },
 *     { thickness: mm(25), elasticity: MPa(100_000) },
 *   ],
 * });
 * format(stiffness, newtonPerMm, 0); // "1379198 N/mm"
 * ```
 */
export function memberStiffness(parts: ClampedParts): Stiffness {
  guardFields('parts', parts, CLAMPED);
  const hole = boltHole('hole', parts.hole);
  const face = bearingFace('face', parts.face);
  // A face must be wider than its hole by what one can see.
  guardLength('face', face, [1.05 * hole, bearingFace.most], bearingFace.example);
  guardList('layers', parts.layers, 1, 'layer');
  let grip = 0;
  parts.layers.forEach((layer, i) => {
    guardFields(`layers[${i}]`, layer, LAYER);
    grip += gripLength(`layers[${i}].thickness`, layer.thickness);
    elasticModulus(`layers[${i}].elasticity`, layer.elasticity);
  });
  const middle = grip / 2;
  let [depth, give] = [0, 0];
  for (const { thickness, elasticity } of parts.layers) {
    const end = depth + thickness;
    const above = Math.min(end, middle);
    const below = Math.max(depth, middle);
    // A slice is as deep in its cone as its near end is from the face of that cone.
    if (above > depth) give += giveOf(hole, face, [depth, above - depth]) / elasticity;
    if (end > below)
      give += giveOf(hole, face, [Math.max(0, grip - end), end - below]) / elasticity;
    depth = end;
  }
  return (1 / give) as Stiffness;
}

/** What a slice of a cone gives to a unit of load, for a modulus of one. */
function giveOf(hole: number, face: number, [from, thick]: readonly [number, number]): number {
  const narrow = face + 2 * SPREAD * from;
  const wide = narrow + 2 * SPREAD * thick;
  const ratio = ((wide - hole) * (narrow + hole)) / ((wide + hole) * (narrow - hole));
  return Math.log(ratio) / (Math.PI * hole * SPREAD);
}
