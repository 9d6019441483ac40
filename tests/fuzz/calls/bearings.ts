import {
  type ClearanceQuestion,
  describeClearance,
  explainClearance,
  flattenedThreadGap,
  inch,
  matchShells,
  mm,
  oilClearance,
  oilClearanceSpan,
  recommendedOilClearance,
  type ShellSearch,
  shellWallFor,
  thou,
} from 'crankwright';
import { calls } from './calls.js';

const sizes = { housingBore: inch(2.251), shellWall: inch(0.062), journal: inch(2.125) };
const spans = {
  housingBore: { min: inch(2.2507), max: inch(2.2512) },
  shellWall: inch(0.062),
  journal: { min: inch(2.1245), max: inch(2.125) },
};
const question: ClearanceQuestion = {
  clearance: thou(22),
  journal: inch(2.105),
  limits: { min: thou(1), max: thou(3) },
  basis: { kind: 'published', source: 'the manual' },
  steps: [thou(10), thou(20)],
};
const tight: ClearanceQuestion = { clearance: thou(-18), journal: inch(2.125) };
const odd: ClearanceQuestion = { clearance: thou(6.5), journal: inch(2.125) };
const fine: ClearanceQuestion = { clearance: thou(2), journal: inch(2.125) };
const why = explainClearance(question);
const search: ShellSearch = {
  journal: { min: inch(2.1045), max: inch(2.105) },
  housingBore: inch(2.251),
  shells: [
    { name: 'standard', undersize: thou(0), wall: inch(0.062) },
    { name: '20 under', undersize: thou(20), wall: { min: inch(0.0719), max: inch(0.072) } },
  ],
  limits: { min: thou(1), max: thou(3) },
  basis: { kind: 'specified' },
};
const [shell] = search.shells;

export const bearingCalls = {
  oilClearance: calls(oilClearance, {
    sound: [[sizes], [{ ...sizes, journal: inch(2.128) }]],
    provoked: {
      'not finite': [{ ...sizes, journal: Number.NaN }],
      'not of an engine': [{ ...sizes, journal: 2.125 }],
      'a wall like a bore': [{ ...sizes, shellWall: inch(2) }],
      'never one bearing': [{ ...sizes, journal: inch(1.225) }],
      'no sizes': [],
    },
  }),
  oilClearanceSpan: calls(oilClearanceSpan, {
    sound: [[spans], [sizes]],
    provoked: {
      'not finite': [{ ...spans, shellWall: Infinity }],
      'not of an engine': [{ ...spans, housingBore: { min: 2.25, max: 2.26 } }],
      reversed: [{ ...spans, journal: { min: inch(2.125), max: inch(2.1245) } }],
      'never one bearing': [{ ...spans, journal: inch(2.225) }],
      'no sizes': [null],
    },
  }),
  shellWallFor: calls(shellWallFor, {
    sound: [[{ standardWall: inch(0.062), undersize: thou(20) }]],
    provoked: {
      'not the wall of a shell': [{ standardWall: 0.062, undersize: thou(20) }],
      'negative undersize': [{ standardWall: inch(0.062), undersize: thou(-20) }],
      'no shell': [],
    },
  }),
  recommendedOilClearance: calls(recommendedOilClearance, {
    sound: [[inch(2.125)]],
    provoked: { 'not a journal': [2.125], 'no number': ['2.125 in'] },
  }),
  explainClearance: calls(explainClearance, {
    sound: [[question], [tight], [odd], [fine]],
    provoked: {
      'not of a bearing': [{ ...question, clearance: 22 }],
      'not a journal': [{ ...question, journal: 2.105 }],
      'one bound only': [{ ...question, limits: { max: thou(3) } }],
      'no step but standard': [{ ...question, steps: [thou(0)] }],
      'no question': [],
    },
  }),
  describeClearance: calls(describeClearance, {
    madeBy: 'explainClearance',
    sound: [
      [why, { units: 'inch' }],
      [explainClearance(tight), { units: 'metric' }],
      [explainClearance(odd), { units: 'inch' }],
      [explainClearance(fine), { units: 'metric' }],
    ],
    provoked: {
      'not an explanation': [{}, { units: 'inch' }],
      'no explanation': [undefined, { units: 'inch' }],
      'unknown unit system': [why, { units: 'imperial' }],
      'no wording': [why],
    },
  }),
  flattenedThreadGap: calls(flattenedThreadGap, {
    sound: [[{ threadDiameter: mm(0.2), flattenedWidth: mm(0.6) }]],
    provoked: {
      'not a thread': [{ threadDiameter: 0.2, flattenedWidth: mm(0.6) }],
      'narrower than the thread': [{ threadDiameter: mm(0.6), flattenedWidth: mm(0.2) }],
      'no thread': [],
    },
  }),
  matchShells: calls(matchShells, {
    sound: [[search], [{ journal: inch(2.105), housingBore: inch(2.251), shells: search.shells }]],
    provoked: {
      'not of a bearing': [{ ...search, journal: 2.105 }],
      'never one bearing': [{ ...search, housingBore: inch(2.625) }],
      'an empty shelf': [{ ...search, shells: [] }],
      'a shell without a name': [{ ...search, shells: [{ ...shell, name: '' }] }],
      'a negative undersize': [{ ...search, shells: [{ ...shell, undersize: thou(-1) }] }],
      'no search': [],
    },
  }),
};
