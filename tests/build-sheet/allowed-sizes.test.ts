import { inch } from 'crankwright';
import { expect, it } from 'vitest';
import { allowedBore } from '../../src/build-sheet/allowed-sizes.js';

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
