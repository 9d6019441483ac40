import { type Basis, type Finding, judge, type Limits } from '../judging/index.js';
import { guardFields, guardLimits, ownBasisOr } from '../judging/internal.js';
import type { Angle, Ratio } from '../quantities/index.js';
import { angleWithin, breakerSpeedRatio, sparkAdvance, sparkLag } from './domains.js';

/** A spark to be timed. */
export interface SparkToTime {
  /** How far before top dead centre the spark is to come in running; negative is after it. Turn of the crank [rad]. */
  readonly advance: Angle;
  /** Turns of the magneto for one turn of the crank: 0.5 where it turns with the cam [-]. */
  readonly speedRatio: Ratio;
  /**
   * How far the impulse coupling holds the magneto back for starting, in turn of the magneto: 0 if there is none. Leave
   * it out if it is not known [rad].
   */
  readonly lag?: Angle;
  /**
   * How far a lever or a timer holds the spark back for starting besides, in turn of the crank. Leave it out if it is
   * not known [rad].
   */
  readonly retard?: Angle;
  /** How far the starting spark may be off, either way, in turn of the crank; by default not at all [rad]. */
  readonly within?: Angle;
  /** How far before top dead centre the maker lets it come for starting by hand [rad]. */
  readonly limits?: Limits<Angle>;
  /** Who set the limits; by default the caller. */
  readonly basis?: Basis;
}

/** What a spark may do to the person at the starting handle. */
export type SparkCaution = 'kicks back' | 'may kick back' | 'starting spark not known';

/** Where the spark comes, for starting and in running. */
export interface SparkSetting {
  /**
   * How far before top dead centre it comes in running: the mark to set the points to, the coupling not holding back
   * [rad].
   */
  readonly running: Angle;
  /** How far it is held back for starting, in turn of the crank [rad]. */
  readonly heldBack: Angle;
  /**
   * How far before top dead centre it comes for starting, where the coupling snaps; negative is after it. Where nothing
   * is known to hold it back, the earliest that it can come [rad].
   */
  readonly starting: Angle;
  /** Whether it is known what holds the spark back for starting. */
  readonly startingKnown: boolean;
  /** How the starting spark stands to its limits: the maker's, or no spark before the top. */
  readonly finding: Finding<'angle'>;
  /** A starting spark that comes too early throws the starting handle back. */
  readonly cautions: readonly SparkCaution[];
}

const SPARK = ['advance', 'speedRatio', 'lag', 'retard', 'within', 'limits', 'basis'] as const;
const RULE: Basis = {
  kind: 'common practice',
  rule: 'for starting by hand the spark comes at top dead centre or after it',
};
const AT_TOP: Limits<Angle> = { max: 0 as Angle };
const KICKS: readonly SparkCaution[] = ['kicks back'];
const MAY_KICK: readonly SparkCaution[] = ['may kick back'];
const NOT_KNOWN: readonly SparkCaution[] = ['may kick back', 'starting spark not known'];
const NONE: readonly SparkCaution[] = [];

/**
 * Where the spark comes in running, and where it comes for starting, with what an impulse coupling and a lever hold
 * back.
 *
 *     heldBack = lag / speedRatio + retard
 *     starting = advance - heldBack
 *
 * The lag of a coupling is told in turn of the magneto. On a magneto that turns at half the crank's speed it is twice
 * as much at the crank, on one that turns at one and a half times it is two thirds.
 *
 * **Take care.** A spark before the top throws the starting handle back, and breaks wrists and arms. Where neither a
 * coupling nor a lever is known, the spark for starting may come as early as in running: it `may kick back`, as where
 * its error reaches past the limit. What comes too early for certain `kicks back`. Time it on the compression stroke,
 * with both valves closed. Turn the crank slowly, without fuel and with the plugs out, and hear where
 * the coupling snaps, before anybody swings the engine. A worn or gummed coupling does not hold back. Before the crank
 * is turned by hand for anything but starting, switch the ignition off and earth the magneto lead
 * (TM 5-4240-501-14&P, p. 289: before spinning). The maker's manual comes first.
 *
 * @param spark - the advance wanted, how fast the magneto turns, and what holds it back
 * @returns where the spark comes for starting and in running, how the former stands, and whether it may kick back
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, limits have no bound or
 * are reversed, or a basis stands without limits
 * @see Source: geometry; common practice
 * @example
 * ```ts
 * // A coupling with a lag of 14° on a magneto at half speed: 28° at the crank.
 * const spark = sparkSetting({ advance: degree(28), speedRatio: ratio(0.5), lag: degree(14) });
 * format(spark.heldBack, degree); // "28.0 deg"
 * format(spark.starting, degree); // "0.0 deg"
 * spark.cautions; // []
 * const bare = { advance: degree(20), speedRatio: ratio(1) };
 * sparkSetting({ ...bare, lag: degree(0) }).cautions; // ["kicks back"]
 * sparkSetting(bare).cautions; // ["may kick back", "starting spark not known"]
 * ```
 */
export function sparkSetting(spark: SparkToTime): SparkSetting {
  guardFields('spark', spark, SPARK);
  return sparkSettingOf('', spark);
}

/** The same of a spark whose fields are checked; `at` is put before their names. */
export function sparkSettingOf(at: string, spark: SparkToTime): SparkSetting {
  const running = sparkAdvance(`${at}advance`, spark.advance);
  const speedRatio = breakerSpeedRatio(`${at}speedRatio`, spark.speedRatio);
  const { lag = 0 as Angle, retard = 0 as Angle, within = 0 as Angle } = spark;
  sparkLag(`${at}lag`, lag);
  sparkLag(`${at}retard`, retard);
  angleWithin(`${at}within`, within);
  const heldBack = (lag / speedRatio + retard) as Angle;
  // A spark at the top is not early by the last digit.
  const left = running - heldBack;
  const starting = (Math.abs(left) < NOISE ? 0 : left) as Angle;
  const basis = ownBasisOr('spark', 'limits', spark.limits, spark.basis, RULE);
  const limits =
    spark.limits === undefined
      ? AT_TOP
      : guardLimits(`${at}limits`, spark.limits, sparkAdvance, 'angle');
  const finding = judge({
    feature: 'advance of the starting spark',
    dimension: 'angle',
    value: starting,
    limits,
    basis,
    ...(within > 0 && { uncertainty: within }),
  });
  const startingKnown = spark.lag !== undefined || spark.retard !== undefined;
  const certain = cautionsOf(finding, limits.max, within);
  const cautions = startingKnown || certain === NONE ? certain : NOT_KNOWN;
  return { running, heldBack, starting, startingKnown, finding, cautions };
}

/**
 * What the early end of the spark may do; limits without a most let it come however early, and that kicks back all
 * the same.
 */
function cautionsOf(
  { verdict, value }: Finding<'angle'>,
  max: Angle | undefined,
  within: number,
): readonly SparkCaution[] {
  const early = max ?? 0;
  if (verdict === 'above' || (max === undefined && value - within > NOISE)) return KICKS;
  return value + within > early + NOISE ? MAY_KICK : NONE;
}

/** What rounding may add to an angle. */
const NOISE = 1e-9;
