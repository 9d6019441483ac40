import { type Basis, inch, judge, type Length, mm, newtonMetre, thou } from 'crankwright';
import { describe, expect, it } from 'vitest';
import { diameter } from '../../src/judging/domains.js';
import { judgeSpan, worstOf } from '../../src/judging/judge.js';
import { guardSpan, spanOf } from '../../src/judging/limits.js';
import { ownBasisOr } from '../../src/judging/own-limits.js';
import { refusal } from '../quantities/refusal.js';

const basis: Basis = { kind: 'specified' };
const endPlay = (value: Length, uncertainty?: Length) =>
  judge({
    feature: 'end play',
    dimension: 'length',
    value,
    limits: { min: thou(4), max: thou(10) },
    basis,
    ...(uncertainty === undefined ? {} : { uncertainty }),
  });

describe('one size', () => {
  it('is a span of no width, and a span is itself', () => {
    expect(spanOf(mm(70))).toEqual({ min: mm(70), max: mm(70) });
    const span = { min: mm(70), max: mm(71) };
    expect(spanOf(span)).toBe(span);
  });
});

describe('the wrong way round', () => {
  const reversed = { min: mm(71), max: mm(70) };

  it('are the two ends of a span, and the error holds both', () => {
    const error = refusal(() => guardSpan('bore', reversed, diameter));
    expect([error.parameter, error.value]).toEqual(['bore', reversed]);
  });

  it('are two limits, and the error holds both', () => {
    const call = () =>
      judge({ feature: 'bore', dimension: 'length', value: mm(70), limits: reversed, basis });
    const error = refusal(call);
    expect([error.parameter, error.value]).toEqual(['limits', reversed]);
  });

  it('are no ends that are one size', () => {
    const size = { min: mm(70), max: mm(70) };
    expect(guardSpan('bore', size, diameter)).toEqual(size);
  });

  it('is not what is wrong with an end that is no size', () => {
    for (const end of ['min', 'max']) {
      const span = { min: mm(70), max: mm(71), [end]: 70 as Length };
      const error = refusal(() => guardSpan('bore', span, diameter));
      expect([error.parameter, error.value]).toEqual([`bore.${end}`, 70]);
    }
  });
});

describe('the worst of several findings', () => {
  it('is the one that fails by most', () => {
    const [low, high, lower] = [endPlay(thou(3)), endPlay(thou(12)), endPlay(thou(1))];
    expect(worstOf([low, high, lower])).toBe(lower);
    expect(worstOf([low, high])).toBe(high);
    expect(worstOf([high, low])).toBe(high);
  });

  it('is none where all are within', () => {
    expect(worstOf([endPlay(thou(4)), endPlay(thou(7))])).toBeUndefined();
    expect(worstOf([])).toBeUndefined();
  });

  it('may be one that cannot be told, before any that is within', () => {
    const unsure = endPlay(thou(9.5), thou(1));
    expect(worstOf([endPlay(thou(10)), unsure])).toBe(unsure);
  });
});

describe('noise', () => {
  const torque = (value: number, limits: object, uncertainty?: number) =>
    judge({
      feature: 'torque',
      dimension: 'torque',
      value: newtonMetre(value),
      limits,
      basis,
      ...(uncertainty === undefined ? {} : { uncertainty: newtonMetre(uncertainty) }),
    }).verdict;

  it('is forgiven by the larger of value and limits, whatever their sign', () => {
    // One part in a thousand million of 100 N m is 1e-7 N m.
    expect(torque(-100 - 0.9e-7, { min: newtonMetre(-100) })).toBe('within');
    expect(torque(-100 - 1.1e-7, { min: newtonMetre(-100) })).toBe('below');
    expect(torque(-100 + 0.9e-7, { max: newtonMetre(-100) })).toBe('within');
    expect(torque(-100 + 1.1e-7, { max: newtonMetre(-100) })).toBe('above');
    expect(torque(-0.9e-7, { min: newtonMetre(0), max: newtonMetre(100) })).toBe('within');
    expect(torque(-1.1e-7, { min: newtonMetre(0), max: newtonMetre(100) })).toBe('below');
  });

  it('is forgiven beside an uncertainty too', () => {
    const limits = { max: newtonMetre(100) };
    expect(torque(90 + 0.9e-7, limits, 10)).toBe('within');
    expect(torque(90 + 1.1e-7, limits, 10)).toBe('undecided');
    expect(torque(110 + 0.9e-7, limits, 10)).toBe('undecided');
    expect(torque(110 + 1.2e-7, limits, 10)).toBe('above');
  });

  it('is forgiven of a length by the nanometre, with an uncertainty as without', () => {
    const at = (nanometres: number) =>
      endPlay((thou(11) + nanometres * 1e-9) as Length, thou(1)).verdict;
    expect([at(0.9), at(1.1)]).toEqual(['undecided', 'above']);
  });
});

describe('a span against one limit', () => {
  it.each([
    [{ max: mm(2) }, mm(1.4)],
    [{ min: mm(1) }, mm(1.2)],
  ])('%j is judged by the end that lies nearer to it', (limits, value) => {
    const span = { min: mm(1.2), max: mm(1.4) };
    const found = judgeSpan({ feature: 'x', dimension: 'length', value: span, limits, basis });
    expect([found.value, found.verdict]).toEqual([value, 'within']);
  });
});

describe('a basis', () => {
  const fallback: Basis = { kind: 'common practice', rule: 'r' };
  const manual: Basis = { kind: 'published', source: 'a manual' };

  it('is the caller’s own where the limits are', () => {
    expect(ownBasisOr('options', 'thresholds', {}, manual, fallback)).toEqual(manual);
    expect(ownBasisOr('options', 'thresholds', {}, undefined, fallback)).toEqual(basis);
    expect(ownBasisOr('options', 'thresholds', undefined, undefined, fallback)).toBe(fallback);
  });

  it('of nothing is refused, by the name of what it should be of', () => {
    for (const field of ['limits', 'thresholds'] as const) {
      const call = () => ownBasisOr('options', field, undefined, manual, fallback);
      expect(refusal(call).parameter).toBe(`options.${field}`);
    }
  });

  it('may name who specified the limit, but not leave the name empty', () => {
    const judged = (wrong: unknown) =>
      judge({
        feature: 'bore',
        dimension: 'length',
        value: inch(3),
        limits: { min: inch(3) },
        basis: wrong as Basis,
      });
    expect(judged({ kind: 'specified', by: 'the machinist' }).verdict).toBe('within');
    expect(judged({ kind: 'specified' }).verdict).toBe('within');
    for (const by of ['', ' ', 5, null]) {
      expect(refusal(() => judged({ kind: 'specified', by })).parameter).toBe('basis.by');
    }
    expect(refusal(() => judged({ kind: 'common practice' })).parameter).toBe('basis.rule');
    expect(refusal(() => judged({})).parameter).toBe('basis.kind');
  });
});
