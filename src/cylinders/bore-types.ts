import type { Basis, Finding, OwnLimits, Span } from '../judging/index.js';
import type { InDoubt } from '../measuring/index.js';
import type { Length } from '../quantities/index.js';

/** What a boring shop has to know of one cylinder; `boreShape` gives most of it. */
export interface BoreToMachine {
  /** What it is called on the bench. */
  readonly name: string;
  /** Smallest diameter read in the ring travel [m]. */
  readonly smallest: Length;
  /** Largest diameter read in the ring travel [m]. */
  readonly largest: Length;
  /** Worst out-of-round of any station [m]. */
  readonly outOfRound: Length;
  /** Worst taper [m]. */
  readonly taper: Length;
  /** Cylinder wall at its thinnest, as it is now; by default not known [m]. */
  readonly wall?: Length;
  /** Visible faults, in words, that it cannot be used with until it is bored; by default none. */
  readonly faults?: readonly string[];
}

/** What `borePlan` decides from. */
export interface BoreRequest {
  /** All cylinders of the block: they share one step. */
  readonly cylinders: readonly BoreToMachine[];
  /** The maker's span for a standard bore [m]. */
  readonly standard: Span<Length>;
  /** Oversizes that may be bored to, such as `oversizeSteps('inch')`; standard is always tried first [m]. */
  readonly steps: readonly Length[];
  /** Oversizes that a full set of pistons is at hand for; by default any step [m]. */
  readonly pistonsAtHand?: readonly Length[];
  /** Stock that boring leaves for the hone, on the diameter; by default 0.003 in [m]. */
  readonly honingAllowance?: Length;
  /** Thinnest wall that may be left; needed where a cylinder's `wall` is given [m]. */
  readonly leastWall?: Length;
  /**
   * How the bores wore. `'one side'`, the default and the safe one: pistons wear a bore on its thrust
   * side, and bored about its old axis it cleans up only at its largest diameter and its
   * out-of-round besides. `'all round'`: it cleans up at its largest diameter.
   */
  readonly wear?: 'one side' | 'all round';
  /** How far a bore may lie outside the target and still be used as it is; by default 0.001 in [m]. */
  readonly sizeAllowance?: Length;
  /**
   * Out-of-round and taper that a bore may keep; by default 0.001 in each as new, and what other engines are
   * allowed once worn.
   */
  readonly shape?: OwnLimits<'length'>;
  /** Taper that a bore may keep, if its limits are not those of `shape`. */
  readonly taper?: OwnLimits<'length'>;
  /** Travel of the piston, which the taper that a worn bore may keep hangs on; by default not known [m]. */
  readonly stroke?: Length;
  /**
   * Expanded uncertainty of every size, about 95 %; that of the shape stands with its limits. A size nearer to a bound
   * than the rule for the shape asks is not judged by it. By default not known [m].
   */
  readonly sizeUncertainty?: Length;
}

/** What is to happen to one cylinder. */
export interface BoreWork {
  /** What it is called on the bench. */
  readonly name: string;
  /** Whether it is good as it is, must be bored and honed, or needs a sleeve finished to the target. */
  readonly work: 'use as it is' | 'bore' | 'sleeve';
  /** Metal that comes off its smallest diameter, if it is bored [m]. */
  readonly stockRemoved?: Span<Length>;
  /** Wall that is left at its thinnest, if it is bored and the wall was measured [m]. */
  readonly wallLeft?: Length;
}

