import type { Span } from '../../judging/index.js';
import type { StillToRead } from '../../measuring/index.js';
import type { Length } from '../../quantities/index.js';

/** What of a part is to be measured, or else found out. */
export type MeasuredWhat =
  | 'rod journals'
  | 'main journals'
  | 'bores'
  | 'main housings'
  | 'big ends'
  | 'pistons'
  | 'oversize'
  | 'undersize'
  | 'bearings it is for'
  | 'walls'
  | 'thickness';

/** Something that was not measured, so that nothing is decided on the part. */
export interface NotMeasured {
  /** Nothing, or not enough, was measured. */
  readonly kind: 'not measured';
  /** What. */
  readonly what: MeasuredWhat;
  /** Which journals, bores, housings or pistons; empty for the whole part. */
  readonly places: readonly string[];
  /** Those of which something was read. */
  readonly begun: readonly {
    /** Which one. */
    readonly place: string;
    /** The smallest and the largest reading so far [m]. */
    readonly read: Span<Length>;
    /** What is still to be read. */
    readonly lacks: StillToRead;
  }[];
}
