import type { FarReading } from '../../reading/index.js';

/** A reading of a journal or bore read too little, which no step and no wear come to: no verdict rests on it before it is read again. */
export interface TooFar {
  /** A reading that is too far off. */
  readonly kind: 'too far off';
  /** What it is of. */
  readonly of: 'journals' | 'bores';
  /** The journal or bore. */
  readonly place: string;
  /** The reading. */
  readonly far: FarReading;
}
