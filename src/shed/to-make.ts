import type { Span } from '../judging/index.js';
import type { Length } from '../quantities/index.js';
import type { Price } from '../reading/index.js';

/** Parts that can be made to suit. */
export interface ToMake {
  /** Pairs of half shells, with the wall that a bearing asks for. */
  readonly shells?: readonly MadeShells[];
  /** Thrust washers, as thick as the end play asks for. */
  readonly thrustWashers?: readonly MadeWashers[];
  /** Sleeves for cylinders that are sleeved. */
  readonly sleeves?: readonly MadeSleeves[];
}

/** What is said of any part that can be made. */
export interface Made {
  /** What it is called; no part shares the name. */
  readonly name: string;
  /** What it is made of. */
  readonly material?: string;
  /** Price of one: a washer, a sleeve, a pair of shells. */
  readonly price: Price;
}

/** Shells that can be made. */
export interface MadeShells extends Made {
  /** The bearings they are for. */
  readonly fits: 'rods' | 'mains';
  /** The least and the most wall they can be made with [m]. */
  readonly wall: Span<Length>;
}

/** Thrust washers that can be made. */
export interface MadeWashers extends Made {
  /** The least and the most thickness they can be made with [m]. */
  readonly thickness: Span<Length>;
}

/** Sleeves that can be made. */
export interface MadeSleeves extends Made {
  /** The least and the most wall they can be made with [m]. */
  readonly wall: Span<Length>;
}
