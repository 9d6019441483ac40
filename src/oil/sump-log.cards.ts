import { card } from '../judging/internal.js';
import { type Flow, mL } from '../quantities/index.js';
import { pouredVolume, sumpVolume } from './domains.js';
import { sumpLog } from './sump-log.js';

const STIRRED = 'volume balance of a stirred sump';
const dry = 0 as Flow;

const V_o = {
  field: 'oil',
  meaning: 'clean oil in the sump',
  domain: sumpVolume,
  usual: [5e-4, 5e-3],
} as const;
const V_1 = {
  field: 'fuel',
  meaning: 'fuel in the sump before',
  domain: pouredVolume,
  usual: [0, 2e-4],
} as const;
const V_d = {
  field: 'log[0].drained',
  meaning: 'mixture drained',
  domain: pouredVolume,
  usual: [1e-4, 4e-4],
} as const;
const DRAINED = {
  'more is drained than there is': { with: { V_d: 0.05 }, names: 'log[0].drained' },
};

/** Formulas of a sump that is followed through its log; those of running and standing are `fuelInSump`'s. */
export const sumpLogCards = {
  fuelLeftWhenDrained: card({
    of: sumpLog,
    name: 'fuel left after draining some of the mixture',
    gives: { symbol: 'V_f', meaning: 'fuel left in the sump', dimension: 'volume' },
    letters: { V_o, V_1, V_d },
    call: (v) => [{ oil: v.V_o, fuel: v.V_1, leak: dry, log: [{ drained: v.V_d }] }],
    read: ({ end }) => end.fuel,
    expression: 'V_1 * (1 - V_d / (V_o + V_1))',
    refuses: DRAINED,
    source: STIRRED,
  }),
  oilLeftWhenDrained: card({
    of: sumpLog,
    name: 'oil left after draining some of the mixture',
    gives: { symbol: 'V', meaning: 'oil left in the sump', dimension: 'volume' },
    letters: { V_o, V_1, V_d },
    call: (v) => [{ oil: v.V_o, fuel: v.V_1, leak: dry, log: [{ drained: v.V_d }] }],
    read: ({ end }) => end.oil,
    expression: 'V_o * (1 - V_d / (V_o + V_1))',
    refuses: DRAINED,
    source: STIRRED,
  }),
  levelRisen: card({
    of: sumpLog,
    name: 'volume above the clean mark when oil is added',
    gives: {
      symbol: 'V_m',
      meaning: 'volume above the mark where the clean oil stood',
      dimension: 'volume',
    },
    letters: {
      V_1,
      V_a: {
        field: 'log[0].added',
        meaning: 'oil added',
        domain: pouredVolume,
        usual: [5e-5, 3e-4],
      },
    },
    call: (v) => [{ oil: mL(900), fuel: v.V_1, leak: dry, log: [{ added: v.V_a }] }],
    read: ({ end }) => end.rise,
    expression: 'V_a + V_1',
    source: STIRRED,
  }),
};
