import { assemble } from '../src/planning/assemble.js';
import { batchesOf } from '../src/planning/batches.js';
import { bestBuilds } from '../src/planning/best-builds.js';
import { FitTable } from '../src/planning/fit-table.js';
import { loadSolver } from '../src/planning/load-solver.js';
import { search } from '../src/planning/search.js';
import { stockOf } from '../src/planning/stock.js';
import { needsOf } from '../src/shed/needs.js';
import { ratioCells, type Section } from './report.js';
import { generatedShed } from './shed.js';
import { ratioOf, spreadOf } from './spread.js';

/** So many of each part, and how often the plans are made. */
const SHEDS = [
  { of: 5, runs: 9 },
  { of: 20, runs: 7 },
] as const;

/** Plans with the choice among equal plans, beside plans that stop at the tightest margin. */
export async function raceChoice(): Promise<Section> {
  const rows: string[][] = [];
  let last = Number.NaN;
  for (const { of, runs } of SHEDS) {
    const shed = generatedShed(of, 1);
    const timed = async (choose: boolean) => {
      const solver = await loadSolver({});
      const start = performance.now();
      const stock = stockOf(shed, { buying: true, reserved: [], mustBuild: [] });
      const fits = new FitTable(shed.engine, stock.shells);
      const brief = { engine: shed.engine, needed: needsOf(shed), stock, fits };
      if (choose) {
        const { proof } = bestBuilds({ brief, solver, atMost: of });
        if (proof.outcome !== 'optimal') throw new Error(`${of} of each: ${proof.outcome}`);
      } else {
        const batched = { ...brief, batches: batchesOf(stock), clock: solver.clock };
        const { draft, values, least } = search({ brief: batched, solver, atMost: of });
        assemble({ ...batched, least }, draft, values);
      }
      return performance.now() - start;
    };
    const times: [chosen: number[], without: number[]] = [[], []];
    for (let run = 0; run < runs; run++) {
      times[0].push(await timed(true));
      times[1].push(await timed(false));
    }
    const ratio = ratioOf(times[0], times[1]);
    const cells = times.map((each) => `${(spreadOf(each).median / 1000).toFixed(2)} s`);
    rows.push([`${of} of each`, ...cells, ...ratioCells(ratio)]);
    last = ratio.median;
  }
  return {
    title: 'plans with the choice among equal plans, beside plans that stop at the tightest margin',
    rows: [['', 'chosen', 'without', 'ratio', 'middle half'], ...rows],
    targets: [
      { name: 'the choice', measured: last, atMost: 2, unit: '× the plan without on the largest' },
    ],
  };
}
