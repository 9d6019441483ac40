import type { Span } from '../judging/index.js';
import type { Length } from '../quantities/index.js';
import type { NeededPart } from '../reading/index.js';
import type { Section, Work } from '../shed/index.js';
import type { Cost } from './cost.js';

/** What makes an engine complete beyond block, crankshaft, rods, pistons, rings and shells. */
export interface Complete {
  /** What it needs, and how many of each. */
  readonly needs: readonly NeededPart[];
  /** The kinds of other parts in the shed that it is not said to need: they are not counted. */
  readonly notNeeded: readonly string[];
}

/** A part to make to suit one place of an engine. */
export interface PartToMake {
  /** What it is. */
  readonly section: 'shells' | 'thrustWashers' | 'sleeves';
  /** Its name on the list of what can be made. */
  readonly name: string;
  /** What it is made of, if the list says so. */
  readonly material?: string;
  /** The engine it is for. */
  readonly engine: string;
  /** Shells: rods or mains. */
  readonly fits?: 'rods' | 'mains';
  /** The journal or bore it is for; absent for a washer. */
  readonly place?: string;
  /** The wall of one half shell, the thickness of a washer, or the least and the most wall of a sleeve [m]. */
  readonly size: Span<Length>;
  /** How far the size may be off, either way, before its clearance is outside its limits; absent for a sleeve [m]. */
  readonly tolerance?: Length;
  /** Sleeves: the bore it is finished to [m]. */
  readonly finishedTo?: Span<Length>;
  /** Its cost; of shells that of the pair. */
  readonly cost: Cost;
}

/** Journals that are ground only to agree with the others. */
export interface SoundJournals {
  /** Those journals. */
  readonly journals: readonly {
    /** Which one. */
    readonly name: string;
    /** The undersize that it is sound at by itself [m]. */
    readonly undersize: Length;
  }[];
  /** Whether other journals of the kind stay as they are, at the step of the job. */
  readonly keepsOthers: boolean;
}

/** A part to buy. */
export interface Purchase {
  /** Its section of the parts to buy. */
  readonly section: Section;
  /** What an other part is. */
  readonly kind?: string;
  /** Its name there. */
  readonly name: string;
  /** How many [-]. */
  readonly count: number;
  /** The jobs in doubt that it hangs on, engine by engine; absent if it hangs on none. */
  readonly inDoubt?: readonly {
    /** The part that the job is done on. */
    readonly part: string;
    /** The job. */
    readonly work: Work;
    /** How many of the purchase are for it [-]. */
    readonly count: number;
  }[];
  /** Their total cost. */
  readonly cost: Cost;
}
