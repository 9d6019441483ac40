import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { ratioCells, type Section } from './report.js';
import { ratioOf } from './spread.js';

// By name, as a user imports it; our own name resolves to dist/index.js.
const PACKAGES = [
  'convert',
  'crankwright',
  'crankwright/oil',
  'crankwright/cylinders',
  'crankwright/bearings',
  'js-quantities',
  'convert-units-2',
  'mathjs',
] as const;
const RUNS = 21;

const root = fileURLToPath(new URL('..', import.meta.url));

/** Imports every package in fresh processes, in turn, beside convert 8. */
export function timeColdImports(): Section {
  // One run is thrown away: it fills the disk cache.
  for (const name of PACKAGES) importTime(name);
  const times = new Map<string, number[]>(PACKAGES.map((name) => [name, []]));
  for (let run = 0; run < RUNS; run++) {
    for (const name of PACKAGES) times.get(name)?.push(importTime(name));
  }
  const ratio = (name: string) => ratioOf(times.get(name) ?? [], times.get('convert') ?? []);
  return {
    title: `cold import: time beside convert 8, ${RUNS} fresh processes each`,
    rows: [
      ['', 'time', 'middle half'],
      ...PACKAGES.map((name) => [name, ...ratioCells(ratio(name))]),
    ],
    targets: [
      {
        name: 'cold import',
        measured: ratio('crankwright').median,
        // One converter of units beside all the rooms of the core.
        atMost: 1,
        unit: '× convert 8',
      },
      {
        name: 'cold import of one room',
        measured: ratio('crankwright/oil').median,
        atMost: 0.6,
        unit: '× convert 8',
      },
    ],
  };
}

function importTime(name: string): number {
  const script = `
    const start = performance.now();
    await import('${name}');
    console.log(performance.now() - start);`;
  const printed = execFileSync(process.execPath, ['--input-type=module', '-e', script], {
    cwd: root,
    encoding: 'utf8',
    // Whatever loader runs the benchmark must not run in there.
    env: {},
  });
  return Number(printed);
}
