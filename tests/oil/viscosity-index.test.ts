import { centistokes, type KinematicViscosity, viscosityIndex } from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { referenceOils } from '../../src/oil/viscosity-index-table.js';
import { notNumbers, refusal } from '../quantities/refusal.js';

const index = (u: number, y: number): number =>
  viscosityIndex({ at40C: centistokes(u), at100C: centistokes(y) });
/** Viscosities at 100 °C, evenly by their logarithm, from 2 to past 70. */
const anyHot = fc.double({ min: Math.log(2), max: Math.log(400), noNaN: true }).map(Math.exp);
/** A place from -1, far below the oil of index 0, to 3, thinner than that of 100. */
const anyPlace = fc.double({ min: -1, max: 2, noNaN: true });
const warmAt = (y: number, place: number) => {
  const { low, high } = referenceOils(y);
  return place <= 1 ? low + place * (high - low) : high / y ** (0.3 * (place - 1));
};

describe('viscosityIndex', () => {
  it('falls as the oil is thicker at 40 °C', () => {
    fc.assert(
      fc.property(anyHot, anyPlace, (y, place) => {
        const u = warmAt(y, place);
        expect(index(u * 1.001, y)).toBeLessThan(index(u, y));
      }),
    );
  });

  it('rises as the oil is thicker at 100 °C', () => {
    fc.assert(
      fc.property(anyHot, anyPlace, (y, place) => {
        const u = warmAt(y, place);
        expect(index(u, y * 1.001)).toBeGreaterThan(index(u, y));
      }),
    );
  });

  it('goes from procedure A to B without a step', () => {
    fc.assert(
      fc.property(anyHot, (y) => {
        const { high } = referenceOils(y);
        expect(index(high * (1 + 1e-9), y)).toBeCloseTo(100, 4);
        expect(index(high * (1 - 1e-9), y)).toBeCloseTo(100, 4);
      }),
    );
  });

  it('goes from the table to the equations at 70 mm²/s by the step that the standard has there', () => {
    // By hand: L goes from 4905 to 4903.87 and H from 1558 to 1557.66, so 0 goes to -0.0338 and 100 to 99.9898.
    expect(index(4905, 70)).toBeCloseTo(0, 9);
    expect(index(4905, 70 + 1e-9)).toBeCloseTo(-0.0338, 4);
    expect(index(1558, 70)).toBeCloseTo(100, 9);
    expect(index(1558, 70 + 1e-9)).toBeCloseTo(99.9898, 4);
    for (const u of [4905, 3000, 1558, 1200, 600]) {
      expect(Math.abs(index(u, 70 + 1e-9) - index(u, 70))).toBeLessThan(0.04);
    }
  });

  it('is of two reference oils of which that of index 0 is thicker, and both thicken', () => {
    fc.assert(
      fc.property(anyHot, (y) => {
        const [here, there] = [referenceOils(y), referenceOils(y * 1.001)];
        expect(here.low).toBeGreaterThan(here.high);
        expect(here.high).toBeGreaterThan(y);
        expect(there.low).toBeGreaterThan(here.low);
        expect(there.high).toBeGreaterThan(here.high);
      }),
    );
  });

  it('is below nothing for a poor oil, which is no error', () => {
    expect(index(120, 8)).toBeLessThan(-40);
  });
});

describe('viscosityIndex refuses', () => {
  it('an oil too thin for an index, and takes one of just 2 mm²/s', () => {
    expect(refusal(() => index(5, 1.999)).message).toContain('no viscosity index is defined');
    expect(() => index(5, 2)).not.toThrow();
  });

  it('an oil that does not thin', () => {
    expect(refusal(() => index(8, 8)).parameter).toBe('at40C');
    expect(refusal(() => index(8.86, 73.3)).hint).toContain('swapped');
  });

  it.each(notNumbers.map((value) => [value]))('the number %s', (value) => {
    const sound = { at40C: centistokes(73.3), at100C: centistokes(8.86) };
    for (const field of ['at40C', 'at100C']) {
      const wrong = { ...sound, [field]: value as KinematicViscosity };
      expect(refusal(() => viscosityIndex(wrong)).parameter).toBe(field);
    }
  });

  it('a field that it does not know', () => {
    const wrong = { at40C: centistokes(73.3), at100C: centistokes(8.86), at100: 1 };
    expect(refusal(() => viscosityIndex(wrong)).parameter).toBe('viscosities.at100');
  });
});
