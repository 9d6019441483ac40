import { everyStep } from '../judging/internal.js';
import { elasticModulus, ofSteel } from '../measuring/internal.js';
import { inch, lbfFoot, mm, newtonMetre } from '../quantities/index.js';
import {
  boltLoad,
  clampStiffness,
  fastenerTorque,
  nutFactorBounds,
  threadDiameter,
  threadPitch,
} from './domains.js';

// What several cards of this room write alike.

export const SPRINGS = "Hooke's law";

// One size of bolt, M10 or 3/8 in, so that torque and preload go with the thread however they are drawn: the preloads
// below are at most 0.75 of the proof load of class 8.8 or grade 5.
export const boltDiameter = {
  field: 'diameter',
  meaning: 'diameter of the thread',
  domain: threadDiameter,
  usual: [0.009, 0.011],
  made: { metric: [mm(10)], inch: [inch(3 / 8)] },
} as const;
/** Coarse, and fine. source: ISO 261 and ASME B1.1, from memory. */
export const pitch = {
  field: 'pitch',
  meaning: 'pitch of the thread',
  domain: threadPitch,
  usual: [0.001, 0.002],
  made: { metric: [mm(1.5), mm(1.25)], inch: [inch(1 / 16), inch(1 / 24)] },
} as const;
export const torque = {
  field: 'torque',
  meaning: 'torque at the fastener',
  domain: fastenerTorque,
  usual: [20, 31],
  made: { metric: everyStep(newtonMetre, 20, 31, 1), inch: everyStep(lbfFoot, 15, 23, 1) },
} as const;
export const K = {
  field: 'nutFactor',
  meaning: 'nut factor',
  domain: nutFactorBounds,
  usual: [0.15, 0.22],
  made: [0.15, 0.16, 0.18, 0.2, 0.22],
} as const;
export const E = {
  field: 'elasticity',
  meaning: 'modulus of elasticity of the bolt',
  domain: elasticModulus,
  usual: [2e11, 2.1e11],
  made: ofSteel,
} as const;
export const preload = {
  field: 'preload',
  meaning: 'preload',
  domain: boltLoad,
  usual: [12_000, 21_000],
} as const;
/** Bolt and clamped parts as springs. */
export const stiffnesses = {
  k_b: {
    field: 'boltStiffness',
    meaning: 'stiffness of the bolt',
    domain: clampStiffness,
    usual: [1.5e8, 2.5e8],
  },
  k_m: {
    field: 'memberStiffness',
    meaning: 'stiffness of the clamped parts',
    domain: clampStiffness,
    usual: [8e8, 2e9],
  },
} as const;
