// How what functions take from each other is laid out. Made by `npm run layouts` from the types.
import { assemblySettingsLayout, timingSettingLayout } from '../assembly/layouts.js';
import { bearingAcceptanceLayout, clearanceExplanationLayout, filmDoubtLayout, filmFindingLayout, maxDilutionSpanLayout, oilSupplyLayout, roughnessLayout, shellMatchLayout, shellMaterialLayout, undersizeMismatchLayout, warmFilmLayout } from '../bearings/layouts.js';
import { endPlayLayout, grindPlanLayout, nearlyServesLayout, servedGrindPlanLayout } from '../crankshaft/layouts.js';
import { borePlanLayout, judgedCompressionLayout, leakDownLayout, leakHeardAtLayout, ringFilingLayout, servedBorePlanLayout } from '../cylinders/layouts.js';
import type { Layout } from '../judging/internal.js';
import { basisLayout, findingForceLayout, findingLengthLayout, namedRuleLayout, sizeOrSpanLayout, spanLayout } from '../judging/layouts.js';
import { boreShapeLayout, diameterReadingLayout, oddReadingLayout, settlingLengthLayout, shapeLayout } from '../measuring/layouts.js';
import { dipperDipLayout } from '../motion/layouts.js';
import { dilutionFindingLayout, fuelFractionSpanLayout, saeGradesLayout, thinningFindingLayout, timeToDilutionLayout, viscosityLineLayout, viscosityPointLayout } from '../oil/layouts.js';
import { assemblyDataLayout, happeningLayout, howReadLayout, instrumentsOfBenchLayout, journalKindLayout, shellPairsLayout, statedLimitsLengthLayout, warmthOfBenchLayout } from '../reading/layouts.js';
import { springTestLayout, stemWorkLayout } from '../valves/layouts.js';

