// How what functions take from each other is laid out. Made by `npm run layouts` from the types.
import { clearanceExplanationLayout, filmFindingLayout, filmStandLayout, roughnessLayout, shellMatchLayout, undersizeMismatchLayout, warmFilmLayout } from '../bearings/layouts.js';
import { endPlayLayout, grindPlanLayout, servedGrindPlanLayout } from '../crankshaft/layouts.js';
import { borePlanLayout, ringFilingLayout } from '../cylinders/layouts.js';
import type { Layout } from '../judging/layout.js';
import { basedLimitsLengthLayout, basisLayout, findingLengthLayout, sizeOrSpanLayout, spanLayout } from '../judging/layouts.js';
import { boreShapeLayout, diameterReadingLayout, shapeLayout } from '../measuring/layouts.js';
import { dilutionFindingLayout, fuelFractionSpanLayout, saeGradesLayout, timeToDilutionLayout, viscosityLineLayout, viscosityPointLayout } from '../oil/layouts.js';

export const wrongShellsLayout = { fields: { kind: { oneOf: ['wrong shells'] }, bearing: 'string', shells: 'string', undersize: 'number', journalUndersize: 'number', explanation: undersizeMismatchLayout } } satisfies Layout;
export const filmReportLayout = { fields: { bearing: 'string', load: 'number', now: warmFilmLayout, finding: filmFindingLayout, stand: filmStandLayout } } satisfies Layout;
export const ringReportLayout = { fields: { name: 'string', travel: spanLayout, widestAt: 'number', filing: ringFilingLayout } } satisfies Layout;
export const actionLayout = { by: 'kind', variants: [
  wrongShellsLayout,
  { fields: { kind: { oneOf: ['change the oil', 'do not run'] }, dilution: dilutionFindingLayout } },
  { fields: { kind: { oneOf: ['thick oil'] }, viscosity: 'number', clean: 'number' } },
  { fields: { kind: { oneOf: ['thin film'] }, film: filmReportLayout } },
  { fields: { kind: { oneOf: ['stop the leak'] }, flow: 'number' } },
  { fields: { kind: { oneOf: ['check sizes', 'wrong clearance'] }, bearing: 'string', finding: findingLengthLayout } },
  { fields: { kind: { oneOf: ['grind'] }, journals: { oneOf: ['mains', 'rods'] }, plan: servedGrindPlanLayout } },
  { fields: { kind: { oneOf: ['no step serves'] }, journals: { oneOf: ['mains', 'rods'] }, defeatedBy: { list: 'string' } } },
  { fields: { kind: { oneOf: ['fit shells'] }, bearing: 'string', match: shellMatchLayout } },
  { fields: { kind: { oneOf: ['buy shells'] }, journals: { oneOf: ['mains', 'rods'] }, undersize: 'number', pairs: 'number' } },
  { fields: { kind: { oneOf: ['set the end play'] }, finding: findingLengthLayout } },
  { fields: { kind: { oneOf: ['rebore', 'wrong piston'] }, cylinder: 'string', finding: findingLengthLayout } },
  { fields: { kind: { oneOf: ['ring'] }, cylinder: 'string', ring: ringReportLayout } },
] } satisfies Layout;
export const bearingReportLayout = { fields: { name: 'string', shape: shapeLayout, 'undersize?': 'number', findings: { list: findingLengthLayout }, 'fitted?': { fields: { shells: 'string', undersize: 'number', clearance: spanLayout, explanation: clearanceExplanationLayout, agrees: 'boolean' } }, matches: { list: shellMatchLayout }, 'shells?': shellMatchLayout } } satisfies Layout;
export const bearingGroupReportLayout = { fields: { kind: { oneOf: ['mains', 'rods'] }, plan: grindPlanLayout, bearings: { list: bearingReportLayout }, pairsToBuy: 'number' } } satisfies Layout;
export const cylinderReportLayout = { fields: { name: 'string', shape: boreShapeLayout, findings: { list: findingLengthLayout }, 'piston?': { fields: { clearance: spanLayout, 'finding?': findingLengthLayout } }, rings: { list: ringReportLayout } } } satisfies Layout;
export const hotOilLayout = { fields: { viscosity: 'number', grades: saeGradesLayout } } satisfies Layout;
export const oilReportLayout = { fields: { 'sample?': { fields: { temperature: 'number', viscosity: 'number', clean: 'number', fuel: 'number', 'byLaw?': fuelFractionSpanLayout, 'hot?': { fields: { clean: hotOilLayout, now: hotOilLayout } }, 'dilution?': dilutionFindingLayout, fuelViscosity: { fields: { value: 'number', basis: basisLayout } } } }, 'leak?': { fields: { flow: 'number', basis: basisLayout, left: { fields: { until: timeToDilutionLayout, fraction: 'number', setBy: { oneOf: ['film', 'limit'] } } }, untilAct: timeToDilutionLayout, untilCritical: timeToDilutionLayout } }, 'film?': filmReportLayout, densityBasis: basisLayout } } satisfies Layout;
export const inspectionLayout = { fields: { engine: 'string', units: { oneOf: ['inch', 'metric'] }, 'rods?': bearingGroupReportLayout, 'mains?': bearingGroupReportLayout, 'endPlay?': endPlayLayout, cylinders: { list: cylinderReportLayout }, 'oil?': oilReportLayout } } satisfies Layout;
export const buildPartLayout = { fields: { section: { oneOf: ['blocks', 'crankshafts', 'heads', 'pistonSets', 'ringSets', 'rods', 'shells', 'thrustWashers', 'valveSets'] }, name: 'string', 'from?': 'string', count: 'number', bought: 'boolean' } } satisfies Layout;
export const buildBearingLayout = { fields: { kind: { oneOf: ['mains', 'rods'] }, journal: 'string', journalSize: spanLayout, undersize: 'number', housing: { fields: { part: 'string', place: 'string' } }, housingBore: spanLayout, shells: 'string', wall: spanLayout, clearance: spanLayout, finding: findingLengthLayout } } satisfies Layout;
export const buildCylinderLayout = { fields: { bore: 'string', boreSize: spanLayout, oversize: 'number', piston: 'string', pistonSize: spanLayout, clearance: spanLayout, 'finding?': findingLengthLayout, ringGap: basedLimitsLengthLayout } } satisfies Layout;
export const costLayout = { fields: { amount: 'number', 'currency?': 'string' } } satisfies Layout;
export const buildJobLayout = { fields: { part: 'string', shop: 'string', cost: costLayout, work: { oneOf: ['bore', 'grind main journals', 'grind rod journals', 'resize housings', 'skim head', 'sleeve', 'straighten'] }, places: { list: 'string' }, 'step?': 'number', 'to?': spanLayout } } satisfies Layout;
export const buildLayout = { fields: { name: 'string', 'interchange?': 'string', parts: { list: buildPartLayout }, bearings: { list: buildBearingLayout }, cylinders: { list: buildCylinderLayout }, 'endPlay?': { fields: { washers: { list: 'string' }, play: 'number', finding: findingLengthLayout } }, 'guides?': { fields: { clearance: spanLayout, 'finding?': findingLengthLayout } }, jobs: { list: buildJobLayout }, cost: costLayout } } satisfies Layout;
export const planStageLayout = { oneOf: ['least cost', 'most engines', 'next engine', 'widest margin'] } satisfies Layout;
export const unprovenLayout = { fields: { kind: { oneOf: ['solver failure', 'time limit'] }, stage: planStageLayout, found: 'number', bound: 'number' } } satisfies Layout;
export const proofLayout = { by: 'kind', variants: [
  { fields: { kind: { oneOf: ['optimal'] } } },
  unprovenLayout,
] } satisfies Layout;
export const shopOrderLayout = { fields: { shop: 'string', jobs: { list: buildJobLayout }, cost: costLayout } } satisfies Layout;
export const purchaseLayout = { fields: { section: { oneOf: ['blocks', 'crankshafts', 'heads', 'pistonSets', 'ringSets', 'rods', 'shells', 'thrustWashers', 'valveSets'] }, name: 'string', count: 'number', cost: costLayout } } satisfies Layout;
export const leftOverLayout = { fields: { section: { oneOf: ['blocks', 'crankshafts', 'heads', 'pistonSets', 'ringSets', 'rods', 'shells', 'thrustWashers', 'valveSets'] }, name: 'string', count: 'number', why: { oneOf: ['reserved', 'scrap', 'spare'] } } } satisfies Layout;
export const lackingPartLayout = { fields: { section: { oneOf: ['blocks', 'crankshafts', 'heads', 'pistonSets', 'ringSets', 'rods', 'shells', 'thrustWashers', 'valveSets'] }, 'fits?': { oneOf: ['mains', 'rods'] }, 'step?': 'number', count: 'number' } } satisfies Layout;
export const nextEngineLayout = { fields: { lacks: { list: lackingPartLayout } } } satisfies Layout;
export const planLayout = { fields: { shelf: 'string', engine: 'string', units: { oneOf: ['inch', 'metric'] }, builds: { list: buildLayout }, cost: costLayout, 'smallestMargin?': 'number', proof: proofLayout, orders: { list: shopOrderLayout }, shopping: { list: purchaseLayout }, leftOver: { list: leftOverLayout }, 'nextEngine?': nextEngineLayout, cannotBuild: { list: 'string' } } } satisfies Layout;
export const statedLimitsLengthLayout = { fields: { 'source?': 'string', 'min?': 'number', 'max?': 'number' } } satisfies Layout;
export const journalSheetLayout = { fields: { standard: spanLayout, 'steps?': { list: 'number' }, 'minimum?': 'number', 'cleanUpAllowance?': 'number', 'sizeAllowance?': 'number', 'wear?': { oneOf: ['all round', 'one side'] }, 'shape?': statedLimitsLengthLayout, 'oilClearance?': statedLimitsLengthLayout } } satisfies Layout;
export const endPlaySheetLayout = { fields: { readings: { list: { fields: { pushed: 'number', pulled: 'number' } } }, 'limits?': statedLimitsLengthLayout } } satisfies Layout;
export const crankshaftSheetLayout = { fields: { 'rodJournals?': journalSheetLayout, 'mainJournals?': journalSheetLayout, 'endPlay?': endPlaySheetLayout } } satisfies Layout;
export const bearingSheetLayout = { fields: { name: 'string', journal: { fields: { readings: { list: diameterReadingLayout }, 'runout?': 'number' } }, housingBore: sizeOrSpanLayout, 'fittedShells?': 'string' } } satisfies Layout;
export const shellSheetLayout = { fields: { name: 'string', fits: { oneOf: ['mains', 'rods'] }, undersize: 'number', wall: sizeOrSpanLayout, pairs: 'number' } } satisfies Layout;
export const cylinderLimitsLayout = { fields: { 'outOfRound?': statedLimitsLengthLayout, 'taper?': statedLimitsLengthLayout, 'pistonClearance?': statedLimitsLengthLayout, 'ringGap?': statedLimitsLengthLayout } } satisfies Layout;
export const cylinderSheetLayout = { fields: { name: 'string', bore: { fields: { readings: { list: diameterReadingLayout }, 'ringTravel?': spanLayout } }, 'piston?': sizeOrSpanLayout, 'rings?': { list: { fields: { name: 'string', gap: 'number', measuredIn: 'number' } } } } } satisfies Layout;
export const filmSheetLayout = { fields: { name: 'string', inlet: 'number', roughness: roughnessLayout, 'filmRatio?': 'number', speed: 'number', load: 'number', journal: 'number', length: 'number', clearance: 'number' } } satisfies Layout;
export const oilSheetLayout = { fields: { line: viscosityLineLayout, 'density?': 'number', sump: 'number', 'sample?': viscosityPointLayout, 'fuelViscosity?': 'number', 'fuel?': { fields: { line: viscosityLineLayout, density: 'number' } }, 'bearing?': filmSheetLayout, 'leak?': { either: [{ fields: { drops: 'number', 'dropVolume?': 'number' } }, { fields: { flow: 'number' } }] }, 'thresholds?': { fields: { act: 'number', critical: 'number', 'source?': 'string' } } } } satisfies Layout;
export const sheetLayout = { fields: { version: { oneOf: [1] }, engine: 'string', units: { oneOf: ['inch', 'metric'] }, 'crankshaft?': crankshaftSheetLayout, 'rods?': { list: bearingSheetLayout }, 'mains?': { list: bearingSheetLayout }, 'shells?': { list: shellSheetLayout }, 'cylinderLimits?': cylinderLimitsLayout, 'cylinders?': { list: cylinderSheetLayout }, 'oil?': oilSheetLayout } } satisfies Layout;
export const boreKindLayout = { fields: { standard: spanLayout, 'steps?': { list: 'number' }, 'honingAllowance?': 'number', 'leastWall?': 'number', 'sizeAllowance?': 'number', 'wear?': { oneOf: ['all round', 'one side'] }, 'shape?': statedLimitsLengthLayout, 'pistonClearance?': statedLimitsLengthLayout, 'ringGap?': statedLimitsLengthLayout } } satisfies Layout;
export const engineKindLayout = { fields: { name: 'string', cylinders: 'number', 'rodsPerJournal?': { oneOf: [1, 2] }, mains: 'number', rodJournals: journalSheetLayout, 'mainJournals?': journalSheetLayout, 'rodHousing?': statedLimitsLengthLayout, 'mainHousing?': statedLimitsLengthLayout, bores: boreKindLayout, 'endPlay?': statedLimitsLengthLayout, 'headFlatness?': statedLimitsLengthLayout, 'guideClearance?': statedLimitsLengthLayout, 'alsoNeeds?': { list: { oneOf: ['head', 'valve set'] } } } } satisfies Layout;
export const priceLayout = { fields: { amount: 'number', currency: 'string' } } satisfies Layout;
export const machiningOfferLayout = { fields: { work: { oneOf: ['bore', 'grind main journals', 'grind rod journals', 'resize housings', 'skim head', 'sleeve', 'straighten'] }, shop: 'string', price: priceLayout } } satisfies Layout;
export const faultLayout = { oneOf: ['bent', 'cracked', 'frost-heaved', 'pitted', 'scored', 'spun'] } satisfies Layout;
export const borePlaceLayout = { fields: { name: 'string', readings: { list: diameterReadingLayout }, 'ringTravel?': spanLayout, 'wall?': 'number', 'faults?': { list: faultLayout } } } satisfies Layout;
export const housingPlaceLayout = { fields: { name: 'string', housingBore: sizeOrSpanLayout } } satisfies Layout;
export const offeredBlockPartLayout = { fields: { bores: { list: borePlaceLayout }, 'mainHousings?': { list: housingPlaceLayout }, 'thrustWidth?': 'number', name: 'string', 'from?': 'string', 'interchange?': { list: 'string' }, 'faults?': { list: faultLayout }, price: priceLayout } } satisfies Layout;
export const journalPlaceLayout = { fields: { name: 'string', readings: { list: diameterReadingLayout }, 'runout?': 'number', 'faults?': { list: faultLayout } } } satisfies Layout;
export const offeredCrankshaftPartLayout = { fields: { rodJournals: { list: journalPlaceLayout }, 'mainJournals?': { list: journalPlaceLayout }, 'thrustWidth?': 'number', name: 'string', 'from?': 'string', 'interchange?': { list: 'string' }, 'faults?': { list: faultLayout }, price: priceLayout } } satisfies Layout;
export const offeredHeadPartLayout = { fields: { 'flatness?': 'number', 'guideBore?': sizeOrSpanLayout, name: 'string', 'from?': 'string', 'interchange?': { list: 'string' }, 'faults?': { list: faultLayout }, price: priceLayout } } satisfies Layout;
export const offeredPistonSetPartLayout = { fields: { oversize: 'number', pistons: { list: { fields: { name: 'string', diameter: sizeOrSpanLayout } } }, name: 'string', 'from?': 'string', 'interchange?': { list: 'string' }, 'faults?': { list: faultLayout }, 'count?': 'number', price: priceLayout } } satisfies Layout;
export const offeredRingSetPartLayout = { fields: { oversize: 'number', 'rings?': { list: { fields: { name: 'string', gap: 'number', measuredIn: 'number' } } }, name: 'string', 'from?': 'string', 'interchange?': { list: 'string' }, 'faults?': { list: faultLayout }, 'count?': 'number', price: priceLayout } } satisfies Layout;
export const offeredRodsPartLayout = { fields: { rods: { list: housingPlaceLayout }, name: 'string', 'from?': 'string', 'interchange?': { list: 'string' }, 'faults?': { list: faultLayout }, price: priceLayout } } satisfies Layout;
export const offeredShellPartLayout = { fields: { name: 'string', 'from?': 'string', 'interchange?': { list: 'string' }, 'faults?': { list: faultLayout }, fits: { oneOf: ['mains', 'rods'] }, undersize: 'number', wall: sizeOrSpanLayout, pairs: 'number', price: priceLayout } } satisfies Layout;
export const offeredThrustWasherPartLayout = { fields: { thickness: 'number', name: 'string', 'from?': 'string', 'interchange?': { list: 'string' }, 'faults?': { list: faultLayout }, 'count?': 'number', price: priceLayout } } satisfies Layout;
export const offeredValveSetPartLayout = { fields: { 'stem?': sizeOrSpanLayout, name: 'string', 'from?': 'string', 'interchange?': { list: 'string' }, 'faults?': { list: faultLayout }, 'count?': 'number', price: priceLayout } } satisfies Layout;
export const offersLayout = { fields: { 'blocks?': { list: offeredBlockPartLayout }, 'crankshafts?': { list: offeredCrankshaftPartLayout }, 'heads?': { list: offeredHeadPartLayout }, 'pistonSets?': { list: offeredPistonSetPartLayout }, 'ringSets?': { list: offeredRingSetPartLayout }, 'rods?': { list: offeredRodsPartLayout }, 'shells?': { list: offeredShellPartLayout }, 'thrustWashers?': { list: offeredThrustWasherPartLayout }, 'valveSets?': { list: offeredValveSetPartLayout } } } satisfies Layout;
export const blockPartLayout = { fields: { bores: { list: borePlaceLayout }, 'mainHousings?': { list: housingPlaceLayout }, 'thrustWidth?': 'number', name: 'string', 'from?': 'string', 'interchange?': { list: 'string' }, 'faults?': { list: faultLayout } } } satisfies Layout;
export const crankshaftPartLayout = { fields: { rodJournals: { list: journalPlaceLayout }, 'mainJournals?': { list: journalPlaceLayout }, 'thrustWidth?': 'number', name: 'string', 'from?': 'string', 'interchange?': { list: 'string' }, 'faults?': { list: faultLayout } } } satisfies Layout;
export const rodsPartLayout = { fields: { rods: { list: housingPlaceLayout }, name: 'string', 'from?': 'string', 'interchange?': { list: 'string' }, 'faults?': { list: faultLayout } } } satisfies Layout;
export const pistonSetPartLayout = { fields: { oversize: 'number', pistons: { list: { fields: { name: 'string', diameter: sizeOrSpanLayout } } }, name: 'string', 'from?': 'string', 'interchange?': { list: 'string' }, 'faults?': { list: faultLayout }, 'count?': 'number' } } satisfies Layout;
export const ringSetPartLayout = { fields: { oversize: 'number', 'rings?': { list: { fields: { name: 'string', gap: 'number', measuredIn: 'number' } } }, name: 'string', 'from?': 'string', 'interchange?': { list: 'string' }, 'faults?': { list: faultLayout }, 'count?': 'number' } } satisfies Layout;
export const shellPartLayout = { fields: { name: 'string', 'from?': 'string', 'interchange?': { list: 'string' }, 'faults?': { list: faultLayout }, fits: { oneOf: ['mains', 'rods'] }, undersize: 'number', wall: sizeOrSpanLayout, pairs: 'number' } } satisfies Layout;
export const thrustWasherPartLayout = { fields: { thickness: 'number', name: 'string', 'from?': 'string', 'interchange?': { list: 'string' }, 'faults?': { list: faultLayout }, 'count?': 'number' } } satisfies Layout;
export const headPartLayout = { fields: { 'flatness?': 'number', 'guideBore?': sizeOrSpanLayout, name: 'string', 'from?': 'string', 'interchange?': { list: 'string' }, 'faults?': { list: faultLayout } } } satisfies Layout;
export const valveSetPartLayout = { fields: { 'stem?': sizeOrSpanLayout, name: 'string', 'from?': 'string', 'interchange?': { list: 'string' }, 'faults?': { list: faultLayout }, 'count?': 'number' } } satisfies Layout;
export const shelfLayout = { fields: { version: { oneOf: [1] }, shelf: 'string', units: { oneOf: ['inch', 'metric'] }, engine: engineKindLayout, 'machining?': { list: machiningOfferLayout }, 'toBuy?': offersLayout, 'blocks?': { list: blockPartLayout }, 'crankshafts?': { list: crankshaftPartLayout }, 'rods?': { list: rodsPartLayout }, 'pistonSets?': { list: pistonSetPartLayout }, 'ringSets?': { list: ringSetPartLayout }, 'shells?': { list: shellPartLayout }, 'thrustWashers?': { list: thrustWasherPartLayout }, 'heads?': { list: headPartLayout }, 'valveSets?': { list: valveSetPartLayout } } } satisfies Layout;
export const dispositionLayout = { oneOf: ['machine', 'scrap', 'spare', 'use after', 'use as it is'] } satisfies Layout;
export const jobLayout = { fields: { work: { oneOf: ['bore', 'grind main journals', 'grind rod journals', 'resize housings', 'skim head', 'sleeve', 'straighten'] }, places: { list: 'string' }, 'step?': 'number', 'to?': spanLayout } } satisfies Layout;
export const consequenceLayout = { by: 'kind', variants: [
  { fields: { kind: { oneOf: ['scrap'] } } },
  { fields: { kind: { oneOf: ['machine'] } } },
  { fields: { kind: { oneOf: ['repair'] }, work: { oneOf: ['bore', 'grind main journals', 'grind rod journals', 'resize housings', 'skim head', 'sleeve', 'straighten'] } } },
] } satisfies Layout;
export const triageReasonLayout = { by: 'kind', variants: [
  { fields: { kind: { oneOf: ['fault'] }, fault: faultLayout, 'place?': 'string', consequence: consequenceLayout } },
  { fields: { kind: { oneOf: ['journals'] }, journals: { oneOf: ['mains', 'rods'] }, plan: grindPlanLayout } },
  { fields: { kind: { oneOf: ['bores'] }, plan: borePlanLayout } },
  { fields: { kind: { oneOf: ['housing'] }, place: 'string', 'finding?': findingLengthLayout } },
  { fields: { kind: { oneOf: ['face'] }, finding: findingLengthLayout } },
  { fields: { kind: { oneOf: ['no shop'] }, work: { oneOf: ['bore', 'grind main journals', 'grind rod journals', 'resize housings', 'skim head', 'sleeve', 'straighten'] } } },
  { fields: { kind: { oneOf: ['fits nothing'] }, section: { oneOf: ['blocks', 'crankshafts', 'heads', 'pistonSets', 'ringSets', 'rods', 'shells', 'thrustWashers', 'valveSets'] } } },
] } satisfies Layout;
export const triagedPartLayout = { fields: { section: { oneOf: ['blocks', 'crankshafts', 'heads', 'pistonSets', 'ringSets', 'rods', 'shells', 'thrustWashers', 'valveSets'] }, name: 'string', 'from?': 'string', count: 'number', disposition: dispositionLayout, jobs: { list: jobLayout }, findings: { list: findingLengthLayout }, because: { list: triageReasonLayout } } } satisfies Layout;
export const triageLayout = { fields: { shelf: 'string', units: { oneOf: ['inch', 'metric'] }, parts: { list: triagedPartLayout } } } satisfies Layout;
