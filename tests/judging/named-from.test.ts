import { RebuildInputError } from 'crankwright';
import { describe, expect, it } from 'vitest';
import { namedFrom } from '../../src/judging/named-from.js';

const refuse = (parameter: string) => () => {
  throw new RebuildInputError({ parameter, value: 5, expected: 'less', hint: 'Take less.' });
};
const names = {
  '': 'bearing',
  bearing: 'bearing',
  'oil.line': 'sheet.oil.line',
  oil: 'sheet.oil',
  'journals[1]': 'sheet.rods[1].journal',
};

/** What is thrown once it is named from the argument on. */
function thrown(run: () => unknown, from: Readonly<Record<string, string>> = names): unknown {
  try {
    namedFrom(() => from, run);
  } catch (error) {
    return error;
  }
  throw new Error('Nothing is thrown.');
}

describe('what a function refuses of a part that it was handed', () => {
  it.each([
    ['journal', 'bearing.journal'],
    ['journals', 'bearing.journals'],
    ['bearing', 'bearing'],
    ['bearing.jurnal', 'bearing.jurnal'],
    ['oil', 'sheet.oil'],
    ['oil.density', 'sheet.oil.density'],
    ['oil.line[0].viscosity', 'sheet.oil.line[0].viscosity'],
    ['oils', 'bearing.oils'],
    ['journals[1].runout', 'sheet.rods[1].journal.runout'],
    ['journals[10].runout', 'bearing.journals[10].runout'],
  ])('is named from the argument on: %s as %s', (parameter, whole) => {
    const error = thrown(refuse(parameter));
    expect(error).toBeInstanceOf(RebuildInputError);
    expect(error).toMatchObject({
      parameter: whole,
      value: 5,
      expected: 'less',
      hint: 'Take less.',
    });
    expect((error as Error).message).toBe(`${whole}: 5 is not less. Take less.`);
  });

  it('keeps its name where there is no other', () => {
    expect(thrown(refuse('result'), { oil: 'sheet.oil' })).toMatchObject({ parameter: 'result' });
  });

  it('is said in the same words where it is missing', () => {
    const error = thrown(() => {
      throw new RebuildInputError({
        parameter: 'oil',
        value: undefined,
        expected: 'an oil',
        hint: 'Give one.',
      });
    });
    expect((error as Error).message).toBe('sheet.oil: is missing; expected an oil. Give one.');
  });
});

it('lets any other error and every result through', () => {
  const planted = new TypeError('planted');
  const raise = () => {
    throw planted;
  };
  expect(thrown(raise)).toBe(planted);
  expect(
    namedFrom(
      () => names,
      () => 5,
    ),
  ).toBe(5);
});
