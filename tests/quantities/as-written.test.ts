import { convert, inch, mm, parse, parseLength, RebuildInputError } from 'crankwright';
import { describe, expect, it } from 'vitest';
import { refusal } from './refusal.js';

describe('a fraction without a whole number', () => {
  it('may be more than one', () => {
    expect(parseLength('9/8 in')).toBe(inch(1.125));
    expect(parseLength('8/8 in')).toBe(inch(1));
  });
});

describe('a sign', () => {
  it('may stand behind blanks', () => {
    expect(parseLength('  -0.0005 in')).toBe(inch(-0.0005));
    expect(parseLength(' + .020 in')).toBe(inch(0.02));
  });
});

describe('capitals', () => {
  it('are nothing but capitals in a word', () => {
    expect(parseLength('0.05 Metres')).toBe(mm(50));
    expect(parseLength('12 MICRONS')).toBe(mm(0.012));
    expect(parse('50 Millilitres', 'volume')).toBeCloseTo(50e-6, 18);
    expect(parse('2 Minutes', 'time')).toBe(120);
  });

  it('are nothing but capitals where no m stands at the head', () => {
    expect(parse('50 CM3', 'volume')).toBeCloseTo(50e-6, 18);
    expect(parse('35 KPA', 'pressure')).toBe(35_000);
    expect(parse('8 mpa·s', 'dynamicViscosity')).toBe(0.008);
  });

  it('make a million of a thousandth, and are not guessed at', () => {
    for (const [text, dimension] of [
      ['5 ML per hour', 'flow'],
      ['5 ML', 'volume'],
      ['5 mpa', 'pressure'],
    ] as const) {
      expect(refusal(() => parse(text, dimension)).parameter).toBe('text');
    }
  });
});

describe('an undersize', () => {
  it.each(['20 underneath', '20 undersized', '20 overhead', '20 under it'])(
    'is not read from %s',
    (text) => {
      expect(refusal(() => parseLength(text)).parameter).toBe('text');
    },
  );
});

describe('a unit that may be of two sizes', () => {
  it('is only told of where a volume is wanted', () => {
    expect(refusal(() => parse('5 gal', 'volume')).hint).toContain('imp gal');
    expect(refusal(() => parse('5 gal', 'mass')).hint).not.toContain('gal');
  });
});

describe('a symbol', () => {
  it('is text, not what turns into text', () => {
    const listed = ['in'] as unknown as 'in';
    expect(refusal(() => convert(1, listed, 'mm')).parameter).toBe('from');
    expect(refusal(() => convert(1, 'mm', listed)).parameter).toBe('to');
    expect(refusal(() => convert(1, listed, ['mm'] as unknown as 'mm')).parameter).toBe('from');
  });
});

describe('text that is shown in an error', () => {
  it('is whole up to 60 characters', () => {
    const shown = (length: number) =>
      new RebuildInputError({
        parameter: 'x',
        value: 'a'.repeat(length),
        expected: 'it',
        hint: 'No.',
      }).message;
    expect(shown(60)).toContain(`"${'a'.repeat(60)}"`);
    expect(shown(61)).toContain(`"${'a'.repeat(60)}…"`);
  });
});
