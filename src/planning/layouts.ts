// How what functions take from each other is laid out. Made by `npm run layouts` from the types.
import type { Layout } from '../judging/internal.js';
import { basedLimitsLengthLayout, findingLengthLayout, spanLayout } from '../judging/layouts.js';
import { inDoubtLayout } from '../measuring/layouts.js';
import { engineKindLayout, howReadLayout, instrumentNameLayout, neededPartLayout } from '../reading/layouts.js';
import { againReasonLayout, faultLayout, measuredWhatLayout, misreadLayout, neededTestLayout, notJudgedLayout, tooFarLayout, troubleLayout, untilLayout } from '../shed/layouts.js';

export const costLayout = { fields: { amount: 'number', 'currency?': 'string' } } satisfies Layout;
export const planDifferenceLayout = { fields: { engines: { fields: { before: 'number', after: 'number' } }, cost: { fields: { before: costLayout, after: costLayout } }, smallestMargin: { fields: { 'before?': 'number', 'after?': 'number' } }, builtNow: { list: 'string' }, builtNoMore: { list: 'string' }, ofOtherParts: { list: 'string' } } } satisfies Layout;
export const engineChanceLayout = { fields: { engines: 'number', chance: 'number' } } satisfies Layout;
export const oddsOfPartLayout = { fields: { section: { oneOf: ['blocks', 'crankshafts', 'heads', 'otherParts', 'pistonSets', 'ringSets', 'rods', 'shells', 'thrustWashers', 'valveSets'] }, name: 'string', odds: 'number', by: { oneOf: ['owner', 'rule of thumb'] } } } satisfies Layout;
export const leftOutOfChancesLayout = { fields: { section: { oneOf: ['blocks', 'crankshafts', 'heads', 'otherParts', 'pistonSets', 'ringSets', 'rods', 'shells', 'thrustWashers', 'valveSets'] }, name: 'string', 'untested?': { oneOf: [true] }, 'notJudged?': { list: notJudgedLayout } } } satisfies Layout;
export const engineChancesLayout = { fields: { chances: { list: engineChanceLayout }, how: { oneOf: ['draws', 'every case'] }, 'draws?': 'number', 'seed?': 'number', odds: { list: oddsOfPartLayout }, notIn: { list: leftOutOfChancesLayout }, 'ended?': { oneOf: ['solver failure', 'time limit'] } } } satisfies Layout;
export const buildPartLayout = { fields: { section: { oneOf: ['blocks', 'crankshafts', 'heads', 'otherParts', 'pistonSets', 'ringSets', 'rods', 'shells', 'thrustWashers', 'valveSets'] }, name: 'string', 'kind?': 'string', 'made?': { oneOf: [true] }, 'homeMade?': { oneOf: [true] }, 'notes?': { list: 'string' }, 'from?': 'string', count: 'number', bought: 'boolean', 'untested?': { oneOf: [true] }, 'notJudged?': { list: notJudgedLayout } } } satisfies Layout;
export const buildBearingLayout = { fields: { kind: { oneOf: ['mains', 'rods'] }, journal: 'string', journalSize: spanLayout, undersize: 'number', housing: { fields: { part: 'string', place: 'string' } }, 'crossed?': { oneOf: [true] }, housingBore: spanLayout, shells: 'string', wall: spanLayout, 'madeTo?': 'number', clearance: spanLayout, finding: findingLengthLayout } } satisfies Layout;
export const buildCylinderLayout = { fields: { bore: 'string', boreSize: spanLayout, oversize: 'number', piston: 'string', pistonSize: spanLayout, clearance: spanLayout, 'finding?': findingLengthLayout, ringGap: basedLimitsLengthLayout } } satisfies Layout;
export const buildJobLayout = { fields: { part: 'string', shop: 'string', 'inDoubt?': { fields: { at: 'number', places: { list: inDoubtLayout } } }, cost: costLayout, work: { oneOf: ['bore', 'crack test', 'grind main journals', 'grind rod journals', 'pressure test', 'recut seats', 'reface valves', 'resize housings', 'skim head', 'sleeve', 'stitch', 'straighten', 'weld'] }, places: { list: 'string' }, 'step?': 'number', 'to?': spanLayout } } satisfies Layout;
export const buildTestLayout = { fields: { section: { oneOf: ['blocks', 'crankshafts', 'heads', 'otherParts', 'pistonSets', 'ringSets', 'rods', 'shells', 'thrustWashers', 'valveSets'] }, part: 'string', test: { oneOf: ['check it for bend and twist', 'crack test', 'measure its journals', 'measure its margins', 'measure its seats', 'pressure test', 'softening test'] }, when: { oneOf: ['after', 'again', 'before use', 'first'] }, because: { list: troubleLayout }, 'least?': 'number' } } satisfies Layout;
export const buildLayout = { fields: { name: 'string', 'interchange?': 'string', 'blockGroups?': { fields: { own: { list: 'string' }, older: { list: 'string' } } }, parts: { list: buildPartLayout }, bearings: { list: buildBearingLayout }, cylinders: { list: buildCylinderLayout }, 'endPlay?': { fields: { washers: { list: 'string' }, play: 'number', 'madeTo?': 'number', finding: findingLengthLayout } }, 'guides?': { fields: { clearance: spanLayout, 'finding?': findingLengthLayout } }, jobs: { list: buildJobLayout }, tests: { list: buildTestLayout }, cost: costLayout } } satisfies Layout;
export const nearClearanceLayout = { fields: { engine: 'string', of: { oneOf: ['cylinder', 'end play', 'guides', 'mains', 'rods'] }, 'place?': 'string', finding: findingLengthLayout, holds: 'number', atStake: costLayout, measure: { list: 'string' }, 'instead?': 'string' } } satisfies Layout;
export const measureAgainLayout = { fields: { section: { oneOf: ['blocks', 'crankshafts', 'heads', 'otherParts', 'pistonSets', 'ringSets', 'rods', 'shells', 'thrustWashers', 'valveSets'] }, name: 'string', because: { list: againReasonLayout } } } satisfies Layout;
export const readAgainLayout = { fields: { section: { oneOf: ['blocks', 'crankshafts', 'heads', 'otherParts', 'pistonSets', 'ringSets', 'rods', 'shells', 'thrustWashers', 'valveSets'] }, name: 'string', because: { list: tooFarLayout } } } satisfies Layout;
export const measurementLayout = { fields: { what: measuredWhatLayout, places: { list: 'string' }, 'with?': instrumentNameLayout } } satisfies Layout;
export const partToMeasureLayout = { fields: { section: { oneOf: ['blocks', 'crankshafts', 'heads', 'otherParts', 'pistonSets', 'ringSets', 'rods', 'shells', 'thrustWashers', 'valveSets'] }, name: 'string', 'core?': 'string', 'marks?': { list: 'string' }, tests: { list: neededTestLayout }, measure: { list: measurementLayout }, again: { list: misreadLayout }, until: untilLayout } } satisfies Layout;
export const mayBeLayout = { fields: { engines: 'number', cost: costLayout, parts: { list: partToMeasureLayout } } } satisfies Layout;
export const lackingPartLayout = { fields: { section: { oneOf: ['blocks', 'crankshafts', 'heads', 'otherParts', 'pistonSets', 'ringSets', 'rods', 'shells', 'thrustWashers', 'valveSets'] }, 'kind?': 'string', 'fits?': { oneOf: ['mains', 'rods'] }, 'step?': 'number', 'sizedBy?': { list: 'string' }, count: 'number' } } satisfies Layout;
export const mayBringLayout = { by: 'kind', variants: [
  { fields: { kind: { oneOf: ['one more engine'] }, engines: 'number' } },
  { fields: { kind: { oneOf: ['what to buy'] }, engines: 'number', lacks: { list: lackingPartLayout } } },
  { fields: { kind: { oneOf: ['lower cost'] }, cost: costLayout, less: costLayout } },
  { fields: { kind: { oneOf: ['wider margin'] }, 'margin?': 'number' } },
] } satisfies Layout;
export const measureFirstLayout = { fields: { mayBring: mayBringLayout, parts: { list: partToMeasureLayout } } } satisfies Layout;
export const planStageLayout = { oneOf: ['equal plans', 'least cost', 'measure first', 'most engines', 'next engine', 'widest margin'] } satisfies Layout;
export const unprovenLayout = { fields: { outcome: { oneOf: ['solver failure', 'time limit'] }, stage: planStageLayout, found: 'number', bound: 'number' } } satisfies Layout;
export const proofLayout = { by: 'outcome', variants: [
  { fields: { outcome: { oneOf: ['optimal'] } } },
  unprovenLayout,
] } satisfies Layout;
export const preferenceLayout = { oneOf: ['belongs together', 'cost', 'engines that ran', 'engines', 'least work', 'next tightest margins', 'not home-made', 'one make of shell', 'order of the file', 'origin', 'tightest margin'] } satisfies Layout;
export const shopOrderLayout = { fields: { shop: 'string', jobs: { list: buildJobLayout }, cost: costLayout } } satisfies Layout;
export const purchaseLayout = { fields: { section: { oneOf: ['blocks', 'crankshafts', 'heads', 'otherParts', 'pistonSets', 'ringSets', 'rods', 'shells', 'thrustWashers', 'valveSets'] }, 'kind?': 'string', name: 'string', count: 'number', cost: costLayout } } satisfies Layout;
export const partToMakeLayout = { fields: { section: { oneOf: ['shells', 'sleeves', 'thrustWashers'] }, name: 'string', 'material?': 'string', engine: 'string', 'fits?': { oneOf: ['mains', 'rods'] }, 'place?': 'string', size: spanLayout, 'tolerance?': 'number', 'finishedTo?': spanLayout, cost: costLayout } } satisfies Layout;
export const completeLayout = { fields: { needs: { list: neededPartLayout }, notNeeded: { list: 'string' } } } satisfies Layout;
export const leftOverLayout = { fields: { section: { oneOf: ['blocks', 'crankshafts', 'heads', 'otherParts', 'pistonSets', 'ringSets', 'rods', 'shells', 'thrustWashers', 'valveSets'] }, 'kind?': 'string', name: 'string', count: 'number', 'onlyWith?': { list: 'string' }, 'faults?': { list: faultLayout }, 'untested?': { oneOf: [true] }, 'madeShellsNotTried?': { oneOf: [true] }, 'noShopFor?': { list: { oneOf: ['bore', 'crack test', 'grind main journals', 'grind rod journals', 'pressure test', 'recut seats', 'reface valves', 'resize housings', 'skim head', 'sleeve', 'stitch', 'straighten', 'weld'] } }, why: { oneOf: ['not as it is', 'reserved', 'scrap', 'spare', 'undecided'] }, 'until?': untilLayout } } satisfies Layout;
export const nextEngineLayout = { fields: { lacks: { list: lackingPartLayout }, alternatives: { list: { list: lackingPartLayout } }, 'mayBeMore?': { oneOf: [true] } } } satisfies Layout;
export const whyNotBuiltLayout = { by: 'kind', variants: [
  { fields: { kind: { oneOf: ['triage'] }, disposition: { oneOf: ['not as it is', 'scrap', 'spare', 'undecided'] }, 'until?': untilLayout, 'faults?': { list: faultLayout } } },
  { fields: { kind: { oneOf: ['lacks'] }, lacks: { list: lackingPartLayout }, beside: { list: 'string' } } },
  { fields: { kind: { oneOf: ['enough engines'] }, beside: { list: 'string' } } },
  { fields: { kind: { oneOf: ['too dear'] } } },
  { fields: { kind: { oneOf: ['no buying'] } } },
  { fields: { kind: { oneOf: ['not known'] } } },
] } satisfies Layout;
export const cannotBuildLayout = { fields: { name: 'string', because: whyNotBuiltLayout } } satisfies Layout;
export const planLayout = { fields: { shed: 'string', engine: engineKindLayout, units: { oneOf: ['inch', 'metric'] }, builds: { list: buildLayout }, cost: costLayout, 'smallestMargin?': 'number', 'holdsWith?': 'number', 'allHold?': 'number', near: { list: nearClearanceLayout }, measureAgain: { list: measureAgainLayout }, readAgain: { list: readAgainLayout }, 'mayBe?': mayBeLayout, measureFirst: { list: measureFirstLayout }, howRead: howReadLayout, notDescribed: { list: instrumentNameLayout }, proof: proofLayout, compared: { list: preferenceLayout }, orders: { list: shopOrderLayout }, shopping: { list: purchaseLayout }, toMake: { list: partToMakeLayout }, complete: completeLayout, leftOver: { list: leftOverLayout }, 'nextEngine?': nextEngineLayout, cannotBuild: { list: cannotBuildLayout } } } satisfies Layout;
