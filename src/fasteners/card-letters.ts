import { elasticModulus } from '../measuring/internal.js';
import {
  boltLoad,
  clampStiffness,
  nutFactorBounds,
  threadDiameter,
  threadPitch,
} from './domains.js';

// What several cards of this room write alike.

export const SPRINGS = "Hooke's law";

export const pitch = {
  field: 'pitch',
  meaning: 'pitch of the thread',
  domain: threadPitch,
  usual: [0.001, 0.002],
  // source: ISO 261 and UNC, UNF 3/8, from memory.
  made: { metric: [0.00125, 0.0015], inch: [0.0254 / 24, 0.0254 / 16] },
} as const;
export const K = {
  field: 'nutFactor',
  meaning: 'nut factor',
  domain: nutFactorBounds,
  usual: [0.15, 0.22],
} as const;
export const E = {
  field: 'elasticity',
  meaning: 'modulus of elasticity',
  domain: elasticModulus,
  usual: [1e11, 2.1e11],
} as const;
/** The thread that torque and preload of these cards suit: at most three quarters of the proof load of an ordinary bolt. */
export const thread = {
  field: 'diameter',
  meaning: 'diameter of the thread',
  domain: threadDiameter,
  usual: [0.009, 0.01],
  made: { metric: [0.01], inch: [0.009525] },
} as const;
/** The preload of such a bolt. */
export const preload = {
  field: 'preload',
  meaning: 'preload',
  domain: boltLoad,
  usual: [8000, 20_000],
} as const;
/** The preload of a bolt whose joint is worked out. */
export const preloadOfJoint = { ...preload, usual: [10_000, 20_000] } as const;
/** Bolt and clamped parts as springs. */
export const stiffnesses = {
  k_b: {
    field: 'boltStiffness',
    meaning: 'stiffness of the bolt',
    domain: clampStiffness,
    usual: [2e8, 5e8],
  },
  k_m: {
    field: 'memberStiffness',
    meaning: 'stiffness of what it clamps',
    domain: clampStiffness,
    usual: [8e8, 2e9],
  },
} as const;
