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
