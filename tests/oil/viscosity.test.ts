import {
  celsius,
  centistokes,
  format,
  type KinematicViscosity,
  kelvin,
  type Temperature,
  type ViscosityLine,
  valueIn,
  viscosityAt,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { doubleLog, type TwoPoints, viscosityOf } from '../../src/oil/viscosity.js';
import { notNumbers, refusal } from '../quantities/refusal.js';

const lineOf = (at40: number, at100: number): TwoPoints => [
  { temperature: celsius(40), viscosity: centistokes(at40) },
  { temperature: celsius(100), viscosity: centistokes(at100) },
];
const line = lineOf(32, 5.4);
const anyLine = fc
  .tuple(
    fc.double({ min: 2, max: 1000, noNaN: true }),
    fc.double({ min: 0.1, max: 0.9, noNaN: true }),
  )
  .map(([at40, share]) => lineOf(at40, Math.max(1, at40 * share)));
const warm = fc.double({ min: -10, max: 130, noNaN: true });

describe('the inverse that the standard gives', () => {
  /** Largest relative error between two viscosities in mm²/s, on an even grid of their logarithm. */
  const worst = (from: number, to: number) => {
    let largest = 0;
    for (let i = 0; i <= 20_000; i++) {
      const v = from * (to / from) ** (i / 20_000);
      const back = viscosityOf(doubleLog(centistokes(v)), v);
      largest = Math.max(largest, Math.abs(valueIn(back, centistokes) / v - 1));
    }
    return largest;
  };

  it('is off by at most 0.03 % from 0.3 to 1e5 mm²/s', () => {
    expect(worst(0.3, 1e5)).toBeLessThan(3e-4);
    expect(worst(0.3, 1e5)).toBeGreaterThan(1e-4);
  });

  it('is off by at most 0.01 % from 1.3 mm²/s, and by nothing that counts from 5', () => {
    expect(worst(1.3, 1e5)).toBeLessThan(1.2e-4);
    expect(worst(5, 1e5)).toBeLessThan(1e-10);
  });
});

describe('viscosityAt', () => {
  it('gives back the two points, to the accuracy of that inverse', () => {
    fc.assert(
      fc.property(anyLine, (any) => {
        for (const { temperature, viscosity } of any) {
          const off = Math.abs(viscosityAt(any, temperature) / viscosity - 1);
          expect(off).toBeLessThan(viscosity < 5e-6 ? 1.2e-4 : 1e-9);
        }
      }),
    );
  });

  it('falls as it warms', () => {
    fc.assert(
      fc.property(anyLine, warm, fc.double({ min: 0.5, max: 20, noNaN: true }), (any, at, by) => {
        const [cool, hot] = [viscosityAt(any, celsius(at)), viscosityAt(any, celsius(at + by))];
        expect(hot).toBeLessThan(cool);
      }),
    );
  });

  it('does not depend on the order of the points', () => {
    fc.assert(
      fc.property(anyLine, warm, (any, at) => {
        const turned: ViscosityLine = [any[1], any[0]];
        const [one, other] = [any, turned].map((l) => viscosityAt(l, celsius(at)) as number);
        expect((other as number) / (one as number)).toBeCloseTo(1, 9);
      }),
    );
  });

  it('draws the same line through two of its own points', () => {
    fc.assert(
      fc.property(anyLine, warm, (any, at) => {
        const own = [20, 90].map((t) => ({
          temperature: celsius(t),
          viscosity: viscosityAt(any, celsius(t)),
        })) as unknown as ViscosityLine;
        const off = viscosityAt(own, celsius(at)) / viscosityAt(any, celsius(at)) - 1;
        expect(Math.abs(off)).toBeLessThan(2e-3);
      }),
    );
  });

  it('reaches from -40 to 150 °C, and no further', () => {
    expect(viscosityAt(line, celsius(-40))).toBeGreaterThan(centistokes(5000));
    expect(format(viscosityAt(line, celsius(150)), centistokes, 1)).toMatch(/^2\.\d cSt$/);
    expect(refusal(() => viscosityAt(line, celsius(-40.1))).parameter).toBe('temperature');
    expect(refusal(() => viscosityAt(line, celsius(150.1))).parameter).toBe('temperature');
  });

  it('leaves its arguments alone', () => {
    const frozen = Object.freeze(line.map((point) => Object.freeze({ ...point })));
    expect(viscosityAt(frozen as unknown as ViscosityLine, celsius(80))).toBeGreaterThan(0);
  });
});

describe('viscosityAt refuses', () => {
  it.each(notNumbers.map((value) => [value]))('the number %s', (value) => {
    expect(refusal(() => viscosityAt(line, value as Temperature)).parameter).toBe('temperature');
    for (const field of ['temperature', 'viscosity']) {
      const wrong = [line[0], { ...line[1], [field]: value }] as unknown as ViscosityLine;
      expect(refusal(() => viscosityAt(wrong, celsius(80))).parameter).toBe(`line[1].${field}`);
    }
  });

  it.each([undefined, null, [], [line[0]], [...line, line[0]], 'line'])(
    '%j for a line',
    (wrong) => {
      const call = () => viscosityAt(wrong as unknown as ViscosityLine, celsius(80));
      expect(refusal(call).parameter).toBe('line');
    },
  );

  it('points that are none', () => {
    const wrong = [line[0], null] as unknown as ViscosityLine;
    expect(refusal(() => viscosityAt(wrong, celsius(80))).parameter).toBe('line[1]');
  });

  it.each([
    ['swapped', lineOf(5.4, 32)],
    ['equal', lineOf(10, 10)],
  ])('an oil whose viscosities are %s', (_, wrong) => {
    const error = refusal(() => viscosityAt(wrong, celsius(80)));
    expect(error.message).toContain('cannot be two points of one oil');
  });

  it('two points at one temperature', () => {
    const close: ViscosityLine = [line[0], { ...line[1], temperature: celsius(40.9) }];
    expect(refusal(() => viscosityAt(close, celsius(80))).parameter).toBe('line');
    const apart: ViscosityLine = [line[0], { ...line[1], temperature: celsius(41.1) }];
    expect(() => viscosityAt(apart, celsius(41))).not.toThrow();
  });

  it('a viscosity in centistokes without its unit, a temperature in degrees without its', () => {
    const bare = [line[0], { ...line[1], viscosity: 32 as KinematicViscosity }] as ViscosityLine;
    expect(refusal(() => viscosityAt(bare, celsius(80))).hint).toContain('centistokes(32)');
    const degrees = [line[0], { ...line[1], temperature: kelvin(100) }] as ViscosityLine;
    expect(refusal(() => viscosityAt(degrees, celsius(80))).hint).toContain('celsius(40)');
  });

  it('a result beyond the standard', () => {
    const steep: ViscosityLine = [
      { temperature: celsius(90), viscosity: centistokes(1000) },
      { temperature: celsius(100), viscosity: centistokes(5) },
    ];
    const thick = refusal(() => viscosityAt(steep, celsius(-40)));
    expect([thick.parameter, thick.value]).toEqual(['result', celsius(-40)]);
    const thin = refusal(() => viscosityAt(steep, celsius(150)));
    expect(thin.message).toContain('where ASTM D341 holds');
  });
});
