import {
  type Density,
  fractionByMass,
  fractionByVolume,
  kilogramPerCubicMetre,
  type MassFraction,
  petrolDensity,
  type VolumeFraction,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { notNumbers, refusal } from '../quantities/refusal.js';

const densities = fc.record({
  oilDensity: fc.integer({ min: 800, max: 1000 }).map((n) => kilogramPerCubicMetre(n)),
  fuelDensity: fc.integer({ min: 620, max: 900 }).map((n) => kilogramPerCubicMetre(n)),
});
const share = fc.double({ min: 0, max: 1, noNaN: true });
const oilDensity = kilogramPerCubicMetre(880);

describe('fractions by mass and by volume', () => {
  it('are one another’s inverse', () => {
    fc.assert(
      fc.property(densities, share, (both, x) => {
        const byMass = fractionByMass({ ...both, byVolume: x as VolumeFraction });
        expect(fractionByVolume({ ...both, byMass })).toBeCloseTo(x, 12);
        const byVolume = fractionByVolume({ ...both, byMass: x as MassFraction });
        expect(fractionByMass({ ...both, byVolume })).toBeCloseTo(x, 12);
      }),
    );
  });

  it('weigh what the volumes weigh', () => {
    fc.assert(
      fc.property(densities, share, (both, x) => {
        const fuel = x * both.fuelDensity;
        const whole = fuel + (1 - x) * both.oilDensity;
        const byMass = fractionByMass({ ...both, byVolume: x as VolumeFraction });
        expect(byMass * whole).toBeCloseTo(fuel, 9);
      }),
    );
  });

  it('are equal where the densities are, and less by mass where the fuel is lighter', () => {
    fc.assert(
      fc.property(share, (x) => {
        const byVolume = x as VolumeFraction;
        const same = fractionByMass({ byVolume, oilDensity, fuelDensity: oilDensity });
        expect(same).toBeCloseTo(x, 14);
        expect(fractionByMass({ byVolume, oilDensity })).toBeLessThanOrEqual(x);
      }),
    );
  });

  it('take the fuel for petrol if its density is not given', () => {
    const byVolume = 0.05 as VolumeFraction;
    expect(fractionByMass({ byVolume, oilDensity })).toBe(
      fractionByMass({ byVolume, oilDensity, fuelDensity: petrolDensity }),
    );
  });

  it('refuse a fraction above one or below none, and a density that is none', () => {
    for (const wrong of [5, -0.01, ...notNumbers]) {
      const byVolume = wrong as VolumeFraction;
      expect(refusal(() => fractionByMass({ byVolume, oilDensity })).parameter).toBe('byVolume');
      const byMass = wrong as MassFraction;
      expect(refusal(() => fractionByVolume({ byMass, oilDensity })).parameter).toBe('byMass');
    }
    const byVolume = 0.05 as VolumeFraction;
    for (const wrong of [0.88, 8800, undefined] as (Density | undefined)[]) {
      const call = () => fractionByMass({ byVolume, oilDensity: wrong as Density });
      expect(refusal(call).parameter).toBe('oilDensity');
    }
    const misspelt = { byVolume, oilDensity, fuelDensty: oilDensity };
    expect(refusal(() => fractionByMass(misspelt)).parameter).toBe('blend.fuelDensty');
    expect(refusal(() => fractionByVolume(null as never)).parameter).toBe('blend');
  });
});
