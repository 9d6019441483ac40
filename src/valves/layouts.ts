// How what functions take from each other is laid out. Made by `npm run layouts` from the types.
import type { Layout } from '../judging/internal.js';
import { findingRatioLayout, spanLayout } from '../judging/layouts.js';

export const stemLengthLayout = { oneOf: ['kept', 'not known'] } satisfies Layout;
export const stemWorkLayout = { by: 'outcome', variants: [
  { fields: { outcome: { oneOf: ['leave it'] } } },
  { fields: { outcome: { oneOf: ['grind the stem'] }, by: spanLayout, 'atLeast?': { oneOf: [true] }, leastLength: stemLengthLayout } },
  { fields: { outcome: { oneOf: ['stem too short'] }, needed: 'number', left: 'number' } },
  { fields: { outcome: { oneOf: ['too much lash'] }, sink: spanLayout } },
] } satisfies Layout;
export const springTestLayout = { fields: { rate: 'number', rateSpan: spanLayout, freeHeight: 'number', 'rateShare?': 'number', 'closed?': findingRatioLayout, 'open?': findingRatioLayout } } satisfies Layout;
