import { FitTable } from '../src/planning/fit-table.js';
import { formulate } from '../src/planning/formulate.js';
import type { Kind } from '../src/planning/kinds.js';
import { loadSolver } from '../src/planning/load-solver.js';
import { sumOfTerms } from '../src/planning/model.js';
import { type Stock, stockOf } from '../src/planning/stock.js';
import { needsOf } from '../src/shed/needs.js';
import type { Section } from './report.js';
import { generatedShed } from './shed.js';
import { ratioOf, spreadOf } from './spread.js';

/** So many of each part, and how often each formulation is solved. */
const BESIDE_TEXTBOOK = [
  { of: 4, runs: 7 },
  { of: 8, runs: 5 },
  { of: 12, runs: 3 },
] as const;

/** So many of each part, and how often a whole plan is made. */
const WHOLE_PLANS = [
  { of: 5, runs: 9 },
  { of: 20, runs: 5 },
  { of: 50, runs: 3 },
  { of: 100, runs: 3 },
] as const;

/** Plans of generated sheds: our formulation beside the textbook's, and whole plans of growing sheds. */
export async function timePlans(): Promise<readonly Section[]> {
  return [await besideTextbook(), await wholePlans()];
}

/**
 * The most engines of a shed, proven by the same solver. The textbook has a variable for each part in each
 * engine; ours counts parts that are alike, in engines that are alike.
 */
async function besideTextbook(): Promise<Section> {
  const rows: string[][] = [];
  let last = Number.NaN;
  for (const { of, runs } of BESIDE_TEXTBOOK) {
    const shed = generatedShed(of, 1);
    const { engine } = shed;
    const stock = stockOf(shed, { buying: false, reserved: [], mustBuild: [] });
    const slots = Array.from({ length: of }, (_, index) => ({ index, single: true }) as const);
    const ours = () => mostEngines(stock, [{ index: 0 }]);
    const textbook = () => mostEngines(apart(stock), slots);
    const mostEngines = async (
      parts: Stock,
      batches: Parameters<typeof formulate>[0]['batches'],
    ) => {
      const solver = await loadSolver({});
      const start = performance.now();
      const fits = new FitTable(engine, parts.shells);
      const { model, engines } = formulate({
        engine,
        needed: needsOf(shed),
        stock: parts,
        fits,
        least: -Infinity,
        batches,
      });
      const solved = solver.solve('most engines', model, { goal: 'most', of: engines });
      if (solved.status !== 'optimal') throw new Error(`${of} of each: ${solved.status}`);
      const time = performance.now() - start;
      return { time, variables: model.bounds.length, found: sumOfTerms(engines, solved.values) };
    };
    const times: [ours: number[], textbook: number[]] = [[], []];
    for (let run = 0; run < runs; run++) {
      const [a, b] = [await ours(), await textbook()];
      if (a.found !== b.found) throw new Error(`${of} of each: ${a.found} and ${b.found} engines`);
      times[0].push(a.time);
      times[1].push(b.time);
      if (run > 0) continue;
      rows.push([`${of} of each`, `${a.found}`, `${a.variables}`, `${b.variables}`]);
    }
    const ratio = ratioOf(times[1], times[0]);
    const cells = times.map((each) => `${(spreadOf(each).median / 1000).toFixed(3)} s`);
    last = ratio.median;
    rows.at(-1)?.push(...cells, `${ratio.median.toFixed(1)} ×`);
  }
  return {
    title:
      'the most engines of a shed, proven: our formulation beside one variable for each part in each engine',
    rows: [['', 'engines', 'variables', 'textbook', 'ours', 'textbook', 'beside ours'], ...rows],
    targets: [
      { name: 'ours', measured: 1 / last, atMost: 0.1, unit: '× the textbook on the largest' },
    ],
  };
}

/** Every part a kind of its own, but washers and shells that stand in the file as a number. */
function apart(stock: Stock): Stock {
  const each = <R>(kinds: readonly Kind<R>[]): readonly Kind<R>[] =>
    kinds.flatMap((kind) =>
      Array.from({ length: kind.count }, (): Kind<R> => ({ ...kind, count: 1 })),
    );
  return {
    blocks: each(stock.blocks),
    crankshafts: each(stock.crankshafts),
    rods: each(stock.rods),
    pistonSets: each(stock.pistonSets),
    ringSets: each(stock.ringSets),
    shells: each(stock.shells),
    thrustWashers: stock.thrustWashers,
    heads: each(stock.heads),
    valveSets: each(stock.valveSets),
    otherParts: each(stock.otherParts),
  };
}

/** Plans of growing sheds, to the proof that nothing is better. */
async function wholePlans(): Promise<Section> {
  const file = new URL('../dist/planning.js', import.meta.url);
  const { planBuilds }: typeof import('crankwright/planning') = await import(file.href);
  const timed = async (of: number) => {
    const shed = generatedShed(of, 1);
    const start = performance.now();
    const plan = await planBuilds(shed);
    const seconds = (performance.now() - start) / 1000;
    if (plan.proof.outcome !== 'optimal') throw new Error(`a shed of ${of} of each was not proven`);
    return { seconds, engines: plan.builds.length };
  };
  const load = await timed(0);
  const rows: string[][] = [];
  let before: { of: number; median: number } | undefined;
  for (const { of, runs } of WHOLE_PLANS) {
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
    before = { of, median };
  }
  return {
    title: `whole plans of generated sheds, proven: solver loaded in ${load.seconds.toFixed(2)} s, then`,
    rows: [['', 'engines', 'time', 'middle half', 'growth'], ...rows],
    targets: [],
  };
}
