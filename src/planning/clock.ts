import { second, type Time } from '../quantities/index.js';

/** The time for a plan is up. */
export class TimeUp extends Error {}

/**
 * Measures the time that a plan takes. It is the one place that reads a clock: only a time limit
 * and the progress that is told depend on it.
 */
export class Clock {
  readonly #start = performance.now();

  /** A clock for so much time, or for as much as it takes [s]. */
  constructor(private readonly limit: number = Infinity) {}

  /** Time since the start. */
  elapsed(): Time {
    return second((performance.now() - this.#start) / 1000);
  }

  /** Time that is left [s]. */
  left(): number {
    return this.limit === Infinity ? Infinity : Math.max(0, this.limit - this.elapsed());
  }

  /** Throws when no time is left. */
  check(): void {
    if (this.left() === 0) throw new TimeUp();
  }
}
