import { readShed } from 'crankwright/shed';
import { describe, expect, it } from 'vitest';
import { changed, type Json } from '../sheet/sheets.js';
import { plainShed, shedProblems } from './sheds.js';

const core = (more: { readonly [field: string]: Json }) =>
  changed(plainShed(), { cores: [{ name: 'green one', condition: 'ran', ...more }] });

describe('what a core lacks', () => {
  it('is a section, the word for its parts, or a kind of other part that an engine needs', () => {
    const magneto = { otherParts: [{ name: 'magneto 1', kind: 'magneto' }] };
    for (const word of ['blocks', 'block', 'shells', 'rods', 'heads', 'valve set', 'magneto']) {
      expect(shedProblems(changed(core({ lacks: [word] }), magneto))).toEqual([]);
    }
  });

  it.each([
    ['blok', /"blok" is no part that an engine of this shed needs; did you mean "block"\?/],
    ['magnito', /did you mean "magneto"\?/],
    [
      'carburettor',
      /known are blocks, .*valveSets, magneto; if an engine needs it, list it in engine\.alsoNeeds/,
    ],
  ])(
    'is refused where it means nothing, because the core would count as having it: %s',
    (word, message) => {
      const shed = changed(core({ lacks: ['heads', word] }), {
        otherParts: [{ name: 'magneto 1', kind: 'magneto' }],
      });
      expect(shedProblems(shed)).toEqual([
        { path: 'cores[0].lacks[1]', message: expect.stringMatching(message) },
      ]);
    },
  );
});

describe('the name of a core', () => {
  it('is refused where another core has it', () => {
    const cores = ['barn one', 'green one', 'barn one'].map((name) => ({ name, condition: 'ran' }));
    expect(shedProblems(changed(plainShed(), { cores }))).toEqual([
      { path: 'cores[2].name', message: expect.stringMatching(/also the name of cores\[0\]/) },
    ]);
  });

  it.each(['green on', 'gren one', 'Green One', 'green-one', 'geren one'])(
    'is asked for where a part comes from what seems to be it: %s',
    (from) => {
      const shed = changed(core({}), { 'heads[0].from': from });
      expect(shedProblems(shed).map(({ path }) => path)).toEqual(['heads[0].from']);
    },
  );

  it.each([
    ['engine A', 'engine B'],
    ['no. 12', 'no. 13'],
    ['the old one', 'the odd one'],
    ['green one', 'the auction in York'],
    ['green one', 'green one'],
  ])('is not asked for of a part of another place: core %s, from %s', (name, from) => {
    const shed = changed(core({ name }), { 'heads[0].from': from });
    expect(() => readShed(shed)).not.toThrow();
  });
});
