import {
  type Basis,
  type Dimension,
  inch,
  type Judgement,
  judge,
  kelvin,
  type Length,
  type Limits,
  mm,
  newtonMetre,
  type Quantity,
  thou,
  type Verdict,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { judgeSpan } from '../../src/judging/judge.js';
import { notNumbers, refusal } from '../quantities/refusal.js';

const basis: Basis = { kind: 'specified' };
const judgeLength = (value: Length, limits: Limits<Length>, uncertainty?: Length) =>
  judge({
    feature: 'end play',
    dimension: 'length',
    value,
    limits,
    basis,
    ...(uncertainty === undefined ? {} : { uncertainty }),
  });
const NANOMETRE = 1e-9;
const micro = fc.integer({ min: -5000, max: 5000 }).map((n) => mm(n / 1000));

describe('judge', () => {
  it.each([
    [thou(7), 'within', thou(3)],
    [thou(5), 'within', thou(1)],
    [thou(12), 'above', thou(-2)],
    [thou(1), 'below', thou(-3)],
    [thou(4), 'within', thou(0)],
    [thou(10), 'within', thou(0)],
  ] as const)('%d m between 4 and 10 thou', (value, verdict, margin) => {
    const finding = judgeLength(value, { min: thou(4), max: thou(10) });
    expect(finding.verdict).toBe(verdict);
    expect(finding.margin).toBeCloseTo(margin, 15);
  });

  it('takes one bound alone', () => {
    expect(judgeLength(thou(12), { max: thou(10) }).verdict).toBe('above');
    expect(judgeLength(thou(-99), { max: thou(10) }).verdict).toBe('within');
    expect(judgeLength(thou(3), { min: thou(4) }).verdict).toBe('below');
    expect(judgeLength(inch(5), { min: thou(4) }).verdict).toBe('within');
    expect(judgeLength(thou(12), { min: thou(4) }).margin).toBeCloseTo(thou(8), 15);
  });

  it('lets a length pass by a nanometre, and no more', () => {
    const limits = { min: mm(1), max: mm(2) };
    expect(judgeLength((mm(2) + 0.9 * NANOMETRE) as Length, limits).verdict).toBe('within');
    expect(judgeLength((mm(2) + 1.1 * NANOMETRE) as Length, limits).verdict).toBe('above');
    expect(judgeLength((mm(1) - 0.9 * NANOMETRE) as Length, limits).verdict).toBe('within');
    expect(judgeLength((mm(1) - 1.1 * NANOMETRE) as Length, limits).verdict).toBe('below');
  });

  it('lets anything else pass by one part in a thousand million, and no more', () => {
    const verdict = (share: number) =>
      judge({
        feature: 'torque',
        dimension: 'torque',
        value: newtonMetre(100 * (1 + share)),
        limits: { max: newtonMetre(100) },
        basis,
      }).verdict;
    expect(verdict(0.9e-9)).toBe('within');
    expect(verdict(1.1e-9)).toBe('above');
  });

  it('never fails a reading at its limit for how it was worked out', () => {
    const steps = fc.integer({ min: 1, max: 40_000 });
    fc.assert(
      fc.property(steps, steps, (a, b) => {
        const limit = thou((a + b) / 10);
        const reading = (thou(a / 10) + thou(b / 10)) as Length;
        expect(judgeLength(reading, { min: limit, max: limit }).verdict).toBe('within');
      }),
    );
  });

  it('says within exactly where the value lies between its limits', () => {
    fc.assert(
      fc.property(micro, micro, micro, (value, a, b) => {
        const limits = { min: Math.min(a, b) as Length, max: Math.max(a, b) as Length };
        const wanted: Verdict =
          value > limits.max ? 'above' : value < limits.min ? 'below' : 'within';
        const { verdict, margin } = judgeLength(value, limits);
        expect(verdict).toBe(wanted);
        const distance = Math.min(limits.max - value, value - limits.min);
        expect(margin).toBeCloseTo(distance, 12);
      }),
    );
  });

  it('is mirrored by turning every sign', () => {
    const mirror = { above: 'below', below: 'above', within: 'within', undecided: 'undecided' };
    fc.assert(
      fc.property(micro, micro, micro, (value, a, b) => {
        const [min, max] = [Math.min(a, b), Math.max(a, b)] as [Length, Length];
        const one = judgeLength(value, { min, max });
        const other = judgeLength(-value as Length, { min: -max as Length, max: -min as Length });
        expect(other.verdict).toBe(mirror[one.verdict]);
        expect(other.margin).toBe(one.margin);
      }),
    );
  });

  it('gives back what it was told', () => {
    const judgement = Object.freeze({
      feature: 'coolant',
      dimension: 'temperature',
      value: kelvin(360),
      limits: Object.freeze({ max: kelvin(370) }),
      basis: Object.freeze({ kind: 'published', source: 'a manual' }),
      uncertainty: kelvin(1),
    } as const);
    expect(judge(judgement)).toEqual({ ...judgement, verdict: 'within', margin: 10 });
    expect(judgeLength(mm(1), { max: mm(2) })).not.toHaveProperty('uncertainty');
  });
});

describe('an uncertainty', () => {
  const limits = { min: mm(1), max: mm(2) };

  it.each([
    [1.5, 0.1, 'within'],
    [1.9, 0.1, 'within'],
    [1.91, 0.1, 'undecided'],
    [2.0, 0.1, 'undecided'],
    [2.1, 0.1, 'undecided'],
    [2.11, 0.1, 'above'],
    [1.1, 0.1, 'within'],
    [1.09, 0.1, 'undecided'],
    [0.9, 0.1, 'undecided'],
    [0.89, 0.1, 'below'],
    [1.5, 0.6, 'undecided'],
    [2.0, 0, 'within'],
  ] as const)('%d mm ± %d mm between 1 and 2 mm is %s', (value, uncertainty, verdict) => {
    expect(judgeLength(mm(value), limits, mm(uncertainty)).verdict).toBe(verdict);
  });

  it('only ever makes a verdict less certain', () => {
    fc.assert(
      fc.property(micro, fc.nat({ max: 2000 }), fc.nat({ max: 2000 }), (value, a, b) => {
        const [small, large] = [Math.min(a, b), Math.max(a, b)].map((n) => mm(n / 1000));
        const sure = judgeLength(value, limits, small).verdict;
        const unsure = judgeLength(value, limits, large).verdict;
        expect([sure, 'undecided']).toContain(unsure);
      }),
    );
  });

  it('cannot be negative', () => {
    expect(refusal(() => judgeLength(mm(1.5), limits, mm(-0.1))).parameter).toBe('uncertainty');
  });
});

describe('judgeSpan', () => {
  const spanned = (min: Length, max: Length) =>
    judgeSpan({
      feature: 'end play',
      dimension: 'length',
      value: { min, max },
      limits: { min: mm(1), max: mm(2) },
      basis,
    });

  it('gives the worse end', () => {
    expect(spanned(mm(1.1), mm(1.5)).value).toBe(mm(1.1));
    expect(spanned(mm(1.5), mm(2.4)).value).toBe(mm(2.4));
    expect(spanned(mm(0.5), mm(2.4)).value).toBe(mm(0.5));
    expect(spanned(mm(1), mm(2)).value).toBe(mm(2));
  });

  it('is never better than any value in the span', () => {
    fc.assert(
      fc.property(micro, micro, fc.double({ min: 0, max: 1, noNaN: true }), (a, b, share) => {
        const [min, max] = [Math.min(a, b), Math.max(a, b)] as [Length, Length];
        const inside = Math.min(max, min + share * (max - min)) as Length;
        const worst = spanned(min, max).margin;
        expect(spanned(inside, inside).margin).toBeGreaterThanOrEqual(worst - 1e-15);
      }),
    );
  });
});

describe('judge refuses', () => {
  const good: Judgement<'length'> = {
    feature: 'end play',
    dimension: 'length',
    value: mm(1),
    limits: { max: mm(2) },
    basis,
  };
  const withField = (field: string, value: unknown) => () =>
    judge({ ...good, [field]: value } as Judgement<Dimension>);

  it.each(notNumbers.map((value) => [value]))('%s for a number', (value) => {
    expect(refusal(withField('value', value)).parameter).toBe('value');
    if (value === undefined) return;
    expect(refusal(withField('uncertainty', value)).parameter).toBe('uncertainty');
    expect(refusal(withField('limits', { min: value })).parameter).toBe('limits.min');
    expect(refusal(withField('limits', { max: value })).parameter).toBe('limits.max');
  });

  it.each([
    ['limits', {}, 'limits'],
    ['limits', { min: mm(2), max: mm(1) }, 'limits'],
    ['limits', null, 'limits'],
    ['limits', [1, 2], 'limits'],
    ['value', 1e101 as Quantity<'length'>, 'value'],
    ['feature', '', 'feature'],
    ['feature', '  ', 'feature'],
    ['feature', 5, 'feature'],
    ['dimension', 'mood', 'dimension'],
    ['dimension', 'toString', 'dimension'],
    ['basis', undefined, 'basis'],
    ['basis', { kind: 'hearsay' }, 'basis.kind'],
    ['basis', { kind: 'published' }, 'basis.source'],
    ['basis', { kind: 'published', source: ' ' }, 'basis.source'],
    ['basis', { kind: 'common practice', rule: '' }, 'basis.rule'],
    ['basis', { kind: 'computed' }, 'basis.how'],
    ['basis', { kind: 'computed', how: 'so', source: 'a book' }, 'basis.source'],
  ])('%s %j', (field, value, parameter) => {
    expect(refusal(withField(field, value)).parameter).toBe(parameter);
  });

  it.each([undefined, null, 5, 'x', []])('%s for a judgement', (value) => {
    const call = () => judge(value as unknown as Judgement<'length'>);
    expect(refusal(call).parameter).toBe('judgement');
  });
});
