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
import { calls, refused } from './calls.js';

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
      'not finite': refused('journal', { ...sizes, journal: Number.NaN }),
      'not of an engine': refused('journal', { ...sizes, journal: 2.125 }),
      'a wall like a bore': refused('shellWall', { ...sizes, shellWall: inch(2) }),
      'never one bearing': refused('journal', { ...sizes, journal: inch(1.225) }),
      'no sizes': refused('sizes'),
    },
  }),
  oilClearanceSpan: calls(oilClearanceSpan, {
    sound: [[spans], [sizes]],
    provoked: {
      'not finite': refused('shellWall', { ...spans, shellWall: Infinity }),
      'not of an engine': refused('housingBore.min', {
        ...spans,
        housingBore: { min: 2.25, max: 2.26 },
      }),
      reversed: refused('journal', { ...spans, journal: { min: inch(2.125), max: inch(2.1245) } }),
      'never one bearing': refused('journal', { ...spans, journal: inch(2.225) }),
      'no sizes': refused('sizes', null),
    },
  }),
  shellWallFor: calls(shellWallFor, {
    sound: [[{ standardWall: inch(0.062), undersize: thou(20) }]],
    provoked: {
      'not the wall of a shell': refused('standardWall', {
        standardWall: 0.062,
        undersize: thou(20),
      }),
      'negative undersize': refused('undersize', {
        standardWall: inch(0.062),
        undersize: thou(-20),
      }),
      'no shell': refused('shell'),
    },
  }),
  recommendedOilClearance: calls(recommendedOilClearance, {
    sound: [[inch(2.125)]],
    provoked: {
      'not a journal': refused('journal', 2.125),
      'no number': refused('journal', '2.125 in'),
    },
  }),
  explainClearance: calls(explainClearance, {
    sound: [[question], [tight], [odd], [fine]],
    provoked: {
      'not of a bearing': refused('clearance', { ...question, clearance: 22 }),
      'not a journal': refused('journal', { ...question, journal: 2.105 }),
      'one bound only': refused('limits', { ...question, limits: { max: thou(3) } }),
      'no step but standard': refused('steps', { ...question, steps: [thou(0)] }),
      'no question': refused('question'),
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
      'not an explanation': refused('explanation.kind', {}, { units: 'inch' }),
      'no explanation': refused('explanation', undefined, { units: 'inch' }),
      'unknown unit system': refused('wording.units', why, { units: 'imperial' }),
      'no wording': refused('wording', why),
    },
  }),
  flattenedThreadGap: calls(flattenedThreadGap, {
    sound: [[{ threadDiameter: mm(0.2), flattenedWidth: mm(0.6) }]],
    provoked: {
      'not a thread': refused('threadDiameter', { threadDiameter: 0.2, flattenedWidth: mm(0.6) }),
      'narrower than the thread': refused('flattenedWidth', {
        threadDiameter: mm(0.6),
        flattenedWidth: mm(0.2),
      }),
      'no thread': refused('thread'),
    },
  }),
  matchShells: calls(matchShells, {
    sound: [[search], [{ journal: inch(2.105), housingBore: inch(2.251), shells: search.shells }]],
    provoked: {
      'not of a bearing': refused('journal', { ...search, journal: 2.105 }),
      'never one bearing': refused('journal', { ...search, housingBore: inch(2.625) }),
      'an empty shelf': refused('shells', { ...search, shells: [] }),
      'a shell without a name': refused('shells[0].name', {
        ...search,
        shells: [{ ...shell, name: '' }],
      }),
      'a negative undersize': refused('shells[0].undersize', {
        ...search,
        shells: [{ ...shell, undersize: thou(-1) }],
      }),
      'no search': refused('search'),
    },
  }),
};
