import { card, everyStep } from '../judging/internal.js';
import {
  degree,
  lbfFoot,
  MPa,
  mm,
  newtonMetre,
  psi,
  squareInch,
  squareMm,
} from '../quantities/index.js';
import { boltDiameter as d, preload as F, K, torque as T } from './card-letters.js';
import {
  adapterAngle,
  adapterLength,
  boltArea,
  boltProofStress,
  proofShare,
  runningTorque,
  wrenchLength,
} from './domains.js';
import { boltPreload, proofLoad } from './preload.js';
import { preloadFromTorque, tighteningTorque } from './torque.js';
import { wrenchSetting } from './wrench.js';

const A = {
  field: 'stressArea',
  meaning: 'stress area',
  domain: boltArea,
  usual: [2e-5, 1e-4],
  // M8, M10 and M12; 5/16-18, 3/8-16 and 7/16-14. source: ISO 898-1 and ASME B1.1, from memory.
  made: {
    metric: [squareMm(36.6), squareMm(58), squareMm(84.3)],
    inch: [squareInch(0.0524), squareInch(0.0775), squareInch(0.1063)],
  },
} as const;
const S = {
  field: 'proofStress',
  meaning: 'proof stress',
  domain: boltProofStress,
  usual: [2e8, 8e8],
  // Classes 4.6, 5.8 and 8.8; grades 1, 2 and 5. source: ISO 898-1 and SAE J429, from memory.
  made: { metric: [MPa(225), MPa(380), MPa(580)], inch: [psi(33_000), psi(55_000), psi(85_000)] },
} as const;

/** Formulas of how a bolt is tightened. */
export const tighteningCards = {
  proofLoad: card({
    of: proofLoad,
    name: 'proof load of a bolt',
    gives: { symbol: 'F_p', meaning: 'proof load', dimension: 'force' },
    letters: { A, S },
    expression: 'A * S',
    source: 'ISO 898-1; SAE J429',
  }),
  boltPreload: card({
    of: boltPreload,
    name: 'preload of a bolt',
    gives: { symbol: 'F', meaning: 'preload', dimension: 'force' },
    letters: {
      s: {
        field: 'share',
        meaning: 'share of the proof load',
        domain: proofShare,
        usual: [0.6, 0.75],
        made: [0.6, 0.65, 0.7, 0.75],
      },
      A,
      S,
    },
    expression: 's * A * S',
    source: "Shigley's Mechanical Engineering Design, 9th ed., Eq. 8-31, from memory",
  }),
  tighteningTorque: card({
    of: tighteningTorque,
    name: 'torque for a preload',
    gives: { symbol: 'T', meaning: 'torque at the fastener', dimension: 'torque' },
    letters: { K, F, d },
    read: ({ max }) => max,
    expression: 'K * F * d',
    source: "Shigley's Mechanical Engineering Design, 9th ed., Eq. 8-27",
  }),
  preloadFromTorque: card({
    of: preloadFromTorque,
    name: 'preload from a torque',
    gives: { symbol: 'F', meaning: 'preload', dimension: 'force' },
    letters: { T, K, d },
    read: ({ min }) => min,
    expression: 'T / (K * d)',
    source: "Shigley's Mechanical Engineering Design, 9th ed., Eq. 8-27",
  }),
  wrenchSetting: card({
    of: wrenchSetting,
    name: 'setting of a torque wrench',
    gives: { symbol: 'T_w', meaning: 'setting of the wrench', dimension: 'torque' },
    letters: {
      T,
      T_p: {
        field: 'prevailing',
        meaning: 'prevailing torque of the locking nut',
        domain: runningTorque,
        usual: [0.5, 3],
        made: { metric: everyStep(newtonMetre, 1, 3, 0.5), inch: everyStep(lbfFoot, 1, 2, 0.5) },
      },
      L: {
        field: 'adapter.wrench',
        meaning: 'wrench, from the middle of the grip to the square',
        domain: wrenchLength,
        usual: [0.2, 0.5],
      },
      A: {
        field: 'adapter.adapter',
        meaning: 'adapter, from the square to the middle of the fastener',
        domain: adapterLength,
        usual: [0.03, 0.15],
      },
      a: {
        field: 'adapter.angle',
        meaning: 'angle of the adapter',
        domain: adapterAngle,
        usual: [0, 2],
        made: [degree(0), degree(45), degree(90)],
      },
    },
    call: ({ T, T_p, L, A, a }) => [
      { torque: T, prevailing: T_p, adapter: { wrench: L, adapter: A, angle: a } },
    ],
    expression: '(T + T_p) * L / (L + A * cos(a))',
    refuses: {
      'the adapter takes all of the arm': {
        with: { L: 0.2, A: 0.2, a: Math.PI },
        names: 'adapter.adapter',
      },
    },
    example: { T: newtonMetre(30), T_p: newtonMetre(2), L: mm(350), A: mm(90), a: degree(45) },
    source: 'TM 9-254; AC 43.13-1B, paragraph 7-40',
  }),
};
