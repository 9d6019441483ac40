import { card } from '../judging/internal.js';
import { metre } from '../quantities/index.js';
import { gasPressure, geometricCompression, polytropicExponent } from './domains.js';
import { gasTrace } from './gas-trace.js';

const letters = {
  p_i: {
    field: 'intakePressure',
    meaning: 'absolute pressure over the intake',
    domain: gasPressure,
    usual: [5e4, 1.2e5],
  },
  epsilon: {
    field: 'compressionRatio',
    meaning: 'compression ratio',
    domain: geometricCompression,
    usual: [5, 10],
  },
  n: {
    field: 'compressionExponent',
    meaning: 'polytropic exponent',
    domain: polytropicExponent,
    usual: [1.2, 1.4],
  },
} as const;
const cycle = { stroke: metre(0.08), rodLength: metre(0.15) };

/** Formulas of the gas in a cylinder. */
export const gasTraceCards = {
  compressionPressure: card({
    of: gasTrace,
    name: 'pressure at the end of compression',
    gives: { symbol: 'p_c', meaning: 'absolute pressure', dimension: 'pressure' },
    letters,
    call: (v) => [
      { ...cycle, intakePressure: v.p_i, compressionRatio: v.epsilon, compressionExponent: v.n },
    ],
    read: ({ compressionPressure }) => compressionPressure,
    expression: 'p_i * epsilon^n',
    source: 'polytropic law',
  }),
  peakPressure: card({
    of: gasTrace,
    name: 'peak pressure by rule of thumb',
    gives: { symbol: 'p_max', meaning: 'absolute pressure', dimension: 'pressure' },
    letters,
    call: (v) => [
      { ...cycle, intakePressure: v.p_i, compressionRatio: v.epsilon, compressionExponent: v.n },
    ],
    read: ({ peakPressure }) => peakPressure,
    expression: '3 * p_i * epsilon^n',
    refuses: { 'the peak that follows is out of range': { with: { p_i: 1e7 }, names: 'result' } },
    source: 'common practice: three times what compression alone gives, at full load',
  }),
};
