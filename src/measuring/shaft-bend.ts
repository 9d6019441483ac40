import type { Span } from '../judging/index.js';
import {
  guardFields,
  guardList,
  guardSpan,
  guardTruth,
  showLength,
  stationAlong,
  toleratedWear,
} from '../judging/internal.js';
import { type Length, RebuildInputError } from '../quantities/index.js';
import { largestOf } from '../quantities/internal.js';
import { fitBow, fitKink, type OffAxis } from './bend-shapes.js';
import type { Bend, BendStation, BendVerdict, StationRunout } from './bend-types.js';
import { guardShown } from './harmonics.js';
import { SAME_PLACE, TENTH } from './readings.js';
import { ENOUGH_ANGLES, turnOf } from './runout.js';
import { guardDial } from './trace.js';

const SHAFT = ['supports', 'stations', 'resolution', 'roundnessChecked'] as const;
const STATION = ['station', 'readings'] as const;
/** Fewer stations than this fit a kink wherever they are. */
const STATIONS_FOR_A_SHAPE = 3;
/** A shape off by more than this many tolerances is ruled out. */
const RULED_OUT = 2;

/**
 * Whether a shaft held at two supports is bent, and how: kinked at one place, bowed along its length, or not bent
 * but out of round under the dial. It compares how far and which way each station stands off the axis with both
 * shapes:
 *
 *     kink: amount * (station - supports.min) / (at - supports.min)   up to the kink, and straight back past it
 *     bow:  4 * amount * (station - supports.min) * (supports.max - station) / (supports.max - supports.min)²
 *
 * A shape counts as seen only if every station lies on it as near as the instrument tells, and the other shape is
 * ruled out, lying twice as far off. Anything else is undecided and names the next place to read; with fewer than
 * three stations it always is, and with a station that was read at fewer than six angles too, unless it is known to be
 * round: three lobes under four readings look like a bend.
 *
 * Turn the shaft by hand. On V-blocks, the journals it rests on must be round: their out-of-round moves every
 * station. Give the supports where the blocks or centres touch. A shaft that is straightened is read again, and its
 * diameters too.
 *
 * @param shaft - where it is held, and what the dial showed at stations between the supports or past them
 * @returns how it is bent, where and by how much, or what to read to find out
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, there is no station,
 * a station was read twice, a station is a support, the supports are one place, a station has fewer than three
 * readings, an angle was read twice, or readings leave half a turn out
 * @see Source: half the reading: TM 10-3930-653-14&P; shapes: geometry; worked checks in
 * tests/published/roundness.test.ts
 * @example
 * ```ts
 * const turn = (high: number) => [0, 60, 120, 180, 240, 300].map((at) => ({
 *   angle: degree(at), reading: thou(high * Math.cos((at * Math.PI) / 180)),
 * }));
 * const shaft = bend({
 *   supports: { min: inch(0), max: inch(20) },
 *   stations: [
 *     { station: inch(5), readings: turn(2) }, { station: inch(10), readings: turn(4) },
 *     { station: inch(15), readings: turn(2) },
 *   ],
 * });
 * shaft.outcome; // "kink"
 * shaft.outcome === 'kink' && format(shaft.at, inch); // "10.0000 in"
 * shaft.outcome === 'kink' && format(shaft.amount, thou); // "4.0 thou"
 * ```
 */
export function bend(shaft: {
  /** The two places along the shaft where it is held: they run true by themselves [m]. */
  readonly supports: Span<Length>;
  /** Stations, in any order, none at a support. */
  readonly stations: readonly BendStation[];
  /** How far off a station may be by the instrument alone; by default 0.0001 in, a tenth [m]. */
  readonly resolution?: Length;
  /** Whether every station was found round, so that fewer than six angles are enough; by default not. */
  readonly roundnessChecked?: boolean;
}): Bend {
  guardFields('shaft', shaft, SHAFT);
  const supports = guardSupports(shaft.supports);
  const { resolution = TENTH, roundnessChecked = false } = shaft;
  guardTruth('roundnessChecked', roundnessChecked);
  toleratedWear('resolution', resolution);
  const turns = guardStations(shaft.stations, supports).map(({ station, readings }) => ({
    station,
    ...turnOf(readings),
  }));
  turns.sort((a, b) => a.station - b.station);
  const offsets = turns.map(
    ({ station, eccentricity, direction, uncertainty }): OffAxis => ({
      station,
      x: eccentricity * Math.cos(direction),
      y: eccentricity * Math.sin(direction),
      tolerance: Math.max(resolution, 2 * uncertainty, SAME_PLACE.station),
    }),
  );
  const stations = turns.map(({ uncertainty, outOfRound, mayBeLobes, ...turn }) => ({
    ...turn,
    ...(outOfRound !== undefined && { outOfRound }),
    ...(mayBeLobes && !roundnessChecked && { mayBeLobes }),
  }));
  return { stations, ...verdictOn(supports, stations, offsets) };
}

