// How what functions take from each other is laid out. Made by `npm run layouts` from the types.
import { grindPlanLayout } from '../crankshaft/layouts.js';
import { borePlanLayout } from '../cylinders/layouts.js';
import type { Layout } from '../judging/internal.js';
import { basisLayout, findingLengthLayout, namedRuleLayout, sizeOrSpanLayout, spanLayout } from '../judging/layouts.js';
import { diameterReadingLayout, oddReadingLayout } from '../measuring/layouts.js';
import { engineKindLayout, happeningLayout, howReadLayout, instrumentsOfBenchLayout, priceLayout, warmthOfBenchLayout } from '../reading/layouts.js';

export const troubleLayout = { fields: { what: { oneOf: ['broken piston', 'seized bearing', 'seized piston', 'spun shells', 'thrown rod'] }, part: 'string', 'from?': 'string' } } satisfies Layout;
export const againReasonLayout = { by: 'kind', variants: [
  { fields: { kind: { oneOf: ['measure again'] }, finding: findingLengthLayout } },
  { fields: { kind: { oneOf: ['measure sizes again'] }, of: { oneOf: ['bores', 'mains', 'rods'] }, places: { list: 'string' }, 'step?': 'number' } },
] } satisfies Layout;
export const faultLayout = { oneOf: ['bent', 'cracked', 'frost-cracked', 'overheated', 'pitted', 'scored', 'spun'] } satisfies Layout;
export const untilLayout = { oneOf: ['it is known which bearing seized', 'it is measured better', 'it is straightened and measured', 'the odd reading is taken again'] } satisfies Layout;
export const machiningOfferLayout = { fields: { work: { oneOf: ['bore', 'crack test', 'grind main journals', 'grind rod journals', 'pressure test', 'recut seats', 'reface valves', 'resize housings', 'skim head', 'sleeve', 'stitch', 'straighten', 'weld'] }, shop: 'string', price: priceLayout } } satisfies Layout;
export const borePlaceLayout = { fields: { name: 'string', readings: { list: diameterReadingLayout }, 'ringTravel?': spanLayout, 'wall?': 'number', 'faults?': { list: faultLayout } } } satisfies Layout;
export const housingPlaceLayout = { fields: { name: 'string', housingBore: sizeOrSpanLayout } } satisfies Layout;
export const partTestLayout = { fields: { for: { oneOf: ['cracks', 'softening'] }, how: 'string', 'by?': 'string', found: { oneOf: ['none', 'some'] } } } satisfies Layout;
export const offeredBlockPartLayout = { fields: { bores: { list: borePlaceLayout }, 'mainHousings?': { list: housingPlaceLayout }, 'thrustWidth?': 'number', name: 'string', 'from?': 'string', 'interchange?': { list: 'string' }, 'faults?': { list: faultLayout }, 'happened?': { list: happeningLayout }, 'tested?': { list: partTestLayout }, price: priceLayout } } satisfies Layout;
export const journalPlaceLayout = { fields: { name: 'string', readings: { list: diameterReadingLayout }, 'runout?': 'number', 'faults?': { list: faultLayout } } } satisfies Layout;
export const offeredCrankshaftPartLayout = { fields: { rodJournals: { list: journalPlaceLayout }, 'mainJournals?': { list: journalPlaceLayout }, 'thrustWidth?': 'number', 'runoutOnceStraight?': 'number', name: 'string', 'from?': 'string', 'interchange?': { list: 'string' }, 'faults?': { list: faultLayout }, 'happened?': { list: happeningLayout }, 'tested?': { list: partTestLayout }, price: priceLayout } } satisfies Layout;
export const offeredHeadPartLayout = { fields: { 'flatness?': 'number', 'guideBore?': sizeOrSpanLayout, name: 'string', 'from?': 'string', 'interchange?': { list: 'string' }, 'faults?': { list: faultLayout }, 'happened?': { list: happeningLayout }, 'tested?': { list: partTestLayout }, price: priceLayout } } satisfies Layout;
export const offeredPistonSetPartLayout = { fields: { oversize: 'number', pistons: { list: { fields: { name: 'string', diameter: sizeOrSpanLayout } } }, name: 'string', 'from?': 'string', 'interchange?': { list: 'string' }, 'faults?': { list: faultLayout }, 'happened?': { list: happeningLayout }, 'count?': 'number', price: priceLayout } } satisfies Layout;
export const offeredRingSetPartLayout = { fields: { oversize: 'number', 'rings?': { list: { fields: { name: 'string', gap: 'number', measuredIn: 'number' } } }, name: 'string', 'from?': 'string', 'interchange?': { list: 'string' }, 'faults?': { list: faultLayout }, 'happened?': { list: happeningLayout }, 'count?': 'number', price: priceLayout } } satisfies Layout;
export const offeredRodsPartLayout = { fields: { rods: { list: housingPlaceLayout }, name: 'string', 'from?': 'string', 'interchange?': { list: 'string' }, 'faults?': { list: faultLayout }, 'happened?': { list: happeningLayout }, 'tested?': { list: partTestLayout }, price: priceLayout } } satisfies Layout;
export const offeredShellPartLayout = { fields: { name: 'string', 'from?': 'string', 'interchange?': { list: 'string' }, 'faults?': { list: faultLayout }, 'happened?': { list: happeningLayout }, fits: { oneOf: ['mains', 'rods'] }, undersize: 'number', wall: sizeOrSpanLayout, pairs: 'number', price: priceLayout } } satisfies Layout;
export const offeredThrustWasherPartLayout = { fields: { thickness: 'number', name: 'string', 'from?': 'string', 'interchange?': { list: 'string' }, 'faults?': { list: faultLayout }, 'happened?': { list: happeningLayout }, 'count?': 'number', price: priceLayout } } satisfies Layout;
export const offeredValveSetPartLayout = { fields: { 'stem?': sizeOrSpanLayout, 'margin?': 'number', name: 'string', 'from?': 'string', 'interchange?': { list: 'string' }, 'faults?': { list: faultLayout }, 'happened?': { list: happeningLayout }, 'count?': 'number', price: priceLayout } } satisfies Layout;
export const offersLayout = { fields: { 'blocks?': { list: offeredBlockPartLayout }, 'crankshafts?': { list: offeredCrankshaftPartLayout }, 'heads?': { list: offeredHeadPartLayout }, 'pistonSets?': { list: offeredPistonSetPartLayout }, 'ringSets?': { list: offeredRingSetPartLayout }, 'rods?': { list: offeredRodsPartLayout }, 'shells?': { list: offeredShellPartLayout }, 'thrustWashers?': { list: offeredThrustWasherPartLayout }, 'valveSets?': { list: offeredValveSetPartLayout } } } satisfies Layout;
export const asWrittenLayout = { fields: { text: 'string', 'readings?': 'string' } } satisfies Layout;
export const blockPartLayout = { fields: { bores: { list: borePlaceLayout }, 'mainHousings?': { list: housingPlaceLayout }, 'thrustWidth?': 'number', name: 'string', 'from?': 'string', 'interchange?': { list: 'string' }, 'faults?': { list: faultLayout }, 'happened?': { list: happeningLayout }, 'tested?': { list: partTestLayout } } } satisfies Layout;
export const crankshaftPartLayout = { fields: { rodJournals: { list: journalPlaceLayout }, 'mainJournals?': { list: journalPlaceLayout }, 'thrustWidth?': 'number', 'runoutOnceStraight?': 'number', name: 'string', 'from?': 'string', 'interchange?': { list: 'string' }, 'faults?': { list: faultLayout }, 'happened?': { list: happeningLayout }, 'tested?': { list: partTestLayout } } } satisfies Layout;
export const rodsPartLayout = { fields: { rods: { list: housingPlaceLayout }, name: 'string', 'from?': 'string', 'interchange?': { list: 'string' }, 'faults?': { list: faultLayout }, 'happened?': { list: happeningLayout }, 'tested?': { list: partTestLayout } } } satisfies Layout;
export const pistonSetPartLayout = { fields: { oversize: 'number', pistons: { list: { fields: { name: 'string', diameter: sizeOrSpanLayout } } }, name: 'string', 'from?': 'string', 'interchange?': { list: 'string' }, 'faults?': { list: faultLayout }, 'happened?': { list: happeningLayout }, 'count?': 'number' } } satisfies Layout;
export const ringSetPartLayout = { fields: { oversize: 'number', 'rings?': { list: { fields: { name: 'string', gap: 'number', measuredIn: 'number' } } }, name: 'string', 'from?': 'string', 'interchange?': { list: 'string' }, 'faults?': { list: faultLayout }, 'happened?': { list: happeningLayout }, 'count?': 'number' } } satisfies Layout;
export const shellPartLayout = { fields: { name: 'string', 'from?': 'string', 'interchange?': { list: 'string' }, 'faults?': { list: faultLayout }, 'happened?': { list: happeningLayout }, fits: { oneOf: ['mains', 'rods'] }, undersize: 'number', wall: sizeOrSpanLayout, pairs: 'number' } } satisfies Layout;
export const thrustWasherPartLayout = { fields: { thickness: 'number', name: 'string', 'from?': 'string', 'interchange?': { list: 'string' }, 'faults?': { list: faultLayout }, 'happened?': { list: happeningLayout }, 'count?': 'number' } } satisfies Layout;
export const headPartLayout = { fields: { 'flatness?': 'number', 'guideBore?': sizeOrSpanLayout, name: 'string', 'from?': 'string', 'interchange?': { list: 'string' }, 'faults?': { list: faultLayout }, 'happened?': { list: happeningLayout }, 'tested?': { list: partTestLayout } } } satisfies Layout;
export const valveSetPartLayout = { fields: { 'stem?': sizeOrSpanLayout, 'margin?': 'number', name: 'string', 'from?': 'string', 'interchange?': { list: 'string' }, 'faults?': { list: faultLayout }, 'happened?': { list: happeningLayout }, 'count?': 'number' } } satisfies Layout;
export const shedLayout = { fields: { version: { oneOf: [1] }, shed: 'string', units: { oneOf: ['inch', 'metric'] }, engine: engineKindLayout, 'machining?': { list: machiningOfferLayout }, 'toBuy?': offersLayout, 'asWritten?': asWrittenLayout, 'blocks?': { list: blockPartLayout }, 'crankshafts?': { list: crankshaftPartLayout }, 'rods?': { list: rodsPartLayout }, 'pistonSets?': { list: pistonSetPartLayout }, 'ringSets?': { list: ringSetPartLayout }, 'shells?': { list: shellPartLayout }, 'thrustWashers?': { list: thrustWasherPartLayout }, 'heads?': { list: headPartLayout }, 'valveSets?': { list: valveSetPartLayout }, 'instruments?': instrumentsOfBenchLayout, 'decisionRule?': namedRuleLayout, 'warmth?': warmthOfBenchLayout } } satisfies Layout;
export const machinedPlaceLayout = { fields: { place: 'string', before: spanLayout, after: spanLayout } } satisfies Layout;
export const partDifferenceLayout = { by: 'kind', variants: [
  { fields: { kind: { oneOf: ['come', 'gone'] }, section: { oneOf: ['blocks', 'crankshafts', 'heads', 'pistonSets', 'ringSets', 'rods', 'shells', 'thrustWashers', 'valveSets'] }, name: 'string', count: 'number', toBuy: 'boolean' } },
  { fields: { kind: { oneOf: ['changed'] }, section: { oneOf: ['blocks', 'crankshafts', 'heads', 'pistonSets', 'ringSets', 'rods', 'shells', 'thrustWashers', 'valveSets'] }, name: 'string', 'renamedFrom?': 'string', toBuy: 'boolean', measured: { list: 'string' }, notKnown: { list: 'string' }, readAgain: { list: 'string' }, machined: { list: machinedPlaceLayout }, done: { list: 'string' }, faultsCome: { list: faultLayout }, faultsGone: { list: faultLayout }, 'count?': { fields: { before: 'number', after: 'number' } }, fields: { list: 'string' } } },
] } satisfies Layout;
export const shedDifferenceLayout = { fields: { parts: { list: partDifferenceLayout }, fields: { list: 'string' } } } satisfies Layout;
export const dispositionLayout = { oneOf: ['machine', 'not as it is', 'scrap', 'spare', 'undecided', 'use after', 'use as it is'] } satisfies Layout;
export const jobLayout = { fields: { work: { oneOf: ['bore', 'crack test', 'grind main journals', 'grind rod journals', 'pressure test', 'recut seats', 'reface valves', 'resize housings', 'skim head', 'sleeve', 'stitch', 'straighten', 'weld'] }, places: { list: 'string' }, 'step?': 'number', 'to?': spanLayout } } satisfies Layout;
export const neededTestLayout = { fields: { test: { oneOf: ['check it for bend and twist', 'crack test', 'measure its journals', 'measure its margins', 'measure its seats', 'pressure test', 'softening test'] }, when: { oneOf: ['after', 'again', 'before use', 'first'] }, because: { list: troubleLayout }, 'least?': 'number' } } satisfies Layout;
export const consequenceLayout = { by: 'kind', variants: [
  { fields: { kind: { oneOf: ['scrap'] }, 'unlessTested?': { list: { oneOf: ['cracks', 'softening'] } }, 'basis?': basisLayout } },
  { fields: { kind: { oneOf: ['cleared'] }, 'work?': { oneOf: ['bore', 'crack test', 'grind main journals', 'grind rod journals', 'pressure test', 'recut seats', 'reface valves', 'resize housings', 'skim head', 'sleeve', 'stitch', 'straighten', 'weld'] }, tests: { list: partTestLayout }, basis: basisLayout } },
  { fields: { kind: { oneOf: ['machine'] } } },
  { fields: { kind: { oneOf: ['repair'] }, work: { oneOf: ['bore', 'crack test', 'grind main journals', 'grind rod journals', 'pressure test', 'recut seats', 'reface valves', 'resize housings', 'skim head', 'sleeve', 'stitch', 'straighten', 'weld'] } } },
  { fields: { kind: { oneOf: ['mend'] } } },
] } satisfies Layout;
export const triageReasonLayout = { by: 'kind', variants: [
  { fields: { kind: { oneOf: ['measure again'] }, finding: findingLengthLayout } },
  { fields: { kind: { oneOf: ['measure sizes again'] }, of: { oneOf: ['bores', 'mains', 'rods'] }, places: { list: 'string' }, 'step?': 'number' } },
  { fields: { kind: { oneOf: ['fault'] }, fault: faultLayout, 'place?': 'string', 'found?': { oneOf: ['by a test'] }, consequence: consequenceLayout } },
  { fields: { kind: { oneOf: ['happened'] }, what: happeningLayout, consequence: consequenceLayout } },
  { fields: { kind: { oneOf: ['journals'] }, journals: { oneOf: ['mains', 'rods'] }, plan: grindPlanLayout, 'ifTrue?': { oneOf: [true] }, 'promised?': 'number' } },
  { fields: { kind: { oneOf: ['read again'] }, place: 'string', odd: oddReadingLayout } },
  { fields: { kind: { oneOf: ['readings apart'] }, place: 'string', readings: spanLayout } },
  { fields: { kind: { oneOf: ['at no step'] }, place: 'string', below: 'number' } },
  { fields: { kind: { oneOf: ['runout not known'] }, 'place?': 'string', 'runout?': 'number' } },
  { fields: { kind: { oneOf: ['reads as bent'] }, place: 'string', finding: findingLengthLayout } },
  { fields: { kind: { oneOf: ['runout not read'] } } },
  { fields: { kind: { oneOf: ['which bearing seized'] }, 'cleared?': { oneOf: [true] } } },
  { fields: { kind: { oneOf: ['bores'] }, plan: borePlanLayout } },
  { fields: { kind: { oneOf: ['housing'] }, place: 'string', 'finding?': findingLengthLayout } },
  { fields: { kind: { oneOf: ['face'] }, finding: findingLengthLayout } },
  { fields: { kind: { oneOf: ['margin'] }, finding: findingLengthLayout } },
  { fields: { kind: { oneOf: ['no shop'] }, work: { oneOf: ['bore', 'crack test', 'grind main journals', 'grind rod journals', 'pressure test', 'recut seats', 'reface valves', 'resize housings', 'skim head', 'sleeve', 'stitch', 'straighten', 'weld'] } } },
  { fields: { kind: { oneOf: ['fits nothing'] }, section: { oneOf: ['blocks', 'crankshafts', 'heads', 'pistonSets', 'ringSets', 'rods', 'shells', 'thrustWashers', 'valveSets'] } } },
] } satisfies Layout;
export const triagedPartLayout = { fields: { section: { oneOf: ['blocks', 'crankshafts', 'heads', 'pistonSets', 'ringSets', 'rods', 'shells', 'thrustWashers', 'valveSets'] }, name: 'string', 'from?': 'string', count: 'number', disposition: dispositionLayout, jobs: { list: jobLayout }, tests: { list: neededTestLayout }, findings: { list: findingLengthLayout }, because: { list: triageReasonLayout } } } satisfies Layout;
export const triageLayout = { fields: { shed: 'string', units: { oneOf: ['inch', 'metric'] }, parts: { list: triagedPartLayout }, howRead: howReadLayout } } satisfies Layout;
