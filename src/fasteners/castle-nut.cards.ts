import { card } from '../judging/internal.js';
import { mm, newtonMetre, ratio } from '../quantities/index.js';
import { nextSlot } from './castle-nut.js';
import {
  clampStiffness,
  fastenerTorque,
  nutFactorBounds,
  slotTurn,
  threadDiameter,
  threadPitch,
} from './domains.js';

const SPRINGS = "Hooke's law";
const P = {
  field: 'pitch',
  meaning: 'pitch of the thread',
  domain: threadPitch,
  usual: [0.001, 0.002],
} as const;
const k_b = {
  field: 'boltStiffness',
  meaning: 'stiffness of the bolt',
  domain: clampStiffness,
  usual: [2e8, 5e8],
} as const;
const k_m = {
  field: 'memberStiffness',
  meaning: 'stiffness of what it clamps',
  domain: clampStiffness,
  usual: [8e8, 2e9],
} as const;

const slotted = {
  a: {
    field: 'turn',
    meaning: 'turn to the next slot',
    domain: slotTurn,
    usual: [0.05, 1],
  },
  P,
  k_b,
  k_m,
} as const;
const TOGETHER = 'stiffness = k_b * k_m / (k_b + k_m)';

/** Formulas of a castle nut. */
export const castleNutCards = {
  slotPreloadGain: card({
    of: nextSlot,
    name: 'preload that a turn to the next slot adds',
    gives: { symbol: 'G', meaning: 'what the preload gains', dimension: 'force' },
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
    expression: 'a / (1 rad) / (2 * pi) * P * stiffness',
    source: SPRINGS,
  }),
  torqueAtSlot: card({
    of: nextSlot,
    name: 'torque that reaches the next slot',
    gives: { symbol: 'T_s', meaning: 'torque at the slot', dimension: 'torque' },
    letters: {
      T: {
        field: 'torque.min',
        written: 'torque',
        meaning: 'least torque allowed',
        domain: fastenerTorque,
        usual: [10, 40],
      },
      K: {
        field: 'nutFactor',
        meaning: 'nut factor',
        domain: nutFactorBounds,
        usual: [0.1, 0.3],
      },
      d: {
        field: 'diameter',
        meaning: 'diameter of the thread',
        domain: threadDiameter,
        usual: [0.008, 0.012],
      },
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
    where: [TOGETHER, 'preloadGain = a / (1 rad) / (2 * pi) * P * stiffness'],
    expression: 'T + K * d * preloadGain',
    source: SPRINGS,
  }),
};
