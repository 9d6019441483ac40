import {
  centistokes,
  type DilutionThresholds,
  dilutionFinding,
  percentByVolume,
  thinningFinding,
  type VolumeFraction,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { notNumbers, refusal } from '../quantities/refusal.js';

const thresholds: DilutionThresholds = { act: percentByVolume(2), critical: percentByVolume(4) };

describe('dilutionFinding', () => {
  it.each([
    [0, 'normal', 'within'],
    [2.5, 'normal', 'within'],
    [2.6, 'act', 'above'],
    [5, 'act', 'above'],
    [5.1, 'critical', 'above'],
    [100, 'critical', 'above'],
  ] as const)('%d %% is %s', (percent, stage, verdict) => {
    const found = dilutionFinding(percentByVolume(percent));
    expect([found.stage, found.finding.verdict]).toEqual([stage, verdict]);
    expect(found.finding.basis.kind).toBe('common practice');
    expect(found.thresholds).toEqual({ act: 0.025, critical: 0.05 });
    expect(found.finding.limits.max).toBe(stage === 'critical' ? 0.05 : 0.025);
  });

  it('prefers the caller’s thresholds, and says so', () => {
    const found = dilutionFinding(percentByVolume(3), { thresholds });
    expect([found.stage, found.finding.basis.kind]).toEqual(['act', 'specified']);
    expect(found.thresholds).toEqual(thresholds);
    const basis = { kind: 'published', source: 'a laboratory' } as const;
    expect(dilutionFinding(percentByVolume(3), { thresholds, basis }).finding.basis).toBe(basis);
  });

  it('never passes its rule of thumb off as the caller’s', () => {
    const basis = { kind: 'specified', by: 'the manual' } as const;
    const call = () => dilutionFinding(percentByVolume(3), { basis });
    expect(refusal(call).parameter).toMatch(/^options\b/);
  });

  it('is never less grave for more fuel', () => {
    const grave = ['normal', 'act', 'critical'];
    const percent = fc.double({ min: 0, max: 100, noNaN: true });
    fc.assert(
      fc.property(percent, percent, (a, b) => {
        const [less, more] = [Math.min(a, b), Math.max(a, b)].map((p) =>
          grave.indexOf(dilutionFinding(percentByVolume(p)).stage),
        ) as [number, number];
        expect(more).toBeGreaterThanOrEqual(less);
      }),
    );
  });

  it('goes straight from normal to critical where the thresholds are one', () => {
    const both = { act: percentByVolume(3), critical: percentByVolume(3) };
    expect(dilutionFinding(percentByVolume(3), { thresholds: both }).stage).toBe('normal');
    expect(dilutionFinding(percentByVolume(3.1), { thresholds: both }).stage).toBe('critical');
  });

  it.each(notNumbers.map((value) => [value]))('refuses the fraction %s', (value) => {
    expect(refusal(() => dilutionFinding(value as VolumeFraction)).parameter).toBe('fraction');
  });

  it.each([
    [{ act: percentByVolume(5), critical: percentByVolume(2) }, 'options.thresholds'],
    [{ act: 2.5, critical: 5 }, 'options.thresholds.act'],
    [{ act: percentByVolume(2) }, 'options.thresholds.critical'],
    [5, 'options.thresholds'],
  ])('refuses the thresholds %j', (wrong, parameter) => {
    const options = { thresholds: wrong as DilutionThresholds };
    expect(refusal(() => dilutionFinding(percentByVolume(3), options)).parameter).toBe(parameter);
  });

  it('refuses less than none, percent without their unit, options and a basis that are none', () => {
    expect(refusal(() => dilutionFinding(3.1 as VolumeFraction)).hint).toContain('percentByVolume');
    expect(refusal(() => dilutionFinding(percentByVolume(-1))).parameter).toBe('fraction');
    const call = (options: unknown) => () =>
      dilutionFinding(percentByVolume(3), options as { thresholds: DilutionThresholds });
    expect(refusal(call(null)).parameter).toBe('options');
    expect(refusal(call({ thresholds, basis: { kind: 'x' } })).parameter).toBe(
      'options.basis.kind',
    );
  });
});

it('calls no sample normal that is thicker than its oil beyond the error of measurement', () => {
  const stages = [94, 100, 104, 106, 200].map(
    (sample) => thinningFinding({ oil: centistokes(100), sample: centistokes(sample) }).stage,
  );
  expect(stages).toEqual(['normal', 'normal', 'normal', 'thicker', 'thicker']);
});
