// How what functions take from each other is laid out. Made by `npm run layouts` from the types.
import { grindPlanLayout } from '../crankshaft/layouts.js';
import { borePlanLayout } from '../cylinders/layouts.js';
import type { Layout } from '../judging/internal.js';
import { findingLengthLayout, sizeOrSpanLayout, spanLayout } from '../judging/layouts.js';
import { diameterReadingLayout } from '../measuring/layouts.js';
import { engineKindLayout, priceLayout } from '../reading/layouts.js';

export const machiningOfferLayout = { fields: { work: { oneOf: ['bore', 'grind main journals', 'grind rod journals', 'resize housings', 'skim head', 'sleeve', 'straighten'] }, shop: 'string', price: priceLayout } } satisfies Layout;
export const faultLayout = { oneOf: ['bent', 'cracked', 'frost-cracked', 'pitted', 'scored', 'spun'] } satisfies Layout;
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
export const shedLayout = { fields: { version: { oneOf: [1] }, shed: 'string', units: { oneOf: ['inch', 'metric'] }, engine: engineKindLayout, 'machining?': { list: machiningOfferLayout }, 'toBuy?': offersLayout, 'blocks?': { list: blockPartLayout }, 'crankshafts?': { list: crankshaftPartLayout }, 'rods?': { list: rodsPartLayout }, 'pistonSets?': { list: pistonSetPartLayout }, 'ringSets?': { list: ringSetPartLayout }, 'shells?': { list: shellPartLayout }, 'thrustWashers?': { list: thrustWasherPartLayout }, 'heads?': { list: headPartLayout }, 'valveSets?': { list: valveSetPartLayout } } } satisfies Layout;
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
export const triageLayout = { fields: { shed: 'string', units: { oneOf: ['inch', 'metric'] }, parts: { list: triagedPartLayout } } } satisfies Layout;
