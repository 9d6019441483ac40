// How what functions take from each other is laid out. Made by `npm run layouts` from the types.
import type { Layout } from '../judging/internal.js';
import { basisLayout, findingForceLayout, spanLayout } from '../judging/layouts.js';

export const tighteningRoundLayout = { fields: { share: 'number', torque: 'number' } } satisfies Layout;
export const tighteningPlanLayout = { fields: { sequence: { list: 'string' }, rounds: { list: tighteningRoundLayout }, basis: basisLayout } } satisfies Layout;
export const threadConditionLayout = { oneOf: ['anti-seize', 'cadmium plated', 'dry', 'oiled', 'phosphated and oiled', 'waxed', 'zinc plated'] } satisfies Layout;
export const nutFactorLayout = { fields: { condition: threadConditionLayout, usual: 'number', span: spanLayout, basis: basisLayout } } satisfies Layout;
export const torqueSettingLayout = { fields: { outcome: { oneOf: ['maker\'s', 'reckoned'] }, torque: spanLayout, nutFactor: nutFactorLayout, proofLoad: 'number', 'aim?': 'number', 'keptDown?': 'boolean', preload: spanLayout, finding: findingForceLayout, basis: basisLayout } } satisfies Layout;
