import {
  type ClearanceQuestion,
  describeClearance,
  explainClearance,
  inch,
  type Length,
  mm,
  recommendedOilClearance,
  thou,
  undersizeSteps,
  type Wording,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { notNumbers, refusal } from '../quantities/refusal.js';

const limits = { min: thou(1), max: thou(3) };
const ask = (clearance: Length, more: Partial<ClearanceQuestion> = {}) =>
  explainClearance({ clearance, journal: inch(2.125), limits, ...more });
const mismatchOf = (explanation: ReturnType<typeof ask>) =>
  'mismatch' in explanation ? explanation.mismatch : undefined;

describe('explainClearance', () => {
  it.each([10, 20, 30])('finds a journal ground %d under in shells that are not', (step) => {
    const why = ask(thou(2 + step));
    expect(why.outcome).toBe('journal ground, shells not');
    expect(mismatchOf(why)).toBeCloseTo(thou(step), 15);
    expect('matched' in why && why.matched.value).toBeCloseTo(thou(2), 12);
    expect('matched' in why && why.matched.verdict).toBe('within');
    expect(why.finding.verdict).toBe('above');
  });

  it.each([10, 20, 30])('finds shells %d under on a journal that is not', (step) => {
    const why = ask(thou(2 - step));
    expect(why.outcome).toBe('shells undersize, journal not');
    expect(mismatchOf(why)).toBeCloseTo(thou(step), 15);
    expect('matched' in why && why.matched.value).toBeCloseTo(thou(2), 12);
    expect(why.finding.verdict).toBe('below');
  });

  it.each(undersizeSteps('metric').slice(1))('finds the metric step of %d m', (step) => {
    const steps = undersizeSteps('metric');
    const metric = { steps, limits: { min: mm(0.03), max: mm(0.08) } };
    expect(mismatchOf(ask((mm(0.05) + step) as Length, metric))).toBe(step);
    expect(mismatchOf(ask((mm(0.05) - step) as Length, metric))).toBe(step);
  });

  it('has nothing to explain within the limits, ends included', () => {
    for (const clearance of [1, 2, 3]) {
      expect(ask(thou(clearance)).outcome).toBe('as it should be');
    }
  });

  it('allows for wear of 0.002 in above the limits, or as told, and no more', () => {
    expect(ask(thou(23 + 1.9)).outcome).toBe('journal ground, shells not');
    expect(ask(thou(23 + 2.1)).outcome).toBe('too loose, unexplained');
    expect(ask(thou(27), { wearAllowance: thou(4) }).outcome).toBe('journal ground, shells not');
    expect(ask(thou(24), { wearAllowance: thou(0) }).outcome).toBe('too loose, unexplained');
    expect(ask(thou(3.5)).outcome).toBe('too loose, unexplained');
    expect(ask(thou(-3)).outcome).toBe('too tight, unexplained');
    expect(ask(thou(-33)).outcome).toBe('too tight, unexplained');
    expect(ask(thou(45)).outcome).toBe('too loose, unexplained');
  });

  it('does not call a step an explanation that would leave too little', () => {
    // 9 thou less a step of 10 is an interference: nothing wears a bearing tighter.
    expect(ask(thou(9)).outcome).toBe('too loose, unexplained');
    expect(ask(thou(-10)).outcome).toBe('too tight, unexplained');
  });

  it('takes the rule of thumb where no limits are told', () => {
    const why = explainClearance({ clearance: thou(22), journal: inch(2.105) });
    expect(why.outcome).toBe('journal ground, shells not');
    expect(why.finding.basis.kind).toBe('common practice');
    expect(why.finding.limits).toEqual(recommendedOilClearance(inch(2.105)).limits);
  });

  it('explains any step, either way, wherever between its limits the right clearance lies', () => {
    const step = fc.constantFrom(10, 20, 30);
    fc.assert(
      fc.property(fc.integer({ min: 10, max: 30 }), step, fc.boolean(), (right, by, loose) => {
        const clearance = thou(right / 10 + (loose ? by : -by));
        const why = ask(clearance);
        expect(why.outcome).toBe(
          loose ? 'journal ground, shells not' : 'shells undersize, journal not',
        );
        expect(mismatchOf(why)).toBeCloseTo(thou(by), 15);
      }),
    );
  });

  it('says nothing that its own numbers do not bear out', () => {
    fc.assert(
      fc.property(fc.integer({ min: -500, max: 500 }), (tenths) => {
        const clearance = thou(tenths / 10);
        const why = ask(clearance);
        expect(why.finding.value).toBe(clearance);
        expect(why.outcome === 'as it should be').toBe(tenths >= 10 && tenths <= 30);
        if (!('mismatch' in why)) return;
        const gap = Math.abs(why.matched.value - clearance);
        expect(gap).toBeCloseTo(why.mismatch, 15);
        expect(why.outcome === 'journal ground, shells not').toBe(tenths > 30);
        expect(why.matched.margin).toBeGreaterThanOrEqual(-thou(2) - 2e-9);
        expect(why.matched.verdict).not.toBe('below');
      }),
    );
  });

  it('passes over steps that are indistinguishable from wear', () => {
    expect(ask(thou(4), { steps: [thou(2)] }).outcome).toBe('too loose, unexplained');
    expect(ask(thou(4), { steps: [thou(2.5)] }).outcome).toBe('journal ground, shells not');
  });

  it('takes, of two steps that would both do, the one that stays further inside', () => {
    const steps = [thou(10), thou(10.5)];
    expect(mismatchOf(ask(thou(12.4), { steps }))).toBe(thou(10.5));
    expect(mismatchOf(ask(thou(11.9), { steps: [...steps].reverse() }))).toBe(thou(10));
  });

  it('passes over standard among the steps', () => {
    expect(mismatchOf(ask(thou(22), { steps: undersizeSteps('inch') }))).toBe(thou(20));
    expect(ask(thou(22), { steps: [thou(0), thou(10)] }).outcome).toBe('too loose, unexplained');
  });
});

describe('explainClearance refuses', () => {
  it.each(notNumbers.map((value) => [value]))('the size %s', (value) => {
    const wrong = value as Length;
    expect(refusal(() => ask(wrong)).parameter).toBe('clearance');
    expect(refusal(() => ask(thou(2), { journal: wrong })).parameter).toBe('journal');
    expect(refusal(() => ask(thou(2), { steps: [wrong] })).parameter).toMatch(/^steps/);
  });

  it.each([
    ['limits', { max: thou(3) }, 'limits'],
    ['limits', { min: thou(3) }, 'limits'],
    ['limits', {}, 'question.limits'],
    ['clearance', mm(21), 'clearance'],
    ['wearAllowance', thou(-1), 'wearAllowance'],
    ['steps', [], 'steps'],
    ['steps', [thou(0)], 'steps'],
    ['steps', [thou(-10)], 'steps[0]'],
    ['steps', 10, 'steps'],
    ['basis', { kind: 'x' }, 'question.basis.kind'],
  ])('a %s of %j', (field, value, parameter) => {
    expect(refusal(() => ask(thou(2), { [field]: value })).parameter).toBe(parameter);
  });

  it('no object', () => {
    expect(refusal(() => explainClearance(null as never)).parameter).toBe('question');
  });
});

describe('describeClearance says', () => {
  const inches: Wording = { units: 'inch' };
  const millimetres: Wording = { units: 'metric' };

  it.each([
    [
      thou(22),
      inches,
      'it is as if the journal were ground 0.0200 in below what these shells are made for: it will knock; matching shells would leave 0.0020 in',
    ],
    [
      thou(22),
      millimetres,
      'it is as if the journal were ground 0.508 mm below what these shells are made for: it will knock; matching shells would leave 0.051 mm',
    ],
    [
      thou(-8),
      inches,
      'it is as if these shells were for a journal ground 0.0100 in smaller: it cannot turn; matching shells would leave 0.0020 in',
    ],
    [
      thou(-8),
      millimetres,
      'it is as if these shells were for a journal ground 0.254 mm smaller: it cannot turn; matching shells would leave 0.051 mm',
    ],
    [
      thou(24.5),
      inches,
      'it is as if the journal were ground 0.0200 in below what these shells are made for: it will knock; matching shells would leave 0.0045 in, still 0.0015 in above the limit',
    ],
    [thou(2), inches, 'oil clearance 0.0020 in: within 0.0010 to 0.0030 in (specified)'],
    [thou(2), millimetres, 'oil clearance 0.051 mm: within 0.025 to 0.076 mm (specified)'],
    [
      thou(5),
      inches,
      'oil clearance 0.0050 in: 0.0020 in above the limit of 0.0030 in (specified); none of the undersizes considered explains it',
    ],
    [
      thou(-3),
      millimetres,
      'oil clearance -0.076 mm: 0.102 mm below the limit of 0.025 mm (specified); the shells grip the journal, it cannot turn; none of the undersizes considered explains it',
    ],
  ])('of %d m', (clearance, wording, sentence) => {
    expect(describeClearance(ask(clearance), wording)[0]).toBe(sentence);
  });

  it('that a journal with some clearance left turns, but with too little oil', () => {
    const why = ask(thou(0.5), { steps: [thou(2.5)] });
    expect(describeClearance(why, inches)[0]).toBe(
      'it is as if these shells were for a journal ground 0.0025 in smaller: it has too little oil; matching shells would leave 0.0030 in',
    );
  });

  it('nothing of what is no explanation', () => {
    for (const wrong of [undefined, null, 5, [], {}, { kind: 'journal ground, shells not' }]) {
      expect(refusal(() => describeClearance(wrong as never, inches)).message).not.toBe('');
    }
    const why = ask(thou(22));
    expect(refusal(() => describeClearance(why, null as never)).parameter).toBe('wording');
    expect(refusal(() => describeClearance(why, { units: 'si' as never })).value).toBe('si');
  });
});

describe('a bearing without any clearance', () => {
  it('cannot turn, just as one with an interference', () => {
    const why = ask(thou(0), { steps: [thou(2.5)] });
    expect(describeClearance(why, { units: 'inch' })[0]).toBe(
      'it is as if these shells were for a journal ground 0.0025 in smaller: it cannot turn; matching shells would leave 0.0025 in',
    );
  });
});

describe('a clearance that was measured to 0.3 thou', () => {
  const uncertainty = thou(0.3);

  it('is neither explained nor good as long as it is nearer to a limit than that', () => {
    for (const clearance of [0.8, 1.2, 2.8, 3.2]) {
      const why = ask(thou(clearance), { uncertainty });
      expect(why.outcome).toBe('undecided');
      expect(describeClearance(why, { units: 'inch' })[0]).toContain('undecided');
    }
    expect(ask(thou(1.4), { uncertainty }).outcome).toBe('as it should be');
    expect(ask(thou(3.4), { uncertainty }).outcome).toBe('too loose, unexplained');
  });

  it('shows a ground journal all the same, and says where matching shells are too near to tell', () => {
    const why = ask(thou(22.9), { uncertainty });
    expect(describeClearance(why, { units: 'inch' })[0]).toBe(
      'it is as if the journal were ground 0.0200 in below what these shells are made for: it will knock; matching shells would leave 0.0029 in, too near to a limit to tell',
    );
  });
});
