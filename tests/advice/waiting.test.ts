import { readShed, triage } from 'crankwright/shed';
import { actionsFrom, describeAction, inspect, readSheet, report } from 'crankwright/sheet';
import { describe, expect, it } from 'vitest';
import { flowing } from '../pages/pages.js';
import { BARE_TWIN } from '../shed/sheds.js';

// What was misread, or was not measured yet, holds up the work that hangs on it, and says so.

const table = (rows: readonly (readonly number[])[]) => ({
  unit: 'in',
  angles: ['0 deg', '60 deg', '120 deg'],
  stations: rows.map((_, i) => 0.25 + 0.75 * i),
  diameters: rows,
});
const round = (size: number, stations = 2) =>
  table(Array.from({ length: stations }, () => [size, size, size]));
const EMPTY = {
  unit: 'in',
  angles: ['0 deg'],
  stations: [null, null],
  diameters: [[null], [null]],
};

const rod = (name: string, readings: object, more: object = {}) => ({
  name,
  journal: { readings },
  housingBore: '1.7507 in',
  ...more,
});
const cylinder = (name: string, readings: object) => ({ name, bore: { readings } });

const inspected = (fields: object) =>
  inspect(
    readSheet({
      version: 1,
      engine: 'pump set',
      units: 'inch',
      crankshaft: { rodJournals: { standard: { min: '1.6245 in', max: '1.6250 in' } } },
      bores: { standard: { min: '3.0000 in', max: '3.0005 in' } },
      ...fields,
    }),
  );
const said = (fields: object) =>
  actionsFrom(inspected(fields)).flatMap((action) => describeAction(action, { units: 'inch' }));
const kinds = (fields: object) => actionsFrom(inspected(fields)).map(({ kind }) => kind);

/** Oval by 2 thou: it must be ground. */
const oval = rod('rod 2', table([0, 1].map(() => [1.6228, 1.6245, 1.6232])));
const SPENDING = ['grind', 'buy shells', 'fit shells', 'bore'] as const;

describe('a journal that reads above standard', () => {
  // 1.6262 in is 0.0012 in above the largest that a new one may be.
  const grown = rod('rod 1', table([0, 1].map(() => [1.626, 1.6262, 1.6261])));

  it('is read again, as no journal grows, and nothing is ground before that', () => {
    const text = said({ rods: [grown, oval] });
    expect(text[0]).toMatch(
      /^rod 1: read it again, at every place, and set the micrometer against its standard: it reads 0\.0010 in above standard, and no journal grows/,
    );
    expect(text).toContain(
      'grind nothing on the crankshaft and buy no shells before rod 1 is read again',
    );
    for (const kind of SPENDING) expect(kinds({ rods: [grown, oval] })).not.toContain(kind);
  });

  it('is not where it lies within a thou of it', () => {
    expect(kinds({ rods: [rod('rod 1', round(1.6259)), oval] })).not.toContain('odd size');
  });

  it('leaves the crankshaft of a shed undecided', () => {
    const shed = readShed({
      version: 1,
      shed: 'the barn',
      units: 'inch',
      engine: BARE_TWIN,
      crankshafts: [
        {
          name: 'crankshaft A',
          rodJournals: [
            { name: 'rod 1', readings: grown.journal.readings },
            { name: 'rod 2', readings: round(1.6248) },
          ],
        },
      ],
    });
    expect(triage(shed).parts[0]?.disposition).toBe('undecided');
  });
});

describe('a bore that reads round and straight where no step and no wear takes it', () => {
  const fine = cylinder('cylinder 1', round(3.0003, 3));
  const turned = cylinder('cylinder 2', round(3.0254, 3));

  it('is read again before anything is bored or bought', () => {
    const cylinders = [fine, turned];
    const text = said({ cylinders });
    // 3.0254 - 3.0005 = 0.0249 in.
    expect(text[0]).toMatch(
      /^cylinder 2: read it again, at every place: the bore reads round and straight, and yet 0\.0249 in above standard/,
    );
    expect(text).toContain('bore nothing and buy no pistons before cylinder 2 is read again');
    expect(kinds({ cylinders })).not.toContain('bore');
    expect(flowing(report(inspected({ cylinders })))).toContain(
      'Decision: none, as one reads where no step and no wear takes it. See cylinder 2.',
    );
  });

  it('is not at a step, nor 4 thou past one, nor where it is oval', () => {
    const worn = table([0, 1, 2].map(() => [3.0254, 3.0274, 3.0254]));
    for (const readings of [round(3.0204, 3), round(3.0043, 3), worn]) {
      const cylinders = [fine, cylinder('cylinder 2', readings)];
      expect(kinds({ cylinders })).not.toContain('odd bore');
    }
  });

  it('stands once a place was read again, and alike', () => {
    const { unit, angles, stations } = round(3.0254, 3);
    const twice = [[3.0254, 3.0254], 3.0254, 3.0254];
    const diameters = [twice, [3.0254, 3.0254, 3.0254], [3.0254, 3.0254, 3.0254]];
    const cylinders = [fine, cylinder('cylinder 2', { unit, angles, stations, diameters })];
    expect(kinds({ cylinders })).not.toContain('odd bore');
  });
});

describe('a housing that contradicts the shells in it', () => {
  const shells = [
    { name: 'std', fits: 'rods', undersize: 'standard', wall: '0.0620 in', pairs: 2 },
  ];
  const rods = [
    rod('rod 1', round(1.6248), { housingBore: '1.7607 in', fittedShells: 'std' }),
    { ...oval, fittedShells: 'std' },
  ];

  it('holds up the grinder and the shells, and the report says so beside the decision', () => {
    expect(said({ shells, rods })).toContain(
      'grind none of the rod journals and buy no shells for them before rod 1 is read again',
    );
    for (const kind of SPENDING) expect(kinds({ shells, rods })).not.toContain(kind);
    expect(flowing(report(inspected({ shells, rods })))).toContain(
      'Decision: none before rod 1 is read again; by the readings as they are, grind to',
    );
  });
});

describe('a place of the sheet that was not filled in', () => {
  it('is measured before the others of its kind are ground or bored', () => {
    const rods = [rod('rod 1', EMPTY, { housingBore: null }), oval];
    const text = said({ rods });
    const wait = text.indexOf(
      'grind none of the rod journals and buy no shells for them before rod 1 is measured: the rod journals share one size, and that may need a smaller one',
    );
    expect(wait).not.toBe(-1);
    expect(text.findIndex((each) => each.includes('grind the rod journals to'))).toBeGreaterThan(
      wait,
    );
    const worn = cylinder('cylinder 1', table([0, 1, 2].map((i) => [3.009 - i * 0.004, 3.006, 3])));
    const bores = said({ cylinders: [worn, cylinder('cylinder 2', EMPTY)] });
    expect(bores).toContain(
      'bore nothing and buy no pistons before cylinder 2 is measured: all cylinders of one engine share one size, and that may need a larger one',
    );
  });

  it('holds nothing up where nothing is to be done', () => {
    const rods = [rod('rod 1', EMPTY, { housingBore: null }), rod('rod 2', round(1.6248))];
    const shells = [
      { name: 'std', fits: 'rods', undersize: 'standard', wall: '0.0620 in', pairs: 2 },
    ];
    expect(kinds({ rods, shells })).not.toContain('wait');
  });
});
