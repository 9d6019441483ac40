import type { Length } from '../../quantities/index.js';
import type { Trouble } from './troubles.js';

/** A test or a measurement that a part needs before it is used. */
export interface NeededTest {
  /** What to do. */
  readonly test:
    | 'crack test'
    | 'pressure test'
    | 'softening test'
    | 'measure its journals'
    | 'check it for bend and twist'
    | 'measure its margins'
    | 'measure its seats';
  /** `first`: before money is spent on the part; `before use`: whatever is done to it; `again`: the same once more, after a repair; `after`: after a repair. */
  readonly when: 'first' | 'before use' | 'again' | 'after';
  /** The accidents that ask for it, of the part or of another one from the same donor; often none. */
  readonly because: readonly Trouble[];
  /** The least that must be measured, if that is known [m]. */
  readonly least?: Length;
}
