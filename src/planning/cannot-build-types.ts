import type { Fault, Until } from '../shed/index.js';
import type { LackingPart } from './left-over-types.js';

/** A block that must be built and is not in the plan. */
export interface CannotBuild {
  /** Which block. */
  readonly name: string;
  /** Why. */
  readonly because: WhyNotBuilt;
}

/** Why a block that must be built is not, by its `kind`. */
export type WhyNotBuilt =
  | {
      /** The block itself cannot be used. */
      readonly kind: 'triage';
      /** What the triage makes of it. */
      readonly disposition: 'scrap' | 'undecided' | 'not as it is' | 'spare';
      /** What must be known of it first, if it is undecided. */
      readonly until?: Until;
      /** What was seen wrong with it, if anything was. */
      readonly faults?: readonly Fault[];
    }
  | {
      /** Parts are missing for it. */
      readonly kind: 'lacks';
      /** The fewest that would complete it. */
      readonly lacks: readonly LackingPart[];
      /** The other blocks that must be built, and are. */
      readonly beside: readonly string[];
    }
  | {
      /** As many of the blocks that must be built are in the plan as engines were asked for. */
      readonly kind: 'enough engines';
      /** Those blocks. */
      readonly beside: readonly string[];
    }
  | {
      /** Its engine would cost more than the limit for each engine. */
      readonly kind: 'too dear';
    }
  | {
      /** It would have to be bought, and nothing may be. */
      readonly kind: 'no buying';
    }
  | {
      /** The search ended before the reason was found, or its clearances cannot be shown to hold. */
      readonly kind: 'not known';
    };
