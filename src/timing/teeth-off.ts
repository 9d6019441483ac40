import { guardFields, guardTruth } from '../judging/internal.js';
import { type Angle, RebuildInputError } from '../quantities/index.js';
import { largestOf, smallestOf } from '../quantities/internal.js';
import { angleWithin } from './domains.js';
import { guardCamTeeth } from './gear-teeth.js';
import { turnedNear, WHOLE } from './turns.js';
import {
  guardValveReadings,
  type InCycle,
  VALVE_EVENTS,
  type ValveEvent,
  type ValveReadings,
} from './valve-readings.js';

/** Valves as they were found, and as they should be. */
export interface TimedGears {
  /** Where the valves were found to open and close. */
  readonly found: ValveReadings;
  /** Where they should, at the same lift. */
  readonly wanted: ValveReadings;
  /** How far each place that was found may be off, either way, top dead centre included [rad]. */
  readonly within: Angle;
  /** How far the maker lets each place be off, either way; by default not at all [rad]. */
  readonly wantedWithin?: Angle;
  /** Teeth of the gear on the crankshaft. */
  readonly crankTeeth: number;
  /** Teeth of the gear on the camshaft: twice as many. */
  readonly camTeeth: number;
  /** Whether the lash was set to the figure that the wanted places are for; by default not. */
  readonly lashSet?: boolean;
}

/** How far one thing is from where it should be. */
export interface CamShift {
  /** The middle of a lobe, or an opening or closing whose other end was not read. */
  readonly of: 'inlet' | 'exhaust' | ValveEvent;
  /** How late it comes, in turn of the crank; negative is early [rad]. */
  readonly late: Angle;
  /** How much longer the valve is open than it should be, for the middle of a lobe; negative is shorter [rad]. */
  readonly longer?: Angle;
}

/** What was compared, whatever comes of it. */
export interface ComparedGears {
  /** One tooth, in turn of the crank [rad]. */
  readonly tooth: Angle;
  /** What was compared. */
  readonly shifts: readonly CamShift[];
  /**
   * A valve is open for longer or shorter than the readings can be off: lash, another lift, a worn lobe or another
   * cam.
   */
  readonly durationDiffers: boolean;
}

/** How many teeth a cam is out of mesh, if that is what is wrong. */
export type TeethOff = ComparedGears &
  (
    | {
        /** Everything is where it should be, and no other tooth would put it there. */
        readonly outcome: 'in mesh';
      }
    | {
        /** Everything is out by so many teeth. */
        readonly outcome: 'teeth off';
        /** How many. */
        readonly teeth: number;
        /** Which way. A late cam is moved forwards, the way it turns. */
        readonly cam: 'early' | 'late';
      }
    | {
        /** No whole number of teeth explains it. */
        readonly outcome: 'not a tooth';
        /** The valves are out by more or less than each other; or all by what lies between two teeth. */
        readonly because: 'valves disagree' | 'between teeth';
      }
    | {
        /** The readings do not tell. */
        readonly outcome: 'undecided';
        /** More than one tooth explains it; or lash, which was not set, moves what was read as a tooth would. */
        readonly because: 'readings too coarse' | 'lash not known';
        /** The numbers of teeth that explain it; positive is late. */
        readonly teeth: readonly number[];
      }
  );

const FIELDS = [
  'found',
  'wanted',
  'within',
  'wantedWithin',
  'crankTeeth',
  'camTeeth',
  'lashSet',
] as const;
/** What rounding may add to a shift. */
const NOISE = 1e-9;

/**
 * How many teeth a camshaft is out of mesh, and which way, from where its valves open and close and where they should.
 *
 *     tooth = 2 * π / crankTeeth
 *
 * Where a valve's opening and closing are both known, its middle is compared: lash moves the two ends apart or together
 * and leaves the middle. A tooth moves all of them by the same. What is out by no whole number of teeth is something
 * else: a wrong top dead centre, a sheared key, a stretched chain, a worn lobe, another cam. So is a cam half a turn
 * out, which a degree wheel cannot show: see which valve moves as the piston passes the top.
 *
 * Do not turn an engine by its starter before this is settled. TM 5-3820-256-24-5, p. 30, warns for its own engine that
 * a piston strikes the inlet valve with the cam a tooth early, and may strike the exhaust valve with it a tooth late.
 * Turn it by hand, slowly, with the ignition off, the magneto lead earthed and the plugs out, and stop at what resists.
 *
 * @param gears - places found and wanted, how far they may be off, and the teeth of both gears
 * @returns whether the cam is in mesh, how many teeth it is off, that it is not a tooth, or that the readings do not
 * tell
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, a place is both before
 * and after, a dead centre is unknown, a place is far from the valve's own dead centre, a valve opens after it closes,
 * nothing was both found and wanted, the teeth are no whole number from 8 to 400, or the cam has not twice the teeth of
 * the crank
 * @see Source: geometry; TM 5-4210-229-14&P, paragraph 6-6, for the check by one event at a lash that is set
 * @example
 * ```ts
 * const check = teethOff({
 *   found: { inletOpens: { angle: degree(4), after: 'top' }, inletCloses: { angle: degree(46), after: 'bottom' } },
 *   wanted: { inletOpens: { angle: degree(10), before: 'top' }, inletCloses: { angle: degree(30), after: 'bottom' } },
 *   within: degree(2),
 *   crankTeeth: 24,
 *   camTeeth: 48,
 * });
 * check.outcome === 'teeth off' && [check.teeth, check.cam]; // [1, "late"]
 * ```
 */
