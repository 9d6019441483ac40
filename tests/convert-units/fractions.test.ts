import configureMeasurements, { type Wrapper } from 'convert-units';
import { exactMeasures } from 'crankwright/convert-units';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Exact } from '../quantities/definitions.js';
import { pairs, ROUNDED, reading } from './engine.js';
import { exactly, fractionOf, minus, over, plus, times } from './exactly.js';

type Some = string | number | Exact;
const read = (some: Some): Exact => (typeof some === 'object' ? some : fractionOf(Number(some)));
const sign = (a: Some, b: Some): number => Number(minus(read(a), read(b))[0]);

/** An arithmetic that rounds nothing. */
const fractions: Wrapper<Exact> = {
  create: read,
  add: (a, b) => plus(read(a), read(b)),
  sub: (a, b) => minus(read(a), read(b)),
  mul: (a, b) => times(read(a), read(b)),
  div: (a, b) => over(read(a), read(b)),
  lt: (a, b) => sign(a, b) < 0,
  lte: (a, b) => sign(a, b) <= 0,
  gt: (a, b) => sign(a, b) > 0,
  gte: (a, b) => sign(a, b) >= 0,
};
const convert = configureMeasurements(exactMeasures, fractions);
const whole = pairs.filter(({ from, to }) => ![from, to].some((unit) => ROUNDED.includes(unit)));

it('converts without any loss where the arithmetic has none', () => {
  expect(whole.length).toBeGreaterThan(350);
  fc.assert(
    fc.property(reading, fc.constantFrom(...whole), (x, { from, to }) => {
      const off = minus(convert(x).from(from).to(to), exactly(x, from, to));
      expect(off[0]).toBe(0n);
    }),
    { numRuns: 2000 },
  );
});
