import { elasticModulus } from '../measuring/internal.js';
import { boltLoad, clampStiffness, nutFactorBounds, threadPitch } from './domains.js';

// What several cards of this room write alike.

export const SPRINGS = "Hooke's law";

export const pitch = {
  field: 'pitch',
  meaning: 'pitch of the thread',
  domain: threadPitch,
  usual: [0.001, 0.002],
} as const;
export const K = {
  field: 'nutFactor',
  meaning: 'nut factor',
  domain: nutFactorBounds,
  usual: [0.1, 0.3],
} as const;
export const E = {
  field: 'elasticity',
  meaning: 'modulus of elasticity',
  domain: elasticModulus,
  usual: [1e11, 2.1e11],
} as const;
/** The preload of a bolt of any size that an engine has. */
export const preload = {
  field: 'preload',
  meaning: 'preload',
  domain: boltLoad,
  usual: [5000, 40_000],
} as const;
/** The preload of a bolt whose joint is worked out. */
export const preloadOfJoint = { ...preload, usual: [10_000, 30_000] } as const;
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
    meaning: 'stiffness of the clamped parts',
    domain: clampStiffness,
    usual: [8e8, 2e9],
  },
} as const;
