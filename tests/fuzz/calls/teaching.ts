import { inch } from 'crankwright';
import { cards, evaluateCard, workedSteps } from 'crankwright/teaching';
import { calls } from './calls.js';

const clearance = { D_h: inch(2.251), t: inch(0.062), D_j: inch(2.125) };
const wording = { units: 'inch' } as const;
const names = Object.keys(cards) as (keyof typeof cards)[];

/** Values in the middle of what each card says is usual. */
const usual = (name: keyof typeof cards): Readonly<Record<string, number>> =>
  Object.fromEntries(
    cards[name].inputs.map(({ symbol, between: [least, most] }) => [symbol, (least + most) / 2]),
  );

export const teachingCalls = {
  evaluateCard: calls(evaluateCard, {
    sound: names.map((name) => [name, usual(name)] as const),
    provoked: {
      'no such card': ['toString', clearance],
      'a letter has no number': ['oilClearance', { D_h: clearance.D_h, t: clearance.t }],
      'the dimensions do not balance': ['oilClearance', { ...clearance, t: 'long' }],
      'the result is not finite': ['flattenedThreadGap', { d: 1, w: 0 }],
      'no values': ['oilClearance'],
    },
  }),
  workedSteps: calls(workedSteps, {
    sound: names.map((name) => [name, usual(name), wording] as const),
    provoked: {
      'no such card': ['gap', clearance, wording],
      'a letter has no number': ['oilClearance', {}, wording],
      'the unit system is unknown': ['oilClearance', clearance, { units: 'imperial' }],
      'no wording': ['oilClearance', clearance],
    },
  }),
};
