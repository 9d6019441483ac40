import type { Section } from './report.js';
import { generatedShed } from './shed.js';
import { spreadOf } from './spread.js';

/** So many of each part, how often it is planned, and what it may take [s]. */
const SHEDS = [
  { of: 5, runs: 9, atMost: 0.2 },
  { of: 20, runs: 5, atMost: 1 },
  { of: 50, runs: 3, atMost: 4 },
  { of: 100, runs: 3, atMost: 10 },
] as const;

/** Plans generated sheds of growing size to the proof that nothing is better. */
export async function timePlans(): Promise<Section> {
  const file = new URL('../dist/planning.js', import.meta.url);
  const { planBuilds }: typeof import('crankwright/planning') = await import(file.href);
  const timed = async (of: number) => {
    const shed = generatedShed(of, 1);
    const start = performance.now();
    const plan = await planBuilds(shed);
    const seconds = (performance.now() - start) / 1000;
    if (plan.proof.kind !== 'optimal') throw new Error(`a shed of ${of} of each was not proven`);
    return { seconds, engines: plan.builds.length };
  };
  const load = await timed(0);
  const first = await timed(SHEDS[0].of);
  const rows: string[][] = [];
  const targets: { name: string; measured: number; atMost: number; unit: string }[] = [];
  let before: { of: number; median: number } | undefined;
  for (const { of, runs, atMost } of SHEDS) {
    const times: number[] = [];
    let engines = 0;
    for (let run = 0; run < runs; run++) {
      const once = await timed(of);
      times.push(once.seconds);
      engines = once.engines;
    }
    const { median, lowerQuartile, upperQuartile } = spreadOf(times);
    const power = before && Math.log(median / before.median) / Math.log(of / before.of);
    rows.push([
      `${of} of each`,
      `${engines}`,
      `${median.toFixed(2)} s`,
      `${lowerQuartile.toFixed(2)} … ${upperQuartile.toFixed(2)}`,
      power === undefined ? '' : `n^${power.toFixed(1)}`,
    ]);
    targets.push({ name: `a shed of ${of} of each`, measured: median, atMost, unit: 's' });
    before = { of, median };
  }
  return {
    title: `plans of generated sheds, proven: solver loaded in ${load.seconds.toFixed(2)} s, first plan of ${SHEDS[0].of} of each in ${first.seconds.toFixed(2)} s, then`,
    rows: [['', 'engines', 'time', 'middle half', 'growth'], ...rows],
    targets,
  };
}
