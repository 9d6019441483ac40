import {
  type BearingToWarm,
  celsius,
  type EngineMaterial,
  hotOilClearance,
  meanExpansion,
  mm,
  ppmPerKelvin,
  type Span,
  type ThermalExpansion,
  times,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { refusal } from '../quantities/refusal.js';

const of = (material: EngineMaterial, degrees: number) => ({
  expansion: meanExpansion(material),
  temperature: celsius(degrees),
});
/** A part of one coefficient. */
const by = (coefficient: ThermalExpansion, degrees: number) => ({
  expansion: { coefficient, from: celsius(-50), to: celsius(300), source: 'a data sheet' },
  temperature: celsius(degrees),
});
const anyExpansion = fc.integer({ min: 0, max: 400 }).map((n) => ppmPerKelvin(n / 10));
const anyDegrees = fc.integer({ min: -40, max: 250 });
const sizes = fc.record({
  journal: fc.integer({ min: 10_000, max: 90_000 }).map((n) => mm(n / 1000)),
  clearance: fc.integer({ min: -50, max: 200 }).map((n) => mm(n / 1000)),
});
const rod: BearingToWarm = {
  journal: mm(30),
  clearance: mm(0.04),
  shaft: of('steel', 90),
  bore: { kind: 'free ring', ring: of('aluminium alloy', 90) },
};

describe('hotOilClearance', () => {
  it('changes nothing at the temperature of the measurement', () => {
    fc.assert(
      fc.property(sizes, anyDegrees, anyExpansion, anyExpansion, (cold, degrees, a, b) => {
        const { growth } = hotOilClearance({
          ...cold,
          measuredAt: celsius(degrees),
          shaft: by(a, degrees),
          bore: { kind: 'free ring', ring: by(b, degrees) },
        });
        expect(growth.min).toBeCloseTo(0, 14);
        expect(growth.max).toBeCloseTo(0, 14);
      }),
    );
  });

  it('grows like the metal where all parts are of one metal and equally warm', () => {
    fc.assert(
      fc.property(sizes, anyDegrees, anyExpansion, (cold, degrees, a) => {
        const all = by(a, degrees);
        const expected = cold.clearance * a * (degrees - 20);
        for (const bore of [
          { kind: 'free ring', ring: all },
          { kind: 'held bush', wall: mm(3), bush: all, housing: all },
        ] as const) {
          const { growth } = hotOilClearance({ ...cold, shaft: all, bore });
          expect(growth.max).toBeCloseTo(expected, 12);
        }
      }),
    );
  });

  it('takes a bush that grows like its housing as part of it', () => {
    fc.assert(
      fc.property(sizes, anyDegrees, anyExpansion, anyExpansion, (cold, degrees, a, b) => {
        const shaft = by(a, degrees);
        const part = by(b, degrees);
        const ring = hotOilClearance({ ...cold, shaft, bore: { kind: 'free ring', ring: part } });
        const bush = hotOilClearance({
          ...cold,
          shaft,
          bore: { kind: 'held bush', wall: mm(2), bush: part, housing: part },
        });
        expect(bush.clearance.min).toBeCloseTo(ring.clearance.min, 12);
      }),
    );
  });

  it('scales with the bearing', () => {
    const half = hotOilClearance({ ...rod, journal: mm(15), clearance: mm(0.02) });
    const whole = hotOilClearance(rod);
    expect(times(half.clearance.min, 2)).toBeCloseTo(whole.clearance.min, 14);
    expect(times(half.clearance.max, 2)).toBeCloseTo(whole.clearance.max, 14);
  });

  it('holds the clearance of every choice of coefficients within its span', () => {
    fc.assert(
      fc.property(
        anyDegrees,
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (degrees, first, second) => {
          const pick = (material: EngineMaterial, share: number) => {
            const { min, max } = meanExpansion(material).coefficient as Span<ThermalExpansion>;
            return by((min + share * (max - min)) as ThermalExpansion, degrees);
          };
          const spread = hotOilClearance({
            ...rod,
            shaft: of('steel', degrees),
            bore: { kind: 'free ring', ring: of('aluminium alloy', degrees) },
          }).clearance;
          const one = hotOilClearance({
            ...rod,
            shaft: pick('steel', first),
            bore: { kind: 'free ring', ring: pick('aluminium alloy', second) },
          }).clearance;
          expect(one.min).toBeGreaterThanOrEqual(spread.min - 1e-12);
          expect(one.max).toBeLessThanOrEqual(spread.max + 1e-12);
        },
      ),
    );
  });

  it('opens an alloy rod on a steel pin, and closes a bronze bush that iron holds', () => {
    expect(hotOilClearance(rod).growth.min).toBeGreaterThan(0);
    const bush = hotOilClearance({
      ...rod,
      bore: {
        kind: 'held bush',
        wall: mm(3),
        bush: of('bronze', 90),
        housing: of('grey iron', 90),
      },
    });
    expect(bush.growth.max).toBeLessThan(0);
    // A bronze ring that nothing holds would open.
    const free = hotOilClearance({ ...rod, bore: { kind: 'free ring', ring: of('bronze', 90) } });
    expect(free.growth.min).toBeGreaterThan(0);
  });

  it('names the parts that run outside the range of their means', () => {
    expect(hotOilClearance(rod).outsideRange).toEqual([]);
    const hot = hotOilClearance({
      ...rod,
      shaft: of('steel', 120),
      bore: { kind: 'free ring', ring: of('aluminium alloy', 120) },
    });
    expect(hot.outsideRange).toEqual(['ring']);
    const bush = hotOilClearance({
      ...rod,
      shaft: of('steel', -10),
      bore: {
        kind: 'held bush',
        wall: mm(3),
        bush: of('bronze', 220),
        housing: of('grey iron', 101),
      },
    });
    expect(bush.outsideRange).toEqual(['shaft', 'bush', 'housing']);
  });

  it('refuses by name what is no bore, no part and no coefficient', () => {
    const refused = (change: object) =>
      refusal(() => hotOilClearance({ ...rod, ...change } as BearingToWarm)).parameter;
    const ring = of('aluminium alloy', 90);
    const expansion = { ...ring.expansion, from: celsius(100), to: celsius(20) };
    const crossed = { min: ppmPerKelvin(20), max: ppmPerKelvin(10) };
    expect(refused({ bore: { kind: 'a ring', ring } })).toBe('bore.kind');
    expect(refused({ bore: undefined })).toBe('bore');
    expect(refused({ bore: { ring } })).toBe('bore.kind');
    expect(refused({ bore: { kind: 'free ring', ring, wall: mm(2) } })).toBe('bore.wall');
    expect(refused({ bore: { kind: 'free ring' } })).toBe('bore.ring');
    expect(refused({ shaft: { ...ring, expansion } })).toBe('shaft.expansion');
    expect(
      refused({ shaft: { ...ring, expansion: { ...ring.expansion, coefficient: crossed } } }),
    ).toBe('shaft.expansion.coefficient');
    expect(refused({ shaft: { ...ring, expansion: { ...ring.expansion, source: '' } } })).toBe(
      'shaft.expansion.source',
    );
    expect(refused({ measuredAt: null })).toBe('measuredAt');
  });
});
