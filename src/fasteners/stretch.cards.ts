import { card, defined } from '../judging/internal.js';
import { type Force, newton } from '../quantities/index.js';
import { E, preload as F, SPRINGS } from './card-letters.js';
import { gripLength, threadDiameter } from './domains.js';
import { permanentStretch } from './permanent-stretch.js';
import { boltStretch } from './stretch.js';

const section = (i: number, thick: readonly [number, number]) =>
  ({
    length: {
      field: `sections[${i}].length`,
      meaning: `length ${i + 1} of the bolt`,
      domain: gripLength,
      usual: [0.01, 0.04],
    },
    diameter: {
      field: `sections[${i}].diameter`,
      meaning: `diameter along length ${i + 1}`,
      domain: threadDiameter,
      usual: thick,
    },
  }) as const;
const shank = section(0, [0.0095, 0.01]);
const thread = section(1, [0.0083, 0.0087]);
const lengths = {
  L_1: shank.length,
  D_1: shank.diameter,
  L_2: thread.length,
  D_2: thread.diameter,
  E,
} as const;
const SLENDER = defined(
  'S = L_1 / (pi / 4 * D_1^2) + L_2 / (pi / 4 * D_2^2)',
  'sum of the lengths, each over its area',
  'slenderness',
);
type Lengths = {
  readonly [K in keyof typeof lengths]: ReturnType<(typeof lengths)[K]['domain']>;
};
const pulled = ({ L_1, D_1, L_2, D_2, E }: Lengths, preload: Force) =>
  [
    {
      preload,
      elasticity: E,
      sections: [
        { length: L_1, diameter: D_1 },
        { length: L_2, diameter: D_2 },
      ],
    },
  ] as const;

/** Formulas of how a bolt stretches. */
export const stretchCards = {
  boltStretch: card({
    of: boltStretch,
    name: 'stretch of a bolt',
    gives: { symbol: 'e', meaning: 'stretch', dimension: 'length' },
    letters: { ...lengths, F },
    call: ({ F, ...given }) => pulled(given, F),
    read: ({ stretch }) => stretch,
    where: [SLENDER],
    expression: 'F / E * S',
    source: SPRINGS,
  }),
  boltStiffness: card({
    of: boltStretch,
    name: 'stiffness of a bolt',
    gives: { symbol: 'k_b', meaning: 'stiffness between head and nut', dimension: 'stiffness' },
    letters: lengths,
    call: (given) => pulled(given, newton(10_000)),
    read: ({ stiffness }) => stiffness,
    where: [SLENDER],
    expression: 'E / S',
    source: "Shigley's Mechanical Engineering Design, 9th ed., Eq. 8-17",
  }),
  permanentStretch: card({
    of: permanentStretch,
    name: 'permanent stretch of a bolt',
    gives: { symbol: 'e', meaning: 'permanent stretch', dimension: 'length' },
    letters: {
      L: {
        field: 'length',
        meaning: 'length now, slackened',
        domain: gripLength,
        usual: [0.05704, 0.0571],
      },
      L_0: {
        field: 'asNew',
        meaning: 'length as new',
        domain: gripLength,
        usual: [0.057, 0.05702],
      },
    },
    read: ({ stretch }) => stretch,
    expression: 'L - L_0',
    refuses: {
      'the lengths are not of one bolt': { with: { L: 0.08 }, names: 'length' },
    },
    source: 'definition of the trade',
  }),
};
