import {
  angleAround,
  diameter,
  guardFields,
  guardList,
  NANOMETRE,
  showLength,
  stationAlong,
} from '../judging/internal.js';
import { type Angle, type Length, RebuildInputError } from '../quantities/index.js';

/** One diameter taken with a micrometer or a bore gauge. */
export interface DiameterReading {
  /** Where along the part: distance from a datum of your own, such as the flywheel side or the deck [m]. */
  readonly station: Length;
  /** Where around the part; best 0, 60 and 120°. Half a turn apart is the same diameter [rad]. */
  readonly angle: Angle;
  /** What the instrument showed [m]. */
  readonly diameter: Length;
}

/** Stations closer than a nanometre, angles closer than a microradian, are one. */
export const SAME_PLACE = { station: NANOMETRE, angle: 1e-6 };

/** One tenth, 0.0001 in: what a micrometer with a vernier resolves. */
export const TENTH = 2.54e-6 as Length;

const READING = ['station', 'angle', 'diameter'] as const;

/** Checks every reading and brings its angle to less than half a turn. */
export function guardReadings(readings: readonly DiameterReading[]): DiameterReading[] {
  guardList('readings', readings, 1, 'reading; shape needs two angles at each of two stations');
  const placed = readings.map((reading, index) => {
    const name = `readings[${index}]`;
    guardFields(name, reading, READING);
    return {
      station: stationAlong(`${name}.station`, reading.station),
      angle: inHalfTurn(angleAround(`${name}.angle`, reading.angle)),
      diameter: diameter(`${name}.diameter`, reading.diameter),
    };
  });
  guardPlausible(placed);
  return placed;
}

/** An angle brought to less than half a turn: half a turn apart is the same diameter. */
function inHalfTurn(around: Angle): Angle {
  const turn = around % Math.PI;
  const angle = turn < 0 ? turn + Math.PI : turn;
  return (Math.PI - angle < SAME_PLACE.angle ? 0 : angle) as Angle;
}

/** Whether diameters at these angles are all the same one. */
export const isOneDiameter = ([first = 0 as Angle, ...others]: readonly Angle[]): boolean =>
  others.every((angle) => Math.abs(Math.sin(angle - first)) <= SAME_PLACE.angle);

/** Readings with their angles brought to less than half a turn, not guarded. */
export const inHalfTurns = (readings: readonly DiameterReading[]): readonly DiameterReading[] =>
  readings.map((each) => ({ ...each, angle: inHalfTurn(each.angle) }));

/** One diameter in inches among metres, or a slipped digit, stands out against its neighbours. */
function guardPlausible(readings: readonly DiameterReading[]): void {
  const sorted = readings.map((reading) => reading.diameter).sort((a, b) => a - b);
  const middle = sorted[sorted.length >> 1] as Length;
  readings.forEach((reading, index) => {
    if (Math.abs(reading.diameter - middle) <= middle / 50) return;
    throw new RebuildInputError({
      parameter: `readings[${index}].diameter`,
      value: reading.diameter,
      shown: showLength(reading.diameter),
      expected: `within 2 % of ${showLength(middle)}, the middle of the readings`,
      hint: 'A digit has slipped, or the units are mixed; no part wears that far and holds together.',
    });
  });
}

/** Readings that share a station or an angle. */
export interface Group<R extends DiameterReading = DiameterReading> {
  readonly at: number;
  readonly group: readonly R[];
}

/** Readings that share a station or an angle, in order of it. */
export function groupBy<R extends DiameterReading>(
  readings: readonly R[],
  key: 'station' | 'angle',
): Group<R>[] {
  const groups: { at: number; group: R[] }[] = [];
  for (const reading of [...readings].sort((a, b) => a[key] - b[key])) {
    const last = groups.at(-1);
    if (last && reading[key] - last.at <= SAME_PLACE[key]) last.group.push(reading);
    else groups.push({ at: reading[key], group: [reading] });
  }
  return groups;
}
