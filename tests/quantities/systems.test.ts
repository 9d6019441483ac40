import {
  coherentUnit,
  type Dimension,
  inch,
  mm,
  RebuildInputError,
  tradeUnit,
  type UnitSystem,
  unitTable,
} from 'crankwright';
import { describe, expect, it } from 'vitest';
import { refusal } from './refusal.js';

const dimensions = Object.keys(coherentUnit) as Dimension[];

describe('tradeUnit', () => {
  it.each(dimensions)('knows a unit of %s for both systems', (dimension) => {
    for (const system of ['inch', 'metric'] as const) {
      const unit = tradeUnit(dimension, system);
      expect(unit.dimension).toBe(dimension);
      expect(unitTable).toHaveProperty([unit.symbol], unit);
    }
  });

  it('reads lengths in inches and millimetres, torque in lbf·ft and N·m', () => {
    expect(tradeUnit('length', 'inch')).toBe(inch);
    expect(tradeUnit('length', 'metric')).toBe(mm);
    expect(tradeUnit('torque', 'inch').symbol).toBe('lbf·ft');
    expect(tradeUnit('torque', 'metric').symbol).toBe('N·m');
    expect(tradeUnit('temperature', 'inch').symbol).toBe('°F');
  });

  it.each(['mood', '__proto__', 'toString', undefined, null])(
    'refuses the dimension %s',
    (name) => {
      const error = refusal(() => tradeUnit(name as Dimension, 'inch'));
      expect([error.parameter, error.value]).toEqual(['dimension', name]);
    },
  );

  it.each(['imperial', 'Inch', '__proto__', undefined, null])('refuses the system %s', (name) => {
    const error = refusal(() => tradeUnit('length', name as UnitSystem));
    expect([error.parameter, error.value]).toEqual(['system', name]);
  });
});

describe('RebuildInputError', () => {
  it('is a RangeError that says what is wrong, what was expected and what to do', () => {
    const error = new RebuildInputError({
      parameter: 'journal',
      value: 2,
      expected: 'a length',
      hint: 'Wrap it.',
    });
    expect(error).toBeInstanceOf(RangeError);
    expect(error.name).toBe('RebuildInputError');
    expect(error.message).toBe('journal: 2 is not a length. Wrap it.');
    expect([error.value, error.expected, error.hint]).toEqual([2, 'a length', 'Wrap it.']);
  });

  it('takes a complaint and a shown value of its own', () => {
    const rest = { parameter: 'x', value: 2, expected: 'small', hint: 'Check.' };
    const error = new RebuildInputError({ ...rest, shown: '2 m', problem: 'is too long' });
    expect(error.message).toBe('x: 2 m is too long. Check.');
  });

  it('shows a value that is not there as such', () => {
    const error = new RebuildInputError({
      parameter: 'x',
      value: undefined,
      expected: 'it',
      hint: 'No.',
    });
    expect(error.message).toMatch(/^x: (nothing|is missing)\b.* No\.$/);
  });

  it('shows nothing where a complaint of its own is about what is missing', () => {
    const rest = { parameter: 'x', value: undefined, expected: 'it', hint: 'No.' };
    const error = new RebuildInputError({ ...rest, problem: 'is no answer' });
    expect(error.message).toBe('x: nothing is no answer. No.');
  });

  it.each([
    ['abc', '"abc"'],
    ['x'.repeat(70), `"${'x'.repeat(60)}…"`],
    [null, 'null'],
    [Number.NaN, 'NaN'],
    [5n, '5'],
    [Symbol('s'), 'Symbol(s)'],
    [[1, 2], 'an array'],
    [{ a: 1 }, 'an object'],
    [() => 1, 'a function'],
  ])('shows any value: %s', (value, shown) => {
    const error = new RebuildInputError({ parameter: 'x', value, expected: 'it', hint: 'No.' });
    expect(error.message).toBe(`x: ${shown} is not it. No.`);
  });
});
