import { type Basis, type Finding, judge, type Limits } from '../judging/index.js';
import {
  angleAround,
  guardFields,
  guardLimits,
  guardWord,
  outsideLength,
  ownBasisOr,
  pistonStroke,
  stationAlong,
} from '../judging/internal.js';
import type { Angle, Length } from '../quantities/index.js';
import { heightError, phaseError, phaseOfThrows } from './domains.js';

/** The caller's own limits of how far throws may be off. */
export interface PhaseLimits {
  /** How far off the phase may be, either way [rad]. */
  readonly limits?: Limits<Angle>;
  /** Who set that; by default the caller. */
  readonly basis?: Basis;
}

/** A twin's top dead centres, as a degree wheel shows them, one after the other the way the engine turns. */
export interface TopsOfTwin extends PhaseLimits {
  /** Stroke of the pistons [m]. */
  readonly stroke: Length;
  /** Where the first piston is at top dead centre [rad]. */
  readonly firstTop: Angle;
  /** Where the second is [rad]. */
  readonly secondTop: Angle;
  /** How far after the first the second is meant to come: 180 degrees, or 0 (360) where both rise together [rad]. */
  readonly designed: Angle;
  /** How far each of the two may be misread, either way; by default not at all [rad]. */
  readonly topsWithin?: Angle;
}

/** A crankshaft in V-blocks on a plate, both throws turned level. */
export interface LevelThrows extends PhaseLimits {
  /** Stroke of the pistons: twice the throw [m]. */
  readonly stroke: Length;
  /** Height of the crankshaft's centre above the plate: of the top of a main journal, less half its diameter [m]. */
  readonly centre: Length;
  /** The same of the first crankpin [m]. */
  readonly first: Length;
  /** The same of the second [m]. */
  readonly second: Length;
  /** Whether the throws stand opposite (180 degrees) or together (360). */
  readonly throws: 'opposite' | 'together';
  /** How far each height may be misread, either way; by default not at all [m]. */
  readonly heightsWithin?: Length;
}

/** How the throws of a twin stand. */
export interface ThrowPhase {
  /** How far they are off; positive is the second too late, or too far round from the first upwards [rad]. */
  readonly error: Angle;
  /** What that is along the circle of the crankpins [m]. */
  readonly alongCircle: Length;
  /** How far the error may be off by the readings; absent if they are taken as exact [rad]. */
  readonly uncertainty?: Angle;
  /** Its size against the caller's limits; absent if there are none, since no common figure is known. */
  readonly finding?: Finding<'angle'>;
}

const TOPS = [
  'stroke',
  'firstTop',
  'secondTop',
  'designed',
  'topsWithin',
  'limits',
  'basis',
] as const;
const LEVEL = [
  'stroke',
  'centre',
  'first',
  'second',
  'throws',
  'heightsWithin',
  'limits',
  'basis',
] as const;
const THROWS = ['opposite', 'together'] as const;

/**
 * How far a twin's throws are from the phase they were made for, from the top dead centres of both pistons on a degree
 * wheel.
 *
 *     error = secondTop - firstTop - designed   whole turns apart
 *     alongCircle = stroke / 2 * error
 *
 * Find each top from two stop readings with a dial or a stop on the piston; the piston hardly moves at the top itself.
 * A twisted crank, a key half sheared in a built-up one or a slipped wheel all read as phase. Read both twice.
 *
 * @param tops - where both tops are, what was meant, and the limits if they are known
 * @returns how far the throws are off, with a finding if limits were given
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, or the limits have no
 * bound
 * @see Source: definition
 * @example
 * ```ts
 * const { error, alongCircle } = throwPhase({
 *   stroke: inch(3.25), firstTop: degree(12.5), secondTop: degree(193.25), designed: degree(180),
 * });
 * format(error, degree, 2); // "0.75 deg"
 * format(alongCircle, inch); // "0.0213 in"
 * ```
 */
