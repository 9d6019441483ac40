import {
  type Basis,
  type DecisionRule,
  describe as describeFinding,
  type Judgement,
  judge,
  type Length,
  mm,
  thou,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { guardLayout } from '../../src/judging/layout.js';
import { findingLengthLayout } from '../../src/judging/layouts.js';
import { normalTail } from '../../src/numerics/index.js';
import { refusal } from '../quantities/refusal.js';

const basis: Basis = { kind: 'specified' };
const limits = { min: mm(1), max: mm(2) };
const judged = (value: Length, more: Partial<Judgement<'length'>> = {}) =>
  judge({ feature: 'end play', dimension: 'length', value, limits, basis, ...more });
const verdict = (value: number, rule: DecisionRule<'length'>, uncertainty = 0.1) =>
  judged(mm(value), { rule, uncertainty: mm(uncertainty) }).verdict;

describe('a decision rule', () => {
  it.each([
    [1.999, 'simple acceptance', 'within'],
    [2.0, 'simple acceptance', 'within'],
    [2.001, 'simple acceptance', 'above'],
    [0.999, 'simple acceptance', 'below'],
    [1.917, 'ISO 14253-1:2017', 'within'],
    [1.918, 'ISO 14253-1:2017', 'undecided'],
    [2.082, 'ISO 14253-1:2017', 'undecided'],
    [2.083, 'ISO 14253-1:2017', 'above'],
    [1.9, 'full expanded uncertainty', 'within'],
    [1.901, 'full expanded uncertainty', 'undecided'],
    [2.1, 'full expanded uncertainty', 'undecided'],
    [2.101, 'full expanded uncertainty', 'above'],
    [1.97, { guardBand: mm(0.03) }, 'within'],
    [1.971, { guardBand: mm(0.03) }, 'undecided'],
    [0.969, { guardBand: mm(0.03) }, 'below'],
  ] as const)('puts %d ± 0.1 mm, between 1 and 2 mm by %j, %s', (value, rule, expected) => {
    expect(verdict(value, rule)).toBe(expected);
  });

  it('is the full expanded uncertainty where none is named', () => {
    fc.assert(
      fc.property(fc.integer({ min: 500, max: 2500 }), fc.nat({ max: 900 }), (value, doubt) => {
        const uncertainty = mm(doubt / 1000);
        const named = { uncertainty, rule: 'full expanded uncertainty' } as const;
        expect(judged(mm(value / 1000), { uncertainty }).verdict).toBe(
          judged(mm(value / 1000), named).verdict,
        );
      }),
    );
  });

  it('has one wrong verdict in twenty at the edge of the band of 2017, and at most so many', () => {
    const band = 0.8225 * 2;
    expect(normalTail(band)).toBeLessThanOrEqual(0.05);
    expect(normalTail(band - 0.001)).toBeGreaterThan(0.05);
  });

  it('only ever leaves more undecided the wider its band is', () => {
    const rules: readonly DecisionRule<'length'>[] = [
      'simple acceptance',
      'ISO 14253-1:2017',
      'full expanded uncertainty',
      { guardBand: mm(1) },
    ];
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 3000 }), fc.nat({ max: 900 }), (value, doubt) => {
        const verdicts = rules.map((rule) => verdict(value / 1000, rule, doubt / 1000));
        expect(verdicts[0]).not.toBe('undecided');
        verdicts.reduce((laxer, stricter) => {
          expect([laxer, 'undecided']).toContain(stricter);
          return stricter;
        });
      }),
    );
  });

  it('judges the service limit, too', () => {
    const service = { limits: { max: mm(2.5) }, basis };
    const grade = (rule: DecisionRule<'length'>) =>
      judged(mm(2.45), { service, uncertainty: mm(0.06), rule }).grade;
    expect(grade('full expanded uncertainty')).toBe('undecided');
    expect(grade('ISO 14253-1:2017')).toBe('serviceable');
  });

  it('is kept in the finding where it had something to say', () => {
    const rule = 'simple acceptance';
    expect(judged(mm(1.5), { rule, uncertainty: mm(0.1) }).rule).toBe(rule);
    expect(judged(mm(1.5), { rule })).not.toHaveProperty('rule');
    expect(judged(mm(1.5), { rule: { guardBand: mm(0.1) } }).rule).toEqual({ guardBand: mm(0.1) });
    expect(judged(mm(1.99), { rule: { guardBand: mm(0.1) } }).verdict).toBe('undecided');
  });

  it('passes the door of what takes findings, after JSON', () => {
    for (const rule of ['ISO 14253-1:2017', { guardBand: mm(0.1) }] as const) {
      const found = JSON.parse(JSON.stringify(judged(mm(1.5), { rule, uncertainty: mm(0.1) })));
      guardLayout('finding', found, findingLengthLayout, 'judge');
      const wrong = { ...found, rule: { guardBand: -1 } };
      expect(
        refusal(() => guardLayout('finding', wrong, findingLengthLayout, 'judge')).parameter,
      ).toBe('finding.rule.guardBand');
    }
  });

  it.each([
    ['hearsay', 'rule'],
    [null, 'rule'],
    [{}, 'rule.guardBand'],
    [{ guardBand: Number.NaN }, 'rule.guardBand'],
    [{ guardBand: mm(-1) }, 'rule.guardBand'],
    [{ guardBand: mm(1), share: 2 }, 'rule.share'],
  ])('cannot be %j', (rule, parameter) => {
    expect(refusal(() => judged(mm(1.5), { rule: rule as never })).parameter).toBe(parameter);
  });
});

describe('describe says of a rule', () => {
  const both = { min: thou(4), max: thou(10) };
  const said = (value: Length, rule: DecisionRule<'length'>, uncertainty?: Length) =>
    describeFinding(judged(value, { limits: both, rule, ...(uncertainty && { uncertainty }) }), {
      units: 'inch',
    })[0];

  it.each([
    [
      thou(9.5),
      'ISO 14253-1:2017',
      thou(1),
      'end play 0.0095 in ± 0.0010 in: undecided by the rule of ISO 14253-1:2017, as it may be inside or outside 0.0040 to 0.0100 in (specified)',
    ],
    [
      thou(9.5),
      'full expanded uncertainty',
      thou(1),
      'end play 0.0095 in ± 0.0010 in: undecided, as it may be inside or outside 0.0040 to 0.0100 in (specified)',
    ],
    [
      thou(9.5),
      { guardBand: thou(0.7) },
      undefined,
      'end play 0.0095 in: undecided by a guard band of 0.0007 in, as it may be inside or outside 0.0040 to 0.0100 in (specified)',
    ],
    [
      thou(9.5),
      'simple acceptance',
      thou(1),
      'end play 0.0095 in ± 0.0010 in: within 0.0040 to 0.0100 in (specified), by simple acceptance: its uncertainty reaches past the limit',
    ],
    [
      thou(10.5),
      'simple acceptance',
      thou(1),
      'end play 0.0105 in ± 0.0010 in: 0.0005 in above the limit of 0.0100 in (specified), by simple acceptance: its uncertainty reaches past the limit',
    ],
    [
      thou(7),
      'simple acceptance',
      thou(1),
      'end play 0.0070 in ± 0.0010 in: within 0.0040 to 0.0100 in (specified)',
    ],
  ] as const)('%d by %j', (value, rule, uncertainty, sentence) => {
    expect(said(value, rule, uncertainty)).toBe(sentence);
  });
});
