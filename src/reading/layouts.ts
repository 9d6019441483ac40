// How what functions take from each other is laid out. Made by `npm run layouts` from the types.
import type { Layout } from '../judging/internal.js';
import { namedRuleLayout, sizeOrSpanLayout, spanLayout } from '../judging/layouts.js';
import { engineMaterialLayout } from '../measuring/layouts.js';

export const happeningLayout = { oneOf: ['broken piston', 'seized bearing', 'seized piston', 'thrown rod'] } satisfies Layout;
export const instrumentNameLayout = { oneOf: ['boreGauge', 'depthGauge', 'dialIndicator', 'feelerGauge', 'micrometer', 'wallGauge'] } satisfies Layout;
export const readWarmPartLayout = { oneOf: ['bores', 'housings', 'journals', 'pistons'] } satisfies Layout;
export const hiddenOvalLayout = { fields: { 'part?': 'string', place: 'string', 'oneAngle?': { oneOf: [true] } } } satisfies Layout;
export const howReadLayout = { fields: { within: { list: { fields: { instrument: instrumentNameLayout, expanded: 'number' } } }, undescribed: { list: instrumentNameLayout }, 'rule?': namedRuleLayout, notAt20C: { list: readWarmPartLayout }, ovalHidden: { list: hiddenOvalLayout } } } satisfies Layout;
export const statedLimitsLengthLayout = { fields: { 'source?': 'string', 'service?': { fields: { 'min?': 'number', 'max?': 'number', 'source?': 'string' } }, 'min?': 'number', 'max?': 'number' } } satisfies Layout;
export const journalKindLayout = { fields: { standard: spanLayout, 'steps?': { list: 'number' }, 'minimum?': 'number', 'cleanUpAllowance?': 'number', 'sizeAllowance?': 'number', 'wear?': { oneOf: ['all round', 'one side'] }, 'shape?': statedLimitsLengthLayout, 'runout?': statedLimitsLengthLayout, 'oilClearance?': statedLimitsLengthLayout } } satisfies Layout;
export const boreKindLayout = { fields: { standard: spanLayout, 'steps?': { list: 'number' }, 'stroke?': 'number', 'honingAllowance?': 'number', 'leastWall?': 'number', 'sizeAllowance?': 'number', 'wear?': { oneOf: ['all round', 'one side'] }, 'shape?': statedLimitsLengthLayout, 'pistonClearance?': statedLimitsLengthLayout, 'ringGap?': statedLimitsLengthLayout } } satisfies Layout;
export const neededPartLayout = { fields: { part: 'string', count: 'number' } } satisfies Layout;
export const lockingLayout = { oneOf: ['locknuts', 'pins', 'tabs', 'torque alone', 'wire'] } satisfies Layout;
export const fastenerLockingLayout = { fields: { 'mainCaps?': lockingLayout, 'rodCaps?': lockingLayout, 'head?': lockingLayout, 'flywheel?': lockingLayout } } satisfies Layout;
export const engineKindLayout = { fields: { name: 'string', cylinders: 'number', 'rodsPerJournal?': { oneOf: [1, 2] }, mains: 'number', rodJournals: journalKindLayout, 'mainJournals?': journalKindLayout, 'rodHousing?': statedLimitsLengthLayout, 'mainHousing?': statedLimitsLengthLayout, bores: boreKindLayout, 'endPlay?': statedLimitsLengthLayout, 'headFlatness?': statedLimitsLengthLayout, 'guideClearance?': statedLimitsLengthLayout, 'valveMargin?': statedLimitsLengthLayout, 'alsoNeeds?': { list: neededPartLayout }, 'lubrication?': { oneOf: ['pump', 'splash'] }, 'ignition?': { oneOf: ['coil', 'magneto'] }, 'cooling?': { oneOf: ['air', 'hopper', 'water'] }, 'locking?': fastenerLockingLayout } } satisfies Layout;
export const farReadingLayout = { fields: { station: 'number', reading: 'number', below: 'number' } } satisfies Layout;
export const shellPairsLayout = { fields: { name: 'string', fits: { oneOf: ['mains', 'rods'] }, undersize: 'number', wall: sizeOrSpanLayout, pairs: 'number' } } satisfies Layout;
export const instrumentOfBenchLayout = { either: [{ fields: { within: 'number' } }, { fields: { division: 'number', error: 'number', repeats: { list: 'number' } } }] } satisfies Layout;
export const instrumentsOfBenchLayout = { fields: { 'boreGauge?': instrumentOfBenchLayout, 'depthGauge?': instrumentOfBenchLayout, 'dialIndicator?': instrumentOfBenchLayout, 'feelerGauge?': instrumentOfBenchLayout, 'micrometer?': instrumentOfBenchLayout, 'wallGauge?': instrumentOfBenchLayout } } satisfies Layout;
export const warmthOfBenchLayout = { fields: { parts: 'number', 'instruments?': 'number', 'within?': 'number', 'journals?': engineMaterialLayout, 'housings?': engineMaterialLayout, 'bores?': engineMaterialLayout, 'pistons?': engineMaterialLayout } } satisfies Layout;
export const priceLayout = { fields: { amount: 'number', currency: 'string' } } satisfies Layout;
