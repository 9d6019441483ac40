import { guardFields, guardList, ROUNDING } from '../judging/internal.js';
import {
  type Flow,
  type Rate,
  RebuildInputError,
  type Time,
  type Volume,
} from '../quantities/index.js';
import { evaporationRate, leakFlow, pouredVolume, runningTime, sumpVolume } from './domains.js';
import {
  fuelAfter,
  guardLeaked,
  guardStart,
  type SumpFuel,
  showLitres,
  sumpFuel,
} from './sump-state.js';

/** What happened to a sump next: exactly one of four things. */
export type SumpEntry =
  | {
      /** The engine ran for so long [s]. */
      readonly running: Time;
    }
  | {
      /** It stood for so long [s]. */
      readonly standing: Time;
    }
  | {
      /**
       * So much was let out of the mixture, well stirred; `'all'` leaves nothing, though what clings
       * to a real crankcase stays [m³].
       */
      readonly drained: Volume | 'all';
    }
  | {
      /** So much clean oil was poured in [m³]. */
      readonly added: Volume;
    };

/** A sump and what has happened to it, in order. */
export interface SumpStory {
  /** Clean oil in the sump at the start, without any fuel [m³]. */
  readonly oil: Volume;
  /** Fuel in the oil at the start; none by default [m³]. */
  readonly fuel?: Volume;
  /**
   * Fuel that runs into the oil in a time: one flow, or one while running and one while standing. A needle may
   * weep only with the engine standing and the petcock open [m³/s].
   */
  readonly leak:
    | Flow
    | {
        /** While the engine runs [m³/s]. */
        readonly running: Flow;
        /** While it stands [m³/s]. */
        readonly standing: Flow;
      };
  /**
   * Share of the fuel in the oil that evaporates in a time: one rate, or one while running and one while
   * standing, as only hot oil loses much. Nothing by default, the safe assumption [1/s].
   */
  readonly evaporation?:
    | Rate
    | {
        /** While the engine runs [1/s]. */
        readonly running: Rate;
        /** While it stands [1/s]. */
        readonly standing: Rate;
      };
  /** What happened, in order. */
  readonly log: readonly SumpEntry[];
}

/** What is in a sump. */
export interface SumpState extends SumpFuel {
  /** Oil in the sump, without the fuel [m³]. */
  readonly oil: Volume;
  /** Level above that of the clean oil at the start; negative when it stands lower [m³]. */
  readonly rise: Volume;
}

/** What became of a sump. */
export interface SumpLog {
  /** What was in it after each entry of the log. */
  readonly after: readonly SumpState[];
  /** What is in it at the end. */
  readonly end: SumpState;
}

const STORY = ['oil', 'fuel', 'leak', 'evaporation', 'log'] as const;
const STATES = ['running', 'standing'] as const;

/**
 * A sump followed through what happened to it: hours running and standing, mixture drained, clean
 * oil added. Small splash-lubricated sumps are the ones in mind: all the oil is in one pan and well
 * stirred. Each stretch of running or standing is solved exactly, as {@link fuelInSump} does it.
 *
 *     after = fuel * (1 - drained / (oil + fuel))   and likewise the oil:
 *     left = oil * (1 - drained / (oil + fuel))
 *     rise = added + fuel   where oil is added to the first fill
 *
 * @param sump - the sump at the start, the leak, what evaporates, and the log
 * @returns what was in it after each entry, and at the end
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, the log is empty, an
 * entry is not exactly one of the four, the fuel at the start leaves hardly any oil, more is drained than there
 * is, or the leak outruns the sump
 * @see Source: mass balance with first-order loss
 * @example
 * ```ts
 * // The petcock was left open over night; then a third was let out and replaced.
 * const { end } = sumpLog({
 *   oil: litre(0.9), leak: { running: mLPerHour(0), standing: mLPerHour(6) },
 *   log: [{ running: hour(2) }, { standing: hour(12) }, { drained: litre(0.3) }, { added: litre(0.3) }],
 * });
 * format(end.fuel, mL); // "49.8 mL"
 * format(end.fraction, percentByVolume); // "5.1 vol%"
 * format(end.rise, mL); // "72.0 mL"
 * ```
 */
export function sumpLog(sump: SumpStory): SumpLog {
  guardFields('sump', sump, STORY);
  const atStart = sumpVolume('oil', sump.oil);
  const leak = byState<Flow>('leak', sump.leak, leakFlow);
  const { evaporation: lost = 0 as Rate, fuel: inIt = 0 as Volume } = sump;
  const evaporation = byState<Rate>('evaporation', lost, evaporationRate);
  guardList('log', sump.log, 1, 'entry');
  let oil = atStart;
  let fuel = pouredVolume('fuel', inIt);
  guardStart(oil, fuel);

  const after = sump.log.map((entry, i): SumpState => {
    const at = `log[${i}]`;
    guardEntry(at, entry);
    if ('added' in entry) {
      oil = (oil + pouredVolume(`${at}.added`, entry.added)) as Volume;
    } else if ('drained' in entry) {
      const kept = keptOf(`${at}.drained`, entry.drained, oil + fuel);
      oil = (oil * kept) as Volume;
      fuel = (fuel * kept) as Volume;
    } else {
      const state = 'running' in entry ? 'running' : 'standing';
      const hours = 'running' in entry ? entry.running : entry.standing;
      const time = runningTime(`${at}.${state}`, hours);
      fuel = fuelAfter(fuel, { leak: leak[state], evaporation: evaporation[state], time });
      guardLeaked(leak.names[state], leak[state], oil, fuel);
    }
    return { ...sumpFuel(oil, fuel), oil, rise: (oil + fuel - atStart) as Volume };
  });
  return { after, end: after.at(-1) as SumpState };
}

/** One value for both states, or one for each; and what an error calls each. */
function byState<Q extends number>(
  parameter: string,
  given: Q | { readonly running: Q; readonly standing: Q },
  guard: (parameter: string, value: Q) => Q,
) {
  if (typeof given !== 'object' || given === null) {
    const value = guard(parameter, given);
    return {
      running: value,
      standing: value,
      names: { running: parameter, standing: parameter },
    };
  }
  guardFields(parameter, given, STATES);
  const names = { running: `${parameter}.running`, standing: `${parameter}.standing` };
  return {
    running: guard(names.running, given.running),
    standing: guard(names.standing, given.standing),
    names,
  };
}

const ENTRIES = ['running', 'standing', 'drained', 'added'] as const;

function guardEntry(parameter: string, entry: SumpEntry): void {
  guardFields(parameter, entry, ENTRIES);
  const given = Object.keys(entry);
  if (given.length === 1) return;
  throw new RebuildInputError({
    parameter,
    value: entry,
    shown: given.length === 0 ? 'an empty entry' : `an entry with ${given.join(' and ')}`,
    expected: `exactly one of ${ENTRIES.join(', ')}`,
    hint: 'Write what happened one after the other, each in braces of its own.',
  });
}

/** The share of the mixture that stays when so much is drained. */
function keptOf(parameter: string, drained: Volume | 'all', level: number): number {
  if (drained === 'all') return 0;
  pouredVolume(parameter, drained);
  // More by no more than rounding is the noise of adding up.
  if (drained <= level * (1 + ROUNDING)) return level === 0 ? 1 : Math.max(0, 1 - drained / level);
  throw new RebuildInputError({
    parameter,
    value: drained,
    shown: showLitres(drained),
    expected: 'no more than is in the sump',
    problem: `is more than is in the sump, ${showLitres(level)}`,
    hint: "Is the oil at the start all of it? To let out all there is, write { drained: 'all' }.",
  });
}
