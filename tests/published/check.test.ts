import { describe, expect, it } from 'vitest';
import { type Check, differences } from './check.js';

describe('the check itself', () => {
  it.each([
    ['a number off by more than 1e-9 of it', 1 + 2e-9, 1, undefined],
    ['a number off by more than its absolute tolerance', 1.11, 1, { absolute: 0.1 }],
    ['a number off by more than its relative tolerance', 10.3, 10, { relative: 0.02 }],
    ['NaN', Number.NaN, 1, { absolute: 1e9 }],
    ['text for a number', '1', 1, { absolute: 1 }],
    ['another word', 'above', 'within', undefined],
    ['a field that is off', { min: 1, max: 3 }, { min: 1, max: 2 }, undefined],
    ['a field too many', { min: 1, max: 2 }, { min: 1 }, undefined],
    ['a field too few', { min: 1 }, { min: 1, max: 2 }, undefined],
    ['a longer list', [1, 2], [1], undefined],
    ['no object', 1, { min: 1 }, undefined],
  ])('finds %s', (_, got, expected, tolerance) => {
    expect(differences(got, expected, tolerance)).toHaveLength(1);
  });

  it.each([
    ['the same', { min: 1, max: [2, 'a'] }, { min: 1, max: [2, 'a'] }, undefined],
    ['a number within 1e-9', 1 + 5e-10, 1, undefined],
    ['a number at its absolute tolerance', 1.25, 1, { absolute: 0.25 }],
    ['a number within its relative tolerance', 10.1, 10, { relative: 0.02 }],
  ])('passes %s', (_, got, expected, tolerance) => {
    expect(differences(got, expected, tolerance)).toEqual([]);
  });

  it('needs a source or a basis, and not both', () => {
    const rest = { name: 'one', given: 1, expected: 1, got: (given: number) => given };
    const sourced: Check<number, number> = { ...rest, source: 'a document' };
    const frank: Check<number, number> = { ...rest, basis: 'from memory' };
    // @ts-expect-error neither
    const neither: Check<number, number> = rest;
    // @ts-expect-error both
    const both: Check<number, number> = { ...rest, source: 'a document', basis: 'from memory' };
    // @ts-expect-error a basis of one's own
    const own: Check<number, number> = { ...rest, basis: 'obvious' };
    expect([sourced, frank, neither, both, own].map((one) => one.name)).toHaveLength(5);
  });
});
