import { card } from '../judging/internal.js';
import type { Length } from '../quantities/index.js';
import { stackedSize, stackSensitivity } from './stack-domains.js';
import { stackUp } from './stack-up.js';

const first = { domain: stackedSize, meaning: 'of the first size' };
const second = { domain: stackedSize, meaning: 'of the second size' };

const letters = {
  k_1: {
    field: 'contributors[0].sensitivity',
    meaning: 'how the stack grows with the first size',
    domain: stackSensitivity,
    usual: [0.5, 2],
  },
  a_1: { ...first, field: 'contributors[0].size.min', written: 'min_1', usual: [0.08, 0.081] },
  b_1: { ...first, field: 'contributors[0].size.max', written: 'max_1', usual: [0.082, 0.083] },
  k_2: {
    field: 'contributors[1].sensitivity',
    meaning: 'how the stack shrinks with the second size',
    domain: stackSensitivity,
    usual: [-2, -0.5],
  },
  a_2: { ...second, field: 'contributors[1].size.min', written: 'min_2', usual: [0.07, 0.071] },
  b_2: { ...second, field: 'contributors[1].size.max', written: 'max_2', usual: [0.072, 0.073] },
} as const;

type Letters = Readonly<
  Record<'k_1' | 'k_2', number> & Record<'a_1' | 'b_1' | 'a_2' | 'b_2', Length>
>;

const both = ({ k_1, a_1, b_1, k_2, a_2, b_2 }: Letters) => [
  { name: 'first', size: { min: a_1, max: b_1 }, sensitivity: k_1 },
  { name: 'second', size: { min: a_2, max: b_2 }, sensitivity: k_2 },
];

/** Formulas of stacked sizes. */
export const stackUpCards = {
  leastStack: card({
    of: stackUp,
    name: 'least that two sizes can come to, one against the other',
    gives: { symbol: 's_min', meaning: 'least that the stack can be', dimension: 'length' },
    letters,
    call: (values) => [both(values), { kind: 'worst case' }],
    read: (stack) => (stack.method === 'worst case' ? stack.span.min : undefined),
    expression: 'k_1 * a_1 + k_2 * b_2',
    source: 'geometry',
  }),
  mostStack: card({
    of: stackUp,
    name: 'most that two sizes can come to, one against the other',
    gives: { symbol: 's_max', meaning: 'most that the stack can be', dimension: 'length' },
    letters,
    call: (values) => [both(values), { kind: 'worst case' }],
    read: (stack) => (stack.method === 'worst case' ? stack.span.max : undefined),
    expression: 'k_1 * b_1 + k_2 * a_2',
    source: 'geometry',
  }),
  stackDeviation: card({
    of: stackUp,
    name: 'standard deviation of two uniform sizes together',
    gives: { symbol: 's', meaning: 'standard deviation of the stack', dimension: 'length' },
    letters,
    call: (values) => [both(values), { kind: 'root sum square' }],
    read: (stack) => (stack.method === 'root sum square' ? stack.standardDeviation : undefined),
    expression: 'sqrt(((k_1 * (b_1 - a_1))^2 + (k_2 * (b_2 - a_2))^2) / 12)',
    source: 'variances of independent sizes add',
  }),
};
