import {
  card,
  diameter,
  downFrom,
  everyStep,
  machiningStock,
  outOfTrue,
  sizeStep,
  within,
} from '../judging/internal.js';
import { type Length, metre, mm, thou } from '../quantities/index.js';
import { grindPlan } from './grind-plan.js';
import type { GrindPlan, GrindRequest } from './grind-types.js';

const standard = {
  field: 'standard.max',
  written: 'standard.max',
  meaning: 'largest standard diameter',
  domain: diameter,
  usual: [0.0499, 0.0501],
} as const;
const undersize = {
  field: 'steps[0]',
  written: 'undersize',
  meaning: 'undersize, on the diameter',
  domain: sizeStep,
  usual: [0.000508, 0.000762],
} as const;

/** A journal that a fault keeps from being used as it is. */
const scored = (smallest: Length, largest: Length, outOfRound = metre(0), runout = metre(0)) => [
  { name: 'journal', smallest, largest, outOfRound, taper: metre(0), runout, faults: ['scored'] },
];

/** A journal that is ground by a step. */
const ground = (max: Length, step: Length, smallest: Length, largest: Length): GrindRequest => ({
  journals: scored(smallest, largest),
  standard: downFrom(diameter, max, 1e-5),
  steps: [step],
  cleanUpAllowance: metre(0),
});

const stock = (plan: GrindPlan) =>
  plan.outcome === 'none' ? undefined : plan.journals[0]?.stockRemoved;

/** Formulas of grinding. */
export const grindPlanCards = {
  journalLeft: card({
    of: grindPlan,
    name: 'largest journal that cleans up',
    gives: { symbol: 'D', meaning: 'largest journal that cleans up', dimension: 'length' },
    letters: {
      D_min: {
        field: 'journals[0].smallest',
        meaning: 'smallest diameter read',
        domain: diameter,
        usual: [0.0496, 0.0497],
      },
      o: {
        field: 'journals[0].outOfRound',
        meaning: 'out-of-round, if worn on one side',
        domain: outOfTrue,
        usual: [0, 0.00005],
      },
      r: {
        field: 'journals[0].runout',
        meaning: 'full indicator reading of runout',
        domain: outOfTrue,
        usual: [0, 0.00005],
      },
      a: {
        field: 'cleanUpAllowance',
        meaning: 'clean-up allowance',
        domain: machiningStock,
        usual: [0.00001, 0.00005],
        made: { inch: everyStep(thou, 1, 2, 0.5), metric: everyStep(mm, 0.02, 0.05, 0.01) },
      },
    },
    call: ({ D_min, o, r, a }) => {
      const unworn = within(diameter, D_min + within(outOfTrue, o));
      return [
        {
          journals: scored(D_min, unworn, o, r),
          standard: { min: unworn, max: unworn },
          // It cleans up at this one if at any.
          steps: [metre(sizeStep.most)],
          cleanUpAllowance: a,
        },
      ];
    },
    read: ({ because }) => {
      const reason = because.find(({ kind }) => kind === 'cleans up');
      return reason?.kind === 'cleans up' ? reason.available : undefined;
    },
    expression: 'D_min - o - r - a',
    source: 'geometry: the axis of grinding is eccentric by half the wear and half the runout',
  }),
  targetDiameter: card({
    of: grindPlan,
    name: 'diameter to grind to',
    gives: { symbol: 'D', meaning: 'largest diameter at the undersize', dimension: 'length' },
    letters: { D_s: standard, u: undersize },
    call: ({ D_s, u }) => {
      const worn = within(diameter, D_s - u / 2);
      return [ground(D_s, u, worn, worn)];
    },
    read: (plan) => (plan.outcome === 'none' ? undefined : plan.target.max),
    expression: 'D_s - u',
    example: { D_s: mm(50), u: mm(0.5) },
    source: 'definition of undersize; TM 5-3805-262-34, p. 4-24',
  }),
  leastGrindStock: card({
    of: grindPlan,
    name: 'least metal to grind off',
    gives: { symbol: 's_min', meaning: 'least stock, on the diameter', dimension: 'length' },
    letters: {
      D_max: {
        field: 'journals[0].largest',
        meaning: 'largest diameter read',
        domain: diameter,
        usual: [0.0496, 0.0497],
      },
      D_s: standard,
      u: undersize,
    },
    call: ({ D_max, D_s, u }) => [ground(D_s, u, within(diameter, D_max), D_max)],
    read: (plan) => stock(plan)?.min,
    expression: 'D_max - (D_s - u)',
    refuses: {
      'a journal is far larger than standard': {
        with: { D_s: 0.0494 },
        names: 'journals[0].largest',
      },
      'a journal is far smaller than any undersize': {
        with: { D_max: 0.0465 },
        names: 'journals[0].smallest',
      },
    },
    example: { D_max: mm(49.65), D_s: mm(50), u: mm(0.5) },
    source: 'geometry',
  }),
};
