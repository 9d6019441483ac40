import { guardFields, guardLength, ROUNDING } from '../judging/internal.js';
import type { Angle, Length, Ratio } from '../quantities/index.js';
import { breakerSpeedRatio, magnetoRotor } from './domains.js';

/** How far the rotor of a magneto is past its pole shoe as the points open. */
export interface RotorEdgeAngle {
  /** In turn of the magneto [rad]. */
  readonly atMagneto: Angle;
  /** In turn of the crank [rad]. */
  readonly atCrank: Angle;
}

const EDGE = ['rotorDiameter', 'edgeDistance', 'speedRatio'] as const;

/**
 * The edge distance of a magneto as an angle: how far its armature or magnet has turned since its trailing edge left
 * the pole shoe. At one place the field breaks down fastest, and there the points are to open; the maker's figure tells
 * where. For a figure in degrees, `rimDistance` gives the distance: its chord.
 *
 *     atMagneto = 2 * asin(edgeDistance / rotorDiameter)
 *     atCrank = atMagneto / speedRatio
 *
 * Measure straight across, from edge to edge, with the points just opening and the cam ring at full advance. This is
 * inside of the magneto and is set before the magneto is timed to the engine: what the points are moved by for the edge
 * moves the spark too, and an earlier spark **throws the starting handle back**. Keep the rotor of an old magneto
 * within its pole shoes or a keeper on it, or it loses its magnetism.
 *
 * @param edge - diameter of the rotor, distance of the edges, and how fast the magneto turns
 * @returns the angle at the magneto and at the crank
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, or the distance is more
 * than the rotor
 * @see Source: geometry
 * @example
 * ```ts
 * // 2 * asin(3 / 45) is 7.6°, and twice that at the crank.
 * const edge = rotorEdgeAngle({ rotorDiameter: mm(45), edgeDistance: mm(3), speedRatio: ratio(0.5) });
 * format(edge.atMagneto, degree); // "7.6 deg"
 * format(edge.atCrank, degree); // "15.3 deg"
 * ```
 */
export function rotorEdgeAngle(edge: {
  /** Diameter of the armature or magnet across its pole faces [m]. */
  readonly rotorDiameter: Length;
  /** From the trailing edge of the rotor to the edge of the pole shoe, straight across [m]. */
  readonly edgeDistance: Length;
  /** Turns of the magneto for one turn of the crank: 0.5 where it turns with the cam [-]. */
  readonly speedRatio: Ratio;
}): RotorEdgeAngle {
  guardFields('edge', edge, EDGE);
  const rotorDiameter = magnetoRotor('rotorDiameter', edge.rotorDiameter);
  const most = rotorDiameter * (1 + ROUNDING);
  const distance = guardLength('edgeDistance', edge.edgeDistance, [0, most], 'mm(3)');
  const speedRatio = breakerSpeedRatio('speedRatio', edge.speedRatio);
  const atMagneto = 2 * Math.asin(Math.min(distance / rotorDiameter, 1));
  return { atMagneto: atMagneto as Angle, atCrank: (atMagneto / speedRatio) as Angle };
}
