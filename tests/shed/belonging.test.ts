import { readShed } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import { plainShed, shedProblems } from './sheds.js';

const { engine } = plainShed() as { readonly engine: object };
const base = { version: 1, shed: 'the shed', units: 'inch', engine };
const told = (changes: object) =>
  shedProblems({ ...base, ...changes } as never).map(({ path, message }) => [path, message]);
const one = (path: string, message: RegExp) => [[path, expect.stringMatching(message)]];
const wall = { min: '0.05 in', max: '0.08 in' };

describe('parts that go with others', () => {
  it.each<[object, string, RegExp]>([
    [
      { heads: [{ name: 'H', belongsTo: 'blok A' }], blocks: [{ name: 'block A' }] },
      'heads[0].belongsTo',
      /names "blok A", but no part or engine of the shed is called that; did you mean "block A"/,
    ],
    [
      { heads: [{ name: 'H', belongsTo: 'nothing like it' }] },
      'heads[0].belongsTo',
      /is called that$/,
    ],
    [
      {
        cores: [{ name: 'core A' }],
        blocks: [{ name: 'B' }],
        heads: [{ name: 'H', belongsTo: 'core A', builtInto: 'B' }],
      },
      'heads[0].builtInto',
      /is "B", but "H" belongs to "core A": it cannot be in two engines/,
    ],
    [
      {
        crankshafts: [{ name: 'C', builtInto: 'engine 1' }],
        rods: [{ name: 'R', belongsTo: 'C', builtInto: 'engine 2' }],
      },
      'rods[0].builtInto',
      /belongs to "C", which is built into "engine 1"/,
    ],
    [
      { crankshafts: ['C', 'D'].map((name) => ({ name, builtInto: 'X' })) },
      'crankshafts[1].builtInto',
      /so is that of "C": an engine has one crankshaft/,
    ],
  ])('%j', (changes, path, message) => {
    expect(told(changes)).toEqual(one(path, message));
  });

  it.each<[string, object]>([
    ['a core', { cores: [{ name: 'core A' }], heads: [{ name: 'H', belongsTo: 'core A' }] }],
    [
      'a block that is built into the same engine',
      {
        blocks: [{ name: 'B', builtInto: 'engine 1' }],
        heads: [{ name: 'H', belongsTo: 'B', builtInto: 'engine 1' }],
      },
    ],
    [
      'an engine that is named after its block',
      {
        blocks: [{ name: 'B', builtInto: 'B' }],
        heads: [{ name: 'H', belongsTo: 'B', builtInto: 'B' }],
      },
    ],
    [
      'each other',
      {
        blocks: [{ name: 'B', onlyWith: 'H' }],
        heads: [{ name: 'H', onlyWith: ['B'], belongsTo: 'B' }],
      },
    ],
    [
      'one of several, of which one is free',
      {
        blocks: [{ name: 'B', onlyWith: 'G' }, { name: 'C' }],
        heads: [{ name: 'G' }, { name: 'H', onlyWith: ['B', 'C'] }],
      },
    ],
    ['parts of a set', { rods: [{ name: 'R', onlyWith: 'S' }], shells: [{ name: 'S' }] }],
    [
      'two engines, as there are two of them',
      { rods: ['R', 'S'].map((name) => ({ name, builtInto: 'X' })) },
    ],
  ])('may go with %s', (_, changes) => {
    expect(told(changes)).toEqual([]);
  });
});

describe('kinds of parts and weights', () => {
  it('are named where they have a section or a count of their own', () => {
    expect(told({ engine: { ...engine, alsoNeeds: ['block'] } })).toEqual(
      one('engine.alsoNeeds[0]', /which is counted anyway; leave it out/),
    );
    expect(told({ hardToGet: { blocs: 2 } })).toEqual(
      one('hardToGet.blocs', /did you mean "blocks"/),
    );
    expect(told({ hardToGet: { blocks: 2, 'valve set': 1 } })).toEqual([]);
    const needed = { ...engine, alsoNeeds: [{ part: 'camshaft', count: 2 }, 'head'] };
    expect(told({ engine: needed, hardToGet: { camshaft: 2 } })).toEqual([]);
    expect(readShed({ ...base, engine: needed } as never).engine.alsoNeeds).toEqual([
      { part: 'camshaft', count: 2 },
      { part: 'head', count: 1 },
    ]);
  });
});

describe('parts to make', () => {
  const shells = (name: string, fits: string) => ({ name, fits, price: '8 EUR', wall });

  it('have a name of their own, among themselves too', () => {
    const twice = { shells: [shells('S', 'rods')], sleeves: [{ name: 'S', price: '9 EUR', wall }] };
    expect(told({ toMake: twice })).toEqual(
      one('toMake.sleeves[0].name', /also the name of toMake.shells\[0\]/),
    );
  });

  it('are for bearings that the engine has', () => {
    const { mainJournals: _, mainHousing: __, ...rolling } = engine as Record<string, unknown>;
    const made = { toMake: { shells: [shells('S', 'mains')] } };
    expect(told({ ...made, engine: { ...rolling, mains: 0 } })).toEqual(
      one('toMake.shells[0].fits', /"S" is for mains, but .* has 0 mains with shells/),
    );
    expect(told(made)).toEqual([]);
  });

  it('are told of their other mistakes alone where their name cannot be read', () => {
    const nameless = { toMake: { shells: [{ ...shells('', 'mains'), name: 7 }] } };
    expect(told(nameless).map(([path]) => path)).toEqual(['toMake.shells[0].name']);
  });
});
