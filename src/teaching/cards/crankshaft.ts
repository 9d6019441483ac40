import { type FormulaCard, input } from '../card.js';

/** Formulas of the measuring and crankshaft rooms. */
export const crankshaftCards = {
  outOfRound: {
    name: 'out-of-round at a station',
    computedBy: 'journalShape',
    result: { symbol: 'o', meaning: 'out-of-round', dimension: 'length' },
    inputs: [
      input('D_max', 'largest diameter at the station', 'length', 0.0501, 0.0502),
      input('D_min', 'smallest diameter at the station', 'length', 0.05, 0.0501),
    ],
    where: [],
    expression: 'D_max - D_min',
    source: 'definition of the trade',
  },
  journalLeft: {
    name: 'largest round journal that is left in a worn one',
    computedBy: 'grindPlan',
    result: { symbol: 'D', meaning: 'largest journal that cleans up', dimension: 'length' },
    inputs: [
      input('D_min', 'smallest diameter read', 'length', 0.0496, 0.0497),
      input('o', 'out-of-round, if worn on one side', 'length', 0, 0.00005),
      input('r', 'full indicator reading of runout', 'length', 0, 0.00005),
      input('a', 'clean-up allowance', 'length', 0.00001, 0.00005),
    ],
    where: [],
    expression: 'D_min - o - r - a',
    source: 'geometry: the axis of grinding is eccentric by half the wear and half the runout',
  },
  targetDiameter: {
    name: 'diameter to grind to',
    computedBy: 'grindPlan',
    result: { symbol: 'D', meaning: 'diameter at the undersize', dimension: 'length' },
    inputs: [
      input('D_s', 'standard diameter', 'length', 0.0499, 0.0501),
      input('u', 'undersize, on the diameter', 'length', 0.000508, 0.000762),
    ],
    where: [],
    expression: 'D_s - u',
    source: 'definition of undersize; TM 5-3805-262-34, p. 4-24',
  },
  endPlay: {
    name: 'end play from a dial',
    computedBy: 'endPlay',
    result: { symbol: 'e', meaning: 'end play', dimension: 'length' },
    inputs: [
      input('x_1', 'dial with the shaft pushed', 'length', -0.001, 0.001),
      input('x_2', 'dial with the shaft pulled', 'length', -0.001, 0.001),
    ],
    where: [],
    expression: 'abs(x_2 - x_1)',
    source: 'definition of the trade',
  },
} as const satisfies Record<string, FormulaCard>;
