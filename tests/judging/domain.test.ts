import { readFileSync } from 'node:fs';
import * as library from 'crankwright';
import { type Dimension, parse, type Quantity, type Unit } from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Domain } from '../../src/judging/domain.js';
import { notNumbers, refusal } from '../quantities/refusal.js';
import { houseFiles, loadHouse } from '../support/house-modules.js';

type AnyDomain = Domain<Dimension>;

const isDomain = (value: unknown): value is AnyDomain =>
  typeof value === 'function' && 'least' in value && 'most' in value && 'dimension' in value;

/** Every domain that a file of the house exports, by its name. */
const found = (await loadHouse()).flatMap(({ exports }) =>
  Object.entries(exports).filter((entry): entry is [string, AnyDomain] => isDomain(entry[1])),
);
const domains = [...new Map(found)];

const below = (bound: number) =>
  bound === 0 ? -Number.MIN_VALUE : bound - Math.abs(bound) * Number.EPSILON;
const above = (bound: number) => -below(-bound);

describe('the domains of the house', () => {
  it('are found, the common ones among them', () => {
    expect(domains.length).toBeGreaterThan(20);
    expect(domains.map(([name]) => name)).toEqual(
      expect.arrayContaining(['diameter', 'shellWall', 'angleAround']),
    );
  });

  it('have a name each', () => {
    for (const [name, one] of found) {
      expect([name, new Map(found).get(name) === one]).toEqual([name, true]);
    }
  });
});

describe.each(domains)('%s', (_, domain) => {
  const { dimension, least, most, orNone, example } = domain;
  const take = (value: unknown) => domain('place', value as Quantity<Dimension>);

  it('takes its bounds and what is between', () => {
    expect(least).toBeLessThan(most);
    fc.assert(
      fc.property(fc.double({ min: least, max: most, noNaN: true }), (value) => {
        expect(take(value)).toBe(value);
      }),
    );
    expect([take(least), take(most)]).toEqual([least, most]);
  });

  it('refuses what is just outside, and shows both bounds in a unit of the trade', () => {
    for (const value of [below(least), above(most)]) {
      const error = refusal(() => take(value));
      expect([error.parameter, error.value]).toEqual(['place', value]);
      const bounds = boundsIn(error.expected, dimension);
      expect(error.message).toContain(/\S+(?: m*)? … .*/.exec(error.expected)?.[0]);
      expect(bounds.map(rounded)).toEqual([least, most].map(rounded));
    }
  });

  it('takes nothing where nothing is one of it, and not what is less than the least', () => {
    if (least > 0) {
      expect(refusal(() => take(least / 2)).parameter).toBe('place');
      if (orNone) expect(take(0)).toBe(0);
      else expect(refusal(() => take(0)).parameter).toBe('place');
    } else {
      expect(orNone ?? false).toBe(false);
    }
  });

  it('refuses what is no number', () => {
    for (const value of [...notNumbers, String((least + most) / 2)]) {
      const error = refusal(() => take(value));
      expect([error.parameter, error.value]).toEqual(['place', value]);
    }
  });

  it('takes its example, written as a caller writes it', () => {
    const [, name = '', number = ''] = /^(\w+)\((-?[\d.]+)\)$/.exec(example) ?? [];
    const unit = (library as Readonly<Record<string, unknown>>)[name] as Unit<Dimension>;
    expect(unit.dimension).toBe(dimension);
    const value = unit(Number(number));
    expect(take(value)).toBe(value);
  });
});

const rounded = (value: number) => Number(value.toPrecision(5));

/** The two bounds that a text names, read with their unit: `0.21 … 20000000 cSt`, `3 mm … 1 m`. */
function boundsIn(text: string, dimension: Dimension): readonly number[] {
  const [from = '', to = ''] = text.replace(/^a length of |^0, or /, '').split(' … ');
  const unit = / .*/.exec(to)?.[0] ?? '';
  const read = (bound: string) => (unit === '' ? Number(bound) : parse(bound, dimension));
  return [read(from.includes(' ') ? from : from + unit), read(to)];
}

describe('a bound', () => {
  it('stands in a domain, unless another value sets it', () => {
    // A literal, or one of a list of two of them, where the bounds of a guard stand.
    const literal =
      /\bguard(?:Between|Length)\(\s*[^()]*(?:\([^()]*\)[^()]*)*?\[\s*-?[\d._e-]+,\s*-?[\d._e-]+\s*\]/;
    expect(literal.test("guardBetween('along', place.along, ratio, [-1, 1], 'ratio(0.6)')")).toBe(
      true,
    );
    expect(literal.test("guardLength('gap', gap, [0, most], 'mm(1)')")).toBe(false);
    const src = new URL('../../src/', import.meta.url);
    const bare = houseFiles.filter(
      (file) =>
        !file.startsWith('judging/') && literal.test(readFileSync(new URL(file, src), 'utf8')),
    );
    expect(bare).toEqual([]);
  });
});
