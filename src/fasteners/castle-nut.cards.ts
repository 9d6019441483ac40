import { card, defined, everyStep } from '../judging/internal.js';
import { inch, lbfFoot, mm, newtonMetre, ratio } from '../quantities/index.js';
import { boltDiameter as d, K, pitch, SPRINGS, stiffnesses, torque } from './card-letters.js';
import { nextSlot } from './castle-nut.js';
import { slotTurn } from './domains.js';

const slotted = {
  a: {
    field: 'turn',
    meaning: 'turn to the next slot',
    domain: slotTurn,
    usual: [0.05, 0.21],
  },
  // Big-end bolts have fine threads.
  P: { ...pitch, made: { metric: [mm(1.25)], inch: [inch(1 / 24)] } },
  ...stiffnesses,
} as const;
const TOGETHER = defined(
  'k = k_b * k_m / (k_b + k_m)',
  'stiffness of bolt and clamped parts together',
  'stiffness',
);

/** Formulas of a castle nut. */
export const castleNutCards = {
  slotPreloadGain: card({
    of: nextSlot,
    name: 'preload that a turn to the next slot adds',
    gives: { symbol: 'G', meaning: 'preload gained', dimension: 'force' },
    letters: slotted,
    call: ({ a, P, k_b, k_m }) => [
      {
        torque: { min: newtonMetre(20), max: newtonMetre(30) },
        diameter: mm(10),
        nutFactor: ratio(0.2),
        turn: a,
        pitch: P,
        boltStiffness: k_b,
        memberStiffness: k_m,
      },
    ],
    read: ({ preloadGain }) => preloadGain.max,
    where: [TOGETHER],
    expression: 'a / (1 rad) / (2 * pi) * P * k',
    source: SPRINGS,
  }),
  torqueAtSlot: card({
    of: nextSlot,
    name: 'torque that reaches the next slot',
    gives: { symbol: 'T_s', meaning: 'torque at the slot', dimension: 'torque' },
    letters: {
      T: {
        ...torque,
        field: 'torque.min',
        written: 'torque',
        meaning: 'least torque allowed',
        usual: [15, 24],
        made: { metric: everyStep(newtonMetre, 15, 24, 1), inch: everyStep(lbfFoot, 11, 17, 1) },
      },
      K,
      d,
      ...slotted,
    },
    call: ({ T, K, d, a, P, k_b, k_m }) => [
      {
        torque: { min: T, max: newtonMetre(5000) },
        diameter: d,
        nutFactor: K,
        turn: a,
        pitch: P,
        boltStiffness: k_b,
        memberStiffness: k_m,
      },
    ],
    read: ({ torque }) => torque.max,
    where: [
      TOGETHER,
      defined('G = a / (1 rad) / (2 * pi) * P * k', 'preload gained', 'preloadGain'),
    ],
    expression: 'T + K * d * G',
    source: SPRINGS,
  }),
};
