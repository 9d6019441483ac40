// How what functions take from each other is laid out. Made by `npm run layouts` from the types.
import type { Layout } from '../judging/internal.js';
import { basisLayout, findingForceLayout, spanLayout } from '../judging/layouts.js';

export const tighteningRoundLayout = { fields: { share: 'number', torque: 'number' } } satisfies Layout;
export const tighteningPlanLayout = { fields: { sequence: { list: 'string' }, rounds: { list: tighteningRoundLayout }, basis: basisLayout } } satisfies Layout;
export const threadConditionLayout = { oneOf: ['anti-seize', 'cadmium plated', 'dry', 'oiled', 'phosphated and oiled', 'waxed', 'zinc plated'] } satisfies Layout;
export const nutFactorLayout = { fields: { condition: threadConditionLayout, usual: 'number', span: spanLayout, basis: basisLayout } } satisfies Layout;
export const torqueSettingLayout = { fields: { outcome: { oneOf: ['maker\'s', 'reckoned'] }, torque: spanLayout, nutFactor: nutFactorLayout, proofLoad: 'number', 'aim?': 'number', 'keptDown?': 'boolean', preload: spanLayout, finding: findingForceLayout, basis: basisLayout } } satisfies Layout;
export const wrenchScaleLayout = { oneOf: ['N·m', 'kgf·m', 'lbf·ft', 'lbf·in'] } satisfies Layout;
export const boltGradeLayout = { oneOf: ['ISO 10.9', 'ISO 12.9', 'ISO 3.6', 'ISO 4.6', 'ISO 4.8', 'ISO 5.6', 'ISO 5.8', 'ISO 6.8', 'ISO 8.8', 'ISO 9.8', 'SAE 1', 'SAE 2', 'SAE 4', 'SAE 5', 'SAE 5.2', 'SAE 7', 'SAE 8', 'SAE 8.2'] } satisfies Layout;
export const threadFormLayout = { oneOf: ['BA', 'BSC', 'ISO metric', 'Whitworth', 'unified'] } satisfies Layout;
export const wrenchAdapterLayout = { fields: { wrench: 'number', adapter: 'number', 'angle?': 'number' } } satisfies Layout;
export const boltPlaceLayout = { fields: { name: 'string', along: 'number', across: 'number' } } satisfies Layout;
