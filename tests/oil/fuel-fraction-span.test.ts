import {
  blendViscosity,
  centistokes,
  fractionByMass,
  fuelFraction,
  fuelFractionSpan,
  type KinematicViscosity,
  kilogramPerCubicMetre,
  type MassFraction,
  type VolumeFraction,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { notNumbers, refusal } from '../quantities/refusal.js';

const oilDensity = kilogramPerCubicMetre(880);
const fuelDensity = kilogramPerCubicMetre(745);
const good = {
  oil: centistokes(100),
  fuel: centistokes(0.55),
  sample: centistokes(70),
  oilDensity,
};
const oils = fc.double({ min: 20, max: 500, noNaN: true }).map((v) => centistokes(v));
const fuels = fc.double({ min: 0.4, max: 4, noNaN: true }).map((v) => centistokes(v));
const share = fc.double({ min: 0, max: 0.4, noNaN: true });

describe('fuelFractionSpan', () => {
  it('is what every law finds, Refutas turned to volume', () => {
    const { byLaw } = fuelFractionSpan(good);
    const { oil, fuel, sample } = good;
    const single = (x: number) => ({ min: x, max: x });
    const by = (law: 'ASTM D7152' | 'log-mean') => fuelFraction({ law, oil, fuel, sample });
    expect(byLaw['ASTM D7152']).toEqual(single(by('ASTM D7152')));
    expect(byLaw['log-mean']).toEqual(single(by('log-mean')));
    const byMass = fractionByMass({ byVolume: byLaw.Refutas.max, oilDensity });
    expect(byMass).toBeCloseTo(fuelFraction({ law: 'Refutas', oil, fuel, sample }), 12);
  });

  it('holds the fraction that was blended, whichever law is right', () => {
    fc.assert(
      fc.property(oils, fuels, share, (oil, fuel, x) => {
        const w = fractionByMass({ byVolume: x as VolumeFraction, oilDensity, fuelDensity });
        const blends: readonly KinematicViscosity[] = [
          ...(['ASTM D7152', 'log-mean'] as const).map((law) =>
            blendViscosity({
              law,
              parts: [
                { viscosity: oil, fraction: (1 - x) as VolumeFraction },
                { viscosity: fuel, fraction: x as VolumeFraction },
              ],
            }),
          ),
          blendViscosity({
            law: 'Refutas',
            parts: [
              { viscosity: oil, fraction: (1 - w) as MassFraction },
              { viscosity: fuel, fraction: w },
            ],
          }),
        ];
        for (const sample of blends) {
          const { span } = fuelFractionSpan({ oil, fuel, sample, oilDensity, fuelDensity });
          // What the inverse of ASTM D341 is off by; see viscosity.test.ts.
          expect(span.min).toBeLessThanOrEqual(x + 1e-3);
          expect(span.max).toBeGreaterThanOrEqual(x - 1e-3);
        }
      }),
    );
  });

  it('leaves several per cent open on petrol in oil, the log-mean finding most', () => {
    const { byLaw, span, lawOf } = fuelFractionSpan(good);
    expect(span).toEqual({ min: byLaw['ASTM D7152'].min, max: byLaw['log-mean'].max });
    expect(lawOf).toEqual({ min: 'ASTM D7152', max: 'log-mean' });
    expect(span.max - span.min).toBeGreaterThan(0.03);
    expect(span.max - span.min).toBeLessThan(0.06);
  });

  it('is that of both fuels where the fuel is a span, more of a thicker one', () => {
    const fuel = { min: centistokes(0.5), max: centistokes(1) };
    const both = fuelFractionSpan({ ...good, fuel });
    expect(both.span.min).toBe(fuelFractionSpan({ ...good, fuel: fuel.min }).span.min);
    expect(both.span.max).toBe(fuelFractionSpan({ ...good, fuel: fuel.max }).span.max);
    for (const { min, max } of Object.values(both.byLaw)) expect(min).toBeLessThan(max);
    const reversed = { ...good, fuel: { min: fuel.max, max: fuel.min } };
    expect(refusal(() => fuelFractionSpan(reversed)).parameter).toBe('fuel');
  });

  it('widens as the sample thins, from nothing for new oil', () => {
    fc.assert(
      fc.property(oils, fuels, share, share, (oil, fuel, a, b) => {
        const [less, more] = [Math.min(a, b), Math.max(a, b)].map((thinned) => {
          const sample = (oil * (1 - thinned)) as KinematicViscosity;
          return fuelFractionSpan({ oil, fuel, sample, oilDensity, fuelDensity }).span;
        });
        expect(more?.min).toBeGreaterThanOrEqual(less?.min ?? Number.NaN);
        expect(more?.max).toBeGreaterThanOrEqual(less?.max ?? Number.NaN);
      }),
    );
    const { span } = fuelFractionSpan({ ...good, sample: good.oil });
    expect(span).toEqual({ min: 0, max: 0 });
  });

  it('is all fuel for fuel, and below none for a sample a little thicker than the oil', () => {
    const all = fuelFractionSpan({ ...good, sample: good.fuel }).byLaw;
    for (const { min, max } of Object.values(all)) {
      expect(min).toBeCloseTo(1, 12);
      expect(max).toBeCloseTo(1, 12);
    }
    const { span } = fuelFractionSpan({ ...good, sample: centistokes(102) });
    expect(span.max).toBeLessThan(0);
    expect(span.min).toBeGreaterThan(-0.01);
  });

  it('refuses a sample that cannot be that oil, and one thinner than the fuel', () => {
    const tar = refusal(() => fuelFractionSpan({ ...good, sample: centistokes(1e6) }));
    expect([tar.parameter, tar.value]).toEqual(['sample', centistokes(1e6)]);
    expect(tar.message).toMatch(/far thicker/);
    const thin = refusal(() => fuelFractionSpan({ ...good, sample: centistokes(0.5) }));
    expect(thin.parameter).toBe('sample');
    const swapped = refusal(() => fuelFractionSpan({ ...good, fuel: centistokes(200) }));
    expect(swapped.parameter).toBe('fuel');
  });

  it.each(notNumbers.map((value) => [value]))('refuses the number %s', (value) => {
    for (const field of Object.keys(good)) {
      const wrong = { ...good, [field]: value } as typeof good;
      expect(refusal(() => fuelFractionSpan(wrong)).parameter).toBe(field);
    }
  });

  it('refuses a field that it does not know', () => {
    const misspelt = { ...good, fueldensity: fuelDensity };
    expect(refusal(() => fuelFractionSpan(misspelt)).parameter).toBe('diluted.fueldensity');
    expect(refusal(() => fuelFractionSpan(null as never)).parameter).toBe('diluted');
  });
});
