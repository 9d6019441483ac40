import { randomLcg, randomNormal, randomUniform } from 'd3-random';
import { mustAgree, raceBeside, timeCell } from './beside.js';
import { micrometre, mm, pickShims, selectFit, stackUp } from './built.js';
import type { Section } from './report.js';
import { spreadOf } from './spread.js';

const LIMIT = 0.04;
const sizes = [
  { name: 'bore', size: { min: mm(87.2), max: mm(87.25) } },
  {
    name: 'piston',
    size: { min: mm(87.165), max: mm(87.215) },
    sensitivity: -1,
    distribution: { kind: 'normal', sigmas: 3 },
  },
  {
    name: 'coating',
    size: { min: mm(0.01), max: mm(0.02) },
    sensitivity: -2,
    distribution: { kind: 'normal', sigmas: 3 },
  },
] as const;

function ours(draws: number, seed: number): number {
  const limits = { max: mm(LIMIT) };
  const method = { kind: 'Monte Carlo', seed, draws, limits } as const;
  const { quantiles, outside, standardDeviation } = stackUp(sizes, method);
  const share = outside?.share ?? Number.NaN;
  return quantiles.reduce((sum, { value }) => sum + value, share + standardDeviation);
}

/** The same stack [mm] with a general library's draws, and the quantiles by the sort of the language. */
function byD3(draws: number, seed: number): number {
  const source = randomLcg(seed);
  const bore = randomUniform.source(source)(87.2, 87.25);
  const piston = randomNormal.source(source)(87.19, 0.05 / 6);
  const coating = randomNormal.source(source)(0.015, 0.01 / 6);
  const stacks = new Float64Array(draws);
  let [above, sum] = [0, 0];
  for (let i = 0; i < draws; i++) {
    const stack = bore() - piston() - 2 * coating();
    stacks[i] = stack;
    sum += stack;
    if (stack > LIMIT) above++;
  }
  const mean = sum / draws;
  let squares = 0;
  for (const stack of stacks) squares += (stack - mean) ** 2;
  stacks.sort();
  const shares = [0.005, 0.05, 0.5, 0.95, 0.995];
  const quantiles = shares.map((share) => stacks[Math.round(share * (draws - 1))] ?? Number.NaN);
  const inMetres = [Math.sqrt(squares / (draws - 1)), ...quantiles].map((value) => value / 1000);
  return inMetres.reduce((so, value) => so + value, above / draws);
}

const shelf = Array.from({ length: 40 }, (_, i) => ({
  name: `shim ${i}`,
  thickness: micrometre(100 + ((i * 7919) % 997)),
}));
const fit = {
  places: Array.from({ length: 32 }, (_, i) => ({
    name: `bore ${i}`,
    room: micrometre(80_040 + ((i * 7919) % 61)),
  })),
  parts: Array.from({ length: 64 }, (_, i) => ({
    name: `piston ${i}`,
    size: micrometre(80_000 + ((i * 104_729) % 67)),
  })),
  limits: { min: micrometre(20), max: micrometre(60) },
};

/** Stacks of random parts beside a general library's, and choices of parts. */
export function raceStacks(): readonly Section[] {
  mustAgree('d3-random', byD3(200_000, 0.5), ours(200_000, 1), 0.02);
  let seed = 0;
  const beside = raceBeside({
    title:
      'a stack of three random parts, 100 000 times: share outside, deviation and five quantiles',
    calls: 1,
    ours: { name: 'crankwright  stackUp(sizes, method)', pass: () => ours(100_000, seed++) },
    peers: [{ name: 'd3-random, Float64Array.sort', pass: () => byD3(100_000, 1 / ++seed) }],
    target: { name: 'stackUp', atMost: 0.7 },
  });
  const timed = [
    { name: 'a stack of three parts, 1 000 000 times', atMost: 200, run: () => ours(1_000_000, 1) },
    {
      name: 'pickShims from 40',
      atMost: 50,
      // No stack lies between two whole micrometres, so that every number of shims is tried.
      run: () => pickShims(shelf, { min: micrometre(7000.2), max: micrometre(7000.4) }),
    },
    { name: 'selectFit, 32 places and 64 parts', atMost: 100, run: () => selectFit(fit) },
  ].map((one) => ({ ...one, median: spreadOf(runs(one.run)).median }));
  return [
    beside,
    {
      title: 'choices and draws: time of one call',
      rows: [['', 'time'], ...timed.map(({ name, median }) => [name, timeCell(median)])],
      targets: timed.map(({ name, median, atMost }) => ({
        name,
        measured: median,
        atMost,
        unit: 'ms',
      })),
    },
  ];
}

/** How long some runs take [ms]. */
function runs(run: () => unknown): readonly number[] {
  return Array.from({ length: 9 }, () => {
    const start = performance.now();
    run();
    return performance.now() - start;
  });
}
