// How what functions take from each other is laid out. Made by `npm run layouts` from the types.
import type { Layout } from '../judging/internal.js';
import { basisLayout, findingLengthLayout, spanLayout } from '../judging/layouts.js';
import { inDoubtLayout } from '../measuring/layouts.js';

export const journalWorkLayout = { fields: { name: 'string', work: { oneOf: ['grind', 'use as it is'] }, 'stockRemoved?': spanLayout } } satisfies Layout;
export const nearlyServesLayout = { fields: { undersize: 'number', journals: { list: 'string' } } } satisfies Layout;
export const grindReasonLayout = { by: 'kind', variants: [
  { fields: { kind: { oneOf: ['does not clean up'] }, undersize: 'number', journal: 'string', outside: 'number', available: 'number', target: spanLayout, 'nearly?': { oneOf: [true] } } },
  { fields: { kind: { oneOf: ['no shells at hand'] }, undersize: 'number' } },
  { fields: { kind: { oneOf: ['below the minimum'] }, undersize: 'number', journal: 'string', smallest: 'number', minimum: 'number', 'nearly?': { oneOf: [true] } } },
  { fields: { kind: { oneOf: ['good as it is'] }, journal: 'string', undersize: 'number', 'outside?': 'number', 'basis?': basisLayout } },
  { fields: { kind: { oneOf: ['cleans up'] }, journal: 'string', undersize: 'number', available: 'number' } },
  { fields: { kind: { oneOf: ['shape'] }, journal: 'string', finding: findingLengthLayout } },
  { fields: { kind: { oneOf: ['faults'] }, journal: 'string', faults: { list: 'string' } } },
  { fields: { kind: { oneOf: ['allowance'] }, cleanUpAllowance: 'number', basis: basisLayout } },
] } satisfies Layout;
export const servedGrindPlanLayout = { fields: { outcome: { oneOf: ['grind', 'use as it is'] }, undersize: 'number', target: spanLayout, journals: { list: journalWorkLayout }, 'inDoubt?': { fields: { undersize: 'number', journals: { list: inDoubtLayout } } }, 'nearly?': nearlyServesLayout, stepsLeft: 'number', because: { list: grindReasonLayout } } } satisfies Layout;
export const grindPlanLayout = { by: 'outcome', variants: [
  servedGrindPlanLayout,
  { fields: { outcome: { oneOf: ['none'] }, defeatedBy: { list: 'string' }, 'nearly?': nearlyServesLayout, because: { list: grindReasonLayout } } },
] } satisfies Layout;
export const endPlayLayout = { fields: { mean: 'number', span: spanLayout, finding: findingLengthLayout, 'missing?': 'number' } } satisfies Layout;
