import { afterMachining, FileError, readShed, type Shed } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import { plainShed } from '../sheds.js';

const { engine } = plainShed() as { readonly engine: object };
const offer = { price: '8 EUR' };
const shed = readShed({
  version: 1,
  shed: 'the shed',
  units: 'inch',
  engine,
  blocks: [{ name: 'block A', history: [{ what: 'washed' }] }],
  shells: [
    { name: 'many', fits: 'rods', pairs: 4 },
    { name: 'just', fits: 'rods', pairs: 2 },
  ],
  ringSets: [{ name: 'rings', count: 3 }],
  toBuy: {
    shells: [{ name: 'new shells', fits: 'rods', ...offer }],
    ringSets: [
      { name: 'new rings', count: 2, ...offer },
      { name: 'last rings', count: 1, ...offer },
    ],
  },
} as never);

const built = (takes: readonly object[], more: object = {}): Shed =>
  afterMachining(shed, { version: 1, builtInto: 'engine 1', takes, ...more });
const refused = (takes: readonly object[]) => {
  try {
    built(takes);
  } catch (error) {
    if (error instanceof FileError)
      return error.problems.map(({ path, message }) => [path, message]);
    throw error;
  }
  return [];
};

describe('the parts that an engine takes', () => {
  it('are built into it, with a line of history each, after what was there', () => {
    const { blocks } = built([{ name: 'block A' }], { on: '2026-07', by: 'me' });
    expect(blocks).toMatchObject([
      {
        name: 'block A',
        builtInto: 'engine 1',
        history: [{ what: 'washed' }, { on: '2026-07', what: 'built into engine 1', by: 'me' }],
      },
    ]);
  });

  it('are split where more are there than it takes, and moved whole where not', () => {
    const { shells, ringSets } = built([
      { name: 'many', count: 1 },
      { name: 'just', count: 2 },
      { name: 'rings', count: 2 },
    ]);
    expect(shells).toMatchObject([
      { name: 'many', pairs: 3 },
      { name: 'many in engine 1', pairs: 1, builtInto: 'engine 1' },
      { name: 'just', pairs: 2, builtInto: 'engine 1' },
    ]);
    expect(shells?.[0]).not.toHaveProperty('builtInto');
    expect(ringSets).toMatchObject([
      { name: 'rings', count: 1 },
      { name: 'rings in engine 1', count: 2, builtInto: 'engine 1' },
    ]);
  });

  it('come into the shed if they were bought; the offer stays as far as there is more of it', () => {
    const { shells, ringSets, toBuy } = built([
      { name: 'new shells', count: 2 },
      { name: 'new rings', count: 1 },
      { name: 'last rings', count: 1 },
    ]);
    expect(shells?.at(-1)).toMatchObject({ name: 'new shells in engine 1', pairs: 2 });
    expect(shells?.at(-1)).not.toHaveProperty('price');
    expect(ringSets?.map(({ name }) => name)).toEqual([
      'rings',
      'new rings in engine 1',
      'last rings in engine 1',
    ]);
    expect(toBuy?.shells).toMatchObject([{ name: 'new shells' }]);
    expect(toBuy?.ringSets).toMatchObject([{ name: 'new rings', count: 1 }]);
  });

  it('are refused by their place if they are not there, or not so many', () => {
    expect(refused([{ name: 'blok A' }])).toEqual([
      ['takes[0].name', expect.stringMatching(/did you mean "block A"/)],
    ]);
    expect(refused([{ name: 'block A' }, { name: 'many', count: 5 }])).toEqual([
      ['takes[1].count', 'takes 5 of "many", but there are 4'],
    ]);
    expect(refused([{ name: 'last rings', count: 2 }])).toEqual([
      ['takes[0].count', 'takes 2 of "last rings", but there are 1'],
    ]);
  });
});
