import type { Shed } from 'crankwright/shed';
import { ratioCells, type Section } from './report.js';
import { generatedShed } from './shed.js';
import { ratioOf, spreadOf } from './spread.js';

/** So many of each part, and how often both plans are made. */
const SHEDS = [
  { of: 5, runs: 7 },
  { of: 10, runs: 5 },
  { of: 20, runs: 5 },
] as const;

/** Of so many blocks, crankshafts, sets of rods and lots of shells, one was not measured. */
const ONE_OF = 5;

/** Plans of sheds of which a fifth was not measured, with what to measure first, beside plans of the same sheds all measured. */
export async function raceUnknown(): Promise<Section> {
  const file = new URL('../dist/planning.js', import.meta.url);
  const { planBuilds }: typeof import('crankwright/planning') = await import(file.href);
  const timed = async (shed: Shed) => {
    const start = performance.now();
    const plan = await planBuilds(shed);
    const time = performance.now() - start;
    if (plan.proof.outcome !== 'optimal') throw new Error(`${shed.shed}: ${plan.proof.outcome}`);
    return { time, plan };
  };
  const rows: string[][] = [];
  let last = Number.NaN;
  for (const { of, runs } of SHEDS) {
    const shed = generatedShed(of, 1);
    const unknown = withAFifthUnknown(shed);
    const times: [unknown: number[], known: number[]] = [[], []];
    let found = '';
    for (let run = 0; run < runs; run++) {
      const { time, plan } = await timed(unknown);
      times[0].push(time);
      times[1].push((await timed(shed)).time);
      found = `${plan.builds.length} … ${plan.mayBe?.engines ?? plan.builds.length}`;
    }
    const ratio = ratioOf(times[0], times[1]);
    const cells = times.map((each) => `${(spreadOf(each).median / 1000).toFixed(2)} s`);
    rows.push([`${of} of each`, found, ...cells, ...ratioCells(ratio)]);
    last = ratio.median;
  }
  return {
    title:
      'plans of sheds of which a fifth was not measured, beside plans of the same sheds, all measured',
    rows: [['', 'engines', 'a fifth unknown', 'all known', 'ratio', 'middle half'], ...rows],
    targets: [
      { name: 'the unknown', measured: last, atMost: 3, unit: '× the plan without on the largest' },
    ],
  };
}

/** The shed, with nothing measured of every fifth block, crankshaft, set of rods and lot of shells. */
function withAFifthUnknown(shed: Shed): Shed {
  const isUnknown = (i: number) => i % ONE_OF === ONE_OF - 1;
  const without = <P extends object>(parts: readonly P[] | undefined, ...fields: (keyof P)[]) =>
    parts?.map((part, i) =>
      isUnknown(i)
        ? (Object.fromEntries(
            Object.entries(part).filter(([key]) => !fields.some((field) => field === key)),
          ) as P)
        : part,
    ) ?? [];
  return {
    ...shed,
    blocks: without(shed.blocks, 'bores', 'mainHousings', 'thrustWidth'),
    crankshafts: without(shed.crankshafts, 'rodJournals', 'mainJournals', 'thrustWidth'),
    rods: without(shed.rods, 'rods'),
    shells: without(shed.shells, 'wall'),
  };
}
