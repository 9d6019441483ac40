import { describe, expect, it } from 'vitest';
import { alignedLines, brokenLines, printable, underlined } from '../../src/pages/text.js';

describe('a page of text', () => {
  it('breaks sentences between words, and a word that is too long anywhere', () => {
    const words = Array.from({ length: 30 }, (_, i) => `word${i}`).join(' ');
    const lines = brokenLines(`  ${words}`, 4);
    expect(lines.every((line, i) => line.startsWith(i === 0 ? '  w' : '    w'))).toBe(true);
    expect(lines.map((line) => line.trim()).join(' ')).toBe(words);
    expect(brokenLines('x'.repeat(200), 4).map((line) => line.length)).toEqual([96, 96, 16]);
    expect(brokenLines(`a ${'x'.repeat(97)}`, 0).map((line) => line.length)).toEqual([1, 96, 1]);
    expect(brokenLines('', 2)).toEqual(['']);
  });

  it('underlines a heading as far as it goes', () => {
    expect(underlined('NAME', ['line'])).toBe('NAME\n----\nline');
    expect(underlined('NAME', [], '=')).toBe('NAME\n====');
    expect(
      underlined('x'.repeat(100), [])
        .split('\n')
        .map((line) => line.length),
    ).toEqual([96, 4, 96]);
  });

  it('sets words to the left and numbers to the right', () => {
    expect(
      alignedLines(
        ['name', 'size'],
        [
          ['a', '1.0000'],
          ['longer', '2'],
        ],
      ),
    ).toEqual(['name       size', 'a        1.0000', 'longer        2']);
    expect(alignedLines(['name', 'of', 'size'], [['a', 'b', '1.0000']], 2)).toEqual([
      'name   of     size',
      'a      b    1.0000',
    ]);
  });

  it('draws columns together, and then breaks the widest, where a page is too narrow', () => {
    const tight = alignedLines(['a', 'b'], [['x'.repeat(47), 'y'.repeat(47)]], 2);
    expect(tight[1]).toBe(`${'x'.repeat(47)}  ${'y'.repeat(47)}`);
    const broken = alignedLines(['a', 'b'], [['x '.repeat(60), '1']]);
    expect(broken.length).toBe(3);
    expect(broken.every((line) => line.length <= 96)).toBe(true);
  });

  it('lets no name break a line, steer a terminal or turn text round', () => {
    expect(printable('a\r\n\tb\u0007\u2028c\u202ed  e ')).toBe('a b c d e');
  });
});
