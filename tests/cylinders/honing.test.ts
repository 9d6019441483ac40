import {
  convertRoughness,
  crosshatchAngle,
  degree,
  format,
  type Length,
  micrometre,
  mm,
  perMinute,
  type RotationalSpeed,
  type RoughnessMeasure,
  rpm,
  strokeRateForCrosshatch,
  times,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { refusal } from '../quantities/refusal.js';

const hone = { strokeLength: mm(100), spindleSpeed: rpm(120), bore: mm(80) };

describe('crosshatch', () => {
  it('is 90° where the hone goes along as fast as its stones go around', () => {
    // Stones go around at π · 80 mm · 2 /s = 160 π mm/s; strokes of 2 · 100 mm make that at 0.8 π in a second.
    const strokeRate = times(perMinute(60), 0.8 * Math.PI);
    expect(format(crosshatchAngle({ ...hone, strokeRate }), degree)).toBe('90.0 deg');
  });

  it('is opened by faster strokes and closed by a faster spindle', () => {
    const at = (strokes: number, turns: number) =>
      crosshatchAngle({ ...hone, strokeRate: perMinute(strokes), spindleSpeed: rpm(turns) });
    expect(at(70, 120)).toBeGreaterThan(at(60, 120));
    expect(at(60, 140)).toBeLessThan(at(60, 120));
    // Both twice as fast: the same scratches.
    expect(at(120, 240)).toBeCloseTo(at(60, 120), 12);
  });

  it('is reached by the strokes that are worked out for it', () => {
    const angles = fc.double({ min: 2, max: 160, noNaN: true });
    fc.assert(
      fc.property(angles, (angle) => {
        const strokeRate = strokeRateForCrosshatch({ ...hone, includedAngle: degree(angle) });
        expect(crosshatchAngle({ ...hone, strokeRate }) / degree(angle)).toBeCloseTo(1, 12);
      }),
    );
  });

  it.each([
    ['spindleSpeed', { ...hone, strokeRate: perMinute(60), spindleSpeed: 0 as RotationalSpeed }],
    ['strokeRate', { ...hone, strokeRate: 100 }],
    ['strokeLength', { ...hone, strokeRate: perMinute(60), strokeLength: 100 as Length }],
  ])('refuses %s', (parameter, wrong) => {
    expect(refusal(() => crosshatchAngle(wrong as never)).parameter).toBe(parameter);
  });
});

describe('roughness', () => {
  const spanOf = (from: RoughnessMeasure, to: RoughnessMeasure, value = micrometre(1)) =>
    convertRoughness({ value, from, to }).span;

  it('keeps what is true of every profile', () => {
    // A root mean square is never below the mean; a sine has 1.1107 of it, a normal spread 1.2533.
    expect(spanOf('Ra', 'Rq').min / micrometre(1)).toBeCloseTo(Math.PI / (2 * Math.SQRT2), 4);
    expect(spanOf('Ra', 'Rq').max / micrometre(1)).toBeCloseTo(Math.sqrt(Math.PI / 2), 4);
    expect(spanOf('Rz', 'Rz')).toEqual({ min: micrometre(1), max: micrometre(1) });
  });

  it('never comes back narrower than it went', () => {
    const measures = ['Ra', 'Rq', 'Rz'] as const;
    for (const from of measures) {
      for (const to of measures) {
        const { min, max } = spanOf(from, to);
        expect(spanOf(to, from, min).min).toBeLessThanOrEqual(micrometre(1) * (1 + 1e-12));
        expect(spanOf(to, from, max).max).toBeGreaterThanOrEqual(micrometre(1) * (1 - 1e-12));
      }
    }
  });

  it('says that it is a rule of thumb', () => {
    const { basis } = convertRoughness({ value: micrometre(1), from: 'Ra', to: 'Rz' });
    expect(basis).toMatchObject({ kind: 'common practice', rule: expect.stringMatching(/4 to 7/) });
  });
});
