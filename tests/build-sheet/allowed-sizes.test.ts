import { inch } from 'crankwright';
import { expect, it } from 'vitest';
import { allowedBore } from '../../src/build-sheet/allowed-sizes.js';
import { sizeCells } from '../../src/build-sheet/limit-cells.js';

type Cylinder = Parameters<typeof allowedBore>[0];
type Engine = Parameters<typeof allowedBore>[1];

it('does not say that the shed file specified what a part was read to be', () => {
  const standard = { min: inch(3), max: inch(3.0005) };
  const engine = { bores: { standard } } as Engine;
  const bore = (min: number, max: number) =>
    ({ oversize: 0, boreSize: { min: inch(min), max: inch(max) } }) as Cylinder;
  const within = allowedBore(bore(3.0001, 3.0004), engine);
  expect(within.limits).toEqual(standard);
  expect(within.by.map(({ kind }) => kind)).toEqual(['specified']);
  const worn = allowedBore(bore(3.0005, 3.0009), engine);
  expect(worn.limits).toEqual({ min: standard.min, max: inch(3.0009) });
  expect(worn.by.map(({ kind }) => kind)).toEqual(['specified', 'computed']);
});

it('names a source once that sets both ends of what a size may be', () => {
  const [manual, other] = ['my manual', 'a bulletin'].map(
    (by) => ({ kind: 'specified', by }) as const,
  );
  if (!manual || !other) throw new Error('there are two');
  const limits = { min: inch(1.75), max: inch(1.751) };
  const by = (...all: readonly (typeof manual)[]) =>
    sizeCells({ limits, by: all }, { units: 'inch' })[1];
  expect(by(manual, manual)).toBe(by(manual));
  expect(by(manual).split('my manual')).toHaveLength(2);
  // Two sources of one kind are both named.
  const both = by(manual, other);
  for (const source of ['my manual', 'a bulletin']) expect(both.split(source)).toHaveLength(2);
});
