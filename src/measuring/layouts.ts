// How what functions take from each other is laid out. Made by `npm run layouts` from the types.
import type { Layout } from '../judging/internal.js';
import { basisLayout, findingLengthLayout, spanLayout } from '../judging/layouts.js';

export const inDoubtLayout = { fields: { name: 'string', 'finding?': findingLengthLayout, 'outside?': 'number', 'basis?': basisLayout, 'band?': 'number' } } satisfies Layout;
export const diameterReadingLayout = { fields: { station: 'number', angle: 'number', diameter: 'number' } } satisfies Layout;
export const suspectLayout = { fields: { index: 'number', reading: diameterReadingLayout, expected: 'number' } } satisfies Layout;
export const oddReadingLayout = { fields: { index: 'number', reading: diameterReadingLayout, expected: 'number', others: spanLayout, deviation: 'number', critical: 'number', against: { oneOf: ['form', 'instrument', 'scatter'] }, 'together?': { list: suspectLayout } } } satisfies Layout;
export const statedAsLayout = { oneOf: ['expanded uncertainty', 'half width', 'standard deviation', 'standard error'] } satisfies Layout;
export const betteringLayout = { fields: { name: 'string', stated: statedAsLayout, 'ofAnotherDimension?': { oneOf: [true] }, from: 'number', 'to?': 'number' } } satisfies Layout;
export const settlingLengthLayout = { by: 'outcome', variants: [
  { fields: { outcome: { oneOf: ['decided'] } } },
  { fields: { outcome: { oneOf: ['no reading'] }, why: { oneOf: ['a limit of this engine', 'at the limit', 'within a guard band'] }, 'limit?': 'number' } },
  { fields: { outcome: { oneOf: ['smaller uncertainty'] }, limit: 'number', uncertainty: 'number', 'moreReadings?': 'number', 'better?': betteringLayout } },
] } satisfies Layout;
export const formLayout = { oneOf: ['barrel', 'hourglass', 'straight', 'tapered'] } satisfies Layout;
export const stationShapeLayout = { fields: { station: 'number', mean: 'number', outOfRound: 'number' } } satisfies Layout;
export const lineShapeLayout = { fields: { angle: 'number', taper: 'number' } } satisfies Layout;
export const repeatsLayout = { fields: { standardDeviation: 'number', degreesOfFreedom: 'number' } } satisfies Layout;
export const shapeLayout = { fields: { smallest: 'number', largest: 'number', outOfRound: 'number', taper: 'number', form: formLayout, stations: { list: stationShapeLayout }, lines: { list: lineShapeLayout }, 'taperNotRead?': { list: 'number' }, 'repeats?': repeatsLayout } } satisfies Layout;
export const boreShapeLayout = { fields: { 'unworn?': 'number', 'wear?': 'number', smallest: 'number', largest: 'number', outOfRound: 'number', taper: 'number', form: formLayout, stations: { list: stationShapeLayout }, lines: { list: lineShapeLayout }, 'taperNotRead?': { list: 'number' }, 'repeats?': repeatsLayout } } satisfies Layout;
export const engineMaterialLayout = { oneOf: ['aluminium alloy', 'austenitic valve steel', 'brass', 'bronze', 'cast piston alloy', 'forged piston alloy', 'grey iron', 'magnesium alloy', 'martensitic valve steel', 'steel', 'white metal'] } satisfies Layout;
export const stillToReadLayout = { by: 'kind', variants: [
  { fields: { kind: { oneOf: ['second angle'] }, station: 'number' } },
  { fields: { kind: { oneOf: ['second station'] }, angle: 'number' } },
] } satisfies Layout;
