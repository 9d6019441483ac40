import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { ratioCells, type Section } from './report.js';
import { ratioOf } from './spread.js';

const RUNS = 15;
const root = fileURLToPath(new URL('..', import.meta.url));
const BARE = 'the one file of mathjs, loaded and no more';
const COMMANDS: Readonly<Record<string, readonly string[]>> = {
  [BARE]: ['--input-type=module', '-e', "await import('./dist/bundled-mathjs.js')"],
  "calc '2 inch to mm'": ['dist/crankwright.js', 'calc', '2 inch to mm'],
  "calc '2 inch + 3 mm'": ['dist/crankwright.js', 'calc', '2 inch + 3 mm'],
};

/** Runs calculations in fresh processes, in turn, beside a process that only loads mathjs. */
export function timeCalc(): Section {
  const times = new Map(Object.keys(COMMANDS).map((name) => [name, [] as number[]]));
  // One round is thrown away: it fills the disk cache.
  for (let round = -1; round < RUNS; round++) {
    for (const [name, args] of Object.entries(COMMANDS)) {
      const start = performance.now();
      execFileSync(process.execPath, args, { cwd: root, env: {} });
      if (round >= 0) times.get(name)?.push(performance.now() - start);
    }
  }
  const ratio = (name: string) => ratioOf(times.get(name) ?? [], times.get(BARE) ?? []);
  const names = Object.keys(COMMANDS);
  return {
    title: `calc: time of the whole process beside one that loads mathjs, ${RUNS} each`,
    rows: [['', 'time', 'middle half'], ...names.map((name) => [name, ...ratioCells(ratio(name))])],
    targets: [
      {
        name: "calc '2 inch to mm'",
        measured: ratio("calc '2 inch to mm'").median,
        atMost: 1.5,
        unit: '× loading mathjs',
      },
    ],
  };
}
