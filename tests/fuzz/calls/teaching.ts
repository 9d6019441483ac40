import { inch } from 'crankwright';
import { cards, evaluateCard, worked } from 'crankwright/teaching';
import { usualValues } from '../../support/card-values.js';
import { calls, refused } from './calls.js';

const clearance = { D_h: inch(2.251), t: inch(0.062), D_j: inch(2.125) };
const units = { units: 'inch' } as const;
const names = Object.keys(cards) as (keyof typeof cards)[];

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
      'the numbers that the card holds from a table are not those of the values': refused(
        'values',
        'viscosityIndex',
        { U: 60e-6, nu: 12e-6 },
        units,
      ),
      'no options': refused('options', 'oilClearance', clearance),
    },
  }),
};
