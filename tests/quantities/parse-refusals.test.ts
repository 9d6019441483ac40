import { type Dimension, parse, parseLength } from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { notNumbers, refusal } from './refusal.js';

describe('parseLength refuses', () => {
  it.each([
    ['no number', 'in', /no number that can be read at character 1 \("in"\)/],
    ['nothing', '', /no number that can be read at character 1/],
    ['blanks', '   ', /no number that can be read/],
    ['a unit first', 'in 2', /no number that can be read at character 1/],
    ['a comma for the point', '53,97 mm', /Write a point for decimals/],
    ['a comma between thousands', '1,000 mm', /nothing between thousands/],
    ['a signed comma', '-1,5 mm', /Write a point for decimals/],
    ['two points', '2.1.2 in', /no number that can be read/],
    ['two signs', '+-2 in', /no number that can be read/],
    ['no unit', '2.125', /has no unit, and length needs one at character 6/],
    ['a unit of another dimension', '2 kg', /has no unit of length at character 3 \("kg"\)/],
    ['an unknown unit', '2 hands', /Units of length: m, mm, µm, in, thou, tenth, µin, ft\./],
    ['half a fraction', '2 1/ in', /no unit of length at character 3 \("1\/ in"\)/],
    ['a fraction of decimals', '1.5/2 in', /no number that can be read/],
    ['trailing text', '2.1 in loose', /goes on after its unit at character 8 \("loose"\)/],
    ['feet and inches', '5\'6"', /goes on after its unit at character 3 \("6\\""\)/],
    ['a second number', '2 3 in', /no unit of length at character 3 \("3 in"\)/],
    ['a mixed number with an improper fraction', '2-9/8 in', /fraction that cannot be meant/],
    ['a mixed number with a whole fraction', '2 8/8 in', /fraction that cannot be meant/],
    ['nothing below the line', '1/0 in', /no zero below the line/],
    ['nothing below the line of a mixed number', '2-0/0 in', /no zero below the line/],
    ['decimal thou under', '0.020 under', /not an undersize that can be read/],
    ['decimal thou over', '0.020 over', /not an oversize that can be read.*0.50 mm over/],
    ['a signed undersize', '+20 under', /not an undersize that can be read/],
    ['an undersize in a unit of none', '20 lb under', /not an undersize that can be read/],
    ['a vulgar fraction', '½ in', /no number that can be read/],
  ])('%s', (_, text, message) => {
    const error = refusal(() => parseLength(text));
    expect(error.message).toMatch(message);
    expect([error.parameter, error.value]).toEqual(['text', text]);
  });

  it.each(notNumbers.filter((value) => typeof value !== 'string').map((value) => [value]))(
    'what is no text: %s',
    (value) => {
      expect(refusal(() => parseLength(value as string)).expected).toMatch(/text of at most 100/);
    },
  );

  it('a text too long to be a reading', () => {
    expect(refusal(() => parseLength(`${'1'.repeat(98)} in`)).parameter).toBe('text');
    expect(parseLength(`${'0'.repeat(97)} in`)).toBe(0);
  });

  it.each([
    ['1e400 in', /^text: "1e400 in" is too large to be a reading at character 1 \("1e400"\)\./],
    ['-1e308 in', /is too large to be a reading at character 2 \("1e308"\)/],
    ['  1e100 mm', /^text: " {2}1e100 mm" is too large .* at character 3 \("1e100"\)/],
    ['1e-400 in', /is too small to be a reading at character 1 \("1e-400"\)/],
    ['-.001e-330 in', /is too small to be a reading/],
  ])('a number that no reading is, as it was written: %s', (text, message) => {
    const error = refusal(() => parseLength(text));
    expect(error.message).toMatch(message);
    expect(error.message).not.toMatch(/Infinity/);
    expect([error.parameter, error.value]).toEqual(['text', text]);
    expect(error.hint).toBe('Check the exponent: "1e-3" is a thousandth, "1e3" a thousand.');
  });

  it('no number that is only large, or nothing', () => {
    expect(parseLength('9.9e99 m')).toBe(9.9e99);
    expect(parseLength('0e-400 in')).toBe(0);
    expect(parseLength('0/16 in')).toBe(0);
    expect(refusal(() => parse('1e308 psi', 'pressure')).parameter).toBe('text');
  });

  it('or reads, and nothing else, whatever the text', () => {
    const letters = [...'0123456789./,+-− \'"″inmthouµder°eE½'];
    const text = fc
      .array(fc.constantFrom(...letters), { maxLength: 14 })
      .map((all) => all.join(''));
    fc.assert(
      fc.property(fc.oneof(text, fc.string()), (tried) => {
        try {
          expect(Number.isFinite(parseLength(tried))).toBe(true);
        } catch (error) {
          expect(error).toHaveProperty('name', 'RebuildInputError');
        }
      }),
      { numRuns: 3000 },
    );
  });
});

describe('a place in the text', () => {
  it('is shown where the reading stops', () => {
    expect(() => parseLength('20 in extra in')).toThrow('at character 7 ("extra in")');
    expect(() => parseLength('2 in in')).toThrow('at character 6 ("in")');
  });

  it('is shown with a typographic minus too', () => {
    expect(() => parseLength('−1,5 in')).toThrow('at character 1');
  });
});

describe('parse refuses', () => {
  it.each([
    ['5 quarts', 'US qt or imp qt'],
    ['5 qt', 'US qt or imp qt'],
    ['5 Pints', 'US pt or imp pt'],
    ['5 pt', 'US pt or imp pt'],
    ['5 GAL', 'US gal or imp gal'],
    ['5 gallons', 'US gal or imp gal'],
    ['5 fl oz', 'US fl oz or imp fl oz'],
    ['5 oz', 'US fl oz or imp fl oz'],
  ])('the ambiguous %s', (text, choice) => {
    const error = refusal(() => parse(text, 'volume'));
    expect(error.message).toContain('is ambiguous at character 3');
    expect(error.hint).toContain(choice);
  });

  it.each([
    ['5 mPa', 'pressure'],
    ['5 mpa', 'pressure'],
    ['5 MPa·s', 'dynamicViscosity'],
    ['5 ML', 'volume'],
  ] as const)('to guess at mega or milli: %s', (text, dimension) => {
    expect(() => parse(text, dimension)).toThrow(`no unit of ${dimension}`);
  });

  it('a bare number for a fraction, by volume or by mass', () => {
    expect(() => parse('0.05', 'volumeFraction')).toThrow('has no unit');
    expect(() => parse('0.05', 'massFraction')).toThrow('has no unit');
  });

  it.each([
    ['20 lb', 'force'],
    ['20 kg', 'force'],
    ['20 psig', 'pressure'],
    ['20 psi', 'gaugePressure'],
    ['5 %', 'volumeFraction'],
    ['5 cP', 'kinematicViscosity'],
    ['20 under', 'mass'],
    ['20 Δ°C', 'temperature'],
  ] as const)('a unit of another dimension: %s as %s', (text, dimension) => {
    expect(() => parse(text, dimension)).toThrow(/has no unit of|goes on after its unit/);
  });

  it.each(['__proto__', 'constructor', 'toString'])('the unit %s as unknown', (name) => {
    expect(() => parse(`5 ${name}`, 'volume')).toThrow('has no unit of volume');
  });

  it.each(['mood', '', '__proto__', 'toString', undefined, null, 5])('the dimension %s', (name) => {
    const error = refusal(() => parse('5 in', name as Dimension));
    expect(error.parameter).toBe('dimension');
    expect(error.hint).toContain('gaugePressure');
  });
});
