import type { Basis, Finding, Limits, SizeOrSpan, Span } from '../judging/index.js';
import type { Length } from '../quantities/index.js';

/** A place that a part goes into. */
export interface FitPlace {
  /** What it is called on the bench: `'cylinder 1'`. */
  readonly name: string;
  /** What it leaves for the part: the bore for a piston, the housing less the journal for shells [m]. */
  readonly room: SizeOrSpan<Length>;
  /** The name of the part that is in it now, if one is. */
  readonly current?: string;
}

/** A part that may go into any of the places. */
export interface FitPart {
  /** What it is called on the bench: `'piston A'`. */
  readonly name: string;
  /** What it takes of the room: the piston across its thrust faces, the wall of one half shell [m]. */
  readonly size: SizeOrSpan<Length>;
}

/** Places, parts, and what the clearance must lie between. */
export interface FitRequest {
  /** The places, at most 32; every one is served. */
  readonly places: readonly FitPlace[];
  /** The parts, at most 64 and at least as many as there are places. */
  readonly parts: readonly FitPart[];
  /** How often the size of a part is taken from the room: 1 for a piston, 2 for a pair of shells; by default 1. */
  readonly times?: 1 | 2;
  /** What every clearance must lie between [m]. */
  readonly limits: Limits<Length>;
  /** Who set the limits; by default they are the caller's own. */
  readonly basis?: Basis;
}

/** A part in its place. */
export interface FitPair {
  /** The place. */
  readonly place: string;
  /** The part. */
  readonly part: string;
  /** What is left between them; negative is an interference [m]. */
  readonly clearance: Span<Length>;
  /** The worse end of the clearance against the limits, with its margin. */
  readonly finding: Finding<'length'>;
  /** Another part is in the place now, or none. */
  readonly isMoved: boolean;
}

/** The best choice of a part for every place. */
export interface SelectedFit {
  /** Whether every clearance lies within its limits. If not, no choice does better for the worst of them. */
  readonly outcome: 'all within' | 'some outside';
  /** Every place with its part, in the order of the places. */
  readonly pairs: readonly FitPair[];
  /** The smallest margin of all pairs; negative is outside the limits [m]. */
  readonly leastMargin: Length;
  /** The parts that are left over, in the order given. */
  readonly spare: readonly string[];
}