function verdictOn(
  supports: Span<Length>,
  stations: readonly StationRunout[],
  offsets: readonly OffAxis[],
): BendVerdict {
  const isOff = offsets.some(({ x, y, tolerance }) => Math.hypot(x, y) > tolerance);
  if (!isOff) {
    const moves = stations.some(({ total }, i) => total > 2 * (offsets[i] as OffAxis).tolerance);
    return { outcome: moves ? 'out-of-round' : 'true' };
  }
  const mostRead = largestOf(stations.map(({ eccentricity }) => eccentricity));
  const lobed = stations.filter(({ mayBeLobes }) => mayBeLobes);
  const [first] = lobed.sort((a, b) => b.eccentricity - a.eccentricity);
  if (first !== undefined) {
    const next = { readNext: first.station, anglesNext: ENOUGH_ANGLES };
    return { outcome: 'undecided', because: 'too few angles', mostRead, ...next };
  }
  const [bow, kink] = [fitBow(supports, offsets), fitKink(supports, offsets)];
  const [bowFits, kinkFits] = [bow, kink].map(({ misfit }) => misfit <= 1);
  const [noBow, noKink] = [bow, kink].map(({ misfit }) => misfit > RULED_OUT);
  const enough = stations.length >= STATIONS_FOR_A_SHAPE;
  if (enough && bowFits && noKink) {
    return { outcome: 'bow', amount: bow.amount, direction: bow.direction };
  }
  if (enough && kinkFits && noBow) {
    const { at, between, amount, direction } = kink;
    return { outcome: 'kink', at, between, amount, direction };
  }
  return {
    outcome: 'undecided',
    because: !enough ? 'too few stations' : noBow && noKink ? 'neither fits' : 'both fit',
    mostRead,
    readNext: longestUnread(supports, stations),
  };
}

/** The middle of the longest stretch between supports and stations. */
function longestUnread({ min, max }: Span<Length>, stations: readonly StationRunout[]): Length {
  const inside = stations.map(({ station }) => station).filter((at) => at > min && at < max);
  const places = [min, ...inside, max];
  let [longest, middle] = [0, min];
  for (let k = 1; k < places.length; k++) {
    const [from, to] = [places[k - 1] as Length, places[k] as Length];
    if (to - from <= longest + SAME_PLACE.station) continue;
    [longest, middle] = [to - from, ((from + to) / 2) as Length];
  }
  return middle;
}

function guardSupports(supports: Span<Length>): Span<Length> {
  const guarded = guardSpan('supports', supports, stationAlong);
  if (guarded.max - guarded.min > SAME_PLACE.station) return guarded;
  throw new RebuildInputError({
    parameter: 'supports',
    value: supports,
    shown: showLength(guarded.min),
    expected: 'two places apart',
    problem: 'is one place: a shaft is held at two',
    hint: 'Give { min, max }: where the blocks or centres hold the shaft.',
  });
}

function guardStations(
  stations: readonly BendStation[],
  { min, max }: Span<Length>,
): readonly BendStation[] {
  guardList('stations', stations, 1, 'station');
  const seen: Length[] = [];
  stations.forEach((one, i) => {
    guardFields(`stations[${i}]`, one, STATION);
    const station = stationAlong(`stations[${i}].station`, one.station);
    const isNear = (place: Length) => Math.abs(place - station) <= SAME_PLACE.station;
    const isHeld = isNear(min) || isNear(max);
    if (isHeld || seen.some(isNear)) {
      throw new RebuildInputError({
        parameter: `stations[${i}].station`,
        value: station,
        shown: showLength(station),
        expected: 'a place of its own, away from the supports',
        problem: isHeld ? 'is a support, where the shaft is held true' : 'was read twice',
        hint: isHeld ? 'Read between the supports, or past them.' : 'Average repeats first.',
      });
    }
    seen.push(station);
    const readings = `stations[${i}].readings`;
    guardDial(readings, one.readings, 3, 'readings, all round the shaft');
    guardShown(readings, one.readings, 'A bend');
  });
  return stations;
}
