import type { InDoubt } from '../measuring/index.js';
import type { Length } from '../quantities/index.js';
import type { Job, NeededTest, Section } from '../shed/index.js';
import type { Cost } from './cost.js';
import type { SoundJournals } from './order-types.js';

/** Work on one part of an engine. */
export interface BuildJob extends Job {
  /** Which part. */
  readonly part: string;
  /** The shop that does it. */
  readonly shop: string;
  /** What may do without it: only a rule of thumb or the error of readings asks for it. Settle that first. */
  readonly inDoubt?: {
    /** The step at which they may stay as they are [m]. */
    readonly at: Length;
    /** The journals or bores. */
    readonly places: readonly InDoubt[];
  };
  /** That only rules of thumb ask for it, though no limit known of another engine lets so much wear stay. */
  readonly byRule?: true;
  /** The faults seen on its journals or bores: it may not clean up a deep score. */
  readonly faults?: readonly {
    /** Which fault. */
    readonly fault: string;
    /** Where. */
    readonly places: readonly string[];
  }[];
  /** That it bores past the first oversize, and not all the walls it leaves thinner were measured. */
  readonly wallNotKnown?: true;
  /** The parts whose readings are to be taken again first: if those come out well, a better plan does without this job. */
  readonly readFirst?: readonly string[];
  /** Journals that are ground only to agree with the others; absent if there are none. */
  readonly sound?: SoundJournals;
  /** Its cost. */
  readonly cost: Cost;
}

/** A test or measurement that a part of an engine needs. */
export interface BuildTest extends NeededTest {
  /** The section of the part. */
  readonly section: Section;
  /** Which part. */
  readonly part: string;
}

/** The order for one shop. */
export interface ShopOrder {
  /** Which shop. */
  readonly shop: string;
  /** Every job, in the order of the engines. */
  readonly jobs: readonly BuildJob[];
  /** Their total cost. */
  readonly cost: Cost;
}
