import { type Runner, race } from './race.js';
import { ratioCells, type Section } from './report.js';
import { ratioOf, spreadOf } from './spread.js';

/** One of ours beside others that find the same. */
export interface Contest {
  readonly title: string;
  readonly ours: Runner;
  readonly peers: readonly Runner[];
  /** How many calls one pass makes. */
  readonly calls: number;
  /** What one call may take, beside one of the first peer: the machine is slower on some days. */
  readonly target: { readonly name: string; readonly atMost: number };
}

/** Time of one call of each, and that beside ours. */
export function raceBeside({ title, ours, peers, calls, target }: Contest): Section {
  const runners = [ours, ...peers];
  const [first = ours] = peers;
  const times = race(runners);
  const timesOf = ({ name }: Runner) => times.get(name) ?? [];
  const median = (runner: Runner) => spreadOf(timesOf(runner)).median / calls;
  return {
    title,
    rows: [
      ['', 'one call', 'beside ours', 'middle half'],
      ...runners.map((runner) => [
        runner.name,
        timeCell(median(runner)),
        ...ratioCells(ratioOf(timesOf(runner), timesOf(ours))),
      ]),
    ],
    targets: [
      {
        ...target,
        measured: ratioOf(timesOf(ours), timesOf(first)).median,
        unit: `× ${first.name}`,
      },
    ],
  };
}

/** A time [ms] in the unit that suits it. */
export function timeCell(ms: number): string {
  return ms < 0.1 ? `${(ms * 1000).toPrecision(3)} µs` : `${ms.toPrecision(3)} ms`;
}

/** Stops the run if another's result is not ours: then it is no peer. */
export function mustAgree(name: string, theirs: number, ours: number, within: number): void {
  if (Math.abs(theirs / ours - 1) <= within) return;
  throw new Error(`${name} gives ${theirs}, ours is ${ours}`);
}
