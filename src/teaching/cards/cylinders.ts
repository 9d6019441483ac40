import { type FormulaCard, input } from '../card.js';

const bore = input('D', 'bore diameter', 'length', 0.05, 0.12);

/** Formulas of the cylinders room. */
export const cylinderCards = {
  pistonClearance: {
    name: 'piston clearance',
    computedBy: 'pistonClearance',
    result: { symbol: 'c', meaning: 'diametral piston clearance', dimension: 'length' },
    inputs: [
      input('D', 'bore diameter', 'length', 0.08, 0.081),
      input('D_p', 'piston diameter across its thrust faces', 'length', 0.0795, 0.08),
    ],
    where: [],
    expression: 'D - D_p',
    source: 'geometry',
  },
  boreNeeded: {
    name: 'smallest finished bore that cleans up',
    computedBy: 'borePlan',
    result: { symbol: 'D', meaning: 'smallest bore that cleans up', dimension: 'length' },
    inputs: [
      input('D_max', 'largest diameter read', 'length', 0.0802, 0.0803),
      input('o', 'out-of-round, if worn on one side', 'length', 0, 0.0001),
      input('h', 'stock left for the hone', 'length', 0.00005, 0.0001),
    ],
    where: [],
    expression: 'D_max + o + h',
    source: 'geometry: the axis of boring is eccentric by half the wear',
  },
  wallLeft: {
    name: 'wall that is left',
    computedBy: 'borePlan',
    result: { symbol: 't', meaning: 'wall at its thinnest when bored', dimension: 'length' },
    inputs: [
      input('t_0', 'wall at its thinnest as it is', 'length', 0.004, 0.008),
      input('D', 'finished bore at its largest', 'length', 0.0805, 0.0806),
      input('D_min', 'smallest diameter read', 'length', 0.08, 0.0801),
    ],
    where: [],
    expression: 't_0 - (D - D_min) / 2',
    source: 'geometry: half the stock comes off either side',
  },
  recommendedRingGapLeast: {
    name: 'least ring gap by rule of thumb',
    computedBy: 'recommendedRingGap',
    result: { symbol: 'g', meaning: 'least ring gap', dimension: 'length' },
    inputs: [bore],
    where: [],
    expression: '0.003 * D',
    source: 'common practice: 0.003 to 0.004 in for each inch of bore',
  },
  recommendedRingGapMost: {
    name: 'most ring gap by rule of thumb',
    computedBy: 'recommendedRingGap',
    result: { symbol: 'g', meaning: 'most ring gap', dimension: 'length' },
    inputs: [bore],
    where: [],
    expression: '0.004 * D',
    source: 'common practice: 0.003 to 0.004 in for each inch of bore',
  },
  ringGapIn: {
    name: 'ring gap in another bore',
    computedBy: 'ringGapIn',
    result: { symbol: 'g', meaning: 'ring gap in the bore', dimension: 'length' },
    inputs: [
      input('g_0', 'ring gap measured', 'length', 0.0001, 0.001),
      input('D_0', 'bore it was measured in', 'length', 0.075, 0.0751),
      input('D', 'bore it is wanted in', 'length', 0.075, 0.0753),
    ],
    where: [],
    expression: 'g_0 + pi * (D - D_0)',
    source: 'geometry; TM 5-6115-593-34, p. 1-9',
  },
  ringFilingNeeded: {
    name: 'metal to file off a ring',
    computedBy: 'ringFilingNeeded',
    result: { symbol: 'f', meaning: 'least to take off both ends together', dimension: 'length' },
    inputs: [
      input('g_min', 'least ring gap allowed', 'length', 0.00025, 0.0004),
      input('g', 'ring gap in the smallest bore', 'length', 0.0001, 0.0002),
    ],
    where: [],
    expression: 'g_min - g',
    source: 'geometry',
  },
} as const satisfies Record<string, FormulaCard>;
