// How what functions take from each other is laid out. Made by `npm run layouts` from the types.
import { compressionRuleLayout, crankingPressureLayout } from '../cylinders/layouts.js';
import { boltGradeLayout, tighteningPlanLayout, torqueSettingLayout, wrenchScaleLayout } from '../fasteners/layouts.js';
import type { Layout } from '../judging/internal.js';
import { basedLimitsForceLayout, basedLimitsLengthLayout, basedLimitsRatioLayout, basisLayout, findingLengthLayout, findingRatioLayout, spanLayout } from '../judging/layouts.js';
import { dipperDipLayout, pistonStandDownLayout } from '../motion/layouts.js';
import { lockingLayout } from '../reading/layouts.js';
import { oneToothLayout, timingCardLayout } from '../timing/layouts.js';

export const timingSettingLayout = { fields: { card: timingCardLayout, 'tooth?': oneToothLayout, 'pointsGap?': basedLimitsLengthLayout, 'plugGap?': basedLimitsLengthLayout } } satisfies Layout;
export const fastenerSettingLayout = { fields: { holds: { oneOf: ['flywheel', 'head', 'mainCaps', 'rodCaps'] }, 'torque?': spanLayout, 'basis?': basisLayout, 'setting?': torqueSettingLayout, 'grade?': boltGradeLayout, 'wrench?': spanLayout, 'plan?': tighteningPlanLayout, 'locking?': lockingLayout, missing: { list: { oneOf: ['condition', 'grade', 'thread'] } } } } satisfies Layout;
export const coldLashLayout = { fields: { lash: spanLayout, outsideRange: { list: 'string' } } } satisfies Layout;
export const springSettingLayout = { fields: { at: { oneOf: ['closed', 'open'] }, height: 'number', force: basedLimitsForceLayout } } satisfies Layout;
export const valveSettingLayout = { fields: { valve: { oneOf: ['exhaust', 'inlet'] }, 'lash?': basedLimitsLengthLayout, 'set?': { oneOf: ['cold', 'hot'] }, 'cold?': coldLashLayout, 'setBy?': { oneOf: ['screw', 'shims', 'stem'] }, springs: { list: springSettingLayout } } } satisfies Layout;
export const ringsSettingLayout = { fields: { 'sideClearance?': basedLimitsLengthLayout, 'backClearance?': basedLimitsLengthLayout } } satisfies Layout;
export const newPartsLayout = { fields: { hole: spanLayout, shaft: spanLayout, basis: basisLayout } } satisfies Layout;
export const fitSettingLayout = { fields: { name: 'string', 'wanted?': basedLimitsLengthLayout, 'newParts?': newPartsLayout, 'clearance?': spanLayout, 'finding?': findingLengthLayout, mayBePressed: 'boolean' } } satisfies Layout;
export const compressionSettingLayout = { fields: { 'ratio?': spanLayout, 'clearanceVolume?': spanLayout, 'deckClearance?': spanLayout, 'pistonToHead?': spanLayout, 'wanted?': basedLimitsRatioLayout, 'finding?': findingRatioLayout, 'standDown?': pistonStandDownLayout, 'cranking?': crankingPressureLayout, rules: { list: compressionRuleLayout }, notGiven: { list: { oneOf: ['bore', 'chamber', 'deck clearance', 'gasket', 'stroke'] } } } } satisfies Layout;
export const assemblySettingsLayout = { fields: { 'wrench?': wrenchScaleLayout, fasteners: { list: fastenerSettingLayout }, valves: { list: valveSettingLayout }, rings: ringsSettingLayout, fits: { list: fitSettingLayout }, 'compression?': compressionSettingLayout, 'timing?': timingSettingLayout, 'dipper?': dipperDipLayout } } satisfies Layout;