export const filmSizesLayout = { fields: { as: { oneOf: ['found', 'planned', 'typed'] }, 'shells?': 'string', clearance: spanLayout, typed: 'number', 'found?': spanLayout } } satisfies Layout;
export const filmReportLayout = { fields: { bearing: 'string', load: 'number', sizes: filmSizesLayout, clearance: 'number', now: warmFilmLayout, finding: filmFindingLayout, loadDoubt: { fields: { share: 'number', basis: basisLayout } }, acceptance: bearingAcceptanceLayout } } satisfies Layout;
export const whenShellsLayout = { oneOf: ['if ground', 'if none is ground', 'in any case'] } satisfies Layout;
export const ringReportLayout = { fields: { name: 'string', travel: spanLayout, widestAt: 'number', filing: ringFilingLayout } } satisfies Layout;
export const wrongShellsLayout = { fields: { kind: { oneOf: ['wrong shells'] }, bearing: 'string', shells: 'string', undersize: 'number', journalUndersize: 'number', explanation: undersizeMismatchLayout } } satisfies Layout;
export const bareHousingLayout = { fields: { kind: { oneOf: ['measure the housing'] }, bearings: { list: 'string' } } } satisfies Layout;
export const buyShellsLayout = { fields: { kind: { oneOf: ['buy shells'] }, journals: { oneOf: ['mains', 'rods'] }, undersize: 'number', pairs: 'number', when: whenShellsLayout, isGround: 'boolean', walls: { list: { fields: { bearing: 'string', wall: spanLayout } } }, 'hangsOn?': { list: 'string' } } } satisfies Layout;
export const waitLayout = { fields: { kind: { oneOf: ['wait'] }, work: { oneOf: ['crankshaft', 'cylinders', 'mains', 'rods'] }, until: { list: 'string' }, again: 'boolean' } } satisfies Layout;
export const actionLayout = { by: 'kind', variants: [
  { fields: { kind: { oneOf: ['read again'] }, part: 'string', odd: oddReadingLayout } },
  { fields: { kind: { oneOf: ['crack test'] }, happened: { list: happeningLayout }, machined: { list: { oneOf: ['block', 'crankshaft'] } } } },
  { fields: { kind: { oneOf: ['check the housing'] }, bearing: 'string', outOfRound: 'number', finding: findingLengthLayout } },
  { fields: { kind: { oneOf: ['change the oil', 'do not run'] }, dilution: dilutionFindingLayout, byLaw: fuelFractionSpanLayout } },
  { fields: { kind: { oneOf: ['thin oil'] }, thinning: thinningFindingLayout } },
  { fields: { kind: { oneOf: ['thick oil'] }, viscosity: 'number', clean: 'number' } },
  { fields: { kind: { oneOf: ['thin film'] }, film: filmReportLayout } },
  { fields: { kind: { oneOf: ['stop the leak'] }, flow: spanLayout } },
  { fields: { kind: { oneOf: ['check sizes', 'wrong clearance'] }, bearing: 'string', finding: findingLengthLayout } },
  { fields: { kind: { oneOf: ['bent crankshaft'] }, bearing: 'string', finding: findingLengthLayout } },
  { fields: { kind: { oneOf: ['compare the housings'] }, journals: { list: { oneOf: ['mains', 'rods'] } } } },
  { fields: { kind: { oneOf: ['unknown oil'] }, flow: spanLayout } },
  { fields: { kind: { oneOf: ['grind'] }, journals: { oneOf: ['mains', 'rods'] }, plan: servedGrindPlanLayout, 'byRule?': { oneOf: [true] }, 'hangsOn?': { list: 'string' }, sound: { list: { fields: { name: 'string', undersize: 'number' } } } } },
  { fields: { kind: { oneOf: ['no step serves'] }, journals: { oneOf: ['mains', 'rods'] }, defeatedBy: { list: 'string' }, 'nearly?': nearlyServesLayout } },
  { fields: { kind: { oneOf: ['fit shells'] }, bearing: 'string', match: shellMatchLayout, when: whenShellsLayout, wereFound: 'boolean' } },
  { fields: { kind: { oneOf: ['set the end play'] }, finding: findingLengthLayout } },
  { fields: { kind: { oneOf: ['lost thrust face'] }, finding: findingLengthLayout, missing: 'number' } },
  { fields: { kind: { oneOf: ['bore'] }, plan: servedBorePlanLayout, 'byRule?': { oneOf: [true] }, sound: { list: { fields: { name: 'string', oversize: 'number' } } } } },
  { fields: { kind: { oneOf: ['rebore'] }, cylinder: 'string', finding: findingLengthLayout, inDoubt: 'boolean' } },
  { fields: { kind: { oneOf: ['loose piston', 'piston interferes'] }, cylinder: 'string', clearance: spanLayout } },
  { fields: { kind: { oneOf: ['odd size'] }, bearing: 'string', below: 'number' } },
  { fields: { kind: { oneOf: ['odd bore'] }, cylinder: 'string', above: 'number' } },
  { fields: { kind: { oneOf: ['wrong piston'] }, cylinder: 'string', finding: findingLengthLayout } },
  { fields: { kind: { oneOf: ['ring'] }, cylinder: 'string', ring: ringReportLayout } },
  { fields: { kind: { oneOf: ['low compression'] }, test: judgedCompressionLayout } },
  { fields: { kind: { oneOf: ['wrong fit'] }, fit: 'string', finding: findingLengthLayout } },
  { fields: { kind: { oneOf: ['overloaded bolts'] }, holds: { oneOf: ['flywheel', 'head', 'mainCaps', 'rodCaps'] }, finding: findingForceLayout } },
  { fields: { kind: { oneOf: ['dipper'] }, dipper: dipperDipLayout } },
  { fields: { kind: { oneOf: ['starting spark'] }, timing: timingSettingLayout } },
  { fields: { kind: { oneOf: ['leaking cylinder'] }, cylinder: 'string', leak: leakDownLayout } },
  wrongShellsLayout,
  bareHousingLayout,
  buyShellsLayout,
  { fields: { kind: { oneOf: ['valve'] }, valve: 'string', finding: findingLengthLayout } },
  { fields: { kind: { oneOf: ['weak spring'] }, valve: 'string', finding: findingForceLayout } },
  { fields: { kind: { oneOf: ['valve stem'] }, valve: 'string', work: stemWorkLayout, seatFirst: 'boolean' } },
  waitLayout,
  { fields: { part: 'string', finding: findingLengthLayout, settling: settlingLengthLayout, 'onceGround?': { oneOf: [true] }, kind: { oneOf: ['measure again'] } } },
] } satisfies Layout;
export const leftOutLayout = { fields: { name: 'string', 'lacks?': 'string' } } satisfies Layout;
export const notFilledInLayout = { fields: { 'rods?': { list: leftOutLayout }, 'mains?': { list: leftOutLayout }, 'cylinders?': { list: leftOutLayout } } } satisfies Layout;
export const fittedShellsLayout = { fields: { shells: 'string', undersize: 'number', clearance: spanLayout, explanation: clearanceExplanationLayout, agrees: 'boolean', 'housingToBlame?': 'number' } } satisfies Layout;
export const asItIsLayout = { fields: { undersize: 'number', 'shells?': shellMatchLayout } } satisfies Layout;
export const bearingReportLayout = { fields: { name: 'string', shape: shapeLayout, 'readAgain?': { list: oddReadingLayout }, 'undersize?': 'number', 'oddSize?': 'number', findings: { list: findingLengthLayout }, 'withoutHousing?': { oneOf: [true] }, 'fitted?': fittedShellsLayout, 'runout?': findingLengthLayout, 'bent?': findingLengthLayout, 'soundAt?': 'number', 'asItIs?': asItIsLayout, matches: { list: shellMatchLayout }, 'wallToSuit?': spanLayout, 'mayFit?': shellMatchLayout, 'shells?': shellMatchLayout } } satisfies Layout;
export const bearingGroupReportLayout = { fields: { kind: { oneOf: ['mains', 'rods'] }, plan: grindPlanLayout, 'byRule?': { oneOf: [true] }, bearings: { list: bearingReportLayout }, pairsToBuy: 'number' } } satisfies Layout;
export const cylinderReportLayout = { fields: { name: 'string', shape: boreShapeLayout, 'readAgain?': { list: oddReadingLayout }, findings: { list: findingLengthLayout }, inDoubt: 'boolean', 'oddSize?': 'number', 'soundAt?': 'number', 'piston?': { fields: { clearance: spanLayout, 'finding?': findingLengthLayout, 'readAgain?': { oneOf: [true] } } }, rings: { list: ringReportLayout } } } satisfies Layout;
export const unsettledLayout = { fields: { part: 'string', finding: findingLengthLayout, settling: settlingLengthLayout, 'onceGround?': { oneOf: [true] } } } satisfies Layout;
export const valveTopicLayout = { oneOf: ['guide', 'lash', 'margin', 'recession', 'seat', 'spring'] } satisfies Layout;
export const valveReportLayout = { fields: { name: 'string', kind: { oneOf: ['exhaust', 'inlet'] }, findings: { list: findingLengthLayout }, 'spring?': springTestLayout, springForces: { list: findingForceLayout }, 'stem?': stemWorkLayout, notJudged: { list: valveTopicLayout }, withoutLimit: { list: valveTopicLayout } } } satisfies Layout;
export const testedCylinderLayout = { fields: { name: 'string', 'dry?': 'number', 'wet?': 'number', 'head?': 'string', 'leakage?': { fields: { supply: 'number', held: 'number', 'orifice?': 'number', 'heardAt?': { list: leakHeardAtLayout } } } } } satisfies Layout;
export const compressionReportLayout = { fields: { cylinders: { list: testedCylinderLayout }, 'test?': judgedCompressionLayout, leakage: { list: { fields: { cylinder: 'string', leak: leakDownLayout } } } } } satisfies Layout;
export const hotOilLayout = { fields: { viscosity: 'number', grades: saeGradesLayout } } satisfies Layout;
export const sampleReportLayout = { fields: { temperature: 'number', viscosity: 'number', clean: 'number', fuel: 'number', 'byLaw?': fuelFractionSpanLayout, 'hot?': { fields: { clean: hotOilLayout, now: hotOilLayout, leftGrade: 'boolean' } }, 'dilution?': dilutionFindingLayout, 'thinning?': thinningFindingLayout, fuelViscosity: { fields: { span: spanLayout, basis: basisLayout } } } } satisfies Layout;
export const leftUntilLayout = { fields: { until: timeToDilutionLayout, fraction: 'number', setBy: { oneOf: ['film', 'limit', 'viscosity'] } } } satisfies Layout;
export const timeLeftLayout = { by: 'known', variants: [
  { fields: { known: { oneOf: [false] }, because: { oneOf: ['no sample', 'thickened sample'] } } },
  { fields: { known: { oneOf: [true] }, running: leftUntilLayout, standing: leftUntilLayout } },
] } satisfies Layout;
export const leakReportLayout = { fields: { flow: spanLayout, basis: basisLayout, 'running?': 'number', evaporation: 'number', left: timeLeftLayout, 'flooded?': 'number' } } satisfies Layout;
export const oilReportLayout = { fields: { 'sample?': sampleReportLayout, 'leak?': leakReportLayout, 'tolerance?': maxDilutionSpanLayout, 'film?': filmReportLayout, densityBasis: basisLayout } } satisfies Layout;
export const inspectionLayout = { fields: { engine: 'string', units: { oneOf: ['inch', 'metric'] }, 'notFilledIn?': notFilledInLayout, 'rods?': bearingGroupReportLayout, 'mains?': bearingGroupReportLayout, 'endPlay?': endPlayLayout, happened: { list: happeningLayout }, cylinders: { list: cylinderReportLayout }, 'boring?': borePlanLayout, 'boringByRule?': { oneOf: [true] }, howRead: howReadLayout, unsettled: { list: unsettledLayout }, valves: { list: valveReportLayout }, 'compression?': compressionReportLayout, 'assembly?': assemblySettingsLayout, 'oil?': oilReportLayout } } satisfies Layout;
export const endPlaySheetLayout = { fields: { readings: { list: { fields: { pushed: 'number', pulled: 'number' } } }, 'limits?': statedLimitsLengthLayout } } satisfies Layout;
export const crankshaftSheetLayout = { fields: { 'rodJournals?': journalKindLayout, 'mainJournals?': journalKindLayout, 'endPlay?': endPlaySheetLayout } } satisfies Layout;
export const bearingSheetLayout = { fields: { name: 'string', journal: { fields: { readings: { list: diameterReadingLayout }, 'runout?': 'number' } }, 'housingBore?': sizeOrSpanLayout, 'fittedShells?': 'string' } } satisfies Layout;
export const boresSheetLayout = { fields: { 'honingAllowance?': 'number', 'leastWall?': 'number', 'sizeAllowance?': 'number', standard: spanLayout, 'steps?': { list: 'number' }, 'stroke?': 'number' } } satisfies Layout;
export const cylinderLimitsLayout = { fields: { 'outOfRound?': statedLimitsLengthLayout, 'taper?': statedLimitsLengthLayout, 'pistonClearance?': statedLimitsLengthLayout, 'ringGap?': statedLimitsLengthLayout } } satisfies Layout;
export const cylinderSheetLayout = { fields: { name: 'string', bore: { fields: { readings: { list: diameterReadingLayout }, 'ringTravel?': spanLayout, 'wall?': 'number' } }, 'piston?': sizeOrSpanLayout, 'rings?': { list: { fields: { name: 'string', gap: 'number', measuredIn: 'number' } } } } } satisfies Layout;
export const valveLimitsLayout = { fields: { 'guideClearance?': statedLimitsLengthLayout, 'seatWidth?': statedLimitsLengthLayout, 'margin?': statedLimitsLengthLayout, 'recession?': statedLimitsLengthLayout } } satisfies Layout;
export const springReadingLayout = { fields: { height: 'number', force: 'number' } } satisfies Layout;
export const valveSheetLayout = { fields: { name: 'string', kind: { oneOf: ['exhaust', 'inlet'] }, 'stem?': sizeOrSpanLayout, 'guide?': sizeOrSpanLayout, 'seatWidth?': 'number', 'margin?': 'number', 'recession?': 'number', 'lash?': 'number', 'length?': 'number', 'leastLength?': 'number', 'spring?': { fields: { closed: springReadingLayout, open: springReadingLayout, 'forceWithin?': 'number' } } } } satisfies Layout;
export const compressionSheetLayout = { fields: { cylinders: { list: testedCylinderLayout }, 'repeatsWithin?': 'number', 'gaugeWithin?': 'number' } } satisfies Layout;
export const bigEndSheetLayout = { fields: { stroke: 'number', rodLength: 'number', bore: 'number', compressionRatio: 'number', pistonMass: 'number', smallEndMass: 'number', bigEndMass: 'number' } } satisfies Layout;
export const filmSheetLayout = { fields: { name: 'string', inlet: 'number', roughness: roughnessLayout, 'filmRatio?': 'number', 'material?': shellMaterialLayout, 'duty?': { oneOf: ['closely fitted', 'general'] }, 'largestParticle?': { either: ['number', { oneOf: ['no filter'] }] }, 'supply?': oilSupplyLayout, 'bigEnd?': bigEndSheetLayout, 'rule?': { oneOf: ['Trumpler'] }, 'startUpLoad?': 'number', speed: 'number', load: 'number', journal: 'number', length: 'number', clearance: 'number' } } satisfies Layout;
export const leakSheetLayout = { either: [{ fields: { 'running?': 'number', 'evaporation?': 'number', 'clearanceVolume?': 'number', drops: 'number', 'dropVolume?': 'number' } }, { fields: { 'running?': 'number', 'evaporation?': 'number', 'clearanceVolume?': 'number', flow: 'number' } }] } satisfies Layout;
export const oilSheetLayout = { fields: { line: viscosityLineLayout, 'density?': 'number', sump: 'number', 'sample?': viscosityPointLayout, 'fuelViscosity?': 'number', 'fuel?': { fields: { line: viscosityLineLayout, density: 'number' } }, 'bearing?': filmSheetLayout, 'doubt?': filmDoubtLayout, 'leak?': leakSheetLayout, 'thresholds?': { fields: { act: 'number', critical: 'number', 'source?': 'string' } }, 'thinning?': { fields: { act: 'number', critical: 'number', 'source?': 'string' } } } } satisfies Layout;
export const leakAloneLayout = { fields: { leak: leakSheetLayout, 'sump?': 'number' } } satisfies Layout;
export const sheetLayout = { fields: { version: { oneOf: [1] }, engine: 'string', 'happened?': { list: happeningLayout }, units: { oneOf: ['inch', 'metric'] }, 'crankshaft?': crankshaftSheetLayout, 'notFilledIn?': notFilledInLayout, 'rods?': { list: bearingSheetLayout }, 'mains?': { list: bearingSheetLayout }, 'shells?': { list: shellPairsLayout }, 'bores?': boresSheetLayout, 'cylinderLimits?': cylinderLimitsLayout, 'cylinders?': { list: cylinderSheetLayout }, 'valveLimits?': valveLimitsLayout, 'valves?': { list: valveSheetLayout }, 'compressionTest?': compressionSheetLayout, 'assembly?': assemblyDataLayout, 'oil?': { either: [oilSheetLayout, leakAloneLayout] }, 'instruments?': instrumentsOfBenchLayout, 'decisionRule?': namedRuleLayout, 'warmth?': warmthOfBenchLayout } } satisfies Layout;
