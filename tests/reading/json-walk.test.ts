import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Break, type PathStep, walkJson } from '../../src/reading/json-walk.js';

/** A bracket that is open. */
const at = (bracket: '{' | '[', line: number, character: number) => ({ bracket, line, character });

type Pair = readonly [line: number, character: number];
const twice = (path: readonly PathStep[], ...pairs: readonly [Pair, Pair]) => ({
  path,
  places: pairs.map(([line, character]) => ({ line, character })),
});

const parses = (text: string): boolean => {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
};

describe('walkJson', () => {
  it('takes what JSON.parse takes, and nothing else', () => {
    const pieces = fc.constantFrom(
      ...[
        '{',
        '}',
        '[',
        ']',
        ',',
        ':',
        '"a"',
        '"b\\n"',
        '"\\u00e9"',
        '"\\x"',
        '"',
        '\\',
        ' ',
        '\n',
      ],
      ...['\t', '\r\n', '1', '-0.5', '01', '1.', '.5', '1e5', '2E-3', '+1', '-', 'true', 'false'],
      ...[
        'null',
        'nul',
        'NaN',
        '\u2028',
        '\u0000',
        '\ufeff',
        '\u00a0',
        "'a'",
        '/* a */',
        'é',
        '😀',
      ],
    );
    const text = fc.oneof(
      fc.array(pieces, { maxLength: 8 }).map((all) => all.join('')),
      fc.json(),
      fc.tuple(fc.json(), fc.nat(), pieces).map(([json, i, piece]) => {
        const at = i % (json.length + 1);
        return json.slice(0, at) + piece + json.slice(at);
      }),
      fc.string(),
    );
    fc.assert(
      fc.property(text, (any) => {
        expect(walkJson(any).broken === undefined).toBe(parses(any));
      }),
      { numRuns: 5000 },
    );
  });

  it.each<[string, number, number, string, string, boolean?, Break['open']?]>([
    ['', 1, 1, '', 'a value'],
    [' \n ', 2, 2, '', 'a value'],
    ['version: 1', 1, 1, 'version: 1', 'a value'],
    ['{"a": 1,\n  b: 2}', 2, 3, 'b: 2}', 'another name in double quotes', false, at('{', 1, 1)],
    ['{"a": 1,\r\n\r\n}', 3, 1, '}', 'another name in double quotes', true, at('{', 1, 1)],
    ['{\r  a', 2, 3, 'a', 'a name in double quotes or }', false, at('{', 1, 1)],
    ['{"a" 1}', 1, 6, '1}', 'a colon', true, at('{', 1, 1)],
    ['{"a": 1\n"b": 2}', 2, 1, '"b": 2}', 'a comma or }', true, at('{', 1, 1)],
    ['[1, 2', 1, 6, '', 'a comma or ]', false, at('[', 1, 1)],
    ['[1, ]', 1, 5, ']', 'another value', true, at('[', 1, 1)],
    ['[,]', 1, 2, ',]', 'a value or ]', true, at('[', 1, 1)],
    ['{"a": [1],\n "b": [\n  2, 3\n', 4, 1, '', 'a comma or ]', false, at('[', 2, 7)],
    ['{"a":\n {"b": [1, 2]\n', 3, 1, '', 'a comma or }', false, at('{', 2, 2)],
    ['[{"a": 1 ]', 1, 10, ']', 'a comma or }', true, at('{', 1, 2)],
    ['{} {}', 1, 4, '{}', 'the end of the text', true],
    ['{"a": "2 in}\n', 1, 7, '"2 in}', 'a value', false, at('{', 1, 1)],
    ['{"a": "2-1/8"",', 1, 14, '",', 'a comma or }', false, at('{', 1, 1)],
  ])('tells where %j breaks', (text, line, character, found, wanted, isToken = false, open) => {
    const place = { line, character };
    expect(walkJson(text).broken).toEqual({
      ...place,
      found,
      isToken,
      wanted,
      ...(open && { open }),
    });
  });

  it('shows little of a long line, and follows no brackets without end', () => {
    expect(walkJson(`x${'y'.repeat(1000)}`).broken?.found).toHaveLength(20);
    const deep = (by: number) => `${'['.repeat(by)}${']'.repeat(by)}`;
    expect(walkJson(deep(50)).broken).toBeUndefined();
    expect(walkJson(deep(51)).broken).toMatchObject({
      character: 51,
      wanted: 'fewer brackets',
    });
  });

  it.each<[string, readonly unknown[]]>([
    ['{"a": 1, "b": {"a": 1}, "c": [{"a": 1}, {"a": 1}]}', []],
    ['{"a": 1,\n"a": 1}', [twice(['a'], [1, 2], [2, 1])]],
    ['{"faults": [],\n\n"fa\\u0075lts": []}', [twice(['faults'], [1, 2], [3, 1])]],
    [
      '{"rods": [\r\n{"n": 1}, {"n": 1,\r\n"m": {},\r\n"n": 2, "n": 3}]}',
      [twice(['rods', 1, 'n'], [2, 12], [4, 1]), twice(['rods', 1, 'n'], [2, 12], [4, 9])],
    ],
    ['{"a": {"a": 1, "b": "a", "a": 2}}', [twice(['a', 'a'], [1, 8], [1, 26])]],
    [
      '{"": 1, "__proto__": 1, "__proto__": 2, "": 2}',
      [twice(['__proto__'], [1, 9], [1, 25]), twice([''], [1, 2], [1, 41])],
    ],
    ['[[{"a":1}],[{"b": 1, "b": "\\"b\\": {"}]]', [twice([1, 0, 'b'], [1, 14], [1, 22])]],
  ])('finds the keys of %j that stand twice', (text, repeated) => {
    expect(walkJson(text)).toEqual({ repeated });
  });

  it('walks through text however long', () => {
    const long = JSON.stringify({ a: '\n'.repeat(2_000_000) });
    expect(walkJson(long)).toEqual({ repeated: [] });
    expect(walkJson(long.slice(0, -2)).broken?.character).toBe(6);
  });

  it('finds a key that is written twice wherever it is', () => {
    const value = fc.jsonValue({ maxDepth: 3 });
    fc.assert(
      fc.property(fc.dictionary(fc.string(), value, { minKeys: 1 }), fc.nat(), (object, i) => {
        const entries = Object.entries(object);
        const twice = entries[i % entries.length]?.[0] as string;
        const members = [...entries, [twice, 0] as const].map(
          ([key, each]) => `${JSON.stringify(key)}: ${JSON.stringify(each)}`,
        );
        const last = members.length;
        const { repeated } = walkJson(`{ ${members.join(',\n')} }`);
        const lines = repeated.map(({ path, places }) => [path, places.map(({ line }) => line)]);
        expect(lines).toEqual([[[twice], [(i % entries.length) + 1, last]]]);
        expect(walkJson(JSON.stringify([object], null, 1)).repeated).toEqual([]);
      }),
    );
  });
});
