import { showIn, showLength, toleratedWear } from '../judging/internal.js';
import { type Angle, degree, type Length, RebuildInputError } from '../quantities/index.js';
import { largestOf, smallestOf } from '../quantities/internal.js';
import { type DiameterReading, type Group, groupBy, SAME_PLACE, TENTH } from './readings.js';
import { atPlaces, type Repeats } from './repeats.js';

/** The diameters of one ring around the part. */
export interface StationShape {
  /** Where along the part [m]. */
  readonly station: Length;
  /** Mean of the diameters there [m]. */
  readonly mean: Length;
  /** Largest minus smallest diameter there, as two points see it [m]. */
  readonly outOfRound: Length;
}

/** The diameters along one line of the part. */
export interface LineShape {
  /** Where around the part, brought to less than half a turn [rad]. */
  readonly angle: Angle;
  /** Largest minus smallest diameter along it [m]. */
  readonly taper: Length;
}

/** How the mean diameter runs along the part. */
export type Form = 'straight' | 'tapered' | 'barrel' | 'hourglass';

/**
 * Size and shape of a round part, from readings on at least two stations and two angles. They are two-point readings: they
 * see no odd lobes, and two angles may miss all of an oval. Read at 0, 60 and 120°: {@link shareOfOvalSeen}.
 */
export interface Shape {
  /** Smallest diameter read anywhere [m]. */
  readonly smallest: Length;
  /** Largest diameter read anywhere [m]. */
  readonly largest: Length;
  /** Worst two-point out-of-round of any station: a difference of diameters, and blind to odd lobes [m]. */
  readonly outOfRound: Length;
  /** Worst taper of any line [m]. */
  readonly taper: Length;
  /** Barrel: larger between its ends. Hourglass: smaller between its ends. */
  readonly form: Form;
  /** Every station, in order along the part. */
  readonly stations: readonly StationShape[];
  /** Every line that was read at two stations or more, in order around the part. */
  readonly lines: readonly LineShape[];
  /** Angles that were read at one station only, if any: the taper along them is not known [rad]. */
  readonly taperNotRead?: readonly Angle[];
  /** How readings scatter that were taken again at one place, if any were. Each place counts with its mean. */
  readonly repeats?: Repeats;
}

/** What may be told about the readings. */
export interface ShapeOptions {
  /** Differences up to this are the instrument's, not the part's; by default 0.0001 in, a tenth [m]. */
  readonly resolution?: Length;
}

/** The shape that sound readings tell. Journals and bores are measured alike; only what wears where differs. */
export function shapeOf(readings: readonly DiameterReading[], options: ShapeOptions): Shape {
  const { resolution: asked = TENTH } = options;
  const resolution = toleratedWear('options.resolution', asked);
  const { places: placed, repeats } = atPlaces(readings);
  const stations = groupBy(placed, 'station');
  const lines = groupBy(placed, 'angle');
  guardCoverage(stations, lines);
  const everywhere = lines.filter(({ group }) => group.length === stations.length);
  const shared = new Set(everywhere.length < 2 ? placed : everywhere.flatMap(({ group }) => group));
  const along = stations.map(({ at, group }) => ({
    station: at as Length,
    mean: meanOf(group),
    outOfRound: rangeOf(group),
  }));
  const [whole, lone] = [lines.filter(isWhole), lines.filter((line) => !isWhole(line))];
  const around = whole.map(({ at, group }) => ({ angle: at as Angle, taper: rangeOf(group) }));
  const diameters = placed.map((reading) => reading.diameter);
  return {
    smallest: smallestOf(diameters),
    largest: largestOf(diameters),
    outOfRound: largestOf(along.map((station) => station.outOfRound)),
    taper: largestOf(around.map((line) => line.taper)),
    // Where an angle is lacking, the mean of the others is that of another oval.
    form: formOf(
      stations.map(({ group }) => meanOf(group.filter((reading) => shared.has(reading)))),
      resolution,
    ),
    stations: along,
    lines: around,
    ...(lone.length > 0 && { taperNotRead: lone.map(({ at }) => at as Angle) }),
    ...(repeats && { repeats }),
  };
}

