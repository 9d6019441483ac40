import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { parse, parseLength } from 'crankwright';
import { afterMachining, readShed, shedSchema, workSchema } from 'crankwright/shed';
import { type JsonSchema, sheetSchema } from 'crankwright/sheet';
import { describe, expect, it } from 'vitest';
import { parsePrice } from '../../src/reading/price.js';
import { changed, exampleText, type Json } from '../sheet/sheets.js';
import { plainShed, shedProblems, spoiltShed } from './sheds.js';

const shedText = readFileSync(
  new URL('../../examples/pump-set-shed.json', import.meta.url),
  'utf8',
);

/** The validators so far, by their titles: to compile one takes a second. */
const compiled = new Map<string, ReturnType<Ajv2020['compile']>>();

/** Where a schema that a validator of its own reads finds fault. */
function faults(schema: JsonSchema, value: unknown): readonly string[] {
  const validate = compiled.get(schema.title) ?? new Ajv2020({ allErrors: true }).compile(schema);
  compiled.set(schema.title, validate);
  validate(value);
  return (validate.errors ?? []).map(
    ({ instancePath, keyword, params }) =>
      `${instancePath} ${keyword} ${params['additionalProperty'] ?? params['missingProperty'] ?? ''}`,
  );
}

/** Every object of a schema, however deep. */
function objectsIn(schema: unknown): readonly { [key: string]: unknown }[] {
  if (typeof schema !== 'object' || schema === null) return [];
  const inner = Object.values(schema).flatMap(objectsIn);
  return Array.isArray(schema) ? inner : [schema as { [key: string]: unknown }, ...inner];
}

describe.each([
  ['sheetSchema', sheetSchema],
  ['shedSchema', shedSchema],
  ['workSchema', workSchema],
])('%s', (_, make) => {
  const all = objectsIn(make());

  it('is of draft 2020-12, plain JSON, made afresh', () => {
    expect(make().$schema).toBe('https://json-schema.org/draft/2020-12/schema');
    expect(JSON.parse(JSON.stringify(make()))).toEqual({ ...make() });
    expect(make()).not.toBe(make());
  });

  it('leaves no value undescribed', () => {
    const properties = all.flatMap((each) =>
      typeof each['properties'] === 'object' ? Object.entries(each['properties'] ?? {}) : [],
    );
    const bare = properties.filter(
      ([, schema]) => !('type' in schema || 'anyOf' in schema || 'const' in schema),
    );
    expect(properties.length).toBeGreaterThan(50);
    expect(bare.map(([name]) => name)).toEqual([]);
  });

  it('refuses other fields in every object', () => {
    // Records have fields of any name: those of dates, of weights, and of what was there before.
    const objects = all.filter((each) => each['type'] === 'object' && !each['propertyNames']);
    expect(objects.filter((each) => each['additionalProperties'] !== false)).toEqual([]);
  });

  it('gives examples of every quantity and price that can be read', () => {
    const described = all.filter(({ description }) => typeof description === 'string');
    const read = (description: string, text: string): unknown => {
      if (description.startsWith('price')) return parsePrice(text);
      if (/^(under|over)size/.test(description)) return text === 'standard' || parseLength(text);
      const words = description.replace(/:.*/, '');
      const dimension = words.replace(/ (\w)/g, (__, letter: string) => letter.toUpperCase());
      return parse(text, dimension as 'length');
    };
    expect(described.length).toBeGreaterThan(20);
    for (const { description, examples } of described) {
      expect(examples, String(description)).not.toEqual([]);
      for (const text of examples as string[]) read(String(description), text);
    }
  });
});

describe('the examples', () => {
  it('are sheets', () => {
    expect(faults(sheetSchema(), JSON.parse(exampleText('inch')))).toEqual([]);
    expect(faults(sheetSchema(), JSON.parse(exampleText('metric')))).toEqual([]);
  });

  it('are sheds, whose readings may stand in a CSV', () => {
    expect(faults(shedSchema(), JSON.parse(shedText))).toEqual([]);
    expect(faults(shedSchema(), plainShed())).toEqual([]);
  });
});

