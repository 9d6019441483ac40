import { describe, expect, it } from 'vitest';
import { whatIsWrong } from '../../src/command/prompt/what-is-wrong.js';
import { WrongStatement } from '../../src/command/prompt/wrong-statement.js';

const said = (error: Error, typed = '') =>
  whatIsWrong(error, { names: ['journal'], units: 'inch', typed });

describe('what mathjs says, for the person at the prompt', () => {
  it.each([
    [
      'Unexpected type of argument in function addScalar (expected: number)',
      'only sizes of one kind can be added or taken from each other, each with its unit',
    ],
    [
      'Unexpected type of argument in function subtract',
      'only sizes of one kind can be added or taken from each other, each with its unit',
    ],
    ["Units do not match ('inch' != 'N')", 'these are not of one kind'],
    ['Unexpected type of argument in function sqrt (expected: number)', 'sqrt does not take that'],
    [
      "Cannot read properties of undefined (reading 'x')",
      'this cannot be worked out; is something missing in it?',
    ],
    ['one line\nand another', 'one line'],
    ['Undefined function qqqqqqq', 'qqqqqqq: there is no such function'],
    ['Undefined symbol qq', 'qq: there is no such name'],
    ['Undefined symbol jurnal', 'jurnal: did you mean journal?'],
  ])('%s', (message, words) => {
    expect(said(new Error(message))).toBe(words);
  });

  it('keeps a sentence of ours, and asks for braces', () => {
    expect(said(new WrongStatement('not so'))).toBe('not so');
    expect(said(new Error('Undefined symbol bore'), 'oilClearance(bore: 2 inch)')).toBe(
      'put the sizes in braces: oilClearance({bore: …})',
    );
  });
});
