import { type Angle, type Basis, inch, type Length, mm, thou } from 'crankwright';
import { describe, expect, it } from 'vitest';
import {
  angleAround,
  diameter,
  diametralClearance,
  outOfTrue,
  stationAlong,
} from '../../src/judging/domains.js';
import {
  guardBetween,
  guardFields,
  guardList,
  guardObject,
  guardText,
  guardWord,
} from '../../src/judging/guards.js';
import { guardSpan } from '../../src/judging/limits.js';
import { ownLimitsOr } from '../../src/judging/own-limits.js';
import { notNumbers, refusal } from '../quantities/refusal.js';

describe('a length at the door', () => {
  it('tells a bare number from one in its unit', () => {
    expect(refusal(() => diameter('journal', 2.1248 as Length)).message).toBe(
      'journal: 2.1248 m is outside 3 mm … 1 m. Lengths are metres here; wrap it in its unit, e.g. inch(2.1248).',
    );
  });

  it.each([
    ['a diameter', diameter, 0.003, 1, '3 mm … 1 m'],
    ['a clearance', diametralClearance, -0.01, 0.01, '-10 mm … 10 mm'],
    ['a flaw', outOfTrue, 0, 0.01, '0 m … 10 mm'],
    ['a station', stationAlong, -2, 2, '-2 m … 2 m'],
  ] as const)('%s has its range, both ends in it', (_, guard, least, most, range) => {
    expect(guard('size', least as Length)).toBe(least);
    expect(guard('size', most as Length)).toBe(most);
    for (const outside of [least - 1e-6, most + 1e-6]) {
      const error = refusal(() => guard('size', outside as Length));
      expect(error.message).toMatch(/^size: \S+ mm? is outside /);
      expect(error.message).toContain(` is outside ${range}. `);
      expect([error.parameter, error.value]).toEqual(['size', outside]);
    }
  });

  it.each(notNumbers.map((value) => [value]))('%s is none', (value) => {
    const error = refusal(() => diameter('bore', value as Length));
    expect(error.message).toMatch(/^bore: .* a length of 3 mm … 1 m/);
  });

  it.each([0.00762, 0.0076, 1 / 3])('prints its range without binary noise: %d', (least) => {
    const shown = refusal(() => guardBetween('x', 9 as Length, mm, [least, 1], 'mm(1)'));
    expect(shown.expected).toMatch(/^\d+(?:\.\d{1,6})? … 1000 mm$/);
  });
});

describe('other guards', () => {
  it('name the unit wanted of other dimensions', () => {
    const error = refusal(() => angleAround('angle', 90 as Angle));
    expect(error.message).toBe(
      'angle: 5156.62 deg is outside -720 … 720 deg. Angle is in rad here, and 90 was given; wrap it in its unit, e.g. degree(90).',
    );
    expect(angleAround('angle', (-4 * Math.PI) as Angle)).toBe(-4 * Math.PI);
  });

  it('take an object with named fields for one, and nothing else', () => {
    expect(() => guardObject('sizes', {})).not.toThrow();
    for (const value of [undefined, null, 5, 'x', [], () => 1]) {
      expect(refusal(() => guardObject('sizes', value)).parameter).toBe('sizes');
    }
  });

  it('know every field by its name', () => {
    type Sizes = { readonly bore: number; readonly piston?: number };
    const known = ['bore', 'piston'] as const;
    const guard = (sizes: Sizes) => guardFields('sizes', sizes, known);
    expect(() => guard({ bore: 1 })).not.toThrow();
    expect(() => guard({ piston: 2, bore: 1 })).not.toThrow();
    const misspelt = { bore: 1, pistn: 2 };
    const error = refusal(() => guard(misspelt));
    expect([error.parameter, error.value]).toEqual(['sizes.pistn', 2]);
    expect(error.hint).toContain('bore, piston');
    for (const none of [null, 'bore', [], ['bore'], () => 1, inch, 5]) {
      const refused = refusal(() => guard(none as never));
      expect([refused.parameter, refused.value]).toEqual(['sizes', none]);
    }
  });

  it('count a list', () => {
    expect(() => guardList('shells', [1, 2], 2, 'shells')).not.toThrow();
    expect(refusal(() => guardList('shells', [1], 2, 'shells')).message).toContain(
      'a list of at least 2 shells',
    );
    for (const value of [undefined, 'ab', { length: 2 }]) {
      expect(refusal(() => guardList('shells', value, 2, 'shells')).value).toBe(value);
    }
  });

  it('want text with something in it', () => {
    expect(guardText('name', ' rod 1 ')).toBe(' rod 1 ');
    for (const value of ['', ' ', 1, undefined]) {
      expect(refusal(() => guardText('name', value)).value).toBe(value);
    }
  });

  it('want one of a few words', () => {
    expect(guardWord('wear', 'all round', ['one side', 'all round'])).toBe('all round');
    expect(refusal(() => guardWord('wear', 'even', ['one side', 'all round'])).hint).toBe(
      'One of: one side, all round.',
    );
  });
});

describe('a span at the door', () => {
  it('is one size or two the right way round', () => {
    expect(guardSpan('bore', mm(70), diameter)).toEqual({ min: mm(70), max: mm(70) });
    const span = { min: mm(70), max: mm(71) };
    expect(guardSpan('bore', span, diameter)).toEqual(span);
    const reversed = { min: mm(71), max: mm(70) };
    expect(refusal(() => guardSpan('bore', reversed, diameter)).hint).toBe('Swap the two.');
  });

  it.each([null, undefined, 'x', Number.NaN])('is not %s', (value) => {
    const call = () => guardSpan('bore', value as unknown as Length, diameter);
    expect(refusal(call).parameter).toBe('bore');
    const half = { min: mm(70), max: value } as unknown as { min: Length; max: Length };
    expect(refusal(() => guardSpan('bore', half, diameter)).parameter).toBe('bore.max');
  });
});

describe("the caller's own limits", () => {
  const rule = { limits: { max: thou(5) }, basis: { kind: 'common practice', rule: 'r' } } as const;
  const own = { limits: { max: inch(1) } };
  const manual: Basis = { kind: 'specified', by: 'the manual' };

  it('win over the rule of thumb, and are specified unless they say otherwise', () => {
    expect(ownLimitsOr('options', {}, rule, diameter)).toEqual(rule);
    const basis = { kind: 'specified' };
    expect(ownLimitsOr('options', own, rule, diameter)).toEqual({ ...own, basis });
    const named = ownLimitsOr('options', { ...own, basis: manual }, rule, diameter);
    expect(named).toEqual({ ...own, basis: manual });
  });

  it('never lend their basis to the rule of thumb', () => {
    const call = () => ownLimitsOr('options', { basis: manual }, rule, diameter);
    expect(refusal(call).parameter).toBe('options.limits');
  });

  it('are checked like any other', () => {
    const call = (wrong: unknown) => () => ownLimitsOr('options', wrong as object, rule, diameter);
    expect(refusal(call(null)).parameter).toBe('options');
    expect(refusal(call({ limits: {} })).parameter).toBe('options.limits');
    expect(refusal(call({ limits: { max: 2 } })).parameter).toBe('options.limits.max');
    expect(refusal(call({ basis: { kind: 'x' } })).parameter).toBe('options.basis.kind');
  });
});