describe('a mistake that a schema can see', () => {
  it.each<[string, Json | undefined, string]>([
    ['rods[0].jounral', {}, '/rods/0 additionalProperties jounral'],
    ['rods[0].journal.readings', undefined, '/rods/0/journal required readings'],
    ['rods[0].name', undefined, '/rods/0 required name'],
    ['crankshaft.endPlay.limits', { source: 'me' }, '/crankshaft/endPlay/limits anyOf '],
    [
      'crankshaft.rodJournals.oilClearance.min',
      undefined,
      '/crankshaft/rodJournals/oilClearance required min',
    ],
    ['oil.leak', { drip: '1 per minute' }, '/oil/leak anyOf '],
    ['oil.line[1]', undefined, '/oil/line minItems '],
    ['version', 2, '/version const '],
  ])('is seen in a sheet: %s as %j', (path, value, fault) => {
    const sheet = changed<Json>(JSON.parse(exampleText('inch')), { [path]: value });
    // A field that is removed from a list leaves a hole, which JSON closes.
    const spoilt = JSON.parse(JSON.stringify(sheet), (__, inner) =>
      Array.isArray(inner) ? inner.filter((each) => each !== null) : inner,
    );
    expect(faults(sheetSchema(), spoilt)).toContain(fault);
  });

  it.each<[string, Json | undefined, string]>([
    ['pistonSets[0].oversise', 'standard', '/pistonSets/0 additionalProperties oversise'],
    ['toBuy.shells[0].price', undefined, '/toBuy/shells/0 required price'],
    ['shells[0].price', '1 EUR', '/shells/0 additionalProperties price'],
    ['engine.cylinders', '2', '/engine/cylinders type '],
    ['engine.rodsPerJournal', 3, '/engine/rodsPerJournal enum '],
    ['machining[0].work', 'polish', '/machining/0/work enum '],
    ['rods[0].faults', ['scored'], '/rods/0/faults/0 enum '],
    ['heads[0].interchange', [], '/heads/0/interchange anyOf '],
    ['rods[0].rods[0].housingBore', { min: '1 in' }, '/rods/0/rods/0/housingBore anyOf '],
    [
      'crankshafts[0].rodJournals[0].readings[0].diameter',
      undefined,
      '/crankshafts/0/rodJournals/0/readings/0 required diameter',
    ],
  ])('is seen in a shed: %s as %j, as readShed sees it', (path, value, fault) => {
    const shed = spoiltShed({ [path]: value });
    expect(faults(shedSchema(), shed)).toContain(fault);
    expect(shedProblems(shed)).not.toEqual([]);
  });
});

describe('a record of work', () => {
  const work = {
    $schema: 'work.schema.json',
    version: 1,
    on: '2026-05-01',
    by: 'the grinder',
    'x-invoice': 17,
    parts: [
      {
        name: 'crankshaft B',
        done: [{ work: 'grind rod journals', step: '20 under', places: ['rod 1'] }],
        rodJournals: [{ name: 'rod 1', runout: '0.0002 in', repaired: ['scored'] }],
      },
      { name: 'head A', flatness: '0.001 in', 'x-shelf': 3, faults: ['bent'] },
      { name: 'rings standard', rings: [{ name: 'top ring', gap: '0.011 in' }] },
    ],
    boxes: [{ part: 'rods A', feature: 'rod A1', reading: '', 'x-by': 'Anna' }],
    checks: [{ what: 'end play', reading: '0.008 in' }],
    engine: 'block A',
    takes: [],
  };

  it('may name its schema, have fields of its own, and give a part as far as it was measured', () => {
    expect(faults(workSchema(), work)).toEqual([]);
    const after = afterMachining(readShed(plainShed()), work);
    expect(after.crankshafts?.[1]?.rodJournals?.[0]?.faults).toBeUndefined();
    const wrong = () => afterMachining(readShed(plainShed()), { ...work, $schema: 7 });
    expect(wrong).toThrow(
      expect.objectContaining({ problems: [expect.objectContaining({ path: '$schema' })] }),
    );
  });

  it.each<[string, Json, string]>([
    ['parts[0].flatnes', '0.001 in', '/parts/0 additionalProperties flatnes'],
    [
      'parts[0].rodJournals[0].runnout',
      '0 in',
      '/parts/0/rodJournals/0 additionalProperties runnout',
    ],
    ['parts[0].done[0].work', 'boring', '/parts/0/done/0/work enum '],
    ['boxes[0].part', 3, '/boxes/0/part type '],
    ['version', 2, '/version const '],
  ])('%s as %j is seen by its schema, as afterMachining sees it', (path, value, fault) => {
    const spoilt = changed<Json>(work, { [path]: value });
    expect(faults(workSchema(), spoilt)).toContain(fault);
    expect(() => afterMachining(readShed(plainShed()), spoilt)).toThrow();
  });
});
