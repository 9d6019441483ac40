import { Ajv2020 } from 'ajv/dist/2020.js';
import { readShed, shedSchema } from 'crankwright/shed';
import { readSheet, sheetSchema } from 'crankwright/sheet';
import { describe, expect, it } from 'vitest';
import { dataOf, plainShed, shedProblems } from '../shed/sheds.js';
import { changed, exampleText, type Json } from '../sheet/sheets.js';

const plainSheet = (): { [key: string]: Json } => JSON.parse(exampleText('inch'));

/** What a validator of its own says of a file. */
const taken = {
  shed: new Ajv2020().compile(shedSchema()),
  sheet: new Ajv2020().compile(sheetSchema()),
};

const OWN: Json = { 'x-shelf': 'left of the door', 'x-': [1, { any: null }] };

describe('a field whose name begins with x-', () => {
  it('may stand anywhere in a shed, and is not read', () => {
    const shed = changed(plainShed(), {
      'x-colour': 'red',
      'engine.x-serial': 4711,
      'engine.bores.standard.x-note': 'page 3',
      'blocks[0].x-own': OWN,
      'blocks[0].bores[0].x-own': OWN,
      'blocks[0].bores[0].readings[0].x-own': OWN,
      'rods[0].rods[0].x-own': OWN,
      'toBuy.x-own': OWN,
      'toBuy.shells[0].x-own': OWN,
      'rods[2].tested.x-own': OWN,
    });
    const given = structuredClone(shed);
    expect(dataOf(readShed(shed))).toEqual(dataOf(readShed(plainShed())));
    expect(dataOf(readShed(JSON.stringify(shed)))).toEqual(dataOf(readShed(plainShed())));
    expect(shed).toEqual(given);
    expect(taken.shed(shed)).toBe(true);
  });

  it('may stand anywhere in a sheet, and is not read', () => {
    const sheet = changed(plainSheet(), {
      'x-colour': 'red',
      'rods[0].x-own': OWN,
      'rods[0].journal.x-own': OWN,
      'rods[0].journal.readings[1].x-own': OWN,
      'crankshaft.rodJournals.oilClearance.x-own': OWN,
      'oil.leak.x-own': OWN,
      'oil.line[0].x-own': OWN,
    });
    expect(readSheet(sheet)).toEqual(readSheet(plainSheet()));
    expect(taken.sheet(sheet)).toBe(true);
  });

  it('keeps the places of the problems beside it', () => {
    const problems = shedProblems(
      changed(plainShed(), { 'rods[0].x-own': OWN, 'rods[0].xown': 1, 'rods[0].rods[0].name': '' }),
    );
    expect(problems.map(({ path }) => path)).toEqual(['rods[0].rods[0].name', 'rods[0].xown']);
  });

  it('is the only kind taken: X-, x and _x- are misspelt fields', () => {
    for (const key of ['X-a', 'x', '_x-a', '$schema']) {
      const shed = changed(plainShed(), { [`heads[0].${key}`]: 1 });
      expect(shedProblems(shed), key).toEqual([
        { path: `heads[0].${key}`, message: expect.stringMatching(/is not a known field/) },
      ]);
      expect(taken.shed(shed)).toBe(false);
    }
  });

  it('may hold the file itself, as no JSON can', () => {
    const shed = plainShed();
    shed['x-self'] = shed;
    const round: { [key: string]: Json } = { 'x-a': 1 };
    round['round'] = [round, round];
    shed['strange'] = round;
    expect(shedProblems(shed)).toEqual([
      { path: 'strange', message: expect.stringMatching(/is not a known field/) },
    ]);
  });
});

describe('$schema', () => {
  it('may stand at the top of a sheet and of a shed', () => {
    const $schema = 'https://example.org/shed.json';
    expect(dataOf(readShed({ $schema, ...plainShed() }))).toEqual(dataOf(readShed(plainShed())));
    expect(readSheet({ $schema, ...plainSheet() })).toEqual(readSheet(plainSheet()));
    expect(taken.shed({ $schema, ...plainShed() })).toBe(true);
    expect(taken.sheet({ $schema, ...plainSheet() })).toBe(true);
  });

  it('is text', () => {
    expect(shedProblems({ $schema: 7, ...plainShed() })).toEqual([
      { path: '$schema', message: 'must be text, in quotes' },
    ]);
    expect(taken.shed({ $schema: 7, ...plainShed() })).toBe(false);
  });
});
