import {
  type BlendingLaw,
  blendViscosity,
  centistokes,
  fuelFraction,
  type KinematicViscosity,
  type MassFraction,
  percentByVolume,
  petrolAt20C,
  type VolumeFraction,
  valueIn,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { notNumbers, refusal } from '../quantities/refusal.js';

type AnyPart = {
  readonly viscosity: KinematicViscosity;
  readonly fraction: VolumeFraction & MassFraction;
};
const part = (viscosity: number, fraction: number): AnyPart => ({
  viscosity: centistokes(viscosity),
  fraction: fraction as VolumeFraction & MassFraction,
});
const blend = (law: BlendingLaw, parts: readonly AnyPart[]) => blendViscosity({ law, parts });
const laws = ['ASTM D7152', 'Refutas', 'log-mean'] as const;
const law = fc.constantFrom(...laws);
const oils = fc.double({ min: 5, max: 2000, noNaN: true });
const fuels = fc.double({ min: 0.3, max: 3, noNaN: true });
const share = fc.double({ min: 0, max: 1, noNaN: true });
/** What the inverse of the standard is off by below 5 mm²/s; see viscosity.test.ts. */
const INVERSE = 3e-4;

describe('blendViscosity', () => {
  it('lies between its parts', () => {
    fc.assert(
      fc.property(law, oils, fuels, share, (by, oil, fuel, x) => {
        const thinned = valueIn(blend(by, [part(oil, 1 - x), part(fuel, x)]), centistokes);
        expect(thinned).toBeLessThanOrEqual(oil * (1 + INVERSE));
        expect(thinned).toBeGreaterThanOrEqual(fuel * (1 - INVERSE));
      }),
    );
  });

  it('is never thicker for more fuel', () => {
    fc.assert(
      fc.property(law, oils, fuels, share, share, (by, oil, fuel, a, b) => {
        const [less, more] = [Math.min(a, b), Math.max(a, b)].map((x) =>
          Number(blend(by, [part(oil, 1 - x), part(fuel, x)])),
        ) as [number, number];
        expect(more).toBeLessThanOrEqual(less * (1 + 1e-12));
      }),
    );
  });

  it('does not depend on the order of the parts, nor on splitting one', () => {
    fc.assert(
      fc.property(law, oils, fuels, share, (by, oil, fuel, x) => {
        const parts = [part(oil, 1 - x), part(fuel, x)];
        const one = blend(by, parts);
        const split = [part(fuel, x / 2), part(oil, 1 - x), part(fuel, x / 2)];
        expect(blend(by, [...parts].reverse()) / one).toBeCloseTo(1, 10);
        expect(blend(by, split) / one).toBeCloseTo(1, 10);
      }),
    );
  });

  it('of one oil with itself is that oil', () => {
    fc.assert(
      fc.property(law, oils, share, (by, oil, x) => {
        const same = valueIn(blend(by, [part(oil, 1 - x), part(oil, x)]), centistokes);
        expect(same / oil).toBeCloseTo(1, 9);
      }),
    );
  });

  it('is the geometric mean of the parts by the log-mean', () => {
    fc.assert(
      fc.property(oils, fuels, (oil, fuel) => {
        const half = valueIn(blend('log-mean', [part(oil, 0.5), part(fuel, 0.5)]), centistokes);
        expect(half / Math.sqrt(oil * fuel)).toBeCloseTo(1, 12);
      }),
    );
  });

  it('is thickest by the log-mean, for petrol in oil', () => {
    const petrols = fc.double({ min: 0.4, max: 0.8, noNaN: true });
    const thick = fc.double({ min: 20, max: 500, noNaN: true });
    const little = fc.double({ min: 0.005, max: 0.3, noNaN: true });
    fc.assert(
      fc.property(thick, petrols, little, (oil, fuel, x) => {
        const parts = [part(oil, 1 - x), part(fuel, x)];
        expect(blend('log-mean', parts)).toBeGreaterThan(blend('ASTM D7152', parts));
        expect(blend('log-mean', parts)).toBeGreaterThan(blend('Refutas', parts));
      }),
    );
  });

  it('differs by law, by several per cent on fuel in oil', () => {
    // The same blend by volume and by mass: petrol of 745 kg/m³ in oil of 880 kg/m³.
    const byMass = (0.05 * 745) / (0.05 * 745 + 0.95 * 880);
    const volumes = blend('ASTM D7152', [part(100, 0.95), part(0.5, 0.05)]);
    const masses = blend('Refutas', [part(100, 1 - byMass), part(0.5, byMass)]);
    expect(masses / volumes - 1).toBeGreaterThan(0.02);
    expect(masses / volumes - 1).toBeLessThan(0.15);
    const logs = blend('log-mean', [part(100, 0.95), part(0.5, 0.05)]);
    expect(logs / masses - 1).toBeGreaterThan(0.2);
    expect(logs / volumes - 1).toBeLessThan(0.6);
  });

  it('refuses fractions that do not add up to one', () => {
    const error = refusal(() => blend('Refutas', [part(100, 0.95), part(0.5, 0.06)]));
    expect([error.parameter, error.value]).toEqual(['parts', 1.01]);
    expect(error.message).toMatch(/the sum of the fractions, 1\.01, is not one/);
    const bare = [part(100, 95), part(0.5, 5)];
    expect(refusal(() => blend('Refutas', bare)).parameter).toBe('parts[0].fraction');
  });

  it.each(notNumbers.map((value) => [value]))('refuses the number %s', (value) => {
    for (const field of ['viscosity', 'fraction']) {
      const wrong = { ...part(0.5, 0.05), [field]: value } as AnyPart;
      const call = () => blend('ASTM D7152', [part(100, 0.95), wrong]);
      expect(refusal(call).parameter).toBe(`parts[1].${field}`);
    }
  });

  it.each([
    ['parts', [part(100, 1)], 'parts'],
    ['parts', undefined, 'parts'],
    ['parts', [part(100, 1), null], 'parts[1]'],
    ['law', 'linear', 'law'],
    ['law', '__proto__', 'law'],
    ['law', undefined, 'law'],
  ])('refuses a %s of %j', (field, value, parameter) => {
    const good = { law: 'Refutas' as const, parts: [part(100, 0.5), part(1, 0.5)] };
    const call = () => blendViscosity({ ...good, [field]: value } as typeof good);
    expect(refusal(call).parameter).toBe(parameter);
    expect(refusal(() => blendViscosity(null as never)).parameter).toBe('blend');
  });
});

describe('fuelFraction', () => {
  const fractionOf = (by: BlendingLaw, oil: number, fuel: number, sample: KinematicViscosity) =>
    fuelFraction({ law: by, oil: centistokes(oil), fuel: centistokes(fuel), sample }) as number;

  it('finds again what was blended', () => {
    fc.assert(
      fc.property(law, oils, fuels, share, (by, oil, fuel, x) => {
        fc.pre(oil > 3 * fuel);
        const sample = blend(by, [part(oil, 1 - x), part(fuel, x)]);
        fc.pre(sample >= centistokes(fuel));
        expect(Math.abs(fractionOf(by, oil, fuel, sample) - x)).toBeLessThan(1e-3);
      }),
    );
  });

  it('finds it to a millionth where the sample is an oil still', () => {
    fc.assert(
      fc.property(law, fc.double({ min: 20, max: 500, noNaN: true }), (by, oil) => {
        const sample = blend(by, [part(oil, 0.95), part(0.55, 0.05)]);
        expect(fractionOf(by, oil, 0.55, sample)).toBeCloseTo(0.05, 6);
      }),
    );
  });

  it('is nothing for new oil, all for fuel, and negative for thickened oil', () => {
    for (const by of laws) {
      expect(fractionOf(by, 100, 0.5, centistokes(100))).toBe(0);
      expect(fractionOf(by, 100, 0.5, centistokes(0.5))).toBe(1);
      expect(fractionOf(by, 100, 0.5, centistokes(120))).toBeLessThan(0);
    }
  });

  it('is never more for a thicker sample', () => {
    fc.assert(
      fc.property(law, oils, oils, (by, a, b) => {
        const [thin, thick] = [Math.min(a, b), Math.max(a, b)].map((v) =>
          fractionOf(by, 2500, 0.5, centistokes(v)),
        ) as [number, number];
        expect(thick).toBeLessThanOrEqual(thin);
      }),
    );
  });

  it('takes petrol for 0.55 mm²/s at 20 °C', () => {
    expect(valueIn(petrolAt20C, centistokes)).toBeCloseTo(0.55, 12);
    const oil = centistokes(250);
    const sample = blendViscosity({
      law: 'ASTM D7152',
      parts: [
        { viscosity: oil, fraction: percentByVolume(95) },
        { viscosity: petrolAt20C, fraction: percentByVolume(5) },
      ],
    });
    const found = fuelFraction({ law: 'ASTM D7152', oil, fuel: petrolAt20C, sample });
    expect(valueIn(found, percentByVolume)).toBeCloseTo(5, 6);
  });

  it('refuses a sample thinner than the fuel, and a fuel no thinner than the oil', () => {
    const thin = refusal(() => fractionOf('Refutas', 100, 0.5, centistokes(0.4)));
    expect([thin.parameter, thin.value]).toEqual(['sample', centistokes(0.4)]);
    const swapped = refusal(() => fractionOf('Refutas', 0.5, 100, centistokes(67)));
    expect([swapped.parameter, swapped.value]).toEqual(['fuel', centistokes(100)]);
    expect(refusal(() => fractionOf('Refutas', 1, 1, centistokes(1))).parameter).toBe('fuel');
  });

  it.each(notNumbers.map((value) => [value]))('refuses the viscosity %s', (value) => {
    const good = { oil: centistokes(100), fuel: centistokes(0.5), sample: centistokes(67) };
    for (const field of Object.keys(good)) {
      const wrong = { ...good, [field]: value } as typeof good;
      const call = () => fuelFraction({ law: 'ASTM D7152', ...wrong });
      expect(refusal(call).parameter).toBe(field);
    }
    expect(refusal(() => fuelFraction(null as never)).parameter).toBe('diluted');
    expect(refusal(() => fuelFraction({ law: 'x' as never, ...good })).parameter).toBe('law');
  });
});
