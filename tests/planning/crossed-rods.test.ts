import { buildSheet } from 'crankwright/build-sheet';
import { planBuilds, planReport } from 'crankwright/planning';
import { readShed } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import { flowing } from '../pages/pages.js';
import { BARE_TWIN } from '../shed/sheds.js';

const round = (size: string) => ({
  angles: ['0 deg', '60 deg', '120 deg'],
  stations: ['0.25 in', '1 in'],
  diameters: [
    [size, size, size],
    [size, size, size],
  ],
});

/** Rod 2 with the larger housing; the journals of the sizes given. */
const planOf = (journals: readonly string[], from = 'donor A') =>
  planBuilds(
    readShed({
      version: 1,
      shed: 'the barn',
      units: 'inch',
      engine: { ...BARE_TWIN, alsoNeeds: [] },
      blocks: [
        {
          name: 'block A',
          bores: ['cylinder 1', 'cylinder 2'].map((name) => ({
            name,
            readings: round('3.0003 in'),
          })),
        },
      ],
      crankshafts: [
        {
          name: 'crankshaft A',
          from,
          rodJournals: journals.map((size, i) => ({
            name: `rod ${i + 1}`,
            readings: round(size),
          })),
        },
      ],
      rods: [
        {
          name: 'rods A',
          from: 'donor A',
          rods: [
            { name: 'rod A1', housingBore: '1.7507 in' },
            { name: 'rod A2', housingBore: '1.7510 in' },
          ],
        },
      ],
      pistonSets: [
        {
          name: 'pistons A',
          oversize: 'standard',
          pistons: [
            { name: 'piston 1', diameter: '2.9973 in' },
            { name: 'piston 2', diameter: '2.9973 in' },
          ],
        },
      ],
      ringSets: [{ name: 'rings A', oversize: 'standard' }],
      shells: [
        { name: 'rod std', fits: 'rods', undersize: 'standard', wall: '0.0620 in', pairs: 2 },
      ],
    }),
  );

describe('rods that a plan crosses', () => {
  const SAID =
    'Of rods A, rod A1 on rod 2 and rod A2 on rod 1 are not in the order of the file: the clearances come out better so. If the rods are offset, or must stay by their numbers, put each on its own journal, and check the clearances there.';

  it('are named, in the plan and on the build sheet', async () => {
    // In order 1.7507 - 0.1240 - 1.6248 = 0.0019 and 1.7510 - 0.1240 - 1.6245 = 0.0025 in; crossed 0.0022 in both.
    const plan = await planOf(['1.6248 in', '1.6245 in']);
    expect(plan.builds[0]?.bearings.map(({ crossed }) => crossed)).toEqual([true, true]);
    expect(flowing(planReport(plan))).toContain(SAID);
    expect(flowing(buildSheet(plan, { format: 'text' }))).toContain(SAID);
  });

  it('may stay where that gains no more than a micrometer tells', async () => {
    // In order 0.00200 and 0.00235 in, crossed 0.00230 and 0.00205 in: 0.00005 in further from a limit.
    const plan = await planOf(['1.62470 in', '1.62465 in']);
    expect(plan.builds[0]?.bearings.map(({ crossed }) => crossed)).toEqual([true, true]);
    const said =
      'are not in the order of the file: that gains no more than the readings tell. Each may as well stay on its own journal';
    expect(flowing(planReport(plan))).toContain(said);
    expect(flowing(buildSheet(plan, { format: 'text' }))).toContain(said);
  });

  it('are not where each goes on its own journal', async () => {
    const plan = await planOf(['1.6245 in', '1.6248 in']);
    expect(plan.builds).toHaveLength(1);
    expect(plan.builds[0]?.bearings.some(({ crossed }) => crossed)).toBe(false);
    expect(planReport(plan)).not.toContain('order of the file:');
  });

  it('are not on a crankshaft of another engine, which has no rods of its own here', async () => {
    const plan = await planOf(['1.6248 in', '1.6245 in'], 'donor B');
    expect(plan.builds).toHaveLength(1);
    expect(plan.builds[0]?.bearings.some(({ crossed }) => crossed)).toBe(false);
  });
});
