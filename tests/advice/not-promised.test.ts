import { planBuilds, planReport } from 'crankwright/planning';
import { describePart, readShed, triage } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import { flowing } from '../pages/pages.js';
import { BARE_TWIN } from '../shed/sheds.js';

// One engine of which everything is good, but for what a test changes.

const read = (size: number, odd = size) => ({
  unit: 'in',
  angles: ['0 deg', '60 deg', '120 deg'],
  stations: [0.25, 0.75, 1.0],
  diameters: [
    [size, size, size],
    [size, odd, size],
    [size, size, size],
  ],
});
const grinding = { work: 'grind rod journals', shop: 'the grinder', price: '40 EUR' };

interface Given {
  readonly rodJournals?: readonly object[];
  readonly bores?: readonly object[];
  readonly machining?: readonly object[];
  readonly pistons?: string;
  readonly shells?: readonly object[];
}

const soundJournals = [
  { name: 'rod 1', readings: read(1.6248) },
  { name: 'rod 2', readings: read(1.6248) },
];
const pairs = (name: string, undersize: string, wall: string) => ({
  name,
  fits: 'rods',
  undersize,
  wall,
  pairs: 2,
});

const shedOf = ({ rodJournals, bores, machining = [], pistons, shells }: Given) =>
  readShed({
    version: 1,
    shed: 'the barn',
    units: 'inch',
    engine: { ...BARE_TWIN, alsoNeeds: [] },
    blocks: [
      {
        name: 'block A',
        bores: bores ?? [
          { name: 'cylinder 1', readings: read(3.0003) },
          { name: 'cylinder 2', readings: read(3.0003) },
        ],
      },
    ],
    crankshafts: [{ name: 'crankshaft A', rodJournals: rodJournals ?? soundJournals }],
    rods: [
      {
        name: 'rods A',
        rods: [
          { name: 'rod 1', housingBore: '1.7507 in' },
          { name: 'rod 2', housingBore: '1.7507 in' },
        ],
      },
    ],
    pistonSets: [
      {
        name: 'pistons A',
        oversize: 'standard',
        pistons: [
          { name: 'piston 1', diameter: pistons ?? '2.9973 in' },
          { name: 'piston 2', diameter: '2.9973 in' },
        ],
      },
    ],
    ringSets: [{ name: 'rings A', oversize: 'standard' }],
    shells: shells ?? [pairs('rod std', 'standard', '0.0620 in')],
    ...(machining.length > 0 && { machining }),
  });

const planned = async (given: Given) => {
  const plan = await planBuilds(shedOf(given));
  return { plan, page: flowing(planReport(plan)) };
};
const partOf = (given: Given, name: string) => {
  const part = triage(shedOf(given)).parts.find((each) => each.name === name);
  if (part === undefined) throw new Error(`no ${name}`);
  return part;
};
const said = (given: Given, name: string) =>
  describePart(partOf(given, name), { units: 'inch' }).join('\n');

describe('the engine of these tests', () => {
  it('is complete as it is', async () => {
    expect((await planned({})).plan.builds).toHaveLength(1);
  });
});

describe('a journal that is scored and was not measured', () => {
  const scored = [soundJournals[0] as object, { name: 'rod 2', faults: ['scored'] }];
  const twenty = [
    pairs('rod std', 'standard', '0.0620 in'),
    pairs('rod 20', '20 under', '0.0720 in'),
  ];

  it('is said to need the grinder before it is measured', () => {
    const text = said({ rodJournals: scored }, 'crankshaft A');
    expect(text).toContain('undecided until it is measured');
    expect(text).toContain(
      'scored on rod 2; rod 2 must be ground; if a fingernail does not catch in it, polish it instead, measure it, and take the fault off the list',
    );
  });

  it('promises no engine where no shop grinds, however it measures', async () => {
    const { plan, page } = await planned({ rodJournals: scored, shells: twenty });
    expect(plan.builds).toHaveLength(0);
    expect(plan.mayBe).toBeUndefined();
    expect(plan.measureFirst.flatMap(({ parts }) => parts.map(({ name }) => name))).not.toContain(
      'crankshaft A',
    );
    expect(page).not.toContain('if 1 part not yet measured proves good');
  });

  it('may make an engine where a shop grinds it, with shells of that size, and the grinding is paid for', async () => {
    const { plan } = await planned({
      rodJournals: scored,
      shells: twenty,
      machining: [grinding],
    });
    expect(plan.mayBe?.engines).toBe(1);
    // Two journals: the price is for each.
    expect(plan.mayBe?.cost).toMatchObject({ amount: 80 });
  });

  it('may make none with standard shells alone', async () => {
    const { plan } = await planned({ rodJournals: scored, machining: [grinding] });
    expect(plan.mayBe).toBeUndefined();
  });

  it('keeps its engine where it is not scored: measuring may make it', async () => {
    const bare = [soundJournals[0] as object, { name: 'rod 2' }];
    expect((await planned({ rodJournals: bare })).plan.mayBe?.engines).toBe(1);
  });
});

