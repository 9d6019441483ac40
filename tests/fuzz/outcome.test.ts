import { RebuildInputError } from 'crankwright';
import { describe, expect, it } from 'vitest';
import { calls } from './calls/calls.js';
import { frozen, pathsIn, replaced, without } from './hostile.js';
import { complaint, noiseIn } from './outcome.js';

const take = (run: (...args: never[]) => unknown) => calls(run, { sound: [], provoked: {} });
const refusal = { parameter: 'x', value: 1, expected: 'less', hint: 'Take less.' };
let count = 0;

describe('a function is found out', () => {
  it.each([
    ['throws something else', () => null as unknown as { x: number }, 'throws TypeError'],
    ['gives NaN deep inside', () => ({ a: [{ b: Number.NaN }] }), 'result.a.0.b is NaN'],
    ['prints NaN', () => 'NaN in', "result is 'NaN in'"],
    ['gives another result each time', () => ++count, 'another result'],
    ['gives what JSON cannot hold', () => ({ a: new Map() }), 'result.a is Map(0) {}'],
  ])('if it %s', async (what, run, flaw) => {
    const act = what === 'throws something else' ? () => (run() as { x: number }).x : run;
    expect(await complaint(take(act), [])).toContain(flaw);
  });

  it('if it changes its arguments', async () => {
    const sort = (list: number[]) => list.sort();
    expect(await complaint(take(sort), [[2, 1]])).toContain('throws TypeError');
  });

  it('if it refuses without a hint', async () => {
    const refuse = () => {
      throw new RebuildInputError({ ...refusal, hint: '' });
    };
    expect(await complaint(take(refuse), [])).toContain('without hint');
  });

  it('if it refuses a sound call', async () => {
    const refuse = () => {
      throw new RebuildInputError(refusal);
    };
    expect(await complaint(take(refuse), [], 'sound')).toContain('refuses a sound call');
    expect(await complaint(take(refuse), [])).toBeUndefined();
  });

  it('if a sound call gives -0 or an undefined field', async () => {
    expect(
      await complaint(
        take(() => -0),
        [],
        'sound',
      ),
    ).toContain('result is -0');
    expect(
      await complaint(
        take(() => ({ a: undefined })),
        [],
        'sound',
      ),
    ).toBeDefined();
    expect(
      await complaint(
        take(() => ({ a: undefined, b: -0 })),
        [],
      ),
    ).toBeUndefined();
  });
});

describe('a message', () => {
  it.each([
    ['x: 4.0000000000000003e-7 m is less', '4.0000000000000003e-7'],
    ['x: 1e+26 mm is more', '1e+26'],
    ['x: 0.053969920000000004 m', '0.053969920000000004'],
    ['x: 12345678901 m', '12345678901'],
    [
      'x: 53.96992 mm of 100000000000 mm, readings[12].diameter, "1.2345678901e5 \\" mm"',
      undefined,
    ],
    ['x: 0.000000123456789 m', undefined],
    ['D2270-10(2016): ISO3448 1.25, 2e', undefined],
  ])('%s shows the noise %s', (message, noise) => {
    expect(noiseIn(message)).toBe(noise);
  });
});

describe('a function passes', () => {
  it('if it gives finite numbers, or refuses', async () => {
    const refuse = () => {
      throw new RebuildInputError(refusal);
    };
    expect(
      await complaint(
        take(() => ({ a: [1, 'text', null] })),
        [],
        'sound',
      ),
    ).toBeUndefined();
    expect(await complaint(take(refuse), [])).toBeUndefined();
  });
});

describe('arguments', () => {
  const args = [{ a: [1, { b: 2 }] }];

  it('are changed at one place, in a copy', () => {
    expect(pathsIn(args)).toEqual([[0], [0, 'a'], [0, 'a', 0], [0, 'a', 1], [0, 'a', 1, 'b']]);
    expect(replaced(args, [0, 'a', 1, 'b'], 'x')).toEqual([{ a: [1, { b: 'x' }] }]);
    expect(without(args, [0, 'a', 0])).toEqual([{ a: [{ b: 2 }] }]);
    expect(without(args, [0, 'a'])).toEqual([{}]);
    expect(args).toEqual([{ a: [1, { b: 2 }] }]);
  });

  it('are frozen all the way down', () => {
    const [first] = frozen([{ a: [{ b: 2 }] }]);
    expect(Object.isFrozen(first?.a[0])).toBe(true);
  });
});
