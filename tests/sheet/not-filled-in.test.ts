import { inspect, newSheet, readSheet, report } from 'crankwright/sheet';
import { describe, expect, it } from 'vitest';
import { flowing } from '../pages/pages.js';
import { refusal } from '../quantities/refusal.js';

interface Place {
  readonly name: string;
  readonly journal?: { readings: object };
  readonly bore?: { readings: object };
  housingBore?: string | null;
}

type Template = Record<string, Place[]>;

/** A new sheet with the x- taken off, as its notes tell. */
function template(): Template & Record<string, unknown> {
  const written = newSheet({ name: 'twin', units: 'inch', cylinders: 2, mains: 2 });
  const named = Object.entries(written).map(([key, value]) => [
    /^x-(rods|mains|cylinders)$/.test(key) ? key.slice(2) : key,
    value,
  ]);
  return JSON.parse(JSON.stringify(Object.fromEntries(named)));
}

const crankshaft = {
  rodJournals: { standard: { min: '1.6245 in', max: '1.6250 in' } },
};

const shells = [
  { name: 'rod std', fits: 'rods', undersize: 'standard', wall: '0.0621 in', pairs: 2 },
];

/** The second rod read, the first as the template has it. */
function secondRodRead(housingBore: string | null) {
  const { rods = [], ...sheet } = template();
  const [first, second] = rods as [Place, Place];
  Object.assign(second.journal?.readings ?? {}, {
    stations: ['0.25 in', '1 in'],
    diameters: [
      ['1.6248 in', '1.6248 in', '1.6248 in'],
      ['1.6248 in', '1.6248 in', '1.6248 in'],
    ],
  });
  return { ...sheet, crankshaft, rods: [first, { ...second, housingBore }] };
}

describe('what a new sheet holds and nobody filled in', () => {
  it('counts as not measured, by name', () => {
    const inspection = inspect(readSheet(secondRodRead('1.7507 in')));
    expect(inspection.rods?.bearings.map(({ name }) => name)).toEqual(['rod 2']);
    expect(flowing(report(inspection))).toContain(
      'Not measured, so not judged: rod 1; main 1; main 2; cylinder 1; cylinder 2; mains;',
    );
  });

  it('is no reason to ask for the size of the journals', () => {
    const sheet = readSheet(template());
    expect(sheet.notFilledIn).toEqual({
      rods: [{ name: 'rod 1' }, { name: 'rod 2' }],
      mains: [{ name: 'main 1' }, { name: 'main 2' }],
      cylinders: [{ name: 'cylinder 1' }, { name: 'cylinder 2' }],
    });
    expect(report(inspect(sheet))).toContain('Nothing was measured yet.');
  });

  it('is where it was, to a mistake behind it', () => {
    expect(refusal(() => readSheet(secondRodRead('17.507 in')))).toMatchObject({
      problems: [{ path: expect.stringMatching(/^rods\[1\]\.housingBore/) }],
    });
  });

  it('counts so where something else than a reading was filled in, and what was is still checked', () => {
    const { rods = [], ...sheet } = template();
    const rodNamed = (fittedShells: string) =>
      readSheet({ ...sheet, crankshaft, shells, rods: [{ ...rods[0], fittedShells }] });
    expect(rodNamed('rod std').notFilledIn?.rods).toEqual([
      { name: 'rod 1', lacks: 'its journal' },
    ]);
    expect(refusal(() => rodNamed('rod 10'))).toMatchObject({
      problems: [{ path: 'rods[0].fittedShells' }],
    });
  });

  it('has a name: without one it is a mistake', () => {
    const { rods = [], ...sheet } = template();
    const { name: _, ...nameless } = rods[0] as Place;
    expect(refusal(() => readSheet({ ...sheet, crankshaft, rods: [nameless] }))).toMatchObject({
      problems: expect.arrayContaining([expect.objectContaining({ path: 'rods[0].name' })]),
    });
  });
});

