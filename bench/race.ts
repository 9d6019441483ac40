// A hand loop, not tinybench: tinybench times every call by itself, which a call
// of 2 ns does not survive, and runs one task after the other, so that a busy
// minute of the machine lands on one of them. Here a slice of some milliseconds
// is timed, and the slices of all runners are interleaved.

/** One contestant. */
export interface Runner {
  readonly name: string;
  /**
   * Goes once over all inputs and returns something made of every result, so
   * that no call can be dropped. Every runner writes out its own loop: a shared
   * loop is one call site for V8, which stops inlining once several runners
   * have been through it, and then the calls are measured and not the work.
   */
  readonly pass: () => number;
}

const ROUNDS = 41;
const WARM_UP_ROUNDS = 8;
const SLICE_MS = 8;

/** Time of one pass of each runner, round by round [ms]. */
export function race(runners: readonly Runner[]): ReadonlyMap<string, readonly number[]> {
  const lanes = runners.map((runner) => ({ runner, passes: 1, times: [] as number[] }));
  for (let round = 0; round < WARM_UP_ROUNDS + ROUNDS; round++) {
    // Another one starts each round, so that nobody always runs after the same neighbour.
    const first = round % lanes.length;
    for (const lane of [...lanes.slice(first), ...lanes.slice(0, first)]) {
      const time = timeOfPass(lane.runner, lane.passes);
      if (round >= WARM_UP_ROUNDS) lane.times.push(time);
      else lane.passes = Math.max(1, Math.ceil(SLICE_MS / time));
    }
  }
  return new Map(lanes.map(({ runner, times }) => [runner.name, times]));
}

function timeOfPass(runner: Runner, passes: number): number {
  let sum = 0;
  const start = performance.now();
  for (let pass = 0; pass < passes; pass++) sum += runner.pass();
  const time = (performance.now() - start) / passes;
  if (!Number.isFinite(sum)) throw new Error(`${runner.name} gave a result that is not a number`);
  return time;
}
