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
import { borePlan } from './bore-plan.js';
import type { BorePlan, BoreRequest, BoreToMachine } from './bore-types.js';
import { cylinderWall } from './domains.js';

const standard = {
  field: 'standard.max',
  written: 'standard.max',
  meaning: 'largest standard bore',
  domain: diameter,
  usual: [0.08, 0.08005],
} as const;
const oversize = {
  field: 'steps[0]',
  written: 'oversize',
  meaning: 'oversize, on the diameter',
  domain: sizeStep,
  usual: [0.0005, 0.000762],
} as const;
const smallest = {
  field: 'cylinders[0].smallest',
  meaning: 'smallest diameter read',
  domain: diameter,
  usual: [0.08, 0.0801],
} as const;
const stockForHone = {
  field: 'honingAllowance',
  meaning: 'stock left for the hone',
  domain: machiningStock,
  usual: [0.00005, 0.0001],
  made: { inch: everyStep(thou, 2, 4, 0.5), metric: everyStep(mm, 0.05, 0.1, 0.01) },
} as const;

/** A scored cylinder that is bored. */
const bored = (
  request: Pick<BoreRequest, 'standard' | 'steps'>,
  cylinder: Cylinder,
  honingAllowance = metre(0),
): BoreRequest => ({
  ...request,
  cylinders: [
    {
      name: 'cylinder',
      taper: metre(0),
      outOfRound: metre(0),
      wall: metre(0.005),
      faults: ['scored'],
      ...cylinder,
    },
  ],
  honingAllowance,
  leastWall: metre(0.001),
});
type Cylinder = Pick<BoreToMachine, 'smallest' | 'largest'> & Partial<BoreToMachine>;

/** A cylinder that a step cleans up and standard does not. */
const boredBy = (
  max: Length,
  step: Length,
  smallest: Length,
  hone: Length,
  wall = metre(0.005),
): BoreRequest => {
  const largest = within(diameter, (Math.max(max, smallest) + max + step - hone) / 2);
  return bored(
    { standard: downFrom(diameter, max, 1e-5), steps: [step] },
    { smallest, largest, wall },
    hone,
  );
};

const firstOf = (plan: BorePlan) => (plan.outcome === 'none' ? undefined : plan.cylinders[0]);

/** Formulas of boring. */
export const borePlanCards = {
  boreNeeded: card({
    of: borePlan,
    name: 'smallest finished bore that cleans up',
    gives: { symbol: 'D', meaning: 'smallest bore that cleans up', dimension: 'length' },
    letters: {
      D_max: {
        field: 'cylinders[0].largest',
        meaning: 'largest diameter read',
        domain: diameter,
        usual: [0.0802, 0.0803],
      },
      o: {
        field: 'cylinders[0].outOfRound',
        meaning: 'out-of-round, if worn on one side',
        domain: outOfTrue,
        usual: [0, 0.0001],
      },
      h: stockForHone,
    },
    call: ({ D_max, o, h }) => {
      const unworn = within(diameter, D_max - within(outOfTrue, o));
      return [
        bored(
          // It cleans up at this step if at any.
          { standard: { min: unworn, max: unworn }, steps: [metre(sizeStep.most)] },
          { smallest: unworn, largest: D_max, outOfRound: o },
          h,
        ),
      ];
    },
    read: ({ because }) => {
      const reason = because.find(({ kind }) => kind === 'cleans up');
      return reason?.kind === 'cleans up' ? reason.needed : undefined;
    },
    expression: 'D_max + o + h',
    source: 'geometry: the axis of boring is eccentric by half the wear',
  }),
  boreTo: card({
    of: borePlan,
    name: 'diameter to bore to, before the hone',
    gives: { symbol: 'D_b', meaning: 'largest bore before the hone', dimension: 'length' },
    letters: { D_s: standard, u: oversize, h: stockForHone },
    call: ({ D_s, u, h }) => [boredBy(D_s, u, within(diameter, D_s), h)],
    read: (plan) => (plan.outcome === 'none' ? undefined : plan.boreTo.max),
    expression: 'D_s + u - h',
    example: { D_s: mm(80.02), u: mm(0.5), h: mm(0.07) },
    source: 'definition of oversize',
  }),
  mostBoreStock: card({
    of: borePlan,
    name: 'most metal to bore and hone off',
    gives: { symbol: 's_max', meaning: 'most stock, on the diameter', dimension: 'length' },
    letters: { D_s: standard, u: oversize, D_min: smallest },
    call: ({ D_s, u, D_min }) => [boredBy(D_s, u, D_min, metre(0))],
    read: (plan) => firstOf(plan)?.stockRemoved?.max,
    expression: 'D_s + u - D_min',
    example: { D_s: mm(80.02), u: mm(0.5), D_min: mm(80.05) },
    source: 'geometry',
  }),
  wallLeft: card({
    of: borePlan,
    name: 'wall that is left',
    gives: { symbol: 't', meaning: 'wall at its thinnest when bored', dimension: 'length' },
    letters: {
      t_0: {
        field: 'cylinders[0].wall',
        meaning: 'wall at its thinnest as it is',
        domain: cylinderWall,
        usual: [0.004, 0.008],
      },
      D_s: standard,
      u: oversize,
      D_min: smallest,
    },
    call: ({ t_0, D_s, u, D_min }) => [boredBy(D_s, u, D_min, metre(0), t_0)],
    read: (plan) => firstOf(plan)?.wallLeft,
    expression: 't_0 - (D_s + u - D_min) / 2',
    refuses: {
      'a bore is far smaller than standard': {
        with: { D_min: 0.0798 },
        names: 'cylinders[0].smallest',
      },
    },
    example: { t_0: mm(6), D_s: mm(80.02), u: mm(0.5), D_min: mm(80.05) },
    source: 'geometry: half the stock comes off either side',
  }),
};
