import { ROUNDING, showIn } from '../judging/internal.js';
import {
  type Flow,
  mLPerHour,
  type Rate,
  RebuildInputError,
  type Time,
  type Volume,
  type VolumeFraction,
} from '../quantities/index.js';
import { dilutionLimit } from './domains.js';

/** Fuel in a sump. */
export interface SumpFuel {
  /** Fuel in the sump [m³]. */
  readonly fuel: Volume;
  /** Oil and fuel together: what the dipstick shows [m³]. */
  readonly level: Volume;
  /** Fuel in the whole; none if the sump is empty [-]. */
  readonly fraction: VolumeFraction;
}

/** The fuel after a stretch of time, exactly: what was there dies away, and so does what leaks in, as it comes. */
export function fuelAfter(
  fuel: Volume,
  {
    leak,
    evaporation,
    time,
  }: { readonly leak: Flow; readonly evaporation: Rate; readonly time: Time },
): Volume {
  const gone = evaporation * time;
  // (1 - exp(-x)) / x tends to 1 as nothing evaporates.
  const kept = gone === 0 ? 1 : -Math.expm1(-gone) / gone;
  return (fuel * Math.exp(-gone) + leak * time * kept) as Volume;
}

/** What oil and fuel make together. */
export function sumpFuel(oil: Volume, fuel: Volume): SumpFuel {
  const level = (oil + fuel) as Volume;
  return { fuel, level, fraction: (level === 0 ? 0 : fuel / level) as VolumeFraction };
}

/** What brought the fuel in, for the error that refuses it. */
interface Culprit {
  readonly parameter: string;
  readonly value: number;
  readonly shown: string;
  readonly hint: string;
}

/** What oil and fuel make together; refuses what leaves hardly any oil in it. */
export function guardDiluted(culprit: Culprit, oil: Volume, fuel: Volume): SumpFuel {
  const state = sumpFuel(oil, fuel);
  if (state.fraction <= dilutionLimit.most * (1 + ROUNDING)) return state;
  const { parameter, value, shown, hint } = culprit;
  throw new RebuildInputError({
    parameter,
    value,
    shown,
    expected: 'an amount that leaves at least 1 % oil in the sump',
    problem: `outruns the sump: ${showLitres(fuel)} of fuel in ${showLitres(oil)} of oil`,
    hint,
  });
}

/** Refuses a sump that is nearly all fuel from the start. */
export const guardStart = (oil: Volume, fuel: Volume): SumpFuel =>
  guardDiluted(
    {
      parameter: 'fuel',
      value: fuel,
      shown: showLitres(fuel),
      hint: 'Is it in its unit, e.g. mL(50)?',
    },
    oil,
    fuel,
  );

/** Refuses a leak that has filled the sump with fuel. */
export const guardLeaked = (parameter: string, leak: Flow, oil: Volume, fuel: Volume): SumpFuel =>
  guardDiluted(
    {
      parameter,
      value: leak,
      shown: showIn(leak, mLPerHour),
      hint:
        oil === 0
          ? 'There is no oil in the sump; add some first, e.g. { added: quartUS(1) }.'
          : 'It would have run over long before: are the leak and the time in their units, e.g. mLPerHour(30) and hour(8)?',
    },
    oil,
    fuel,
  );

/** A volume as a person would read it. */
export const showLitres = (volume: number): string => `${Number((volume * 1000).toPrecision(4))} L`;
