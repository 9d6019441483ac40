import { guardFields, showLength, toleratedWear } from '../judging/internal.js';
import { type Circle, leastSquaresCircle, minimumZone, type Zone } from '../numerics/index.js';
import { type Angle, type Length, RebuildInputError } from '../quantities/index.js';
import { largestOf, smallestOf } from '../quantities/internal.js';
import { type Local, qualityOf, toLocal } from './local.js';
import { guardPoints, lobesShown, type PlanePoint, widestGap } from './trace.js';

/** The least-squares circle of a trace. */
export interface LeastSquaresCircle {
  /** Its centre [m]. */
  readonly centre: PlanePoint;
  /** Its radius [m]. */
  readonly radius: Length;
  /** Radius to the farthest point less radius to the nearest, from its centre [m]. */
  readonly radialOutOfRound: Length;
  /** Root of the mean square of the distances of the points from it [m]. */
  readonly scatter: Length;
  /** Standard uncertainty of its radius, if the points scatter at random [m]. */
  readonly radiusUncertainty: Length;
  /** Standard uncertainty of its centre in the direction in which that is largest, likewise [m]. */
  readonly centreUncertainty: Length;
}

/** The two circles about one centre that hold a trace between them and lie closest to each other. */
export interface MinimumZone {
  /** Their centre [m]. */
  readonly centre: PlanePoint;
  /** Radius halfway between them [m]. */
  readonly radius: Length;
  /** Radius of the outer less radius of the inner [m]. */
  readonly radialOutOfRound: Length;
  /** The points that hold it, by their place in the trace, round the circle: outer, inner, outer, inner. */
  readonly contacts: readonly number[];
}

/** How round a part is, by the circles that its trace fits. */
export type Roundness = RoundnessVerdict & {
  /**
   * Up to how many lobes the points show. More lobes than these are hidden: they may lie on any circle that is found.
   * Of points that leave half a turn out it is none [-].
   */
  readonly lobesSeen: number;
};

/** Whether the circles of a trace are known, and which they are. */
export type RoundnessVerdict =
  | {
      /** The points go far enough round to tell the circle. */
      readonly outcome: 'determined';
      /** The angle at the centre that the points span: a turn less their widest gap [rad]. */
      readonly arc: Angle;
      /** The circle nearest to all points. */
      readonly leastSquares: LeastSquaresCircle;
      /** The narrowest zone (ISO 12181-1). */
      readonly minimumZone: MinimumZone;
    }
  | {
      /**
       * The radius is not known within a tenth, at 95 %: the arc is too short for its scatter. Or the points are fewer
       * than seven and their uncertainty was not given, so that nothing tells it. Or no zone is the narrowest.
       */
      readonly outcome: 'undecided';
      /** The angle at the centre that the points span, as far as the centre is known [rad]. */
      readonly arc: Angle;
      /** The circle nearest to all points, for what it is worth. */
      readonly leastSquares: LeastSquaresCircle;
      /** The narrowest zone that was found, for what it is worth; absent if straight lines lie closer. */
      readonly minimumZone?: MinimumZone;
    };

/** What may be told about the points. */
export interface RoundnessOptions {
  /**
   * Standard uncertainty of a point along the radius, where the points scatter less than that; by default their
   * scatter alone tells [m].
   */
  readonly pointUncertainty?: Length;
}

const OPTIONS = ['pointUncertainty'] as const;

/** A circle takes three numbers, and with fewer than four points more their scatter is luck. */
const ENOUGH_POINTS = 7;
/** A radius not known within this share of itself, at 95 %, is no radius to work by. */
const UNCERTAIN = 0.1;