export function teethOff(gears: TimedGears): TeethOff {
  guardFields('gears', gears, FIELDS);
  guardFields('found', gears.found, VALVE_EVENTS);
  guardFields('wanted', gears.wanted, VALVE_EVENTS);
  const found = guardValveReadings('found.', gears.found);
  const wanted = guardValveReadings('wanted.', gears.wanted);
  const within = angleWithin('within', gears.within);
  const { wantedWithin = 0 as Angle, lashSet = false } = gears;
  const slack = within + angleWithin('wantedWithin', wantedWithin);
  guardCamTeeth(gears.crankTeeth, gears.camTeeth);
  guardTruth('lashSet', lashSet);
  const shifts = worthComparing(shiftsOf(found, wanted), lashSet);
  if (shifts.length === 0) {
    throw new RebuildInputError({
      parameter: 'found',
      value: gears.found,
      expected: 'where a valve opens or closes that is also wanted',
      hint: 'Nothing was both found and wanted: give both of the same event.',
    });
  }
  const tooth = (WHOLE / gears.crankTeeth) as Angle;
  const longest = largestOf(shifts.map(({ longer = 0 }) => Math.abs(longer)));
  const compared = { tooth, shifts, durationDiffers: longest > 2 * slack + NOISE };
  const late = shifts.map((shift) => shift.late);
  const [least, most] = [smallestOf(late), largestOf(late)];
  const from = Math.ceil((most - slack - NOISE) / tooth);
  const to = Math.floor((least + slack + NOISE) / tooth);
  if (from > to) {
    const because = most - least > 2 * slack + NOISE ? 'valves disagree' : 'between teeth';
    return { outcome: 'not a tooth', because, ...compared };
  }
  const teeth = Array.from({ length: to - from + 1 }, (_, i) => from + i);
  if (!lashSet && !isFreeOfLash(shifts)) {
    return { outcome: 'undecided', because: 'lash not known', teeth, ...compared };
  }
  if (from < to) {
    return { outcome: 'undecided', because: 'readings too coarse', teeth, ...compared };
  }
  if (from === 0) return { outcome: 'in mesh', ...compared };
  const cam = from > 0 ? 'late' : 'early';
  return { outcome: 'teeth off', teeth: Math.abs(from), cam, ...compared };
}

/** The middles of the lobes that are known, and single events of the others. */
function shiftsOf(found: InCycle, wanted: InCycle): readonly CamShift[] {
  const lateness = (event: ValveEvent): Angle | undefined => {
    const [is, should] = [found[event], wanted[event]];
    if (is === undefined || should === undefined) return undefined;
    return turnedNear(is - should, 0) as Angle;
  };
  return (['inlet', 'exhaust'] as const).flatMap((lobe): readonly CamShift[] => {
    const opens = lateness(`${lobe}Opens`);
    const closes = lateness(`${lobe}Closes`);
    if (opens !== undefined && closes !== undefined) {
      const longer = turnedNear(closes - opens, 0);
      return [{ of: lobe, late: (opens + longer / 2) as Angle, longer: longer as Angle }];
    }
    if (opens !== undefined) return [{ of: `${lobe}Opens`, late: opens }];
    return closes === undefined ? [] : [{ of: `${lobe}Closes`, late: closes }];
  });
}

/** Lash that was not set moves a single event: beside the middle of a lobe it tells nothing. */
function worthComparing(shifts: readonly CamShift[], lashSet: boolean): readonly CamShift[] {
  const lobes = shifts.filter(({ longer }) => longer !== undefined);
  return lashSet || lobes.length === 0 ? shifts : lobes;
}

/** Whether lash could not move all of it one way: it makes a valve open late and close early. */
function isFreeOfLash(shifts: readonly CamShift[]): boolean {
  if (shifts.some(({ longer }) => longer !== undefined)) return true;
  return ['Opens', 'Closes'].every((end) => shifts.some(({ of }) => of.endsWith(end)));
}
