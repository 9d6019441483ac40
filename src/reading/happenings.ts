import type { Basis } from '../judging/index.js';

/** What happened to a part, or to the engine it came from. */
export type Happening = 'thrown rod' | 'seized bearing' | 'seized piston' | 'broken piston';

/** Everything that can have happened, and what the engine did then. */
export const HAPPENED: { readonly [H in Happening]: string } = {
  'thrown rod': 'threw a rod',
  'seized bearing': 'seized a bearing',
  'seized piston': 'seized a piston',
  'broken piston': 'broke a piston',
};

/** Everything that can have happened. */
export const HAPPENINGS = /* @__PURE__ */ Object.keys(HAPPENED) as Happening[];

/** The accidents that may have cracked a block. */
export const HITS_THE_BLOCK: readonly Happening[] = ['thrown rod', 'broken piston'];

/** Crankshafts that are tested for cracks. */
export const CRACK_TEST: Basis = {
  kind: 'published',
  source:
    'TM 55-1930-209-14&P-21: a crankshaft is inspected for cracks after a piston or connecting rod failure, and at every overhaul',
  forAnotherEngine: true,
};
