import type { Length } from '../../quantities/index.js';
import type { Trouble } from './troubles.js';

/** A test or a measurement that a part needs before it is used. */
export interface NeededTest {
  /** What to do. */
  readonly test:
    | 'crack test'
    | 'pressure test'
    | 'read its runout'
    | 'check it for bend and twist'
    | 'measure its margins'
    | 'measure its seats';
  /** `first`: before money is spent on the part; `again`: the same once more, after a repair; `after`: after a repair. */
  readonly when: 'first' | 'again' | 'after';
  /** The accidents that ask for it, of the part or of another one from the same donor; often none. */
  readonly because: readonly Trouble[];
  /** The least that must be measured, if that is known [m]. */
  readonly least?: Length;
}
