import { card, defined } from '../judging/internal.js';
import { type Force, type Length, mm, newton } from '../quantities/index.js';
import { springForce, springHeight } from './domains.js';
import { springTest } from './spring-test.js';

const closed = {
  F_1: {
    field: 'closed.force',
    written: 'closedForce',
    meaning: 'force, valve closed',
    domain: springForce,
    usual: [80, 120],
  },
  h_1: {
    field: 'closed.height',
    written: 'closedHeight',
    meaning: 'height, valve closed',
    domain: springHeight,
    usual: [0.037, 0.04],
  },
} as const;
const tested = {
  ...closed,
  F_2: {
    field: 'open.force',
    written: 'openForce',
    meaning: 'force, valve open',
    domain: springForce,
    usual: [180, 220],
  },
  h_2: {
    field: 'open.height',
    written: 'openHeight',
    meaning: 'height, valve open',
    domain: springHeight,
    usual: [0.03, 0.033],
  },
} as const;
const S_1 = {
  field: 'closed.specified',
  written: 'closedSpecified',
  meaning: 'force specified, valve closed',
  domain: springForce,
  usual: [90, 130],
} as const;
const S_2 = {
  field: 'open.specified',
  written: 'openSpecified',
  meaning: 'force specified, valve open',
  domain: springForce,
  usual: [190, 230],
} as const;
const ORDER = {
  'the open height is not below the closed one': { with: { h_2: 0.05 }, names: 'open.height' },
  'the open force is not above the closed one': { with: { F_2: 50 }, names: 'open.force' },
};
const hooke = "Hooke's law";

/** Formulas of a spring on a tester. */
export const springTestCards = {
  testedRate: card({
    of: springTest,
    name: 'rate of a spring from a tester',
    gives: { symbol: 'k', meaning: 'rate of the spring', dimension: 'stiffness' },
    letters: tested,
    call: ({ F_1, h_1, F_2, h_2 }) => [
      { closed: { height: h_1, force: F_1 }, open: { height: h_2, force: F_2 } },
    ],
    read: ({ rate }) => rate,
    expression: '(F_2 - F_1) / (h_1 - h_2)',
    refuses: ORDER,
    source: hooke,
  }),
  testedFreeHeight: card({
    of: springTest,
    name: 'free height of a spring from a tester',
    gives: { symbol: 'h_f', meaning: 'free height of the spring', dimension: 'length' },
    letters: tested,
    where: [defined('k = (F_2 - F_1) / (h_1 - h_2)', 'rate of the spring', 'rate')],
    call: ({ F_1, h_1, F_2, h_2 }) => [
      { closed: { height: h_1, force: F_1 }, open: { height: h_2, force: F_2 } },
    ],
    read: ({ freeHeight }) => freeHeight,
    expression: 'h_1 + F_1 / k',
    source: hooke,
  }),
  springLoss: card({
    of: springTest,
    name: 'loss of force of a spring',
    gives: { symbol: 'x', meaning: 'share lost', dimension: 'ratio' },
    letters: { F_1: closed.F_1, S_1 },
    call: ({ F_1, S_1 }) => [
      {
        closed: { height: 0.04 as Length, force: F_1, specified: S_1 },
        open: { height: 0.03 as Length, force: 50_000 as Force },
      },
    ],
    read: (test) => test.closed?.value,
    expression: '1 - F_1 / S_1',
    source: 'definition',
  }),
  rateShare: card({
    of: springTest,
    name: 'rate of a spring over the one specified',
    gives: { symbol: 'x', meaning: 'rate over the one specified', dimension: 'ratio' },
    letters: { ...tested, S_1, S_2 },
    where: [defined('k = (F_2 - F_1) / (h_1 - h_2)', 'rate of the spring', 'rate')],
    call: ({ F_1, h_1, F_2, h_2, S_1, S_2 }) => [
      {
        closed: { height: h_1, force: F_1, specified: S_1 },
        open: { height: h_2, force: F_2, specified: S_2 },
      },
    ],
    read: ({ rateShare }) => rateShare,
    expression: 'k / ((S_2 - S_1) / (h_1 - h_2))',
    example: {
      F_1: newton(100),
      h_1: mm(38.5),
      F_2: newton(200),
      h_2: mm(31.5),
      S_1: newton(110),
      S_2: newton(225),
    },
    source: hooke,
  }),
};
