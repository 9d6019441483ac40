import type { Basis, Finding } from '../judging/index.js';
import { guardBasis, guardFields } from '../judging/internal.js';
import type { CrankTrain } from '../motion/index.js';
import { guardCrankTrain, positionAt } from '../motion/internal.js';
import type { Angle, Length } from '../quantities/index.js';
import { type DeadCentre, placeFrom } from './crank-place.js';
import { angleWithin, rimDiameter } from './domains.js';
import { type RimDistance, rimDistanceAt } from './rim.js';
import { type SparkCaution, type SparkToTime, sparkSettingOf } from './spark.js';
import { turnedNear } from './turns.js';
import { guardValveReadings, type ValveReadings } from './valve-readings.js';

/** What happens at a place of the crank. */
export type TimingEvent =
  | 'top dead centre'
  | 'spark, starting'
  | 'spark, running'
  | 'inlet opens'
  | 'inlet closes'
  | 'exhaust opens'
  | 'exhaust closes';

/** What is known of an engine's timing. All of it may be left out. */
export interface TimingToList {
  /** Diameter of the rim that is marked [m]. */
  readonly rimDiameter?: Length;
  /** Stroke and rod. */
  readonly crank?: CrankTrain;
  /** The spark. */
  readonly spark?: SparkToTime;
  /** Where the valves open and close. */
  readonly valves?: ValveReadings & {
    /** How far each place may be off, either way [rad]. */
    readonly within?: Angle;
  };
  /** Whose figures these are; by default the caller's. */
  readonly basis?: Basis;
}

/** One event, in every way that it can be measured at the bench. */
export interface TimingRow {
  /** What happens. */
  readonly event: TimingEvent;
  /** How far from its dead centre [rad]. */
  readonly angle: Angle;
  /** On which side of the dead centre. */
  readonly side: 'at' | 'before' | 'after';
  /** The dead centre that it is told from. */
  readonly centre: DeadCentre;
  /** How far its mark is from that of the dead centre. */
  readonly rim?: RimDistance;
  /** How far the piston is below top dead centre [m]. */
  readonly travel?: Length;
  /** How far the angle may be off, either way, if that was said [rad]. */
  readonly within?: Angle;
}

/** What to mind at the bench. */
export type TimingCaution = 'earth the magneto' | SparkCaution;

/** A timing card for the bench. */
export interface TimingCard {
  /** The events that are known. */
  readonly rows: readonly TimingRow[];
  /** Those that are not. */
  readonly notKnown: readonly TimingEvent[];
  /** What was not given and is lacking in every row. */
  readonly notGiven: readonly ('rim diameter' | 'stroke and rod')[];
  /** What to mind, the first always. */
  readonly cautions: readonly TimingCaution[];
  /** How the starting spark stands to its limits, where it is known. */
  readonly starting?: Finding<'angle'>;
  /** Whose figures these are. */
  readonly basis: Basis;
}

const REQUEST = ['rimDiameter', 'crank', 'spark', 'valves', 'basis'] as const;
const CRANK = ['stroke', 'rodLength'] as const;
const SPARK = ['advance', 'speedRatio', 'lag', 'retard', 'within', 'limits', 'basis'] as const;
const VALVES = ['inletOpens', 'inletCloses', 'exhaustOpens', 'exhaustCloses', 'within'] as const;
const EVENTS: readonly TimingEvent[] = [
  'top dead centre',
  'spark, starting',
  'spark, running',
  'inlet opens',
  'inlet closes',
  'exhaust opens',
  'exhaust closes',
];

/** An event, the dead centre that the trade tells it from, and how far past the top it is. */
interface Placed {
  readonly event: TimingEvent;
  readonly centre: DeadCentre;
  readonly pastTop: number | undefined;
  readonly within?: number | undefined;
}

