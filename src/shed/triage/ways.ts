import type { Finding, Span } from '../../judging/index.js';
import type { Length } from '../../quantities/index.js';
import type { Bench } from '../../reading/index.js';
import type { Shed } from '../shed.js';
import type { Job, TriageReason } from './triage-types.js';

/** One way to make the running surfaces of a part ready: without machining, or machined to a step. */
export interface Way {
  /** Their undersize or oversize [m]. */
  readonly step: Length;
  /** The finished size of each place; undefined where it is not known [m]. */
  readonly sizes: readonly (Span<Length> | undefined)[];
  /** The work it takes. */
  readonly jobs: readonly Job[];
}

/** What a part is judged by: the engine, and the shops. */
export type Shop = Pick<Shed, 'engine' | 'units' | 'machining' | keyof Bench>;

/** Whether and how a part can be made ready, with findings and reasons. */
export interface Readiness<R> {
  /** How; absent if it is scrap, or cannot be counted on. */
  readonly ready?: R;
  /** How it could be made ready at best, where that cannot be counted on. */
  readonly atBest?: R;
  /** Why it cannot be counted on. */
  readonly aside?: 'undecided' | 'not as it is';
  /** All findings. */
  readonly findings: readonly Finding<'length'>[];
  /** The reasons. */
  readonly because: readonly TriageReason[];
}
