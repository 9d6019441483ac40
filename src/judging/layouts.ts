// How what functions take from each other is laid out. Made by `npm run layouts` from the types.
import { guardFinding } from './finding.js';
import type { Layout } from './layout.js';

export const verdictLayout = { oneOf: ['above', 'below', 'undecided', 'within'] } satisfies Layout;
export const gradeLayout = { oneOf: ['as new', 'out of limits', 'serviceable', 'undecided', 'worn out'] } satisfies Layout;
export const limitsLayout = { fields: { 'min?': 'number', 'max?': 'number' } } satisfies Layout;
export const basisLayout = { by: 'kind', variants: [
  { fields: { kind: { oneOf: ['specified'] }, 'by?': 'string' } },
  { fields: { kind: { oneOf: ['published'] }, source: 'string', 'forAnotherEngine?': 'boolean' } },
  { fields: { kind: { oneOf: ['common practice'] }, rule: 'string' } },
  { fields: { kind: { oneOf: ['computed'] }, how: 'string' } },
] } satisfies Layout;
export const limitsOfLayout = { oneOf: ['new parts', 'service'] } satisfies Layout;
export const serviceLimitsLengthLayout = { fields: { limits: limitsLayout, basis: basisLayout } } satisfies Layout;
export const decisionRuleLengthLayout = { either: [{ oneOf: ['ISO 14253-1:2017', 'full expanded uncertainty', 'simple acceptance'] }, { fields: { guardBand: 'number' } }] } satisfies Layout;
export const findingLengthLayout = { fields: { verdict: verdictLayout, margin: 'number', 'grade?': gradeLayout, feature: 'string', dimension: { oneOf: ['length'] }, value: 'number', limits: limitsLayout, basis: basisLayout, 'limitsOf?': limitsOfLayout, 'service?': serviceLimitsLengthLayout, 'uncertainty?': 'number', 'rule?': decisionRuleLengthLayout }, also: guardFinding } satisfies Layout;
export const serviceLimitsRatioLayout = { fields: { limits: limitsLayout, basis: basisLayout } } satisfies Layout;
export const decisionRuleRatioLayout = { either: [{ oneOf: ['ISO 14253-1:2017', 'full expanded uncertainty', 'simple acceptance'] }, { fields: { guardBand: 'number' } }] } satisfies Layout;
export const findingRatioLayout = { fields: { verdict: verdictLayout, margin: 'number', 'grade?': gradeLayout, feature: 'string', dimension: { oneOf: ['ratio'] }, value: 'number', limits: limitsLayout, basis: basisLayout, 'limitsOf?': limitsOfLayout, 'service?': serviceLimitsRatioLayout, 'uncertainty?': 'number', 'rule?': decisionRuleRatioLayout }, also: guardFinding } satisfies Layout;
export const spanLayout = { fields: { min: 'number', max: 'number' } } satisfies Layout;
export const serviceLimitsForceLayout = { fields: { limits: limitsLayout, basis: basisLayout } } satisfies Layout;
export const decisionRuleForceLayout = { either: [{ oneOf: ['ISO 14253-1:2017', 'full expanded uncertainty', 'simple acceptance'] }, { fields: { guardBand: 'number' } }] } satisfies Layout;
export const findingForceLayout = { fields: { verdict: verdictLayout, margin: 'number', 'grade?': gradeLayout, feature: 'string', dimension: { oneOf: ['force'] }, value: 'number', limits: limitsLayout, basis: basisLayout, 'limitsOf?': limitsOfLayout, 'service?': serviceLimitsForceLayout, 'uncertainty?': 'number', 'rule?': decisionRuleForceLayout }, also: guardFinding } satisfies Layout;
export const serviceLimitsAngleLayout = { fields: { limits: limitsLayout, basis: basisLayout } } satisfies Layout;
export const decisionRuleAngleLayout = { either: [{ oneOf: ['ISO 14253-1:2017', 'full expanded uncertainty', 'simple acceptance'] }, { fields: { guardBand: 'number' } }] } satisfies Layout;
export const findingAngleLayout = { fields: { verdict: verdictLayout, margin: 'number', 'grade?': gradeLayout, feature: 'string', dimension: { oneOf: ['angle'] }, value: 'number', limits: limitsLayout, basis: basisLayout, 'limitsOf?': limitsOfLayout, 'service?': serviceLimitsAngleLayout, 'uncertainty?': 'number', 'rule?': decisionRuleAngleLayout }, also: guardFinding } satisfies Layout;
export const serviceLimitsVolumeFractionLayout = { fields: { limits: limitsLayout, basis: basisLayout } } satisfies Layout;
export const decisionRuleVolumeFractionLayout = { either: [{ oneOf: ['ISO 14253-1:2017', 'full expanded uncertainty', 'simple acceptance'] }, { fields: { guardBand: 'number' } }] } satisfies Layout;
export const findingVolumeFractionLayout = { fields: { verdict: verdictLayout, margin: 'number', 'grade?': gradeLayout, feature: 'string', dimension: { oneOf: ['volumeFraction'] }, value: 'number', limits: limitsLayout, basis: basisLayout, 'limitsOf?': limitsOfLayout, 'service?': serviceLimitsVolumeFractionLayout, 'uncertainty?': 'number', 'rule?': decisionRuleVolumeFractionLayout }, also: guardFinding } satisfies Layout;
export const serviceLimitsLayout = { fields: { limits: limitsLayout, basis: basisLayout } } satisfies Layout;
export const decisionRuleLayout = { either: [{ oneOf: ['ISO 14253-1:2017', 'full expanded uncertainty', 'simple acceptance'] }, { fields: { guardBand: 'number' } }] } satisfies Layout;
export const findingLayout = { fields: { verdict: verdictLayout, margin: 'number', 'grade?': gradeLayout, feature: 'string', dimension: { oneOf: ['acceleration', 'angle', 'area', 'density', 'dynamicViscosity', 'energy', 'flow', 'force', 'gaugePressure', 'kinematicViscosity', 'length', 'mass', 'massFraction', 'power', 'pressure', 'rate', 'ratio', 'rotationalSpeed', 'specificHeat', 'speed', 'stiffness', 'temperature', 'temperatureDifference', 'thermalExpansion', 'time', 'torque', 'volume', 'volumeFraction'] }, value: 'number', limits: limitsLayout, basis: basisLayout, 'limitsOf?': limitsOfLayout, 'service?': serviceLimitsLayout, 'uncertainty?': 'number', 'rule?': decisionRuleLayout }, also: guardFinding } satisfies Layout;
export const serviceLimitsFlowLayout = { fields: { limits: limitsLayout, basis: basisLayout } } satisfies Layout;
export const decisionRuleFlowLayout = { either: [{ oneOf: ['ISO 14253-1:2017', 'full expanded uncertainty', 'simple acceptance'] }, { fields: { guardBand: 'number' } }] } satisfies Layout;
export const findingFlowLayout = { fields: { verdict: verdictLayout, margin: 'number', 'grade?': gradeLayout, feature: 'string', dimension: { oneOf: ['flow'] }, value: 'number', limits: limitsLayout, basis: basisLayout, 'limitsOf?': limitsOfLayout, 'service?': serviceLimitsFlowLayout, 'uncertainty?': 'number', 'rule?': decisionRuleFlowLayout }, also: guardFinding } satisfies Layout;
export const sizeOrSpanLayout = { either: ['number', { fields: { min: 'number', max: 'number' } }] } satisfies Layout;
export const serviceLimitsPressureLayout = { fields: { limits: limitsLayout, basis: basisLayout } } satisfies Layout;
export const decisionRulePressureLayout = { either: [{ oneOf: ['ISO 14253-1:2017', 'full expanded uncertainty', 'simple acceptance'] }, { fields: { guardBand: 'number' } }] } satisfies Layout;
export const findingPressureLayout = { fields: { verdict: verdictLayout, margin: 'number', 'grade?': gradeLayout, feature: 'string', dimension: { oneOf: ['pressure'] }, value: 'number', limits: limitsLayout, basis: basisLayout, 'limitsOf?': limitsOfLayout, 'service?': serviceLimitsPressureLayout, 'uncertainty?': 'number', 'rule?': decisionRulePressureLayout }, also: guardFinding } satisfies Layout;
export const serviceLimitsGaugePressureLayout = { fields: { limits: limitsLayout, basis: basisLayout } } satisfies Layout;
export const decisionRuleGaugePressureLayout = { either: [{ oneOf: ['ISO 14253-1:2017', 'full expanded uncertainty', 'simple acceptance'] }, { fields: { guardBand: 'number' } }] } satisfies Layout;
export const findingGaugePressureLayout = { fields: { verdict: verdictLayout, margin: 'number', 'grade?': gradeLayout, feature: 'string', dimension: { oneOf: ['gaugePressure'] }, value: 'number', limits: limitsLayout, basis: basisLayout, 'limitsOf?': limitsOfLayout, 'service?': serviceLimitsGaugePressureLayout, 'uncertainty?': 'number', 'rule?': decisionRuleGaugePressureLayout }, also: guardFinding } satisfies Layout;
export const basedLimitsLengthLayout = { fields: { limits: limitsLayout, basis: basisLayout, 'limitsOf?': limitsOfLayout, 'service?': serviceLimitsLengthLayout, 'uncertainty?': 'number', 'rule?': decisionRuleLengthLayout } } satisfies Layout;
export const namedRuleLayout = { oneOf: ['ISO 14253-1:2017', 'full expanded uncertainty', 'simple acceptance'] } satisfies Layout;
export const basedLimitsForceLayout = { fields: { limits: limitsLayout, basis: basisLayout, 'limitsOf?': limitsOfLayout, 'service?': serviceLimitsForceLayout, 'uncertainty?': 'number', 'rule?': decisionRuleForceLayout } } satisfies Layout;
export const basedLimitsRatioLayout = { fields: { limits: limitsLayout, basis: basisLayout, 'limitsOf?': limitsOfLayout, 'service?': serviceLimitsRatioLayout, 'uncertainty?': 'number', 'rule?': decisionRuleRatioLayout } } satisfies Layout;