describe('a place that was read too little to judge it', () => {
  /** The twin of the second rod read, with its first rod read like this. */
  const firstRodRead = (readings: object, changes: object = {}) => {
    const { rods, ...sheet } = secondRodRead('1.7507 in');
    const [first, second] = rods as [Place, Place];
    const table = { ...first.journal?.readings, ...readings };
    return { ...sheet, rods: [{ ...first, journal: { readings: table }, ...changes }, second] };
  };
  const ONE_STATION = {
    stations: ['0.25 in', null],
    diameters: [
      [1.6246, 1.6246, 1.6245],
      [null, null, null],
    ],
  };

  it('is not measured, and the report names what it lacks; the others are judged', () => {
    const inspection = inspect(readSheet(firstRodRead(ONE_STATION, { housingBore: '1.7506 in' })));
    expect(inspection.rods?.bearings.map(({ name }) => name)).toEqual(['rod 2']);
    expect(flowing(report(inspection))).toContain('not judged: rod 1: a second station; main 1;');
  });

  it('may be without its housing, and lack an angle, or be a cylinder', () => {
    const oneAngle = { angles: ['0 deg'], stations: [0.25, 1], diameters: [[1.6246], [1.6246]] };
    expect(readSheet(firstRodRead(oneAngle)).notFilledIn?.rods).toEqual([
      { name: 'rod 1', lacks: 'a second angle' },
    ]);
    const bore = { readings: [{ station: '1 in', angle: '0 deg', diameter: '3.0004 in' }] };
    const cylinders = [{ name: 'cylinder 1', bore }];
    expect(readSheet({ ...secondRodRead('1.7507 in'), cylinders }).notFilledIn?.cylinders).toEqual([
      { name: 'cylinder 1', lacks: 'a second station and a second angle' },
    ]);
  });

  it('hides no mistake in it', () => {
    const { problems } = refusal(() =>
      readSheet(firstRodRead(ONE_STATION, { housingBore: '1.7506' })),
    ) as unknown as { problems: readonly { path: string }[] };
    expect(problems.map(({ path }) => path)).toContain('rods[0].housingBore');
  });

  it('may lack an angle at one of its stations', () => {
    const diameters = [
      [1.6246, 1.6246, 1.6245],
      [1.6246, null, null],
    ];
    const sheet = readSheet(firstRodRead({ stations: [0.25, 1], diameters }));
    expect(sheet.notFilledIn?.rods).toEqual([
      { name: 'rod 1', lacks: 'a second angle at station 1.0000 in' },
    ]);
  });
});

describe('a place that was read, but not all of it', () => {
  it('is judged, and what is lacking is named: a cell of its table', () => {
    const { rods, ...sheet } = secondRodRead('1.7507 in');
    const table = {
      unit: 'in',
      angles: ['0 deg', '60 deg', '120 deg'],
      stations: [0.25, 1],
      diameters: [
        [1.6246, 1.6244, 1.6245],
        [1.6246, null, 1.6245],
      ],
    };
    const second = { ...rods[1], journal: { readings: table } };
    const inspection = inspect(readSheet({ ...sheet, rods: [second] }));
    // The smallest diameter is the one read at the angle that one station lacks.
    expect(inspection.rods?.bearings[0]?.shape.smallest).toBeCloseTo(1.6244 * 0.0254, 12);
    expect(flowing(report(inspection))).toContain('rod 2: its taper at 60 deg;');
  });

  it.each(['null', 'not there'])(
    'is judged as far as its journal where the housing is %s',
    (bore) => {
      const read = secondRodRead(null);
      const [, second] = read.rods as [Place, Place];
      if (bore === 'not there') delete second.housingBore;
      const first = { ...structuredClone(second), name: 'rod 1', housingBore: '1.7507 in' };
      for (const each of [first, second]) Object.assign(each, { fittedShells: 'rod std' });
      const sheet = readSheet({ ...read, shells, rods: [first, second] });
      const { rods } = inspect(sheet);
      expect(rods?.bearings.map(({ withoutHousing }) => withoutHousing)).toEqual([undefined, true]);
      // Both journals stay; the pair that was found in the second is not told to fit, nor another one bought for it.
      expect(rods?.plan.outcome).toBe('use as it is');
      expect(rods?.bearings.map(({ fitted, shells }) => [fitted, shells].map(Boolean))).toEqual([
        [true, true],
        [false, false],
      ]);
      expect(rods?.pairsToBuy).toBe(0);
      const told = flowing(report(inspect(sheet)));
      expect(told).toContain(
        'measure the housing bore of rod 2, cap torqued and no shells in it: without it no clearance is judged and no shells are chosen',
      );
      expect(told).toContain('rod 2: its housing bore, and so its clearance;');
    },
  );

  it('is a bearing of which only the housing was measured', () => {
    const { rods, ...sheet } = secondRodRead('1.7507 in');
    const first = { ...rods[0], housingBore: '1.7507 in' };
    expect(readSheet({ ...sheet, rods: [first, rods[1]] }).notFilledIn?.rods).toEqual([
      { name: 'rod 1', lacks: 'its journal' },
    ]);
  });
});
