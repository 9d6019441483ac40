import { inspect } from 'node:util';
import {
  coherentUnit,
  horsepowerMechanical,
  inch,
  psi,
  tenth,
  thou,
  type UnitSymbol,
  unitTable,
  valueIn,
} from 'crankwright';
import { describe, expect, it } from 'vitest';
import { definitions, toNumber } from './definitions.js';
import { notNumbers, refusal } from './refusal.js';

const units = Object.entries(unitTable);
/** Its numerator in lowest terms, 37 284 993 579 113 511, is odd and above 2^53: no double holds it. */
const TOO_LONG = 'hp';

describe('the table of units', () => {
  it('has an independent definition for every unit, and no unit is missing', () => {
    expect(Object.keys(unitTable).sort()).toEqual(Object.keys(definitions).sort());
  });

  it.each(units)('%s stands under its own symbol', (symbol, unit) => {
    expect(unit.symbol).toBe(symbol);
  });

  it.each(units.filter(([symbol]) => symbol !== TOO_LONG))(
    '%s has exactly the factor of its definition',
    (symbol, unit) => {
      const { factor, halfTurns, zero } = definitions[symbol as UnitSymbol];
      if (halfTurns) {
        expect(unit.numerator).toBe(Math.PI);
        expect(factor[0] * BigInt(unit.denominator)).toBe(factor[1]);
        return;
      }
      expect([unit.numerator, unit.denominator, unit.offset].every(Number.isInteger)).toBe(true);
      const [numerator, denominator, offset] = [unit.numerator, unit.denominator, unit.offset].map(
        BigInt,
      ) as [bigint, bigint, bigint];
      expect(numerator * factor[1]).toBe(denominator * factor[0]);
      const [over, under] = zero ?? [0n, 1n];
      expect(offset * under).toBe(over * denominator);
    },
  );

  it.each(Object.entries(coherentUnit))('%s is kept in %s, whose factor is one', (name, symbol) => {
    const unit = units.find(([key]) => key === symbol)?.[1];
    expect(unit?.dimension).toBe(name);
    expect([unit?.numerator, unit?.denominator, unit?.offset]).toEqual([1, 1, 0]);
  });

  it('has the horsepower to the nearest double, which is all that a double can', () => {
    const [numerator, denominator] = definitions[TOO_LONG].factor;
    const watts = numerator / denominator;
    const rest = toNumber([numerator - watts * denominator, denominator]);
    expect(watts).toBe(745n);
    expect(horsepowerMechanical(1)).toBe(745 + rest);
    expect(numerator % 37_284_993_579_113_511n).toBe(0n);
  });

  it('builds psi from the pound, gravity and the inch', () => {
    expect([psi.numerator, psi.denominator]).toEqual([8_896_443_230_521, 1_290_320_000]);
    expect(psi(1)).toBe(6894.757293168362);
  });

  it('has a whole number of decimals for every unit', () => {
    const decimals = units.map(([, unit]) => unit.decimals);
    expect(decimals.filter((d) => !Number.isInteger(d) || d < 0 || d > 12)).toEqual([]);
  });

  it('makes the inch a thousand thou and ten thousand tenths', () => {
    expect(thou(1000)).toBe(inch(1));
    expect(tenth(10_000)).toBe(inch(1));
  });
});

describe('a unit called', () => {
  it.each(notNumbers.map((value) => [value]))('refuses %s', (value) => {
    const error = refusal(() => inch(value as number));
    expect(error.parameter).toBe('in');
    expect(error.value).toBe(value);
  });

  it('refuses a number that overflows', () => {
    expect(refusal(() => psi(1.7e308)).expected).toMatch(/double/);
  });
});

describe('a temperature', () => {
  it.each(['K', '°C', '°F', '°R'] as const)('below absolute zero is refused in %s', (symbol) => {
    const unit = unitTable[symbol];
    const zero = { K: 0, '°C': -273.15, '°F': -459.67, '°R': 0 }[symbol];
    expect(unit(zero)).toBeCloseTo(0, 12);
    expect(refusal(() => unit(zero - 0.01)).hint).toContain('celsiusDifference');
  });
});

describe('a unit printed', () => {
  it('says which it is, in text and at a prompt', () => {
    expect(`${inch}`).toBe('in');
    expect(inspect(unitTable['lbf·ft'])).toBe('lbf·ft, a unit of torque');
    expect(() => valueIn(inch as never, inch)).toThrow(/a unit/);
  });
});
