import { card, defined, everyStep } from '../judging/internal.js';
import { hour, litre, mL, mLPerHour, percentByVolume, perHour } from '../quantities/index.js';
import {
  dilutionLimit,
  evaporationRate,
  leakFlow,
  pouredVolume,
  runningTime,
  sumpVolume,
} from './domains.js';
import { fuelInSump, timeToDilution } from './sump.js';

const BALANCE = 'mass balance with first-order loss';
const NO_LOSS = 'volume balance with nothing evaporating';

const flow = (least: number, most: number) =>
  ({
    field: 'leak',
    meaning: 'flow of the leak',
    domain: leakFlow,
    usual: [least, most],
  }) as const;
const loss = (least: number, most: number) =>
  ({
    field: 'evaporation',
    meaning: 'share of the fuel that evaporates in each unit of time',
    domain: evaporationRate,
    usual: [least, most],
  }) as const;
const clean = (least: number, most: number) =>
  ({
    field: 'oil',
    meaning: 'clean oil in the sump',
    domain: sumpVolume,
    usual: [least, most],
    made: everyStep(litre, 1000 * least, 1000 * most, 0.1),
  }) as const;
const atStart = (most: number) =>
  ({
    field: 'fuel',
    meaning: 'fuel in the sump at the start',
    domain: pouredVolume,
    usual: [0, most],
  }) as const;
const limit = (least: number, most: number) =>
  ({
    field: 'fraction',
    meaning: 'limit of fuel by volume',
    domain: dilutionLimit,
    usual: [least, most],
    made: everyStep(percentByVolume, 1, 5, 0.5).filter((share) => share >= least && share <= most),
  }) as const;
const t = {
  field: 'time',
  meaning: 'running time',
  domain: runningTime,
  usual: [3600, 360000],
} as const;

const fuel = { symbol: 'V_f', meaning: 'fuel in the sump', dimension: 'volume' } as const;
const time = {
  symbol: 't',
  meaning: 'running time until the limit is reached',
  dimension: 'time',
} as const;
const oil = litre(1);
const timeOf = (until: ReturnType<typeof timeToDilution>) =>
  until.reached ? until.time : undefined;

const OUTRUN = 'the leak outruns the sump';
const ALL_FUEL = 'the fuel at the start leaves hardly any oil';
const LIMIT = defined('V_f = V_o * x / (1 - x)', 'fuel in the sump at the limit');

/** Formulas of fuel in a sump. */
export const sumpCards = {
  fuelInSump: card({
    of: fuelInSump,
    name: 'fuel in a sump after a time',
    gives: fuel,
    letters: { q: flow(1e-9, 1e-7), k: loss(1e-7, 1e-5), t },
    call: (v) => [{ leak: v.q, evaporation: v.k, time: v.t, oil }],
    read: (state) => state.fuel,
    expression: 'q / k * -expm1(-k * t)',
    example: { q: mLPerHour(5), k: perHour(0.01), t: hour(12) },
    source: BALANCE,
  }),
  fuelInSumpWithoutLoss: card({
    of: fuelInSump,
    name: 'fuel in a sump after a time, with fuel at the start and no evaporation',
    gives: fuel,
    letters: { q: flow(1e-9, 1e-7), V_1: atStart(2e-4), t },
    call: (v) => [{ leak: v.q, fuel: v.V_1, time: v.t, oil }],
    read: (state) => state.fuel,
    expression: 'V_1 + q * t',
    example: { q: mLPerHour(5), V_1: mL(10), t: hour(12) },
    source: NO_LOSS,
  }),
  fuelInSumpFromStart: card({
    of: fuelInSump,
    name: 'fuel in a sump after a time, with fuel at the start',
    gives: fuel,
    letters: { q: flow(1e-9, 1e-7), k: loss(1e-7, 1e-5), V_1: atStart(2e-4), t },
    call: (v) => [{ leak: v.q, evaporation: v.k, time: v.t, fuel: v.V_1, oil }],
    read: (state) => state.fuel,
    expression: 'V_1 * exp(-k * t) + q / k * -expm1(-k * t)',
    example: { q: mLPerHour(5), k: perHour(0.01), V_1: mL(10), t: hour(12) },
    source: BALANCE,
  }),
  fuelFractionInSump: card({
    of: fuelInSump,
    name: 'fuel fraction in a sump',
    gives: { symbol: 'x', meaning: 'fuel by volume', dimension: 'volumeFraction' },
    letters: { q: flow(1e-9, 1e-7), V_o: clean(5e-4, 5e-3), V_1: atStart(2e-4), t },
    read: ({ fraction }) => fraction,
    where: [defined('V_f = V_1 + q * t', 'fuel in the sump after the time', 'fuelAfter')],
    expression: 'V_f / (V_o + V_f)',
    refuses: {
      [OUTRUN]: { with: { q: 1e-4 }, names: 'leak' },
      [ALL_FUEL]: { with: { V_o: 5e-4, V_1: 0.1 }, names: 'fuel' },
    },
    example: { q: mLPerHour(5), V_o: litre(1), V_1: mL(10), t: hour(10) },
    source: NO_LOSS,
  }),
  timeToDilution: card({
    of: timeToDilution,
    name: 'time until oil is diluted',
    gives: time,
    letters: { q: flow(1e-9, 1e-7), V_o: clean(5e-4, 5e-3), x: limit(0.001, 0.05) },
    read: timeOf,
    where: [LIMIT],
    expression: 'V_f / q',
    example: { q: mLPerHour(5), V_o: litre(1), x: percentByVolume(2) },
    source: NO_LOSS,
  }),
  timeToDilutionWithLoss: card({
    of: timeToDilution,
    name: 'time until oil is diluted, with evaporation',
    gives: time,
    letters: {
      q: flow(5e-9, 1e-7),
      V_o: clean(5e-4, 1e-3),
      x: limit(0.001, 0.02),
      k: loss(1e-7, 1e-4),
    },
    read: timeOf,
    where: [LIMIT],
    expression: '-log1p(-k * V_f / q) / k',
    example: { q: mLPerHour(5), V_o: litre(1), x: percentByVolume(2), k: perHour(0.01) },
    source: BALANCE,
  }),
  timeToDilutionFromStart: card({
    of: timeToDilution,
    name: 'time until oil is diluted, with fuel at the start and evaporation',
    gives: time,
    letters: {
      q: flow(5e-9, 1e-7),
      V_o: clean(5e-4, 1e-3),
      V_1: atStart(5e-6),
      x: limit(0.02, 0.03),
      k: loss(1e-7, 1e-4),
    },
    read: timeOf,
    where: [LIMIT],
    expression: '-log1p(-(V_f - V_1) / (q / k - V_1)) / k',
    example: {
      q: mLPerHour(5),
      V_o: litre(1),
      V_1: mL(5),
      x: percentByVolume(2),
      k: perHour(0.01),
    },
    source: BALANCE,
  }),
  dilutionSettled: card({
    of: timeToDilution,
    name: 'fuel fraction that settles between leak and evaporation',
    gives: { symbol: 'x', meaning: 'fuel by volume', dimension: 'volumeFraction' },
    letters: { q: flow(1e-9, 1e-8), V_o: clean(1e-3, 5e-3), k: loss(1e-3, 1e-2) },
    call: (v) => [{ leak: v.q, oil: v.V_o, evaporation: v.k, fraction: percentByVolume(5) }],
    read: (until) => (until.reached ? undefined : until.settlesAt),
    expression: 'q / k / (q / k + V_o)',
    example: { q: mLPerHour(5), V_o: litre(1), k: perHour(0.2) },
    source: BALANCE,
  }),
};
