import type { Length } from '../quantities/index.js';
import type { Fault, Section, Trouble, Until, Work } from '../shed/index.js';

/** A part that no engine of the plan takes. */
export interface LeftOver {
  /** Its section of the shed. */
  readonly section: Section;
  /** What an other part is. */
  readonly kind?: string;
  /** Its name. */
  readonly name: string;
  /** How many are left [-]. */
  readonly count: number;
  /** The names of the parts that it fits only with; absent if there are none. */
  readonly onlyWith?: readonly string[];
  /** What was seen wrong with it or its places, if anything was. */
  readonly faults?: readonly Fault[];
  /** The accidents of it or of its engine that may have cracked it, if there are any that no test has cleared. */
  readonly accidents?: readonly Trouble[];
  /** Whether it is a part that cracks, and no test of it for cracks is listed. */
  readonly untested?: true;
  /**
   * Whether no step serves its journals as they were read, and shells that can be made to suit might: no plan puts made
   * shells on a journal that stands at no step.
   */
  readonly madeShellsNotTried?: true;
  /** The section of which no part, in the shed or to buy, fits it; absent if some does. */
  readonly fitsNothing?: Section;
  /** The work it needs that no shop on the list offers, if there is any. */
  readonly noShopFor?: readonly Work[];
  /** Whether it was kept back, is a spare, cannot be counted on as it is, or is scrap. */
  readonly why: 'reserved' | 'spare' | 'undecided' | 'not as it is' | 'scrap';
  /** What must be known of it first, if it is undecided. */
  readonly until?: Until;
}

/** One more engine, with the parts that would complete it and are the easiest to get. */
export interface NextEngine {
  /** The parts it lacks; none if no part would do, as the limits of a clearance are closer together than its sizes are finished or measured to. */
  readonly lacks: readonly LackingPart[];
  /** Other parts that would complete it instead: as easy to get, with no more cost of work and purchases. */
  readonly alternatives: readonly (readonly LackingPart[])[];
  /** Whether there may be more alternatives than these: there are too many, or the search for them ended. */
  readonly mayBeMore?: true;
}

/** Parts that an engine lacks. */
export interface LackingPart {
  /** Their section. */
  readonly section: Section;
  /** What an other part is. */
  readonly kind?: string;
  /** Shells: the bearings they are for. */
  readonly fits?: 'rods' | 'mains';
  /** The undersize or oversize they must have, if they have one and it is known [m]. */
  readonly step?: Length;
  /**
   * Shells, pistons and rings: the parts to measure before their size is known. Without a size and these, they go with a
   * crankshaft or block that is missing too, of whatever size that is.
   */
  readonly sizedBy?: readonly string[];
  /** How many [-]. */
  readonly count: number;
}