/** Why a step was taken or passed over, by its `kind`. */
export type BoreReason =
  | {
      /** The bore is too far gone for the step. */
      readonly kind: 'does not clean up';
      /** The step [m]. */
      readonly oversize: Length;
      /** Which cylinder. */
      readonly cylinder: string;
      /** The smallest finished bore that would clean up [m]. */
      readonly needed: Length;
      /** What the step asks for [m]. */
      readonly target: Span<Length>;
      /** It may clean up all the same, if it is measured better. */
      readonly nearly?: true;
    }
  | {
      /** The wall would become too thin. */
      readonly kind: 'wall too thin';
      /** The step [m]. */
      readonly oversize: Length;
      /** Which cylinder. */
      readonly cylinder: string;
      /** Wall that would be left at its thinnest [m]. */
      readonly wallLeft: Length;
      /** The thinnest that may be left [m]. */
      readonly leastWall: Length;
    }
  | {
      /** The caller has no full set of pistons for the step. */
      readonly kind: 'no pistons at hand';
      /** The step [m]. */
      readonly oversize: Length;
    }
  | {
      /** The bore needs no work at the step. */
      readonly kind: 'good as it is';
      /** Which cylinder. */
      readonly cylinder: string;
      /** The step [m]. */
      readonly oversize: Length;
      /** How far it lies outside the target, if it does: below it is negative [m]. */
      readonly outside?: Length;
      /** Who allows that. */
      readonly basis?: Basis;
    }
  | {
      /** The bore can be machined to the step. */
      readonly kind: 'cleans up';
      /** Which cylinder. */
      readonly cylinder: string;
      /** The step [m]. */
      readonly oversize: Length;
      /** The smallest finished bore that would clean up [m]. */
      readonly needed: Length;
    }
  | {
      /** The bore is round and straight enough, and not of the size of the step. */
      readonly kind: 'size';
      /** Which cylinder. */
      readonly cylinder: string;
      /** Its smallest and largest diameter [m]. */
      readonly size: Span<Length>;
      /** What the step asks for [m]. */
      readonly target: Span<Length>;
    }
  | {
      /** The bore is too far out of shape to be used as it is. */
      readonly kind: 'shape';
      /** Which cylinder. */
      readonly cylinder: string;
      /** Its out-of-round or taper, the worse, against the limit. */
      readonly finding: Finding<'length'>;
    }
  | {
      /** The bore has faults that can be seen. */
      readonly kind: 'faults';
      /** Which cylinder. */
      readonly cylinder: string;
      /** What they are, in words. */
      readonly faults: readonly string[];
    }
  | {
      /** What boring leaves for the hone, wherever something is bored. */
      readonly kind: 'allowance';
      /** Stock on the diameter [m]. */
      readonly honingAllowance: Length;
      /** Who asks for it. */
      readonly basis: Basis;
    };

/** A step that serves all cylinders of one block. */
export interface ServedBorePlan {
  /**
   * `use as it is`: nothing is machined. `bore`: at least one cylinder is. `sleeve`: no step
   * serves them all, and those that it does not serve get a sleeve finished to it.
   */
  readonly outcome: 'use as it is' | 'bore' | 'sleeve';
  /** The common step, above standard, on the diameter; pistons are named by it [m]. */
  readonly oversize: Length;
  /** What every cylinder must measure when it is honed [m]. */
  readonly target: Span<Length>;
  /** What to bore to before the hone [m]. */
  readonly boreTo: Span<Length>;
  /** What happens to each cylinder. */
  readonly cylinders: readonly BoreWork[];
  /**
   * The first step that less boring would serve if these bores may stay as they are: only rules of
   * thumb or the error of readings stand against it. Settle that before metal comes off.
   */
  readonly inDoubt?: {
    /** That step [m]. */
    readonly oversize: Length;
    /** The cylinders that are kept from it. */
    readonly cylinders: readonly InDoubt[];
  };
  /** The first step that may serve with less boring or fewer sleeves, if cylinders are measured better. */
  readonly nearly?: {
    /** That step [m]. */
    readonly oversize: Length;
    /** The cylinders that may clean up at it all the same. */
    readonly cylinders: readonly string[];
  };
  /** How many more steps there are after this one, within what the maker allows: metal that is left for another time [-]. */
  readonly stepsLeft: number;
  /** Why: steps passed over, then the cylinders at this one. */
  readonly because: readonly BoreReason[];
}

/** The decision for all cylinders of one block, with its reasons. */
export type BorePlan =
  | ServedBorePlan
  | {
      /** No pistons are at hand for any step. */
      readonly outcome: 'none';
      /** Why, step by step. */
      readonly because: readonly BoreReason[];
    };
