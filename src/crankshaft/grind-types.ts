import type { Basis, Finding, OwnLimits, Span } from '../judging/index.js';
import type { InDoubt } from '../measuring/index.js';
import type { Length } from '../quantities/index.js';

/** What a grinder has to know of one journal; `journalShape` gives most of it. */
export interface JournalToGrind {
  /** What it is called on the bench. */
  readonly name: string;
  /** Smallest diameter read [m]. */
  readonly smallest: Length;
  /** Largest diameter read [m]. */
  readonly largest: Length;
  /** Worst out-of-round of any station [m]. */
  readonly outOfRound: Length;
  /** Worst taper [m]. */
  readonly taper: Length;
  /** Full indicator reading against the axis it will be ground about; by default none [m]. */
  readonly runout?: Length;
  /** Visible faults, in words, that it cannot be used with until it is ground; by default none. */
  readonly faults?: readonly string[];
}

/** What `grindPlan` decides from. */
export interface GrindRequest {
  /** All journals of one kind, all mains or all rod journals: they share one step. */
  readonly journals: readonly JournalToGrind[];
  /** The maker's span for a standard journal [m]. */
  readonly standard: Span<Length>;
  /** Undersizes that may be ground to, such as `undersizeSteps('inch')`; standard is always tried first [m]. */
  readonly steps: readonly Length[];
  /** Undersizes that shells are at hand for; by default any step [m]. */
  readonly shellsAtHand?: readonly Length[];
  /** Smallest journal that the maker allows; by default none is known [m]. */
  readonly minimum?: Length;
  /**
   * Stock left for the wheel below the smallest reading, on the diameter. What then is left must be
   * the largest size of the step or more, so that the grinder may end anywhere in its span. By
   * default 0.001 in [m].
   */
  readonly cleanUpAllowance?: Length;
  /**
   * How the journal wore. `'one side'`, the default and the safe one: loads
   * wear a crank journal on one side, and ground about its old axis it cleans up only
   * at its smallest diameter less its out-of-round. `'all round'`: it cleans up
   * at its smallest diameter.
   */
  readonly wear?: 'one side' | 'all round';
  /**
   * How far a journal may be worn below the target, or lie above it, and still be used as it is; its
   * clearance tells whether it can be. By default 0.0005 in [m].
   */
  readonly sizeAllowance?: Length;
  /** Out-of-round and taper that a journal may keep without being ground; by default 0.0005 in each. */
  readonly shape?: OwnLimits<'length'>;
  /**
   * Expanded uncertainty of every size, about 95 %; that of the shape stands with its limits. A size nearer to a bound
   * than the rule for the shape asks is not judged by it. By default not known [m].
   */
  readonly sizeUncertainty?: Length;
}

/** What is to happen to one journal. */
export interface JournalWork {
  /** What it is called on the bench. */
  readonly name: string;
  /** Whether it is good as it is or must be ground to the target. */
  readonly work: 'use as it is' | 'grind';
  /** Metal that comes off its largest diameter, if it is ground [m]. */
  readonly stockRemoved?: Span<Length>;
}

/** Why a step was taken or passed over, by its `kind`. */
export type GrindReason =
  | {
      /** The journal is too far gone for the step. */
      readonly kind: 'does not clean up';
      /** The step [m]. */
      readonly undersize: Length;
      /** Which journal. */
      readonly journal: string;
      /** How far it lies outside the step as it is, if it does: below it is negative [m]. */
      readonly outside: Length;
      /** The largest round journal that is left in it [m]. */
      readonly available: Length;
      /** What the step asks for [m]. */
      readonly target: Span<Length>;
      /** It may clean up all the same, if it is measured better. */
      readonly nearly?: true;
    }
  | {
      /** The caller has no shells for the step. */
      readonly kind: 'no shells at hand';
      /** The step [m]. */
      readonly undersize: Length;
    }
  | {
      /** A journal would be below what the maker allows. */
      readonly kind: 'below the minimum';
      /** The step [m]. */
      readonly undersize: Length;
      /** Which journal. */
      readonly journal: string;
      /** Its smallest size, as it is or as it may be ground [m]. */
      readonly smallest: Length;
      /** The maker's minimum [m]. */
      readonly minimum: Length;
      /** It may not be, if it is measured better: it stays as it is. */
      readonly nearly?: true;
    }
  | {
      /** The journal needs no work at the step. */
      readonly kind: 'good as it is';
      /** Which journal. */
      readonly journal: string;
      /** The step [m]. */
      readonly undersize: Length;
      /** How far it lies outside the target, if it does: below it is negative [m]. */
      readonly outside?: Length;
      /** Who allows that. */
      readonly basis?: Basis;
    }
  | {
      /** The journal can be ground to the step. */
      readonly kind: 'cleans up';
      /** Which journal. */
      readonly journal: string;
      /** The step [m]. */
      readonly undersize: Length;
      /** The largest round journal that is left in it [m]. */
      readonly available: Length;
    }
  | {
      /** The journal is too far out of shape to be used as it is. */
      readonly kind: 'shape';
      /** Which journal. */
      readonly journal: string;
      /** Its out-of-round or taper, the worse, against the limit. */
      readonly finding: Finding<'length'>;
    }
  | {
      /** The journal has faults that can be seen. */
      readonly kind: 'faults';
      /** Which journal. */
      readonly journal: string;
      /** What they are, in words. */
      readonly faults: readonly string[];
    }
  | {
      /** What was left for the wheel wherever something is ground. */
      readonly kind: 'allowance';
      /** Stock below the smallest reading, on the diameter [m]. */
      readonly cleanUpAllowance: Length;
      /** Who asks for it. */
      readonly basis: Basis;
    };

/** A step that serves all journals of one kind. */
export interface ServedGrindPlan {
  /** `use as it is`: nothing is machined. `grind`: at least one journal is. */
  readonly outcome: 'use as it is' | 'grind';
  /** The common step, below standard, on the diameter; shells are named by it [m]. */
  readonly undersize: Length;
  /** What every journal must measure when it is done [m]. */
  readonly target: Span<Length>;
  /** What happens to each journal. */
  readonly journals: readonly JournalWork[];
  /**
   * The first step that less grinding would serve if these journals may stay as they are: only rules
   * of thumb or the error of readings stand against it. Settle that before metal comes off.
   */
  readonly inDoubt?: {
    /** That step [m]. */
    readonly undersize: Length;
    /** The journals that are kept from it. */
    readonly journals: readonly InDoubt[];
  };
  /** The first smaller step that may serve all the same, if journals are measured better. */
  readonly nearly?: NearlyServes;
  /** How many more steps there are after this one, within what the maker allows: metal that is left for another time [-]. */
  readonly stepsLeft: number;
  /** Why: steps passed over, then the journals at this one. */
  readonly because: readonly GrindReason[];
}

/** A step that journals miss by less than their sizes are known to. */
export interface NearlyServes {
  /** That step [m]. */
  readonly undersize: Length;
  /** The journals that may serve at it all the same. */
  readonly journals: readonly string[];
}

/** The decision for all journals of one kind, with its reasons. */
export type GrindPlan =
  | ServedGrindPlan
  | {
      /** No step serves. */
      readonly outcome: 'none';
      /** The journals that do not clean up even at the last step; empty if only shells or the minimum stand in its way. */
      readonly defeatedBy: readonly string[];
      /** The first step that may serve all the same, if journals are measured better. */
      readonly nearly?: NearlyServes;
      /** Why, step by step. */
      readonly because: readonly GrindReason[];
    };
