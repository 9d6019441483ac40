import type { Finding, Span } from '../../judging/index.js';
import type { Length } from '../../quantities/index.js';
import type { Job, TriageReason } from './triage-types.js';

/** One way to make the running surfaces of a part ready: as they are, or machined to a step. */
export interface Way {
  /** The undersize or oversize they have then [m]. */
  readonly step: Length;
  /** What each measures then, place by place [m]. */
  readonly sizes: readonly Span<Length>[];
  /** What is done for it. */
  readonly jobs: readonly Job[];
}

/** Whether and how a part can be made ready, what was judged of it, and why. */
export interface Readiness<R> {
  /** How; absent if it is past use. */
  readonly ready?: R;
  /** Everything that was judged. */
  readonly findings: readonly Finding<'length'>[];
  /** Why. */
  readonly because: readonly TriageReason[];
}
