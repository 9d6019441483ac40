import { inch } from 'crankwright';
import {
  cardMathml,
  cards,
  cardsAbout,
  cardTex,
  check,
  evaluateCard,
  exampleValues,
  exercise,
  printWorksheet,
  solution,
  worked,
  workedMarkdown,
  workedMathml,
  workedText,
  worksheet,
} from 'crankwright/teaching';
import { usualValues } from '../../support/card-values.js';
import { calls, refused } from './calls.js';

const clearance = { D_h: inch(2.251), t: inch(0.062), D_j: inch(2.125) };
const units = { units: 'inch' } as const;
const names = Object.keys(cards) as (keyof typeof cards)[];
const problem = exercise('oilClearance', 7, units);
const working = worked('oilClearance', clearance, units);
const sheet = worksheet({ about: 'bearings', seed: 7, units: 'inch', count: 2 });

export const teachingCalls = {
  evaluateCard: calls(evaluateCard, {
    sound: names.map((name) => [name, usualValues(cards[name])] as const),
    provoked: {
      'there is no such card': refused('name', 'toString', clearance),
      'a letter has no number': refused('D_j', 'oilClearance', {
        D_h: clearance.D_h,
        t: clearance.t,
      }),
      'the dimensions do not balance': refused('t', 'oilClearance', { ...clearance, t: 'long' }),
      'the result is not finite': refused('values', 'timeToDilution', { q: 0, V_o: 1e-3, x: 0.02 }),
      'a number is outside the domain of its letter': refused('D_j', 'oilClearance', {
        ...clearance,
        D_j: 2.125,
      }),
      'no values': refused('values', 'oilClearance'),
    },
  }),
  worked: calls(worked, {
    sound: names.map((name) => [name, usualValues(cards[name]), units] as const),
    provoked: {
      'there is no such card': refused('name', 'gap', clearance, units),
      'a letter has no number': refused('D_h', 'oilClearance', {}, units),
      'a number is outside the domain of its letter': refused(
        'D_j',
        'oilClearance',
        { ...clearance, D_j: 2.125 },
        units,
      ),
      'the unit system is unknown': refused('options.units', 'oilClearance', clearance, {
        units: 'imperial',
      }),
      'the function refuses the values': refused(
        'D_j',
        'oilClearance',
        { ...clearance, D_j: inch(1.8) },
        units,
      ),
      'the function works them by another formula than that of the card': refused(
        'values',
        'explainClearance',
        { c: inch(-0.0075), s: inch(0.01) },
        units,
      ),
      'the numbers that the card holds from a table are not those of the values': refused(
        'values',
        'viscosityIndex',
        { U: 60e-6, nu: 12e-6 },
        units,
      ),
      'options that are none': refused('options', 'oilClearance', clearance, null),
    },
  }),
  exampleValues: calls(exampleValues, {
    sound: names.map((name) => [name, units] as const),
    provoked: {
      'there is no such card': refused('name', 'gap', units),
      'the unit system is unknown': refused('options.units', 'oilClearance', { units: 'imperial' }),
    },
  }),
  cardsAbout: calls(cardsAbout, {
    sound: [['bearings'], ['ring gap'], ['nothing that there is']],
    provoked: { 'the words are not text': refused('about', 7) },
  }),
  cardTex: calls(cardTex, {
    sound: names.map((name) => [name] as const),
    provoked: { 'there is no such card': refused('name', 'gap') },
  }),
  cardMathml: calls(cardMathml, {
    sound: names.map((name) => [name] as const),
    provoked: { 'there is no such card': refused('name', 'gap') },
  }),
  exercise: calls(exercise, {
    sound: names.map((name, seed) => [name, seed, units] as const),
    provoked: {
      'there is no such card': refused('name', 'gap', 1, units),
      'the seed is not a whole number from 0 to 4 294 967 295': refused(
        'seed',
        'oilClearance',
        -1,
        units,
      ),
      'the unit system is unknown': refused('options.units', 'oilClearance', 1, {
        units: 'imperial',
      }),
    },
  }),
  solution: calls(solution, {
    sound: [[problem]],
    madeBy: 'exercise',
    provoked: { 'the problem is not one': refused('problem.name', { seed: 1 }) },
  }),
  check: calls(check, {
    sound: [
      [problem, '22 thou'],
      [problem, 'much'],
    ],
    madeBy: 'exercise',
    provoked: {
      'the problem is not one': refused('problem.name', { seed: 1 }, '22 thou'),
      'the answer is not text of at most 100 characters': refused('answer', problem, 22),
    },
  }),
  workedText: calls(workedText, {
    sound: [[working]],
    madeBy: 'worked',
    provoked: { 'the working is not one': refused('working.name', { steps: [] }) },
  }),
  workedMarkdown: calls(workedMarkdown, {
    sound: [[working]],
    madeBy: 'worked',
    provoked: { 'the working is not one': refused('working.name', { steps: [] }) },
  }),
  workedMathml: calls(workedMathml, {
    sound: [[working]],
    madeBy: 'worked',
    provoked: { 'the working is not one': refused('working.name', { steps: [] }) },
  }),
  worksheet: calls(worksheet, {
    sound: [[{ about: 'bearings', seed: 7, units: 'inch', count: 3 }]],
    provoked: {
      'no card is about the words': refused('request.about', {
        about: 'soup',
        seed: 7,
        units: 'inch',
      }),
      'the seed is not a whole number from 0 to 4 000 000': refused('request.seed', {
        about: 'oil',
        seed: 0.5,
        units: 'inch',
      }),
      'the unit system is unknown': refused('request.units', {
        about: 'oil',
        seed: 7,
        units: 'feet',
      }),
      'the count is not a whole number from 1 to 100': refused('request.count', {
        about: 'oil',
        seed: 7,
        units: 'inch',
        count: 0,
      }),
    },
  }),
  printWorksheet: calls(printWorksheet, {
    sound: [
      [sheet, { format: 'text', answers: true }],
      [sheet, { format: 'markdown', answers: true }],
      [sheet, { format: 'text' }],
    ],
    madeBy: 'worksheet',
    provoked: {
      'the sheet is not one': refused('sheet.about', { seed: 7 }, { format: 'text' }),
      'the format is unknown': refused('options.format', sheet, { format: 'paper' }),
      '`answers` is neither true nor false': refused('options.answers', sheet, {
        format: 'text',
        answers: 'yes',
      }),
    },
  }),
};