/**
 * A timing card for the bench: every event in degrees, as a distance on the rim and as travel of the piston, and what
 * is not known. The figures come from `rimDistance`, `pistonTravel` and `sparkSetting`.
 *
 * Valves are told from the dead centre that the trade tells them from: inlet opening and exhaust closing from the top,
 * inlet closing and exhaust opening from the bottom. The distance on the rim is from the mark of that dead centre; the
 * travel is always from the top.
 *
 * **Take care.** Before the crank is turned by hand, switch the ignition off, earth the magneto lead and take the plugs
 * out. A spark that comes too early throws the starting handle back: `cautions` says so, and where the starting spark
 * is not known it says that too. The maker's manual comes first.
 *
 * @param timing - rim, crank, spark and valves, as far as they are known
 * @returns a row for each event that is known, what is not known, and what to mind
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, the rod cannot belong to
 * the stroke, a place is both before and after, a dead centre is unknown, a place is far from the valve's own dead
 * centre, a valve opens after it closes, limits have no bound or are reversed, a basis stands without limits, or the
 * basis is none
 * @see Source: geometry; TM 5-4240-501-14&P, p. 289, for earthing the magneto lead
 * @example
 * ```ts
 * const card = timingCard({
 *   rimDiameter: inch(10),
 *   crank: { stroke: inch(3.25), rodLength: inch(6) },
 *   spark: { advance: degree(18), speedRatio: ratio(0.5), lag: degree(10) },
 * });
 * const running = card.rows.find(({ event }) => event === 'spark, running');
 * running?.rim && format(running.rim.arc, inch, 3); // "1.571 in"
 * running?.travel && format(running.travel, inch, 3); // "0.101 in"
 * card.notKnown; // ["inlet opens", "inlet closes", "exhaust opens", "exhaust closes"]
 * card.cautions; // ["earth the magneto"]
 * ```
 */
export function timingCard(timing: TimingToList): TimingCard {
  guardFields('timing', timing, REQUEST);
  const { crank, spark, valves, basis = { kind: 'specified' } } = timing;
  const diameter =
    timing.rimDiameter === undefined ? undefined : rimDiameter('rimDiameter', timing.rimDiameter);
  if (crank !== undefined) {
    guardFields('crank', crank, CRANK);
    guardCrankTrain(crank, 'crank.');
  }
  guardBasis('basis', basis);
  const sparks = spark === undefined ? undefined : readSpark(spark);
  const placed: readonly Placed[] = [
    { event: 'top dead centre', centre: 'top', pastTop: 0 },
    ...placedSparks(spark, sparks),
    ...placedValves(valves),
  ];
  const rows = placed.flatMap((place) => rowOf(place, diameter, crank));
  return {
    rows,
    notKnown: EVENTS.filter((event) => !rows.some((row) => row.event === event)),
    notGiven: [
      ...(diameter === undefined ? (['rim diameter'] as const) : []),
      ...(crank === undefined ? (['stroke and rod'] as const) : []),
    ],
    cautions: [
      'earth the magneto',
      ...(sparks?.cautions ?? (['starting spark not known'] as const)),
    ],
    ...(sparks?.startingKnown && { starting: sparks.finding }),
    basis,
  };
}

function readSpark(spark: SparkToTime) {
  guardFields('spark', spark, SPARK);
  return sparkSettingOf('spark.', spark);
}

/** A spark before the top is past it by less than nothing. Only the starting spark is said to be off by so much. */
function placedSparks(
  spark: SparkToTime | undefined,
  sparks: ReturnType<typeof sparkSettingOf> | undefined,
): readonly Placed[] {
  if (sparks === undefined) return [];
  const starting = sparks.startingKnown ? -sparks.starting : undefined;
  return [
    { event: 'spark, starting', centre: 'top', pastTop: starting, within: spark?.within },
    { event: 'spark, running', centre: 'top', pastTop: -sparks.running },
  ];
}

function placedValves(valves: TimingToList['valves']): readonly Placed[] {
  if (valves === undefined) return [];
  guardFields('valves', valves, VALVES);
  const cycle = guardValveReadings('valves.', valves);
  const within =
    valves.within === undefined ? undefined : angleWithin('valves.within', valves.within);
  return [
    { event: 'inlet opens', centre: 'top', pastTop: cycle.inletOpens, within },
    { event: 'inlet closes', centre: 'bottom', pastTop: cycle.inletCloses, within },
    { event: 'exhaust opens', centre: 'bottom', pastTop: cycle.exhaustOpens, within },
    { event: 'exhaust closes', centre: 'top', pastTop: cycle.exhaustCloses, within },
  ];
}

function rowOf(
  { event, centre, pastTop, within }: Placed,
  diameter: Length | undefined,
  crank: CrankTrain | undefined,
): readonly TimingRow[] {
  if (pastTop === undefined) return [];
  const { angle, before } = placeFrom(centre, pastTop);
  const side = angle < AT ? 'at' : before === undefined ? 'after' : 'before';
  const travel = crank && positionAt(crank, Math.abs(turnedNear(pastTop, 0)));
  return [
    {
      event,
      angle,
      side,
      centre,
      ...(diameter !== undefined && { rim: rimDistanceAt(diameter, angle) }),
      ...(travel !== undefined && { travel }),
      ...(within !== undefined && { within: within as Angle }),
    },
  ];
}

/** Nearer to a dead centre than rounding can tell. */
const AT = 1e-9;
