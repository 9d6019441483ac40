// How what functions take from each other is laid out. Made by `npm run layouts` from the types.
import type { Layout } from '../judging/internal.js';
import { findingRatioLayout, findingVolumeFractionLayout, spanLayout } from '../judging/layouts.js';

export const dilutionStageLayout = { oneOf: ['act', 'critical', 'normal'] } satisfies Layout;
export const dilutionThresholdsLayout = { fields: { act: 'number', critical: 'number' } } satisfies Layout;
export const dilutionFindingLayout = { fields: { stage: dilutionStageLayout, finding: findingVolumeFractionLayout, thresholds: dilutionThresholdsLayout } } satisfies Layout;
export const fuelFractionSpanLayout = { fields: { byLaw: { fields: { 'ASTM D7152': spanLayout, Refutas: spanLayout, 'log-mean': spanLayout } }, span: spanLayout, lawOf: { fields: { min: { oneOf: ['ASTM D7152', 'Refutas', 'log-mean'] }, max: { oneOf: ['ASTM D7152', 'Refutas', 'log-mean'] } } } } } satisfies Layout;
export const thinningThresholdsLayout = { fields: { act: 'number', critical: 'number' } } satisfies Layout;
export const thinningFindingLayout = { fields: { stage: { oneOf: ['act', 'critical', 'normal', 'thicker'] }, finding: findingRatioLayout, thresholds: thinningThresholdsLayout } } satisfies Layout;
export const saeGradeLayout = { oneOf: ['12', '16', '20', '30', '40', '50', '60', '8'] } satisfies Layout;
export const saeWinterGradeLayout = { oneOf: ['0W', '10W', '15W', '20W', '25W', '5W'] } satisfies Layout;
export const saeGradesLayout = { fields: { grades: { list: saeGradeLayout }, winterNotRuledOut: { list: saeWinterGradeLayout }, standing: { oneOf: ['graded', 'thicker', 'thinner'] } } } satisfies Layout;
export const timeToDilutionLayout = { by: 'reached', variants: [
  { fields: { reached: { oneOf: [true] }, time: 'number' } },
  { fields: { reached: { oneOf: [false] }, settlesAt: 'number' } },
] } satisfies Layout;
export const viscosityPointLayout = { fields: { temperature: 'number', viscosity: 'number' } } satisfies Layout;
export const viscosityLineLayout = { list: viscosityPointLayout } satisfies Layout;