export function throwPhase(tops: TopsOfTwin): ThrowPhase {
  guardFields('tops', tops, TOPS);
  const stroke = pistonStroke('stroke', tops.stroke);
  const first = angleAround('firstTop', tops.firstTop);
  const second = angleAround('secondTop', tops.secondTop);
  const off = second - first - phaseOfThrows('designed', tops.designed);
  const within = tops.topsWithin === undefined ? 0 : phaseError('topsWithin', tops.topsWithin);
  const error = off - TURN * Math.round(off / TURN);
  return phaseFound('tops', tops, stroke, error, Math.SQRT2 * within);
}

/**
 * The same from heights above a plate, the crankshaft in V-blocks and turned so that both throws lie level. It needs no
 * degree wheel, and tells more: a thou at a throw of 1.6 in is 2 minutes of arc.
 *
 *     throw = stroke / 2
 *     alpha = asin((first - centre) / throw)
 *     beta = asin((second - centre) / throw)
 *     error = -alpha - beta   opposite
 *     error = beta - alpha   together
 *
 * Turned to within a few degrees of level is near enough. Both throws are taken as of one length; read them the other
 * way round as well, half a turn on: what is left over is a main journal out of true.
 *
 * @param crank - heights of the centres, how the throws are meant to stand, and the limits if they are known
 * @returns how far the throws are off, with a finding if limits were given
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, a throw does not lie
 * nearly level, it is unknown how the throws stand, or the limits have no bound
 * @see Source: geometry
 * @example
 * ```ts
 * const { error } = throwPhaseByHeights({
 *   stroke: inch(3.25), centre: inch(4), first: inch(4.01), second: inch(3.998), throws: 'opposite',
 * });
 * // (0.010 - 0.002) / 1.625 radians
 * format(error, degree, 2); // "-0.28 deg"
 * ```
 */
export function throwPhaseByHeights(crank: LevelThrows): ThrowPhase {
  guardFields('crank', crank, LEVEL);
  const stroke = pistonStroke('stroke', crank.stroke);
  const centre = stationAlong('centre', crank.centre);
  const first = riseOf('first', crank.first, centre, stroke / 2);
  const second = riseOf('second', crank.second, centre, stroke / 2);
  const apart = guardWord('throws', crank.throws, THROWS) === 'opposite';
  const within =
    crank.heightsWithin === undefined ? 0 : heightError('heightsWithin', crank.heightsWithin);
  // Opposite throws count the centre twice; throws that stand together do not count it.
  const uncertainty = ((apart ? Math.sqrt(6) : Math.SQRT2) * within) / (stroke / 2);
  return phaseFound('crank', crank, stroke, apart ? -first - second : second - first, uncertainty);
}

/** How far a throw stands from level. */
function riseOf(parameter: string, height: Length, centre: Length, arm: number): number {
  const sine = (stationAlong(parameter, height) - centre) / arm;
  if (Math.abs(sine) <= 0.5) return Math.asin(sine);
  throw outsideLength(
    parameter,
    height,
    { least: centre - 0.5 * arm, most: centre + 0.5 * arm },
    'Turn the crankshaft until both throws lie level, and give heights of centres.',
  );
}

function phaseFound(
  at: string,
  { limits, basis }: PhaseLimits,
  stroke: number,
  error: number,
  uncertainty: number,
): ThrowPhase {
  const by = ownBasisOr(at, 'limits', limits, basis, OWN);
  const doubt = uncertainty > 0 && { uncertainty: uncertainty as Angle };
  return {
    error: error as Angle,
    alongCircle: ((stroke / 2) * error) as Length,
    ...doubt,
    ...(limits !== undefined && {
      finding: judge({
        feature: 'phase of the throws',
        dimension: 'angle',
        value: Math.abs(error) as Angle,
        limits: guardLimits(`${at}.limits`, limits, phaseError, 'angle'),
        basis: by,
        ...doubt,
      }),
    }),
  };
}

const OWN: Basis = { kind: 'specified' };
const TURN = 6.283_185_307_179_586;
