import { guardFields } from '../judging/guards.js';
import type { Flow, Rate, Time, Volume, VolumeFraction } from '../quantities/dimensions.js';
import {
  guardDrop,
  guardFlow,
  guardFraction,
  guardRate,
  guardTime,
  guardVolume,
} from './guards.js';

/** One drop taken as 0.05 mL, 20 to the millilitre. Common practice; petrol drops run smaller, so it errs towards more fuel [m³]. */
export const commonDrop = 0.05e-6 as Volume;

/**
 * The flow of a dripping needle valve.
 *
 *     flow = drops * dropVolume
 *
 * @param drip - drops in a time, and the volume of one; count drops into a measure to know it
 * @returns flow [m³/s]
 * @throws {RebuildInputError} when the rate is negative or the drop cannot be one
 * @see Source: common practice for the drop: 20 to the millilitre
 * @example
 * ```ts
 * format(dripFlow({ drops: perMinute(12) }), mLPerHour); // "36.0 mL/h"
 * ```
 */
export function dripFlow(drip: {
  /** How many drops fall in a time [1/s]. */
  readonly drops: Rate;
  /** Volume of one drop; by default 0.05 mL, a rule of thumb [m³]. */
  readonly dropVolume?: Volume;
}): Flow {
  guardFields('drip', drip, ['drops', 'dropVolume']);
  const drops = guardRate('drops', drip.drops);
  const dropVolume = guardDrop('dropVolume', drip.dropVolume ?? commonDrop);
  return (drops * dropVolume) as Flow;
}

/** A leak into a sump. */
export interface SumpLeak {
  /** Fuel that runs into the oil in a time [m³/s]. */
  readonly leak: Flow;
  /** Clean oil in the sump [m³]. */
  readonly oil: Volume;
  /**
   * Share of the fuel in the oil that evaporates in a time. Nothing by default,
   * the safe assumption: a closed, cool crankcase loses hardly any [1/s].
   */
  readonly evaporation?: Rate;
}

/** Fuel in a sump. */
export interface SumpFuel {
  /** Fuel in the sump [m³]. */
  readonly fuel: Volume;
  /** Oil and fuel together: what the dipstick shows [m³]. */
  readonly level: Volume;
  /** Fuel in the whole [-]. */
  readonly fraction: VolumeFraction;
}

/**
 * The fuel that a leak has put into a sump after a time.
 *
 *     fuel = leak * time                                   with nothing evaporating
 *     fuel = leak / evaporation * (1 - exp(-evaporation * time))
 *
 * @param sump - the leak, the oil, what evaporates, and for how long it has leaked
 * @returns fuel, level and fraction by volume
 * @throws {RebuildInputError} when a value is negative or cannot belong to a sump
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
  const { leak, oil, evaporation } = guardLeak(sump, 'time');
  const time = guardTime('time', sump.time);
  const gone = evaporation * time;
  // (1 - exp(-x)) / x tends to 1 as nothing evaporates.
  const fuel = (leak * time * (gone === 0 ? 1 : -Math.expm1(-gone) / gone)) as Volume;
  const level = (oil + fuel) as Volume;
  return { fuel, level, fraction: (fuel / level) as VolumeFraction };
}

/** When a leak brings the oil to a fraction of fuel, if it ever does. */
export type TimeToDilution =
  | {
      /** It gets there. */
      readonly reached: true;
      /** After so long [s]. */
      readonly time: Time;
    }
  | {
      /** It never does: the fuel evaporates as fast as it leaks. */
      readonly reached: false;
      /** The fraction it settles at instead [-]. */
      readonly settlesAt: VolumeFraction;
    };

/**
 * How long a leak takes to bring clean oil to a fraction of fuel. The time is
 * a quantity like any other: read it with `valueIn(time, hour)`.
 *
 *     time = fuel / leak                                   with nothing evaporating
 *     time = -ln(1 - evaporation * fuel / leak) / evaporation
 *     fuel = oil * fraction / (1 - fraction)
 *
 * @param sump - the leak, the oil, what evaporates, and the fraction that is too much
 * @returns the time, or the fraction it settles at below that
 * @throws {RebuildInputError} when a value is negative or cannot belong to a sump, or the fraction is not below one
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
  const { leak, oil, evaporation } = guardLeak(sump, 'fraction');
  const fraction = guardFraction('fraction', sump.fraction, 0.99);
  const fuel = (oil * fraction) / (1 - fraction);
  if (fuel === 0) return { reached: true, time: 0 as Time };
  const equilibrium = evaporation === 0 ? Infinity : leak / evaporation;
  if (leak === 0 || fuel >= equilibrium) {
    const settled = leak === 0 ? 0 : equilibrium;
    return { reached: false, settlesAt: (settled / (settled + oil)) as VolumeFraction };
  }
  const time = evaporation === 0 ? fuel / leak : -Math.log1p(-fuel / equilibrium) / evaporation;
  return { reached: true, time: time as Time };
}

function guardLeak(sump: SumpLeak, besides: string): Required<SumpLeak> {
  guardFields('sump', sump, ['leak', 'oil', 'evaporation', besides]);
  return {
    leak: guardFlow('leak', sump.leak),
    oil: guardVolume('oil', sump.oil),
    evaporation: guardRate('evaporation', sump.evaporation ?? (0 as Rate)),
  };
}