describe('a bore that is scored and was not measured', () => {
  const scored = [
    { name: 'cylinder 1', readings: read(3.0003) },
    { name: 'cylinder 2', faults: ['scored'] },
  ];

  it('promises no engine with pistons of standard size', async () => {
    const boring = { work: 'bore', shop: 'the grinder', price: '50 EUR' };
    const { plan } = await planned({ bores: scored, machining: [boring] });
    expect(plan.builds).toHaveLength(0);
    expect(plan.mayBe).toBeUndefined();
  });

  it('promises one where it is not scored', async () => {
    const bare = [scored[0] as object, { name: 'cylinder 2' }];
    expect((await planned({ bores: bare })).plan.mayBe?.engines).toBe(1);
  });
});

describe('a crankshaft that no shop on the list grinds', () => {
  const worn = [
    { name: 'rod 1', readings: read(1.6248) },
    { name: 'rod 2', faults: ['scored'], readings: read(1.6248) },
  ];

  it('is told beside the crankshaft that one more engine needs', async () => {
    const { plan, page } = await planned({ rodJournals: worn });
    expect(plan.leftOver.find(({ name }) => name === 'crankshaft A')).toMatchObject({
      why: 'not as it is',
      noShopFor: ['grind rod journals'],
    });
    expect(page).toContain(
      'One more engine needs: 1 crankshaft; see THE NEXT ENGINE for what may do instead.',
    );
    expect(page).toContain(
      'What is left over may do instead, after work that no shop on the list offers: crankshaft A (grinding rod journals). Ask a shop, and put its price under machining.',
    );
    expect(page).toContain(
      'Kept aside, as no shop on the list does the work that puts it right: crankshaft A (crankshaft; scored; needs grinding rod journals; not crack-tested)',
    );
  });
});

describe('an odd reading of a part that comes first', () => {
  it('is among what to measure first', async () => {
    const bores = [
      { name: 'cylinder 1', readings: read(3.0003) },
      { name: 'cylinder 2', readings: read(3.0003, 3.0103) },
    ];
    const { page } = await planned({ bores });
    expect(page).toMatch(
      /MEASURE FIRST .* block A: [^;]*cylinder 2: read this one again, at station 0\.7500 in, angle 60 deg: 3\.0103 in/,
    );
  });
});

describe('a crankshaft left over', () => {
  it('is named with the fault of its journal, though that was measured, and with what its engine did', async () => {
    const shed = shedOf({});
    const [good, rods] = [shed.crankshafts?.[0], shed.rods?.[0]];
    if (!good || !rods) throw new Error('the shed has a crankshaft and rods');
    const [one, two] = good.rodJournals ?? [];
    const scored = {
      ...good,
      name: 'crankshaft B',
      from: 'engine B',
      rodJournals: [{ ...one, faults: ['scored'] }, two],
    };
    const threw = { ...rods, name: 'rods B', from: 'engine B', happened: ['thrown rod'] };
    const all = { ...shed, crankshafts: [good, scored], rods: [rods, threw] } as typeof shed;
    const page = flowing(planReport(await planBuilds(all)));
    expect(page).toContain(
      'crankshaft B (crankshaft; scored; needs grinding rod journals; engine B threw a rod (rods B); not crack-tested)',
    );
  });
});
