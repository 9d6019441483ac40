// How what functions take from each other is laid out. Made by `npm run layouts` from the types.
import type { Layout } from '../judging/internal.js';
import { basisLayout, findingFlowLayout, findingLayout, findingLengthLayout, findingRatioLayout, sizeOrSpanLayout, spanLayout } from '../judging/layouts.js';

export const undersizeMismatchLayout = { fields: { outcome: { oneOf: ['journal ground, shells not', 'shells undersize, journal not'] }, finding: findingLengthLayout, mismatch: 'number', matched: findingLengthLayout } } satisfies Layout;
export const clearanceExplanationLayout = { by: 'outcome', variants: [
  undersizeMismatchLayout,
  { fields: { outcome: { oneOf: ['as it should be', 'too loose, unexplained', 'too tight, unexplained', 'undecided'] }, finding: findingLengthLayout } },
] } satisfies Layout;
export const leastFilmLayout = { fields: { film: 'number', crankAngle: 'number', onShell: 'number', onPin: 'number' } } satisfies Layout;
export const approachLayout = { fields: { speed: 'number', crankAngle: 'number', film: 'number' } } satisfies Layout;
export const orbitPointLayout = { fields: { crankAngle: 'number', along: 'number', across: 'number', film: 'number' } } satisfies Layout;
export const orbitRangeLayout = { fields: { lengthToDiameter: findingRatioLayout, leastGap: findingRatioLayout } } satisfies Layout;
export const bigEndOrbitLayout = { by: 'outcome', variants: [
  { fields: { outcome: { oneOf: ['settled'] }, leastFilm: leastFilmLayout, 'shareThinner?': 'number', greatestApproach: approachLayout, path: { list: orbitPointLayout }, cycles: 'number', steps: 'number', range: orbitRangeLayout } },
  { fields: { outcome: { oneOf: ['no film'] } } },
  { fields: { outcome: { oneOf: ['not settled'] }, because: { oneOf: ['too many cycles', 'too many steps'] }, cycles: 'number', steps: 'number' } },
] } satisfies Layout;
export const lengthToDiameterLayout = { either: ['number', { oneOf: ['infinite'] }] } satisfies Layout;
export const filmNumbersLayout = { fields: { eccentricity: 'number', lengthToDiameter: lengthToDiameterLayout, sommerfeld: 'number', leastFilm: 'number', attitude: 'number', friction: 'number', flow: 'number', sideFlow: 'number', pressureRatio: 'number', peakAngle: 'number', ruptureAngle: 'number' } } satisfies Layout;
export const floatingFilmLayout = { fields: { outcome: { oneOf: ['floats'] }, film: 'number', eccentricity: 'number', attitude: 'number', friction: 'number', flow: 'number', sideFlow: 'number', meanPressure: 'number', peakPressure: 'number', numbers: filmNumbersLayout, torque: 'number', power: 'number' } } satisfies Layout;
export const filmLayout = { by: 'outcome', variants: [
  floatingFilmLayout,
  { fields: { outcome: { oneOf: ['no film'] }, because: { oneOf: ['it runs too hot', 'it stands still', 'the load is too great'] }, film: 'number' } },
  { fields: { torque: 'number', power: 'number', outcome: { oneOf: ['hardly loaded'] }, film: 'number' } },
] } satisfies Layout;
export const warmFilmLayout = { fields: { temperature: 'number', rise: 'number', viscosity: 'number', range: { oneOf: ['above', 'below', 'within'] }, film: filmLayout } } satisfies Layout;
export const regimeLayout = { oneOf: ['boundary', 'full', 'mixed'] } satisfies Layout;
export const regimeThresholdsLayout = { fields: { mixed: 'number', full: 'number' } } satisfies Layout;
export const filmFindingLayout = { fields: { regime: regimeLayout, roughness: 'number', finding: findingRatioLayout, thresholds: regimeThresholdsLayout } } satisfies Layout;
export const acceptanceCheckNameLayout = { oneOf: ['film over particles', 'film over roughness', 'film temperature', 'least film by Trumpler', 'material', 'mean pressure', 'oil supply', 'peak pressure', 'start-up pressure by Trumpler', 'temperature by Trumpler'] } satisfies Layout;
export const acceptanceCheckLayout = { by: 'outcome', variants: [
  { fields: { outcome: { oneOf: ['fails', 'holds'] }, check: acceptanceCheckNameLayout, finding: findingLayout } },
  { fields: { outcome: { oneOf: ['caution', 'unknown'] }, check: acceptanceCheckNameLayout, give: 'string', 'finding?': findingLayout, 'tooNear?': { fields: { doubt: 'number', 'finding?': findingLayout } } } },
] } satisfies Layout;
export const acceptedOrbitLayout = { by: 'outcome', variants: [
  { fields: { outcome: { oneOf: ['settled'] }, film: 'number' } },
  { fields: { outcome: { oneOf: ['no film', 'not settled', 'out of range', 'too thin to follow'] } } },
] } satisfies Layout;
export const filmsSideBySideLayout = { fields: { clearance: 'number', mean: warmFilmLayout, peak: warmFilmLayout, 'orbit?': acceptedOrbitLayout, 'film?': 'number', sideFlow: 'number' } } satisfies Layout;
export const supplyFindingLayout = { by: 'outcome', variants: [
  { fields: { outcome: { oneOf: ['enough', 'too little'] }, by: { oneOf: ['pump', 'splash'] }, finding: findingFlowLayout } },
  { fields: { outcome: { oneOf: ['unknown'] }, 'by?': { oneOf: ['pump', 'splash'] }, need: 'number' } },
] } satisfies Layout;
export const bearingAcceptanceLayout = { fields: { outcome: { oneOf: ['accepted', 'not accepted', 'undecided'] }, because: { list: acceptanceCheckLayout }, checks: { list: acceptanceCheckLayout }, load: { fields: { mean: 'number', peak: 'number', of: { oneOf: ['cycle', 'steady load'] } } }, films: filmsSideBySideLayout, supply: supplyFindingLayout } } satisfies Layout;
export const shellLayout = { fields: { name: 'string', undersize: 'number', wall: sizeOrSpanLayout } } satisfies Layout;
export const shellMatchLayout = { fields: { shell: shellLayout, clearance: spanLayout, finding: findingLengthLayout, fits: 'boolean' } } satisfies Layout;
export const filmStandLayout = { by: 'outcome', variants: [
  { fields: { outcome: { oneOf: ['stands'] }, fraction: 'number', needed: 'number', clean: warmFilmLayout, diluted: warmFilmLayout } },
  { fields: { outcome: { oneOf: ['too thin when clean'] }, needed: 'number', clean: warmFilmLayout } },
  { fields: { outcome: { oneOf: ['stands anything'] }, needed: 'number', clean: warmFilmLayout } },
] } satisfies Layout;
export const dilutionDriverLayout = { fields: { driver: { oneOf: ['clearance', 'inlet', 'law', 'length', 'load', 'roughness'] }, span: spanLayout } } satisfies Layout;
export const maxDilutionSpanLayout = { fields: { span: spanLayout, asGiven: filmStandLayout, drivers: { list: dilutionDriverLayout }, basis: basisLayout } } satisfies Layout;
export const roughnessLayout = { fields: { journal: 'number', shell: 'number' } } satisfies Layout;
export const shellMaterialLayout = { either: [{ oneOf: ['aluminium', 'copper-lead', 'lead babbitt', 'lead bronze', 'tin babbitt', 'tin bronze'] }, { fields: { name: 'string', meanPressure: 'number', 'peakPressure?': 'number', temperature: 'number', 'by?': 'string' } }] } satisfies Layout;
export const oilSupplyLayout = { fields: { by: { oneOf: ['pump', 'splash'] }, 'measured?': 'number' } } satisfies Layout;
export const filmDoubtLayout = { fields: { 'inlet?': 'number', 'length?': 'number', 'roughness?': 'number', 'clearance?': 'number', 'load?': 'number' } } satisfies Layout;
