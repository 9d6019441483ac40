import {
  type BlendingLaw,
  blendViscosity,
  celsius,
  centistokes,
  densityAt,
  dilutedOil,
  dynamicViscosityAt,
  fractionByMass,
  type KinematicViscosity,
  kilogramPerCubicMetre,
  type MassFraction,
  type Oil,
  percentByVolume,
  petrol,
  type ViscosityPoint,
  type VolumeFraction,
  viscosityAt,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { notNumbers, refusal } from '../quantities/refusal.js';

const pointOf = ({ line }: Oil, i: 0 | 1) => line[i] as ViscosityPoint;

const oil: Oil = {
  line: [
    { temperature: celsius(40), viscosity: centistokes(100) },
    { temperature: celsius(100), viscosity: centistokes(11) },
  ],
  density: kilogramPerCubicMetre(880),
};
const laws = ['ASTM D7152', 'Refutas', 'log-mean'] as const;
const share = fc.double({ min: 0, max: 0.3, noNaN: true });
const degrees = fc.double({ min: 0, max: 140, noNaN: true });
/** What the inverse of ASTM D341 is off by below 2 mm²/s, see viscosity.test.ts, taken through a blend. */
const INVERSE = 1e-3;

/** Oil and petrol blended at one temperature, each from its own line. */
function blendedAt(temperature: number, x: number, law: BlendingLaw): KinematicViscosity {
  const byVolume = x as VolumeFraction;
  const w = fractionByMass({ byVolume, oilDensity: oil.density, fuelDensity: petrol.density });
  const fuel = (law === 'Refutas' ? w : x) as VolumeFraction & MassFraction;
  const rest = (1 - fuel) as VolumeFraction & MassFraction;
  const of = ({ line }: Oil) => viscosityAt(line, celsius(temperature));
  const parts = [
    { viscosity: of(oil), fraction: rest },
    { viscosity: of(petrol), fraction: fuel },
  ];
  return blendViscosity({ law, parts });
}

describe('dilutedOil', () => {
  it('without fuel is the oil itself, and all fuel is the fuel', () => {
    for (const law of laws) {
      const none = dilutedOil({ oil, fraction: percentByVolume(0), law });
      expect(none.density).toBe(oil.density);
      none.line.forEach(({ temperature, viscosity }, i) => {
        expect(temperature).toBe(oil.line[i]?.temperature);
        expect(viscosity / (oil.line[i]?.viscosity ?? Number.NaN)).toBeCloseTo(1, 9);
      });
      const all = dilutedOil({ oil, fraction: percentByVolume(100), law });
      expect(all.density).toBe(petrol.density);
      const fuel = viscosityAt(petrol.line, celsius(40));
      expect(Math.abs(pointOf(all, 0).viscosity / fuel - 1)).toBeLessThan(INVERSE);
    }
  });

  it('is the blend at the two temperatures of the oil’s line, by every law', () => {
    fc.assert(
      fc.property(fc.constantFrom(...laws), share, (law, x) => {
        const thinned = dilutedOil({ oil, fraction: x as VolumeFraction, law });
        expect(pointOf(thinned, 0).viscosity / blendedAt(40, x, law)).toBeCloseTo(1, 12);
        expect(pointOf(thinned, 1).viscosity / blendedAt(100, x, law)).toBeCloseTo(1, 12);
      }),
    );
  });

  it('is by ASTM D7152 the blend at every temperature: both draw the same straight lines', () => {
    fc.assert(
      fc.property(share, degrees, (x, t) => {
        const thinned = dilutedOil({ oil, fraction: x as VolumeFraction });
        const there = viscosityAt(thinned.line, celsius(t)) / blendedAt(t, x, 'ASTM D7152');
        expect(Math.abs(there - 1)).toBeLessThan(INVERSE);
      }),
    );
  });

  it('is by the other laws off between its two points by a few per cent, and more outside', () => {
    const off = (law: BlendingLaw, x: number, t: number) => {
      const thinned = dilutedOil({ oil, fraction: x as VolumeFraction, law });
      return Math.abs(viscosityAt(thinned.line, celsius(t)) / blendedAt(t, x, law) - 1);
    };
    for (const law of ['Refutas', 'log-mean'] as const) {
      expect(off(law, 0.1, 70)).toBeGreaterThan(1e-3);
      expect(off(law, 0.1, 70)).toBeLessThan(0.03);
    }
    expect(off('Refutas', 0.3, 0)).toBeGreaterThan(0.3);
    expect(off('Refutas', 0.3, 0)).toBeLessThan(0.35);
  });

  it('blends by ASTM D7152 unless told otherwise, which gives the thinnest oil', () => {
    const fraction = percentByVolume(5);
    expect(dilutedOil({ oil, fraction })).toEqual(
      dilutedOil({ oil, fraction, law: 'ASTM D7152', fuel: petrol }),
    );
    const little = fc.double({ min: 0.005, max: 0.1, noNaN: true });
    fc.assert(
      fc.property(little, fc.constantFrom(0, 1), (x, point) => {
        const [d7152, refutas, logs] = laws.map(
          (law) =>
            pointOf(dilutedOil({ oil, fraction: x as VolumeFraction, law }), point).viscosity,
        ) as [KinematicViscosity, KinematicViscosity, KinematicViscosity];
        expect(d7152).toBeLessThan(refutas);
        expect(refutas).toBeLessThan(logs);
      }),
    );
  });

  it('expands as much as its parts do, each by itself', () => {
    const of = (one: Oil) =>
      densityAt({
        density: one.density,
        at: celsius(15),
        temperature: celsius(60),
        ...(one.expansion && { expansion: one.expansion }),
      });
    const thinned = dilutedOil({ oil, fraction: percentByVolume(20) });
    // A litre at 15 °C: what it weighs, over the volumes that its parts have at 60 °C.
    const mass = 0.2 * petrol.density + 0.8 * oil.density;
    const volume = (0.2 * petrol.density) / of(petrol) + (0.8 * oil.density) / of(oil);
    expect(of(thinned) / (mass / volume)).toBeCloseTo(1, 3);
    expect(dilutedOil({ oil, fraction: percentByVolume(0) }).expansion).toBeCloseTo(
      0.6278 / 880,
      9,
    );
  });

  it('is an oil still where it is more petrol than oil', () => {
    const drowned = dilutedOil({ oil, fraction: percentByVolume(70) });
    expect(drowned.density).toBeLessThan(800);
    const thin = dynamicViscosityAt(drowned, celsius(60)) / dynamicViscosityAt(oil, celsius(60));
    expect(thin).toBeLessThan(0.1);
  });

  it('takes a light fuel of which no expansion is known to expand as petrol, and a heavy one as oil', () => {
    const fraction = percentByVolume(100);
    const { line } = petrol;
    const light = dilutedOil({ oil, fraction, fuel: { line, density: petrol.density } });
    expect(light.expansion).toBe(petrol.expansion);
    const diesel = { line, density: kilogramPerCubicMetre(840) };
    expect(dilutedOil({ oil, fraction, fuel: diesel }).expansion).toBeCloseTo(0.6278 / 840, 9);
  });

  it('is thinner and lighter for more fuel', () => {
    fc.assert(
      fc.property(fc.constantFrom(...laws), share, share, (law, a, b) => {
        const [less, more] = [Math.min(a, b), Math.max(a, b)].map((x) =>
          dilutedOil({ oil, fraction: x as VolumeFraction, law }),
        ) as [Oil, Oil];
        expect(more.density).toBeLessThanOrEqual(less.density * (1 + 1e-12));
        more.line.forEach(({ viscosity }, i) => {
          expect(viscosity).toBeLessThanOrEqual((less.line[i]?.viscosity ?? 0) * (1 + 1e-9));
        });
      }),
    );
  });

  it('diluted twice is diluted once by both', () => {
    fc.assert(
      fc.property(share, share, (a, b) => {
        const once = dilutedOil({ oil, fraction: (a + b - a * b) as VolumeFraction });
        const first = dilutedOil({ oil, fraction: a as VolumeFraction });
        const twice = dilutedOil({ oil: first, fraction: b as VolumeFraction });
        expect(twice.density / once.density).toBeCloseTo(1, 12);
        expect(pointOf(twice, 1).viscosity / pointOf(once, 1).viscosity).toBeCloseTo(1, 3);
      }),
    );
  });

  it.each(notNumbers.map((value) => [value]))('refuses the fraction %s', (value) => {
    const fraction = value as VolumeFraction;
    expect(refusal(() => dilutedOil({ oil, fraction })).parameter).toBe('fraction');
  });

  it('refuses what is no oil, no fuel, no law, and a field that it does not know', () => {
    const fraction = percentByVolume(5);
    const call = (more: object) => () => dilutedOil({ oil, fraction, ...more } as never);
    expect(refusal(call({ oil: null })).parameter).toMatch(/^oil/);
    expect(refusal(call({ fuel: { line: oil.line } })).parameter).toMatch(/^fuel/);
    expect(refusal(call({ fuel: { ...oil, density: 0.745 } })).parameter).toBe('fuel.density');
    expect(refusal(call({ law: 'linear' })).parameter).toBe('law');
    const swapped = refusal(call({ oil: petrol, fuel: oil }));
    expect(swapped.parameter).toBe('fuel.line');
    expect(swapped.message).toMatch(/no thinner than the oil.*swapped/);
    expect(refusal(call({ fractoin: 5 })).parameter).toBe('dilution.fractoin');
    expect(refusal(call({ fraction: 5 })).hint).toContain('percentByVolume');
    expect(refusal(() => dilutedOil(null as never)).parameter).toBe('dilution');
  });
});
