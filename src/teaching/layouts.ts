// How what functions take from each other is laid out. Made by `npm run layouts` from the types.
import type { Layout } from '../judging/internal.js';

export const cardTopicLayout = { oneOf: ['bearings', 'crankshaft', 'cylinders', 'fasteners', 'fits', 'measuring', 'motion', 'oil film', 'oil', 'timing', 'valves'] } satisfies Layout;
export const exerciseGivenLayout = { fields: { symbol: 'string', meaning: 'string', value: 'number', unit: 'string', text: 'string' } } satisfies Layout;
export const exerciseAskLayout = { fields: { symbol: 'string', meaning: 'string', dimension: { oneOf: ['acceleration', 'angle', 'area', 'density', 'dynamicViscosity', 'energy', 'flow', 'force', 'gaugePressure', 'kinematicViscosity', 'length', 'mass', 'massFraction', 'power', 'pressure', 'rate', 'ratio', 'rotationalSpeed', 'specificHeat', 'speed', 'stiffness', 'temperature', 'temperatureDifference', 'thermalExpansion', 'time', 'torque', 'volume', 'volumeFraction'] }, unit: 'string' } } satisfies Layout;
export const printedQuantityLayout = { fields: { value: 'number', unit: 'string', text: 'string' } } satisfies Layout;
export const exerciseLayout = { fields: { name: 'string', seed: 'number', units: { oneOf: ['inch', 'metric'] }, title: 'string', topic: cardTopicLayout, given: { list: exerciseGivenLayout }, asks: exerciseAskLayout, formula: 'string', where: { list: 'string' }, values: { each: 'number' }, answer: printedQuantityLayout, value: 'number', tolerance: 'number' } } satisfies Layout;
export const workedConversionLayout = { fields: { typed: 'string', gives: printedQuantityLayout } } satisfies Layout;
export const workedLetterLayout = { fields: { symbol: 'string', meaning: 'string', field: 'string', given: printedQuantityLayout, 'converted?': workedConversionLayout } } satisfies Layout;
export const workedConstantLayout = { fields: { written: 'string', gives: printedQuantityLayout } } satisfies Layout;
export const workedStepLayout = { fields: { symbol: 'string', symbolic: 'string', substituted: 'string', typed: 'string', gives: printedQuantityLayout, isTabled: 'boolean' } } satisfies Layout;
export const workedFormulaLayout = { fields: { name: 'string', title: 'string', topic: cardTopicLayout, units: { oneOf: ['inch', 'metric'] }, asks: { fields: { symbol: 'string', meaning: 'string' } }, formula: 'string', where: { list: 'string' }, legend: { list: workedLetterLayout }, constants: { list: workedConstantLayout }, steps: { list: workedStepLayout }, result: printedQuantityLayout, 'converted?': workedConversionLayout, value: 'number', inRadians: 'boolean', source: 'string' } } satisfies Layout;
export const worksheetLayout = { fields: { about: 'string', seed: 'number', units: { oneOf: ['inch', 'metric'] }, problems: { list: exerciseLayout } } } satisfies Layout;
