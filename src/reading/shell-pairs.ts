import type { SizeOrSpan } from '../judging/index.js';
import type { Length } from '../quantities/index.js';

/** Pairs of half shells of one kind on the shelf. */
export interface ShellPairs {
  /** Their name on the shelf. */
  readonly name: string;
  /** The bearings they are for. */
  readonly fits: 'rods' | 'mains';
  /** The undersize they are made for, on the diameter; 0 for standard [m]. */
  readonly undersize: Length;
  /** Measured wall of one half at its crown [m]. */
  readonly wall: SizeOrSpan<Length>;
  /** Pairs fit to use again; 0 for shells that are listed only to explain what was found. */
  readonly pairs: number;
}
