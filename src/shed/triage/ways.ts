import type { Finding, Span } from '../../judging/index.js';
import type { Length } from '../../quantities/index.js';
import type { Job, TriageReason } from './triage-types.js';

/** One way to make the running surfaces of a part ready: without machining, or machined to a step. */
export interface Way {
  /** Their undersize or oversize [m]. */
  readonly step: Length;
  /** The finished size of each place [m]. */
  readonly sizes: readonly Span<Length>[];
  /** The work it takes. */
  readonly jobs: readonly Job[];
}

/** Whether and how a part can be made ready, with findings and reasons. */
export interface Readiness<R> {
  /** How; absent if it is scrap. */
  readonly ready?: R;
  /** All findings. */
  readonly findings: readonly Finding<'length'>[];
  /** The reasons. */
  readonly because: readonly TriageReason[];
}
