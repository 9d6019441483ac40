import { diameter, guardFields, guardLength } from '../judging/internal.js';
import type { Angle, Area, Length } from '../quantities/index.js';
import { openLift, stemDiameter, valveSeatAngle, valveSeatWidth } from './domains.js';

/** A valve that stands open over its port. */
export interface OpenValve {
  /** Diameter of the valve at the outer edge of its seat [m]. */
  readonly valveDiameter: Length;
  /** Width of the seat along its slope [m]. */
  readonly seatWidth: Length;
  /** Angle of the seat, from the plane across the stem [rad]. */
  readonly seatAngle: Angle;
  /** Diameter of the port where it is narrowest [m]. */
  readonly portDiameter: Length;
  /** Diameter of the stem there [m]. */
  readonly stemDiameter: Length;
  /** How far the valve is off its seat [m]. */
  readonly lift: Length;
}

/** What is open under a valve. No coefficient of flow is in it. */
export interface ValveArea {
  /** Curtain under the rim of the valve, without looking at seat or port [m²]. */
  readonly curtain: Area;
  /** The narrowest place on the way [m²]. */
  readonly least: Area;
  /** Where that is: square across the slope of the seat, from the seat's inner edge to the rim of the valve, or the port itself. */
  readonly narrowest: 'seat' | 'rim' | 'port';
  /** What the port leaves round the stem [m²]. */
  readonly port: Area;
  /** The lift at which the curtain is as large as the port [m]. */
  readonly curtainMeetsPort: Length;
  /** The lift from which on the port is the narrowest place: more lift opens nothing [m]. */
  readonly portGovernsFrom: Length;
}

const OPEN = [
  'valveDiameter',
  'seatWidth',
  'seatAngle',
  'portDiameter',
  'stemDiameter',
  'lift',
] as const;

/**
 * What a valve leaves open at some lift: the simple curtain, and the least area on the way, which lies in one of three places
 * as the valve rises.
 *
 *     curtain = π * valveDiameter * lift
 *     port = π / 4 * (portDiameter² - stemDiameter²)
 *     w = seatWidth * cos(seatAngle)
 *     least = π * lift * cos(seatAngle) * (valveDiameter - 2 * w + lift / 2 * sin(2 * seatAngle))   up to lift = w / (sin(seatAngle) * cos(seatAngle))
 *     least = π * (valveDiameter - w) * sqrt((lift - w * tan(seatAngle))² + w²)   above that
 *     least = port   once the others are larger
 *     curtainMeetsPort = port / (π * valveDiameter)
 *
 * The two slopes are those of Heywood, whose seat width is `w`, measured across. With a port as wide as the
 * valve and no stem, the curtain meets it at a quarter of its diameter; a real seat and stem leave less. This is
 * geometry: what flows is less by a coefficient that a flow bench tells.
 *
 * @param valve - valve, seat, port, stem and lift
 * @returns curtain, least area and where it is, port, and the lifts at which they meet
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, the seat is wider than the
 * valve bears, the port is wider than the valve, or the stem fills the port
 * @see Source: Heywood, Internal Combustion Engine Fundamentals, section 6.3.2, from memory; geometry
 * @example
 * ```ts
 * const valve = {
 *   valveDiameter: mm(30), seatWidth: mm(1.5), seatAngle: degree(45),
 *   portDiameter: mm(26), stemDiameter: mm(8),
 * };
 * const area = valveArea({ ...valve, lift: mm(6) });
 * format(area.curtain, squareMm); // "565.49 mm²"
 * format(area.least, squareMm); // "459.30 mm²"
 * area.narrowest; // "rim"
 * format(area.curtainMeetsPort, mm); // "5.100 mm"
 * ```
 */
export function valveArea(valve: OpenValve): ValveArea {
  guardFields('valve', valve, OPEN);
  const outer = diameter('valveDiameter', valve.valveDiameter);
  const angle = valveSeatAngle('seatAngle', valve.seatAngle);
  const slope = valveSeatWidth('seatWidth', valve.seatWidth);
  guardLength('seatWidth', slope, [valveSeatWidth.least, outer / 4], valveSeatWidth.example);
  const wide = diameter('portDiameter', valve.portDiameter);
  guardLength('portDiameter', wide, [diameter.least, outer], diameter.example);
  const stem = stemDiameter('stemDiameter', valve.stemDiameter);
  guardLength('stemDiameter', stem, [stemDiameter.least, 0.9 * wide], stemDiameter.example);
  const lift = openLift('lift', valve.lift);

  const port = (Math.PI / 4) * (wide * wide - stem * stem);
  const [sin, cos] = [Math.sin(angle), Math.cos(angle)];
  const seat: Seat = { outer, w: slope * cos, sin, cos };
  const onSlope = lift <= seat.w / (sin * cos);
  const open = onSlope ? acrossSeat(seat, lift) : toRim(seat, lift);
  const opening = onSlope ? 'seat' : 'rim';
  return {
    curtain: (Math.PI * outer * lift) as Area,
    least: Math.min(open, port) as Area,
    narrowest: open < port ? opening : 'port',
    port: port as Area,
    curtainMeetsPort: (port / (Math.PI * outer)) as Length,
    portGovernsFrom: meets(seat, port) as Length,
  };
}

/** A seat by its outer diameter and its width across, with its angle. */
interface Seat {
  readonly outer: number;
  readonly w: number;
  readonly sin: number;
  readonly cos: number;
}

/** The cone at right angles to the face, from the inner edge of the seat. */
const acrossSeat = ({ outer, w, sin, cos }: Seat, lift: number) =>
  Math.PI * lift * cos * (outer - 2 * w + lift * sin * cos);

/** The cone from the inner edge of the seat to the rim of the valve. */
const toRim = ({ outer, w, sin, cos }: Seat, lift: number) =>
  Math.PI * (outer - w) * Math.hypot(lift - (w * sin) / cos, w);

/** The lift at which the opening is as large as the port: both cones turned round. */
function meets(seat: Seat, port: number): number {
  const { outer, w, sin, cos } = seat;
  const slant = port / (Math.PI * (outer - w));
  if (slant >= w / sin) return (w * sin) / cos + Math.sqrt(slant * slant - w * w);
  // The positive root of sin cos lift² + (outer - 2 w) lift = port / (π cos).
  const q = port / (Math.PI * cos);
  const inner = outer - 2 * w;
  return (2 * q) / (inner + Math.sqrt(inner * inner + 4 * sin * cos * q));
}
