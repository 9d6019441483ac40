import { guardFields } from '../judging/internal.js';
import type { Flow, Rate, Time, Volume, VolumeFraction } from '../quantities/index.js';
import {
  dilutionLimit,
  evaporationRate,
  leakFlow,
  pouredVolume,
  runningTime,
  sumpVolume,
} from './domains.js';
import { fuelAfter, guardLeaked, guardStart, type SumpFuel } from './sump-state.js';

/**
 * A leak into a sump. The small splash-lubricated sump is the one in mind: a litre or less, all in
 * one pan, which the dippers keep stirred. In an engine with a pump, a filter and galleries, count
 * all the oil there is.
 */
export interface SumpLeak {
  /** Fuel that runs into the oil in a time [m³/s]. */
  readonly leak: Flow;
  /** Clean oil in the sump, without any fuel [m³]. */
  readonly oil: Volume;
  /** Fuel that is in the oil already; none by default [m³]. */
  readonly fuel?: Volume;
  /**
   * Share of the fuel in the oil that evaporates in a time. Nothing by default,
   * the safe assumption: a closed, cool crankcase loses hardly any. Oil at 82 to 93 °C in a
   * ventilated one gives petrol off (TM 9-8000, chapter 8), all but its heavy ends; how fast
   * has to be measured [1/s].
   */
  readonly evaporation?: Rate;
}

const LEAKED = ['leak', 'oil', 'fuel', 'evaporation', 'time'] as const;
const LEAKING = ['leak', 'oil', 'fuel', 'evaporation', 'fraction'] as const;

/**
 * The fuel that a leak has put into a sump after a time.
 *
 *     fuelAfter = fuel + leak * time   with nothing evaporating
 *     fuelAfter = leak / evaporation * (1 - exp(-evaporation * time))   from clean oil
 *     fuelAfter = fuel * exp(-evaporation * time) + leak / evaporation * (1 - exp(-evaporation * time))
 *     fraction = fuelAfter / (oil + fuelAfter)
 *
 * @param sump - the leak, the oil, the fuel in it at the start, what evaporates, and for how long it has leaked
 * @returns fuel, level and fraction by volume
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, the fuel at the
 * start leaves hardly any oil, or the leak outruns the sump
 * @see Source: mass balance with first-order loss
 * @example
 * ```ts
 * const sump = fuelInSump({ leak: mLPerHour(36), oil: quartUS(1), time: hour(2) });
 * format(sump.fraction, percentByVolume); // "7.1 vol%"
 * ```
 */
export function fuelInSump(
  sump: SumpLeak & {
    /** How long it has leaked [s]. */
    readonly time: Time;
  },
): SumpFuel {
  guardFields('sump', sump, LEAKED);
  const { leak, oil, fuel, evaporation } = guardLeak(sump);
  const time = runningTime('time', sump.time);
  guardStart(oil, fuel);
  return guardLeaked('leak', leak, oil, fuelAfter(fuel, { leak, evaporation, time }));
}

/** When a leak brings the oil to a fraction of fuel, if it ever does. */
export type TimeToDilution =
  | {
      /** It gets there. */
      readonly reached: true;
      /** After so long; none if it is there already [s]. */
      readonly time: Time;
    }
  | {
      /** It never does: the fuel evaporates as fast as it leaks. */
      readonly reached: false;
      /** The fraction it settles at instead [-]. */
      readonly settlesAt: VolumeFraction;
    };

/**
 * How long a leak takes to bring oil to a fraction of fuel. The time is
 * a quantity like any other: read it with `valueIn(time, hour)`. Oil that holds so
 * much already is there after no time, even if fuel evaporates faster than it leaks.
 *
 *     V_f = oil * fraction / (1 - fraction)
 *     time = V_f / leak   from clean oil, with nothing evaporating
 *     time = -ln(1 - evaporation * V_f / leak) / evaporation   from clean oil
 *     time = -ln(1 - (V_f - fuel) / (leak / evaporation - fuel)) / evaporation
 *     settlesAt = leak / evaporation / (leak / evaporation + oil)
 *
 * @param sump - the leak, the oil, the fuel in it at the start, what evaporates, and the fraction that is too much
 * @returns the time, or the fraction it settles at below that
 * @throws {RebuildInputError} when a field is misspelt, or a value is not finite or out of range
 * @see Source: mass balance with first-order loss
 * @example
 * ```ts
 * const until = timeToDilution({
 *   leak: mLPerHour(36), oil: quartUS(1), fraction: percentByVolume(2.5),
 * });
 * until.reached && format(until.time, minute); // "40.4 min"
 * ```
 */
export function timeToDilution(
  sump: SumpLeak & {
    /** The fuel fraction that is too much [-]. */
    readonly fraction: VolumeFraction;
  },
): TimeToDilution {
  guardFields('sump', sump, LEAKING);
  const { leak, oil, fuel: atStart, evaporation } = guardLeak(sump);
  const fraction = dilutionLimit('fraction', sump.fraction);
  const missing = (oil * fraction) / (1 - fraction) - atStart;
  if (missing <= 0) return { reached: true, time: 0 as Time };
  if (evaporation === 0 && leak > 0) return { reached: true, time: (missing / leak) as Time };
  const settled = evaporation === 0 ? atStart : leak / evaporation;
  if (atStart + missing >= settled) {
    return { reached: false, settlesAt: (settled / (settled + oil)) as VolumeFraction };
  }
  const time = -Math.log1p(-missing / (settled - atStart)) / evaporation;
  return { reached: true, time: time as Time };
}

function guardLeak({
  leak,
  oil,
  fuel = 0 as Volume,
  evaporation = 0 as Rate,
}: SumpLeak): Required<SumpLeak> {
  return {
    leak: leakFlow('leak', leak),
    oil: sumpVolume('oil', oil),
    fuel: pouredVolume('fuel', fuel),
    evaporation: evaporationRate('evaporation', evaporation),
  };
}
