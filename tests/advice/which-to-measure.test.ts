import { planBuilds } from 'crankwright/planning';
import { readShed } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';

const span = (min: string, max: string) => ({ standard: { min, max } });

/** A single with two plain main bearings, of the 1920s say. */
const shed = {
  version: 1,
  shed: 'the barn',
  units: 'inch',
  engine: {
    name: 'stationary engine',
    cylinders: 1,
    mains: 2,
    rodJournals: span('2.1245 in', '2.1250 in'),
    mainJournals: span('2.1245 in', '2.1250 in'),
    bores: span('3.250 in', '3.251 in'),
  },
};

const loose = {
  blocks: [{ name: 'grey block' }],
  crankshafts: [{ name: 'bare crankshaft' }],
  rods: [{ name: 'rod', rods: [{ name: 'rod', housingBore: '2.251 in' }] }],
  pistonSets: [{ name: 'piston' }],
  ringSets: [{ name: 'rings' }],
  shells: [
    { name: 'rod shells', fits: 'rods', pairs: 1 },
    { name: 'odd mains', fits: 'mains', pairs: 1, wall: '0.072 in' },
    { name: 'other mains', fits: 'mains', pairs: 1 },
  ],
  heads: [{ name: 'head' }],
  valveSets: [{ name: 'valves' }],
};

const first = async (more: object, mayBring = 'one more engine') =>
  (await planBuilds(readShed({ ...shed, ...more }))).measureFirst.find(
    ({ mayBring: { kind } }) => kind === mayBring,
  )?.parts;
const coresOf = (parts: Awaited<ReturnType<typeof first>>) => [
  ...new Set(parts?.map(({ core }) => core)),
];

describe('what to measure first, where several lists may bring the same', () => {
  it('is an engine that ran or turns, not one that has seized or threw a rod', async () => {
    const bad = [{ condition: 'seized' }, { happened: ['thrown rod'] }];
    for (const barn of bad) {
      for (const condition of ['ran', 'turns', 'not seen']) {
        const cores = [
          { name: 'barn engine', ...barn },
          { name: 'green engine', condition },
        ];
        expect(coresOf(await first({ cores }))).toEqual(['green engine']);
      }
    }
  });

  it('is parts on the shelf, not those in an engine', async () => {
    const cores = [{ name: 'barn engine', condition: 'turns' }];
    const parts = await first({ ...loose, cores });
    expect(coresOf(parts)).toEqual([undefined]);
    expect(parts?.map(({ name }) => name)).toEqual(
      expect.arrayContaining(['odd mains', 'other mains']),
    );
  });

  it('is the likeliest by its condition, or by the odds of its owner', async () => {
    const named = async (...crankshafts: readonly object[]) => {
      const its = crankshafts.map((each, i) => ({ name: `crankshaft ${i + 1}`, ...each }));
      const parts = await first({ ...loose, crankshafts: its });
      return parts?.find(({ section }) => section === 'crankshafts')?.name;
    };
    expect(await named({ condition: 'seized' }, { condition: 'turns' })).toBe('crankshaft 2');
    expect(await named({}, { condition: 'ran' })).toBe('crankshaft 2');
    expect(await named({ odds: '40 %' }, { odds: '45 %' })).toBe('crankshaft 2');
    // What happened to it counts more than that it ran.
    const accident = { condition: 'ran', happened: ['thrown rod'] };
    expect(await named(accident, { condition: 'turns' })).toBe('crankshaft 2');
    expect(await named({ ...accident, odds: '90 %' }, { condition: 'turns' })).toBe('crankshaft 1');
    // A mark decides only between parts that are as likely: the shells on the shelf are of steps that nobody knows.
    expect(await named({ odds: '60 %' }, { odds: '50 %', marks: 'STD' })).toBe('crankshaft 1');
  });
});

describe('what to measure first, of parts of several donors', () => {
  const shells = [
    { name: 'rod 10', fits: 'rods', undersize: '10 under', pairs: 2 },
    { name: 'rod 20', fits: 'rods', undersize: '20 under', pairs: 2 },
    { name: 'main 10', fits: 'mains', undersize: '10 under', pairs: 2 },
    { name: 'main std', fits: 'mains', undersize: 'standard', pairs: 2 },
  ];
  const ofDonors = (section: string) =>
    ['donor B', 'donor C'].map((from) => ({ name: `${section} ${from.slice(-1)}`, from }));
  const named = async (crankshafts: readonly object[]) => {
    const blocks = ofDonors('block');
    const rods = ofDonors('rods');
    const parts = await first({ ...loose, blocks, rods, crankshafts, shells });
    return parts?.map(({ name }) => name) ?? [];
  };

  it('is the shells of the step that the crankshaft is marked as', async () => {
    const names = await named([{ name: 'crankshaft D', marks: ['.020'] }]);
    expect(names).toContain('rod 20');
    expect(names).not.toContain('rod 10');
  });

  it('is the crankshaft of whose mark there are shells for rods and mains', async () => {
    const names = await named([
      { name: 'crankshaft D', marks: ['.020'] },
      { name: 'crankshaft C', marks: ['10 under'], from: 'donor C' },
    ]);
    expect(names).toEqual(expect.arrayContaining(['crankshaft C', 'rod 10', 'main 10']));
    // Block B and rods B would do as well, and are not of its engine.
    expect(names).toEqual(expect.arrayContaining(['block C', 'rods C']));
  });
});
