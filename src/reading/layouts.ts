// How what functions take from each other is laid out. Made by `npm run layouts` from the types.
import { boltGradeLayout, boltPlaceLayout, threadConditionLayout, threadFormLayout, wrenchAdapterLayout, wrenchScaleLayout } from '../fasteners/layouts.js';
import { inchFitClassLayout } from '../fits/layouts.js';
import type { Layout } from '../judging/internal.js';
import { namedRuleLayout, sizeOrSpanLayout, spanLayout } from '../judging/layouts.js';
import { engineMaterialLayout } from '../measuring/layouts.js';
import { deadCentreLayout } from '../timing/layouts.js';

export const happeningLayout = { oneOf: ['broken piston', 'seized bearing', 'seized piston', 'thrown rod'] } satisfies Layout;
export const instrumentNameLayout = { oneOf: ['boreGauge', 'depthGauge', 'dialIndicator', 'feelerGauge', 'micrometer', 'wallGauge'] } satisfies Layout;
export const readWarmPartLayout = { oneOf: ['bores', 'housings', 'journals', 'pistons'] } satisfies Layout;
export const hiddenOvalLayout = { fields: { 'part?': 'string', place: 'string', 'oneAngle?': { oneOf: [true] } } } satisfies Layout;
export const howReadLayout = { fields: { within: { list: { fields: { instrument: instrumentNameLayout, expanded: 'number' } } }, undescribed: { list: instrumentNameLayout }, 'rule?': namedRuleLayout, notAt20C: { list: readWarmPartLayout }, ovalHidden: { list: hiddenOvalLayout } } } satisfies Layout;
export const lockingLayout = { oneOf: ['locknuts', 'pins', 'tabs', 'torque alone', 'wire'] } satisfies Layout;
export const statedLimitsLengthLayout = { fields: { 'source?': 'string', 'service?': { fields: { 'min?': 'number', 'max?': 'number', 'source?': 'string' } }, 'min?': 'number', 'max?': 'number' } } satisfies Layout;
export const journalKindLayout = { fields: { standard: spanLayout, 'steps?': { list: 'number' }, 'minimum?': 'number', 'cleanUpAllowance?': 'number', 'sizeAllowance?': 'number', 'wear?': { oneOf: ['all round', 'one side'] }, 'shape?': statedLimitsLengthLayout, 'runout?': statedLimitsLengthLayout, 'oilClearance?': statedLimitsLengthLayout } } satisfies Layout;
export const boreKindLayout = { fields: { standard: spanLayout, 'steps?': { list: 'number' }, 'stroke?': 'number', 'honingAllowance?': 'number', 'leastWall?': 'number', 'sizeAllowance?': 'number', 'wear?': { oneOf: ['all round', 'one side'] }, 'shape?': statedLimitsLengthLayout, 'pistonClearance?': statedLimitsLengthLayout, 'ringGap?': statedLimitsLengthLayout } } satisfies Layout;
export const neededPartLayout = { fields: { part: 'string', count: 'number' } } satisfies Layout;
export const threadDataLayout = { fields: { 'designation?': 'string', form: threadFormLayout, diameter: 'number', pitch: 'number' } } satisfies Layout;
export const fastenerDataLayout = { fields: { 'thread?': threadDataLayout, 'grade?': boltGradeLayout, 'condition?': threadConditionLayout, 'leastDiameter?': 'number', 'torque?': sizeOrSpanLayout, 'source?': 'string', 'prevailing?': 'number', 'adapter?': wrenchAdapterLayout, 'bolts?': { list: boltPlaceLayout }, 'rounds?': { oneOf: [2, 3] }, 'locking?': lockingLayout } } satisfies Layout;
export const fastenersDataLayout = { fields: { 'mainCaps?': fastenerDataLayout, 'rodCaps?': fastenerDataLayout, 'head?': fastenerDataLayout, 'flywheel?': fastenerDataLayout } } satisfies Layout;
export const trainPieceDataLayout = { fields: { length: 'number', material: engineMaterialLayout, temperature: 'number' } } satisfies Layout;
export const trainDataLayout = { fields: { 'rocker?': { fields: { carrier: { list: trainPieceDataLayout }, train: { list: trainPieceDataLayout }, ratio: 'number' } }, carrier: { list: trainPieceDataLayout }, train: { list: trainPieceDataLayout } } } satisfies Layout;
export const statedLimitsForceLayout = { fields: { 'source?': 'string', 'service?': { fields: { 'min?': 'number', 'max?': 'number', 'source?': 'string' } }, 'min?': 'number', 'max?': 'number' } } satisfies Layout;
export const springDataLayout = { fields: { height: 'number', force: statedLimitsForceLayout } } satisfies Layout;
export const valveDataLayout = { fields: { 'lash?': statedLimitsLengthLayout, 'set?': { oneOf: ['cold', 'hot'] }, 'setBy?': { oneOf: ['screw', 'shims', 'stem'] }, 'train?': trainDataLayout, 'closedSpring?': springDataLayout, 'openSpring?': springDataLayout } } satisfies Layout;
export const valvesDataLayout = { fields: { 'inlet?': valveDataLayout, 'exhaust?': valveDataLayout } } satisfies Layout;
export const ringsDataLayout = { fields: { 'sideClearance?': statedLimitsLengthLayout, 'backClearance?': statedLimitsLengthLayout } } satisfies Layout;
export const statedLimitsRatioLayout = { fields: { 'source?': 'string', 'service?': { fields: { 'min?': 'number', 'max?': 'number', 'source?': 'string' } }, 'min?': 'number', 'max?': 'number' } } satisfies Layout;
export const compressionRuleDataLayout = { by: 'kind', variants: [
  { fields: { 'source?': 'string', kind: { oneOf: ['spread'] }, most: 'number' } },
  { fields: { 'source?': 'string', kind: { oneOf: ['share of average', 'share of highest'] }, least: 'number' } },
  { fields: { 'source?': 'string', kind: { oneOf: ['near a figure'] }, figure: 'number', within: 'number' } },
  { fields: { 'source?': 'string', kind: { oneOf: ['at least'] }, least: 'number' } },
] } satisfies Layout;
export const compressionDataLayout = { fields: { 'chamber?': sizeOrSpanLayout, 'blockChamber?': sizeOrSpanLayout, 'crown?': sizeOrSpanLayout, 'gasket?': { either: [{ oneOf: ['none'] }, { fields: { thickness: 'number', 'bore?': 'number', 'area?': 'number' } }] }, 'deckClearance?': sizeOrSpanLayout, 'deckHeight?': sizeOrSpanLayout, 'pinHeight?': sizeOrSpanLayout, 'ratio?': statedLimitsRatioLayout, 'airPressure?': 'number', 'rules?': { list: compressionRuleDataLayout } } } satisfies Layout;
export const statedLimitsAngleLayout = { fields: { 'source?': 'string', 'service?': { fields: { 'min?': 'number', 'max?': 'number', 'source?': 'string' } }, 'min?': 'number', 'max?': 'number' } } satisfies Layout;
export const sparkDataLayout = { fields: { advance: 'number', speedRatio: 'number', 'lag?': 'number', 'retard?': 'number', 'within?': 'number', 'starting?': statedLimitsAngleLayout } } satisfies Layout;
export const placeDataLayout = { fields: { angle: 'number', 'before?': deadCentreLayout, 'after?': deadCentreLayout } } satisfies Layout;
export const timingDataLayout = { fields: { 'rimDiameter?': 'number', 'spark?': sparkDataLayout, 'valves?': { fields: { 'inletOpens?': placeDataLayout, 'inletCloses?': placeDataLayout, 'exhaustOpens?': placeDataLayout, 'exhaustCloses?': placeDataLayout, 'within?': 'number' } }, 'gears?': { fields: { crankTeeth: 'number', camTeeth: 'number' } }, 'pointsGap?': statedLimitsLengthLayout, 'plugGap?': statedLimitsLengthLayout, 'source?': 'string' } } satisfies Layout;
export const dipperDataLayout = { fields: { 'dip?': statedLimitsLengthLayout, 'clearance?': statedLimitsLengthLayout, dipper: sizeOrSpanLayout, cylinder: { oneOf: ['lying', 'upright'] }, centreAboveFloor: sizeOrSpanLayout, oilDepth: sizeOrSpanLayout } } satisfies Layout;
export const fitDataLayout = { fields: { name: 'string', 'isoFit?': 'string', 'inchFit?': { fields: { fitClass: inchFitClassLayout, basic: 'number' } }, 'clearance?': statedLimitsLengthLayout, 'hole?': sizeOrSpanLayout, 'shaft?': sizeOrSpanLayout } } satisfies Layout;
export const assemblyDataLayout = { fields: { 'wrench?': wrenchScaleLayout, 'fasteners?': fastenersDataLayout, 'valves?': valvesDataLayout, 'rings?': ringsDataLayout, 'rodLength?': 'number', 'compression?': compressionDataLayout, 'timing?': timingDataLayout, 'dipper?': dipperDataLayout, 'fits?': { list: fitDataLayout } } } satisfies Layout;
export const engineKindLayout = { fields: { name: 'string', cylinders: 'number', 'rodsPerJournal?': { oneOf: [1, 2] }, mains: 'number', rodJournals: journalKindLayout, 'mainJournals?': journalKindLayout, 'rodHousing?': statedLimitsLengthLayout, 'mainHousing?': statedLimitsLengthLayout, bores: boreKindLayout, 'endPlay?': statedLimitsLengthLayout, 'headFlatness?': statedLimitsLengthLayout, 'guideClearance?': statedLimitsLengthLayout, 'valveMargin?': statedLimitsLengthLayout, 'alsoNeeds?': { list: neededPartLayout }, 'lubrication?': { oneOf: ['pump', 'splash'] }, 'ignition?': { oneOf: ['coil', 'magneto'] }, 'cooling?': { oneOf: ['air', 'hopper', 'water'] }, 'assembly?': assemblyDataLayout } } satisfies Layout;
export const farReadingLayout = { fields: { station: 'number', reading: 'number', below: 'number' } } satisfies Layout;
export const shellPairsLayout = { fields: { name: 'string', fits: { oneOf: ['mains', 'rods'] }, undersize: 'number', wall: sizeOrSpanLayout, pairs: 'number' } } satisfies Layout;
export const instrumentOfBenchLayout = { either: [{ fields: { within: 'number' } }, { fields: { division: 'number', error: 'number', repeats: { list: 'number' } } }] } satisfies Layout;
export const instrumentsOfBenchLayout = { fields: { 'boreGauge?': instrumentOfBenchLayout, 'depthGauge?': instrumentOfBenchLayout, 'dialIndicator?': instrumentOfBenchLayout, 'feelerGauge?': instrumentOfBenchLayout, 'micrometer?': instrumentOfBenchLayout, 'wallGauge?': instrumentOfBenchLayout } } satisfies Layout;
export const warmthOfBenchLayout = { fields: { parts: 'number', 'instruments?': 'number', 'within?': 'number', 'journals?': engineMaterialLayout, 'housings?': engineMaterialLayout, 'bores?': engineMaterialLayout, 'pistons?': engineMaterialLayout } } satisfies Layout;
export const priceLayout = { fields: { amount: 'number', currency: 'string' } } satisfies Layout;
