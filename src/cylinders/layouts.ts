// How what functions take from each other is laid out. Made by `npm run layouts` from the types.
import type { Layout } from '../judging/internal.js';
import { basisLayout, findingGaugePressureLayout, findingLengthLayout, findingPressureLayout, findingRatioLayout, spanLayout } from '../judging/layouts.js';
import { inDoubtLayout } from '../measuring/layouts.js';

export const boreWorkLayout = { fields: { name: 'string', work: { oneOf: ['bore', 'sleeve', 'use as it is'] }, 'stockRemoved?': spanLayout, 'wallLeft?': 'number' } } satisfies Layout;
export const boreReasonLayout = { by: 'kind', variants: [
  { fields: { kind: { oneOf: ['does not clean up'] }, oversize: 'number', cylinder: 'string', needed: 'number', target: spanLayout, 'nearly?': { oneOf: [true] } } },
  { fields: { kind: { oneOf: ['wall too thin'] }, oversize: 'number', cylinder: 'string', wallLeft: 'number', leastWall: 'number' } },
  { fields: { kind: { oneOf: ['no pistons at hand'] }, oversize: 'number' } },
  { fields: { kind: { oneOf: ['good as it is'] }, cylinder: 'string', oversize: 'number', 'outside?': 'number', 'basis?': basisLayout } },
  { fields: { kind: { oneOf: ['cleans up'] }, cylinder: 'string', oversize: 'number', needed: 'number' } },
  { fields: { kind: { oneOf: ['size'] }, cylinder: 'string', size: spanLayout, target: spanLayout } },
  { fields: { kind: { oneOf: ['shape'] }, cylinder: 'string', finding: findingLengthLayout } },
  { fields: { kind: { oneOf: ['faults'] }, cylinder: 'string', faults: { list: 'string' } } },
  { fields: { kind: { oneOf: ['allowance'] }, honingAllowance: 'number', basis: basisLayout } },
] } satisfies Layout;
export const servedBorePlanLayout = { fields: { outcome: { oneOf: ['bore', 'sleeve', 'use as it is'] }, oversize: 'number', target: spanLayout, boreTo: spanLayout, cylinders: { list: boreWorkLayout }, 'inDoubt?': { fields: { oversize: 'number', cylinders: { list: inDoubtLayout } } }, 'nearly?': { fields: { oversize: 'number', cylinders: { list: 'string' } } }, stepsLeft: 'number', because: { list: boreReasonLayout } } } satisfies Layout;
export const borePlanLayout = { by: 'outcome', variants: [
  servedBorePlanLayout,
  { fields: { outcome: { oneOf: ['none'] }, because: { list: boreReasonLayout } } },
] } satisfies Layout;
export const compressionRatioLayout = { fields: { ratio: spanLayout, sweptVolume: 'number', clearanceVolume: spanLayout, gasketVolume: 'number', deckClearance: spanLayout, pistonToHeadFace: spanLayout } } satisfies Layout;
export const ringFilingLayout = { by: 'work', variants: [
  { fields: { work: { oneOf: ['fit as it is', 'measure again', 'use another ring', 'wider than a new fit'] }, finding: findingLengthLayout } },
  { fields: { work: { oneOf: ['bore is worn'] }, finding: findingLengthLayout, 'serves?': spanLayout } },
  { fields: { work: { oneOf: ['file'] }, finding: findingLengthLayout, remove: { fields: { min: 'number', 'max?': 'number' } }, 'worn?': findingLengthLayout } },
] } satisfies Layout;
export const compressionRuleLayout = { by: 'kind', variants: [
  { fields: { 'basis?': basisLayout, kind: { oneOf: ['spread'] }, most: 'number' } },
  { fields: { 'basis?': basisLayout, kind: { oneOf: ['share of highest'] }, least: 'number' } },
  { fields: { 'basis?': basisLayout, kind: { oneOf: ['share of average'] }, least: 'number', 'most?': 'number' } },
  { fields: { 'basis?': basisLayout, kind: { oneOf: ['near a figure'] }, figure: 'number', within: 'number' } },
  { fields: { 'basis?': basisLayout, kind: { oneOf: ['at least'] }, least: 'number' } },
] } satisfies Layout;
export const ruleVerdictLayout = { oneOf: ['broken', 'kept', 'undecided'] } satisfies Layout;
export const judgedRuleLayout = { fields: { rule: compressionRuleLayout, verdict: ruleVerdictLayout, cylinder: 'string', finding: { by: 'dimension', variants: [
  findingRatioLayout,
  findingPressureLayout,
  findingGaugePressureLayout,
] }, low: { list: 'string' } } } satisfies Layout;
export const oiledCylinderLayout = { fields: { cylinder: 'string', rise: 'number', suggests: { oneOf: ['nothing', 'rings or bore', 'undecided', 'valves or gasket'] } } } satisfies Layout;
export const judgedCompressionLayout = { fields: { outcome: { oneOf: ['broken', 'kept', 'rules disagree', 'undecided'] }, 'byOwnRules?': { oneOf: ['broken', 'kept', 'rules disagree', 'undecided'] }, rules: { list: judgedRuleLayout }, readings: spanLayout, average: 'number', oiled: { list: oiledCylinderLayout }, gasketBetween: { list: { list: 'string', length: 2 } }, notRead: { list: 'string' }, takenAsExact: { list: { oneOf: ['gauge', 'repeats'] } } } } satisfies Layout;
export const leakHeardAtLayout = { oneOf: ['breather', 'cooling water', 'exhaust', 'inlet', 'joint of the head', 'neighbouring cylinder', 'plug'] } satisfies Layout;
export const leakSuspectLayout = { fields: { heardAt: leakHeardAtLayout, part: { oneOf: ['exhaust valve', 'head gasket or a crack between the cylinders', 'head gasket or a crack to the water', 'head gasket or a warped face', 'inlet valve', 'plug or its washer', 'rings, piston or bore'] } } } satisfies Layout;
export const leakDownLayout = { fields: { lost: 'number', 'finding?': findingRatioLayout, 'leakArea?': spanLayout, 'airFlow?': spanLayout, 'pistonForce?': 'number', 'suspects?': { list: leakSuspectLayout } } } satisfies Layout;
export const crankingPressureLayout = { fields: { travelLeft: spanLayout, effectiveRatio: spanLayout, gauge: spanLayout, basis: basisLayout } } satisfies Layout;
