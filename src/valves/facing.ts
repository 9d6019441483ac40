import { guardFields } from '../judging/internal.js';
import type { Angle, Length } from '../quantities/index.js';
import {
  facingStock,
  springHeight,
  valveLash,
  valveMargin,
  valveRecession,
  valveSeatAngle,
} from './domains.js';

/** What is taken off a valve and its seat, and what that changes, as far as it was read before. */
export interface ValveFacing {
  /** Angle of seat and face, from the plane across the stem [rad]. */
  readonly seatAngle: Angle;
  /** How deep the seat is cut, along the stem; by default nothing [m]. */
  readonly seatCut?: Length;
  /** How much is ground off the face, at right angles to it as a refacing machine feeds; by default nothing [m]. */
  readonly faceGround?: Length;
  /** Lash before [m]. */
  readonly lash?: Length;
  /** Margin before: the rim between the face and the top of the head [m]. */
  readonly margin?: Length;
  /** How far the head lay below the deck before; negative if it stood out [m]. */
  readonly recession?: Length;
  /** Height of the spring before, valve closed [m]. */
  readonly installedHeight?: Length;
}

/** A valve and its seat after they were ground. What was not given before is not known after. */
export interface FacedValve {
  /** How much deeper the valve sits [m]. */
  readonly sink: Length;
  /** Lash that is left; negative is how far the valve is held off its seat [m]. */
  readonly lash?: Length;
  /** Margin that is left; negative is a head ground away [m]. */
  readonly margin?: Length;
  /** How far the head lies below the deck [m]. */
  readonly recession?: Length;
  /** Height of the spring, valve closed: it gets longer, and so weaker [m]. */
  readonly installedHeight?: Length;
}

const FACING = [
  'seatAngle',
  'seatCut',
  'faceGround',
  'lash',
  'margin',
  'recession',
  'installedHeight',
] as const;

/**
 * What grinding a seat and a face does to a valve: it sinks, its lash and its margin shrink, its head lies deeper, and its
 * spring gets longer. A wheel that takes a little off a slope lets the valve down by more than that.
 *
 *     sink = seatCut + faceGround / cos(seatAngle)
 *     lashLeft = lash - sink
 *     marginLeft = margin - faceGround / cos(seatAngle)
 *     recessionThen = recession + sink
 *     heightThen = installedHeight + sink
 *
 * Lash is meant at the end of the stem, with a rocker too. Face and seat are taken as of one angle; a degree between
 * them, as some cut it, makes no difference here. Read margin, lash and recession again afterwards: an
 * uneven face has its margin at the thinnest place.
 *
 * @param facing - angle, what is taken off, and what was read before
 * @returns how far the valve sinks, and the rest as far as it was read before [m]
 * @throws {RebuildInputError} when a field is misspelt, or a value is not finite or out of range
 * @see Source: geometry; worked check in tests/published/valves.test.ts
 * @example
 * ```ts
 * const faced = afterFacing({
 *   seatAngle: degree(45), seatCut: thou(4), faceGround: thou(5), lash: thou(8), margin: inch(1 / 32),
 * });
 * // 4 + 5 / cos 45° = 4 + 7.07
 * format(faced.sink, thou); // "11.1 thou"
 * faced.lash && format(faced.lash, thou); // "-3.1 thou"
 * faced.margin && format(faced.margin, thou); // "24.2 thou"
 * ```
 */
export function afterFacing(facing: ValveFacing): FacedValve {
  guardFields('facing', facing, FACING);
  const angle = valveSeatAngle('seatAngle', facing.seatAngle);
  const { seatCut = 0 as Length, faceGround = 0 as Length } = facing;
  const { lash, margin, recession, installedHeight } = facing;
  facingStock('seatCut', seatCut);
  const off = facingStock('faceGround', faceGround) / Math.cos(angle);
  const sink = (seatCut + off) as Length;
  return {
    sink,
    ...(lash !== undefined && { lash: (valveLash('lash', lash) - sink) as Length }),
    ...(margin !== undefined && { margin: (valveMargin('margin', margin) - off) as Length }),
    ...(recession !== undefined && {
      recession: (valveRecession('recession', recession) + sink) as Length,
    }),
    ...(installedHeight !== undefined && {
      installedHeight: (springHeight('installedHeight', installedHeight) + sink) as Length,
    }),
  };
}
