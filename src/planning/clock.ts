import { second, type Time } from '../quantities/index.js';

/** Thrown when the time for a plan is up. */
export class TimeUp extends Error {}

/**
 * Measures the time of a plan. It is the only place that reads a clock. Only the time limit and the
 * progress reports depend on it.
 */
export class Clock {
  readonly #start = performance.now();

  /** A clock with a time limit, by default none [s]. */
  constructor(private readonly limit: number = Infinity) {}

  /** Time since the start. */
  elapsed(): Time {
    return second((performance.now() - this.#start) / 1000);
  }

  /** Time left [s]. */
  left(): number {
    return this.limit === Infinity ? Infinity : Math.max(0, this.limit - this.elapsed());
  }

  /** Throws when no time is left. */
  check(): void {
    if (this.left() === 0) throw new TimeUp();
  }
}