/**
 * How round a part is: its least-squares circle and its minimum zone, from points anywhere around it. What
 * a micrometer calls out-of-round is a difference of diameters; here it is one of radii, and odd lobes show.
 *
 * The points may cover only a part of the turn. The shorter their arc, the less they tell of the radius, and the
 * result says so. They may also lie far from the datum: they are centred first, so nothing is lost that the numbers
 * held. At 1 km a number resolves 0.1 pm.
 *
 * More lobes than the gaps between the points show are hidden: four points of an oval at 45° lie on a circle, and so do
 * five points of five lobes. `lobesSeen` says how many show. Fewer than seven points without a `pointUncertainty` are
 * undecided.
 *
 * The search for the minimum zone starts at the least-squares centre and ends with four contacts, outer and inner
 * by turns: no small shift of the centre makes the zone narrower. Of a part that was traced all the way round, no
 * zone anywhere is narrower by more than the square of its width over the diameter: 20 µm on 50 mm leave 8 nm.
 *
 * @param points - at least four points, in any order, none twice [m]
 * @param options - how well each point is known
 * @returns both circles with their radial out-of-round, the arc, and whether it is long enough
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, there are fewer than
 * four points, a point is given twice, the points span more than a part can, lie on one line, or lie as well on a
 * line as on any circle
 * @see Source: Gander, Golub and Strebel, BIT 34 (1994); ISO 12181-1; worked checks in
 * tests/published/roundness.test.ts
 * @example
 * ```ts
 * const threeLobes = Array.from({ length: 36 }, (_, i) => ({
 *   angle: degree(10 * i), reading: thou(Math.cos((3 * i * Math.PI) / 18)),
 * }));
 * const found = roundness(pointsFromDial({ radius: inch(1), readings: threeLobes }));
 * found.outcome; // "determined"
 * found.lobesSeen; // 17
 * format(found.leastSquares.radialOutOfRound, thou); // "2.0 thou"
 * ```
 */
export function roundness(
  points: readonly PlanePoint[],
  options: RoundnessOptions = {},
): Roundness {
  guardFields('options', options, OPTIONS);
  const { pointUncertainty = 0 as Length } = options;
  toleratedWear('options.pointUncertainty', pointUncertainty);
  guardPoints(points, 4);
  const local = toLocal(points);
  if (local.isStraight) throw onALine(points, 'lie on one line');
  const circle = leastSquaresCircle(local.xs, local.ys);
  if (!circle) throw onALine(points, STRAIGHT);
  const view = qualityOf(local, circle, pointUncertainty / local.scale);
  // Known within less than itself, or a straight line will do.
  if (!(view.radiusWithin < circle.radius)) throw onALine(points, STRAIGHT);
  const [nearest, farthest] = extremesOf(view.distances);
  const leastSquares: LeastSquaresCircle = {
    centre: local.back(circle),
    radius: local.size(circle.radius),
    radialOutOfRound: local.size(farthest - nearest),
    scatter: local.size(view.scatter),
    radiusUncertainty: local.size(view.radiusUncertainty),
    centreUncertainty: local.size(view.centreUncertainty),
  };
  const arc = (2 * Math.PI - widestGap(view.angles)) as Angle;
  const isKnown = view.radiusWithin <= UNCERTAIN * circle.radius;
  const lobesSeen = lobesShown(view.angles);
  const zone = isKnown ? minimumZone(local.xs, local.ys, circle) : narrowestOf(local, circle);
  if (!zone) return { outcome: 'undecided', arc, lobesSeen, leastSquares };
  const isEnough = points.length >= ENOUGH_POINTS || pointUncertainty > 0;
  const outcome = isKnown && isEnough ? 'determined' : 'undecided';
  return { outcome, arc, lobesSeen, leastSquares, minimumZone: zoneIn(local, zone) };
}

function zoneIn(local: Local, zone: Zone): MinimumZone {
  return {
    centre: local.back(zone),
    radius: local.size((zone.inner + zone.outer) / 2),
    radialOutOfRound: local.size(zone.outer - zone.inner),
    contacts: zone.contacts,
  };
}

/**
 * The narrowest of the zones found from several centres on the axis of a short arc, where there may be more than
 * one.
 */
function narrowestOf(local: Local, circle: Circle): Zone | undefined {
  const zones = [1, 0.5, 0.75, 1.5, 3].flatMap(
    (share) => minimumZone(local.xs, local.ys, { x: share * circle.x, y: share * circle.y }) ?? [],
  );
  return zones.sort((a, b) => a.outer - a.inner - (b.outer - b.inner))[0];
}

const STRAIGHT = 'lie as well on a line as on any circle';

function onALine(points: readonly PlanePoint[], problem: string): RebuildInputError {
  return new RebuildInputError({
    parameter: 'points',
    value: points,
    shown: 'the points',
    expected: 'points on an arc that rises well above its own scatter',
    problem,
    hint: `Take points farther round the part, best all the way; these span ${showLength(spanOfAll(points))}.`,
  });
}

const spanOfAll = (points: readonly PlanePoint[]): Length => {
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return Math.hypot(largestOf(xs) - smallestOf(xs), largestOf(ys) - smallestOf(ys)) as Length;
};

function extremesOf(values: Float64Array): readonly [least: number, most: number] {
  let [least, most] = [Infinity, -Infinity];
  for (const value of values) {
    if (value < least) least = value;
    if (value > most) most = value;
  }
  return [least, most];
}
