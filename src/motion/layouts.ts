// How what functions take from each other is laid out. Made by `npm run layouts` from the types.
import type { Layout } from '../judging/internal.js';
import { findingLengthLayout, spanLayout } from '../judging/layouts.js';

export const yesOrNoLayout = { oneOf: ['maybe', 'no', 'yes'] } satisfies Layout;
export const dipperDipLayout = { fields: { reach: spanLayout, dip: spanLayout, clearance: spanLayout, reachesOil: yesOrNoLayout, strikes: yesOrNoLayout, 'dipFinding?': findingLengthLayout, 'clearanceFinding?': findingLengthLayout } } satisfies Layout;
export const pistonStandDownLayout = { fields: { calculated: spanLayout, 'measured?': spanLayout, 'difference?': spanLayout, 'stands?': { oneOf: ['as the sizes say', 'too high', 'too low'] }, 'finding?': findingLengthLayout } } satisfies Layout;
