import type { Finding, Span } from '../../judging/index.js';
import { shifted } from '../../judging/internal.js';
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

/** What is done to journals or bores to make them a step smaller or larger. */
interface Machining {
  readonly work: Job['work'];
  /** The standard size [m]. */
  readonly standard: Span<Length>;
}

const GROWS: readonly Job['work'][] = ['bore', 'sleeve'];

/** The ways that machine some places, whatever they measure: those that have a fault and were not measured. */
export function machining(
  ways: readonly Way[],
  places: readonly string[],
  { work, standard }: Machining,
): readonly Way[] {
  if (places.length === 0) return ways;
  return ways.flatMap(({ step, sizes, jobs }): readonly Way[] => {
    // Nothing is machined to standard size.
    if (step === 0) return [];
    const others = jobs.filter((job) => job.work !== work);
    const same = jobs.flatMap((job) => (job.work === work ? job.places : []));
    const job: Job = {
      work,
      places: [...same, ...places],
      step,
      to: shifted(standard, GROWS.includes(work) ? step : -step),
    };
    return [{ step, sizes, jobs: [...others, job] }];
  });
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
