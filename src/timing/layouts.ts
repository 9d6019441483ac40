// How what functions take from each other is laid out. Made by `npm run layouts` from the types.
import type { Layout } from '../judging/internal.js';
import { basisLayout, findingAngleLayout } from '../judging/layouts.js';

export const timingEventLayout = { oneOf: ['exhaust closes', 'exhaust opens', 'inlet closes', 'inlet opens', 'spark, running', 'spark, starting', 'top dead centre'] } satisfies Layout;
export const deadCentreLayout = { oneOf: ['bottom', 'top'] } satisfies Layout;
export const rimDistanceLayout = { fields: { arc: 'number', chord: 'number' } } satisfies Layout;
export const timingRowLayout = { fields: { event: timingEventLayout, angle: 'number', side: { oneOf: ['after', 'at', 'before'] }, centre: deadCentreLayout, 'rim?': rimDistanceLayout, 'travel?': 'number', 'within?': 'number' } } satisfies Layout;
export const timingCautionLayout = { oneOf: ['earth the magneto', 'kicks back', 'may kick back', 'starting spark not known'] } satisfies Layout;
export const timingCardLayout = { fields: { rows: { list: timingRowLayout }, notKnown: { list: timingEventLayout }, notGiven: { list: { oneOf: ['rim diameter', 'stroke and rod'] } }, cautions: { list: timingCautionLayout }, 'starting?': findingAngleLayout, basis: basisLayout } } satisfies Layout;
export const oneToothLayout = { fields: { atCrank: 'number', atGear: 'number' } } satisfies Layout;
