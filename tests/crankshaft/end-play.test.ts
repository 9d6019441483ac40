import {
  type EndPlayReading,
  endPlay,
  format,
  inch,
  type Length,
  mm,
  thou,
  undersizeSteps,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { notNumbers, refusal } from '../quantities/refusal.js';

const reading = fc
  .tuple(fc.integer({ min: -300, max: 300 }), fc.integer({ min: -300, max: 300 }))
  .map(([pushed, pulled]) => ({ pushed: thou(pushed / 10), pulled: thou(pulled / 10) }));

describe('endPlay', () => {
  it('gives mean, span and the worse end against the limits', () => {
    const play = endPlay([
      { pushed: thou(0), pulled: thou(7) },
      { pushed: thou(1), pulled: thou(-8) },
    ]);
    expect(format(play.mean, thou)).toBe('8.0 thou');
    expect(format(play.span.min, thou)).toBe('7.0 thou');
    expect(format(play.span.max, thou)).toBe('9.0 thou');
    expect(play.finding.verdict).toBe('within');
    expect(play.finding.value).toBe(play.span.max);
  });

  it('marks its own limits as a rule of thumb, and prefers the caller’s', () => {
    const readings = [{ pushed: thou(0), pulled: thou(12) }];
    const rule = endPlay(readings).finding;
    expect([rule.verdict, rule.basis.kind]).toEqual(['above', 'common practice']);
    expect(rule.limits).toEqual({ min: thou(4), max: thou(10) });
    const own = endPlay(readings, { limits: { max: thou(18) } }).finding;
    expect([own.verdict, own.basis.kind]).toEqual(['within', 'specified']);
    const basis = { kind: 'published', source: 'TM 5-3895-346-14' } as const;
    expect(endPlay(readings, { limits: { max: thou(11) }, basis }).finding.basis).toBe(basis);
  });

  it('does not care for order, direction or where the dial stands', () => {
    const shift = fc.integer({ min: -900, max: 900 });
    fc.assert(
      fc.property(fc.array(reading, { minLength: 1, maxLength: 6 }), shift, (readings, by) => {
        const one = endPlay(readings);
        const swapped = readings.map(({ pushed, pulled }) => ({ pushed: pulled, pulled: pushed }));
        const shifted = readings.map(({ pushed, pulled }) => ({
          pushed: (pushed + thou(by / 10)) as Length,
          pulled: (pulled + thou(by / 10)) as Length,
        }));
        for (const other of [[...readings].reverse(), swapped, shifted].map((r) => endPlay(r))) {
          expect(other.mean).toBeCloseTo(one.mean, 14);
          expect(other.span.min).toBeCloseTo(one.span.min, 14);
          expect(other.span.max).toBeCloseTo(one.span.max, 14);
        }
        expect(one.span.min).toBeLessThanOrEqual(one.mean + 1e-18);
        expect(one.span.max).toBeGreaterThanOrEqual(one.mean - 1e-18);
        expect(one.span.min).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  it('leaves its arguments alone', () => {
    const readings = Object.freeze([Object.freeze({ pushed: thou(0), pulled: thou(7) })]);
    expect(endPlay(readings, Object.freeze({})).mean).toBe(thou(7));
  });

  it.each(notNumbers.map((value) => [value]))('refuses the dial %s', (value) => {
    const wrong = value as Length;
    const pushed = refusal(() => endPlay([{ pushed: wrong, pulled: thou(1) }]));
    expect(pushed.parameter).toBe('readings[0].pushed');
    const pulled = refusal(() => endPlay([{ pushed: thou(1), pulled: wrong }]));
    expect(pulled.parameter).toBe('readings[0].pulled');
  });

  it.each([[[]], [undefined], [[5]], [{ pushed: 0, pulled: 0 }]])('refuses %j', (readings) => {
    const call = () => endPlay(readings as unknown as EndPlayReading[]);
    expect(refusal(call).parameter).toMatch(/^readings/);
  });

  it('refuses a dial read in bare thou', () => {
    const call = () => endPlay([{ pushed: 0 as Length, pulled: 7 as Length }]);
    expect(refusal(call).message).toContain('7 m is outside -10 mm … 10 mm');
    expect(refusal(() => endPlay([{ pushed: inch(0), pulled: inch(0.4) }])).parameter).toBe(
      'readings[0].pulled',
    );
  });
});

describe('undersizeSteps', () => {
  it('lists standard and three steps', () => {
    expect(undersizeSteps('inch')).toEqual([0, thou(10), thou(20), thou(30)]);
    expect(undersizeSteps('metric')).toEqual([0, mm(0.25), mm(0.5), mm(0.75)]);
  });

  it.each([
    ['inch', thou(0), 1],
    ['inch', thou(9), 1],
    ['inch', thou(10), 2],
    ['inch', thou(60), 7],
    ['inch', inch(0.1), 11],
    ['metric', mm(1), 5],
    ['metric', mm(1.1), 5],
  ] as const)('in %s up to %d m has %i', (system, largest, count) => {
    expect(undersizeSteps(system, largest)).toHaveLength(count);
  });

  it('rises evenly from nothing to its largest', () => {
    fc.assert(
      fc.property(fc.constantFrom('inch', 'metric'), fc.nat({ max: 118 }), (system, tens) => {
        const largest = thou(tens);
        const steps = undersizeSteps(system, largest);
        const step = system === 'inch' ? thou(10) : mm(0.25);
        expect(steps.every((at, n) => Math.abs(at - n * step) < 1e-15)).toBe(true);
        const last = steps.at(-1) as number;
        expect(last).toBeLessThanOrEqual(largest + 1e-9);
        expect(last + step).toBeGreaterThan(largest);
      }),
    );
  });

  it('refuses another system and a largest step that is none', () => {
    expect(refusal(() => undersizeSteps('thou' as 'inch')).parameter).toBe('system');
    expect(refusal(() => undersizeSteps('inch', 30 as Length)).parameter).toBe('largest');
    expect(refusal(() => undersizeSteps('inch', thou(-10))).parameter).toBe('largest');
  });
});
