// How what functions take from each other is laid out. Made by `npm run layouts` from the types.
import { tighteningPlanLayout, torqueSettingLayout, wrenchScaleLayout } from '../fasteners/layouts.js';
import type { Layout } from '../judging/internal.js';
import { basedLimitsForceLayout, basedLimitsLengthLayout, basisLayout, findingLengthLayout, spanLayout } from '../judging/layouts.js';
import { lockingLayout } from '../reading/layouts.js';

export const fastenerSettingLayout = { fields: { holds: { oneOf: ['flywheel', 'head', 'mainCaps', 'rodCaps'] }, 'torque?': spanLayout, 'basis?': basisLayout, 'setting?': torqueSettingLayout, 'wrench?': spanLayout, 'plan?': tighteningPlanLayout, 'locking?': lockingLayout, missing: { list: { oneOf: ['condition', 'grade', 'thread'] } } } } satisfies Layout;
export const coldLashLayout = { fields: { lash: spanLayout, outsideRange: { list: 'string' } } } satisfies Layout;
export const springSettingLayout = { fields: { at: { oneOf: ['closed', 'open'] }, height: 'number', force: basedLimitsForceLayout } } satisfies Layout;
export const valveSettingLayout = { fields: { valve: { oneOf: ['exhaust', 'inlet'] }, 'lash?': basedLimitsLengthLayout, 'set?': { oneOf: ['cold', 'hot'] }, 'cold?': coldLashLayout, 'setBy?': { oneOf: ['screw', 'shims', 'stem'] }, springs: { list: springSettingLayout } } } satisfies Layout;
export const fitSettingLayout = { fields: { name: 'string', 'wanted?': basedLimitsLengthLayout, 'hole?': spanLayout, 'shaft?': spanLayout, 'clearance?': spanLayout, 'finding?': findingLengthLayout, isPressed: 'boolean' } } satisfies Layout;
export const assemblySettingsLayout = { fields: { 'wrench?': wrenchScaleLayout, fasteners: { list: fastenerSettingLayout }, valves: { list: valveSettingLayout }, fits: { list: fitSettingLayout } } } satisfies Layout;
