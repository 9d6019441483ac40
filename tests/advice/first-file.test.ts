import { planBuilds, planReport } from 'crankwright/planning';
import { readShed } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';

// The first file of a restorer: the big castings are listed, hardly any is measured, and there are neither rings nor
// shells. The plan once put nothing under MEASURE FIRST, and asked for shells of standard size.

const twin = {
  name: 'twin',
  cylinders: 2,
  mains: 2,
  rodJournals: { standard: { min: '1.6245 in', max: '1.6250 in' } },
  mainJournals: { standard: { min: '1.9995 in', max: '2.0000 in' } },
  bores: { standard: { min: '3.0000 in', max: '3.0005 in' } },
  alsoNeeds: [],
};
const file = {
  version: 1,
  shed: 'the barn',
  units: 'inch',
  engine: twin,
  blocks: [{ name: 'block A' }, { name: 'block B' }],
  crankshafts: [{ name: 'crankshaft A' }],
  rods: [{ name: 'rods A' }],
  pistonSets: [{ name: 'pistons A' }],
};

const flowing = (page: string): string => page.replace(/\s+/g, ' ');
const read = (places: readonly string[], size: string) =>
  places.map((name) => ({
    name,
    readings: {
      angles: ['0 deg', '90 deg'],
      stations: ['0.25 in', '1.00 in'],
      diameters: [
        [size, size],
        [size, size],
      ],
    },
  }));

describe('a shed of castings without rings or shells', () => {
  it('is told what to measure to know what to buy', async () => {
    const plan = await planBuilds(readShed(file));
    expect(plan.proof).toEqual({ outcome: 'optimal' });
    const [first] = plan.measureFirst;
    expect(first?.parts.map(({ name }) => name)).toEqual([
      'block A',
      'crankshaft A',
      'rods A',
      'pistons A',
    ]);
    // Rings go by the bores and the pistons, shells by the journals.
    const shells = { section: 'shells', sizedBy: ['crankshaft A'], count: 2 };
    expect(first?.mayBring).toEqual({
      kind: 'what to buy',
      engines: 1,
      lacks: [
        { section: 'ringSets', sizedBy: ['block A', 'pistons A'], count: 1 },
        { ...shells, fits: 'mains' },
        { ...shells, fits: 'rods' },
      ],
    });
    const page = flowing(planReport(plan));
    expect(page).toContain(
      'To know what to buy for one more engine, measure these: block A: bores (cylinder 1, cylinder 2), with the bore gauge;',
    );
    expect(page).toContain(
      '2 pairs of rod shells of a size to be known once crankshaft A is measured',
    );
    expect(page).not.toContain('of standard size');
  });

  it('names the step that a measured crankshaft must be ground to', async () => {
    // 1.6235 in is 1.0 thou below the least standard size, and out of round by 2: it cleans up at 10 under.
    const worn = (places: readonly string[], size: string, less: string) =>
      read(places, size).map(({ name, readings }) => ({
        name,
        readings: {
          ...readings,
          diameters: [
            [size, less],
            [size, less],
          ],
        },
      }));
    const crankshafts = [
      {
        name: 'crankshaft A',
        rodJournals: worn(['rod 1', 'rod 2'], '1.6240 in', '1.6220 in'),
      },
    ];
    const machining = [
      { work: 'grind rod journals', shop: 'the grinder', price: '10 EUR' },
      { work: 'grind main journals', shop: 'the grinder', price: '10 EUR' },
    ];
    const plan = await planBuilds(readShed({ ...file, crankshafts, machining }));
    const mayBring = plan.measureFirst[0]?.mayBring;
    expect(mayBring?.kind === 'what to buy' && mayBring.lacks.slice(1)).toEqual([
      { section: 'shells', fits: 'mains', sizedBy: ['crankshaft A'], count: 2 },
      { section: 'shells', fits: 'rods', step: 0.000254, count: 2 },
    ]);
  });
});
