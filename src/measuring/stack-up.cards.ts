import type { Span } from '../judging/index.js';
import { card, downFrom, upFrom } from '../judging/internal.js';
import { type Length, mm, ratio } from '../quantities/index.js';
import { stackedSize, stackSensitivity } from './stack-domains.js';
import { stackUp } from './stack-up.js';

const k_1 = {
  field: 'contributors[0].sensitivity',
  meaning: 'sensitivity of the stack to the first size',
  domain: stackSensitivity,
  usual: [0.5, 2],
  made: [1],
} as const;
const k_2 = {
  field: 'contributors[1].sensitivity',
  meaning: 'sensitivity of the stack to the second size',
  domain: stackSensitivity,
  usual: [-2, -0.5],
  made: [-1],
} as const;
const a_1 = {
  field: 'contributors[0].size.min',
  written: 'min_1',
  meaning: 'smallest value of the first size',
  domain: stackedSize,
  usual: [0.07995, 0.08],
} as const;
const b_1 = {
  field: 'contributors[0].size.max',
  written: 'max_1',
  meaning: 'largest value of the first size',
  domain: stackedSize,
  usual: [0.08005, 0.0801],
} as const;
const a_2 = {
  field: 'contributors[1].size.min',
  written: 'min_2',
  meaning: 'smallest value of the second size',
  domain: stackedSize,
  usual: [0.07195, 0.072],
} as const;
const b_2 = {
  field: 'contributors[1].size.max',
  written: 'max_2',
  meaning: 'largest value of the second size',
  domain: stackedSize,
  usual: [0.07205, 0.0721],
} as const;

const worst = { kind: 'worst case' } as const;
const squares = { kind: 'root sum square' } as const;

/** Spans of which a card asks for one end. */
const up = (min: Length) => upFrom(stackedSize, min, 1e-4);
const down = (max: Length) => downFrom(stackedSize, max, 1e-4);

const both = (
  [first, grows]: readonly [Span<Length>, number],
  [second, shrinks]: readonly [Span<Length>, number],
) => [
  { name: 'first', size: first, sensitivity: grows },
  { name: 'second', size: second, sensitivity: shrinks },
];

/** Formulas of stacked sizes. */
export const stackUpCards = {
  leastStack: card({
    of: stackUp,
    name: 'least stack of two sizes',
    gives: { symbol: 's_min', meaning: 'smallest value of the stack', dimension: 'length' },
    letters: { k_1, a_1, k_2, b_2 },
    call: ({ k_1, a_1, k_2, b_2 }) => [both([up(a_1), k_1], [down(b_2), k_2]), worst],
    read: (stack) => (stack.method === 'worst case' ? stack.span.min : undefined),
    expression: 'k_1 * a_1 + k_2 * b_2',
    example: { k_1: ratio(1), a_1: mm(79.98), k_2: ratio(-1), b_2: mm(72.08) },
    source: 'geometry',
  }),
  mostStack: card({
    of: stackUp,
    name: 'most stack of two sizes',
    gives: { symbol: 's_max', meaning: 'largest value of the stack', dimension: 'length' },
    letters: { k_1, b_1, k_2, a_2 },
    call: ({ k_1, b_1, k_2, a_2 }) => [both([down(b_1), k_1], [up(a_2), k_2]), worst],
    read: (stack) => (stack.method === 'worst case' ? stack.span.max : undefined),
    expression: 'k_1 * b_1 + k_2 * a_2',
    example: { k_1: ratio(1), b_1: mm(80.08), k_2: ratio(-1), a_2: mm(71.98) },
    source: 'geometry',
  }),
  stackDeviation: card({
    of: stackUp,
    name: 'standard deviation of a stack of two sizes',
    gives: { symbol: 's', meaning: 'standard deviation of the stack', dimension: 'length' },
    letters: { k_1, a_1, b_1, k_2, a_2, b_2 },
    call: ({ k_1, a_1, b_1, k_2, a_2, b_2 }) => [
      both([{ min: a_1, max: b_1 }, k_1], [{ min: a_2, max: b_2 }, k_2]),
      squares,
    ],
    read: (stack) => (stack.method === 'root sum square' ? stack.standardDeviation : undefined),
    expression: 'sqrt(((k_1 * (b_1 - a_1))^2 + (k_2 * (b_2 - a_2))^2) / 12)',
    example: {
      k_1: ratio(1),
      a_1: mm(79.98),
      b_1: mm(80.08),
      k_2: ratio(-1),
      a_2: mm(71.98),
      b_2: mm(72.08),
    },
    source: 'variances of independent sizes add',
  }),
};
