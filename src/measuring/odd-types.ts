import type { Span } from '../judging/index.js';
import type { Length } from '../quantities/index.js';
import type { DiameterReading } from './readings.js';

/** A reading that does not fit the others, or the first of some of which one does not. */
export interface OddReading {
  /** Its place in the list, from 0 [-]. */
  readonly index: number;
  /** The reading as it was written down. */
  readonly reading: DiameterReading;
  /** What the others say that it should be about [m]. */
  readonly expected: Length;
  /** The least and the largest of the others [m]. */
  readonly others: Span<Length>;
  /** How far it is from that in standard deviations, as the test counts them [-]. */
  readonly deviation: number;
  /** With more than so many it is odd [-]. */
  readonly critical: number;
  /**
   * What it was held against: the error of the instrument, the scatter of the other readings, or the `form` that a part
   * can have: further out of round than any.
   */
  readonly against: 'instrument' | 'scatter' | 'form';
  /** The other readings that may be the wrong one just as well; absent where it is this one. */
  readonly together?: readonly Suspect[];
}

/** Another reading that may be the wrong one just as well. */
export interface Suspect {
  /** Its place in the list, from 0 [-]. */
  readonly index: number;
  /** The reading as it was written down. */
  readonly reading: DiameterReading;
  /** What the others say that it should be about, if it is the wrong one [m]. */
  readonly expected: Length;
}