/** What is still to be read to tell a shape: out-of-round needs two angles at a station, and taper two stations on two lines. */
export type StillToRead =
  | {
      /** Another angle at a station. */
      readonly kind: 'second angle';
      /** Which station [m]. */
      readonly station: Length;
    }
  | {
      /** Another station on a line. */
      readonly kind: 'second station';
      /** The angle of the line [rad]. */
      readonly angle: Angle;
    };

function guardCoverage(stations: readonly Group[], lines: readonly Group[]): void {
  const lacks = uncovered(stations, lines);
  if (lacks === undefined) return;
  if (lacks.kind === 'second angle') {
    throw missing(
      `a second angle at station ${showLength(lacks.station)}`,
      'Out-of-round needs two diameters there, best a quarter turn apart; 0 and 180 deg are one diameter.',
    );
  }
  const { angle } = lacks;
  const near = nearestOf(lines, angle);
  const off = near
    ? ` It is ${degrees(apart(near.at, angle))} from the line at ${degrees(near.at)}: if they are one line and the mark was off, write one angle for both.`
    : '';
  throw missing(
    `a second station at angle ${degrees(angle)}`,
    `Taper needs two diameters along that line, best near the two ends.${off}`,
  );
}

function uncovered(stations: readonly Group[], lines: readonly Group[]): StillToRead | undefined {
  const station = stations.find(({ group }) => group.length < 2);
  if (station) return { kind: 'second angle', station: station.at as Length };
  // A third angle may stand alone, if it is not another's with the mark a little off.
  const isEnough = lines.filter(isWhole).length >= 2;
  const mayBeAnother = ({ at }: Group) => nearestOf(lines, at) !== undefined;
  const line = lines.find((each) => !isWhole(each) && (!isEnough || mayBeAnother(each)));
  return line && { kind: 'second station', angle: line.at as Angle };
}

/** Whether a line was read at two stations. */
const isWhole = ({ group }: Group): boolean => group.length >= 2;

/** Another line so near to an angle that the mark may have been off. */
const nearestOf = (lines: readonly Group[], angle: number): Group | undefined =>
  lines.find(({ at }) => at !== angle && apart(at, angle) <= MARK_OFF);

/** A mark that is off is off by no more than this. */
const MARK_OFF = /* @__PURE__ */ degree(15);

/** How far two lines are apart around the part, the shorter way. */
function apart(one: number, other: number): number {
  const between = Math.abs(one - other) % Math.PI;
  return Math.min(between, Math.PI - between);
}

/** What sound readings lack to tell a shape; undefined if nothing. */
export function stillToRead(readings: readonly DiameterReading[]): StillToRead | undefined {
  const { places } = atPlaces(readings);
  return uncovered(groupBy(places, 'station'), groupBy(places, 'angle'));
}

function missing(what: string, hint: string): RebuildInputError {
  return new RebuildInputError({
    parameter: 'readings',
    value: undefined,
    shown: what,
    expected: what,
    problem: 'is missing',
    hint,
  });
}

/** The form of a part whose differences up to a resolution are the instrument's. */
export function formOf(means: readonly number[], resolution: number): Form {
  const ends = [means[0] as number, means.at(-1) as number];
  const inner = means.slice(1, -1);
  const seen = resolution + SAME_PLACE.station;
  if (largestOf(means) - smallestOf(means) <= seen) return 'straight';
  const bulge = largestOf(inner) - largestOf(ends);
  const waist = smallestOf(ends) - smallestOf(inner);
  if (Math.max(bulge, waist) <= seen) return 'tapered';
  return bulge >= waist ? 'barrel' : 'hourglass';
}

function meanOf(group: readonly DiameterReading[]): Length {
  return (group.reduce((sum, reading) => sum + reading.diameter, 0) / group.length) as Length;
}

function rangeOf(group: readonly DiameterReading[]): Length {
  const diameters = group.map((reading) => reading.diameter);
  return (largestOf(diameters) - smallestOf(diameters)) as Length;
}

const degrees = (angle: number) => showIn(angle as Angle, degree);
