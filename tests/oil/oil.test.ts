import {
  celsius,
  centistokes,
  densityAt,
  dynamicViscosityAt,
  extrapolatedDynamicViscosity,
  extrapolatedViscosity,
  kilogramPerCubicMetre,
  type Oil,
  ppmPerKelvin,
  type ViscosityLine,
  viscosityAt,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { refusal } from '../quantities/refusal.js';

const line: ViscosityLine = [
  { temperature: celsius(40), viscosity: centistokes(100) },
  { temperature: celsius(100), viscosity: centistokes(11) },
];
const oil: Oil = { line, density: kilogramPerCubicMetre(885) };
const within = fc.double({ min: -40, max: 150, noNaN: true }).map(celsius);
const anywhere = fc.double({ min: -45, max: 220, noNaN: true });

describe('extrapolatedViscosity', () => {
  it('is viscosityAt within -40 to 150 °C', () => {
    fc.assert(
      fc.property(within, (temperature) => {
        expect(extrapolatedViscosity(line, temperature)).toEqual({
          viscosity: viscosityAt(line, temperature),
          range: 'within',
        });
      }),
    );
  });

  it('keeps falling as it warms, across the ends of the range too', () => {
    fc.assert(
      fc.property(anywhere, (at) => {
        const [cool, warm] = [at, at + 0.5].map((t) => extrapolatedViscosity(line, celsius(t)));
        expect(warm?.viscosity).toBeLessThan(cool?.viscosity as number);
      }),
    );
  });

  it('says which end it has left', () => {
    const rangeAt = (t: number) => extrapolatedViscosity(line, celsius(t)).range;
    expect([-40.1, -40, 150, 150.1].map(rangeAt)).toEqual(['below', 'within', 'within', 'above']);
    expect(refusal(() => rangeAt(-73.2)).parameter).toBe('temperature');
    expect(refusal(() => rangeAt(227)).parameter).toBe('temperature');
  });

  it('is what viscosityAt points to where it refuses', () => {
    for (const t of [-40.1, 150.1]) {
      const error = refusal(() => viscosityAt(line, celsius(t)));
      expect(error.hint).toContain('extrapolatedViscosity');
    }
    // 40 without its unit is no oil's temperature in kelvin, extrapolated or not.
    expect(refusal(() => viscosityAt(line, 40 as never)).hint).toContain('celsius(40)');
  });
});

describe('the dynamic viscosity', () => {
  it('is the kinematic one times the density', () => {
    const expansions = fc.constantFrom(undefined, ppmPerKelvin(650), ppmPerKelvin(900));
    fc.assert(
      fc.property(within, expansions, (temperature, expansion) => {
        const own = { ...oil, ...(expansion !== undefined && { expansion }) };
        const { line: _, density, ...rest } = own;
        const there = densityAt({ density, at: celsius(15), temperature, ...rest });
        const product = viscosityAt(line, temperature) * there;
        expect(dynamicViscosityAt(own, temperature) / product).toBeCloseTo(1, 13);
        const film = extrapolatedDynamicViscosity(own, temperature);
        expect(film.viscosity / product).toBeCloseTo(1, 13);
        expect(film.density / there).toBeCloseTo(1, 13);
        expect(film.range).toBe('within');
      }),
    );
  });

  it('is flagged outside -40 to 150 °C, and refused there where nothing could flag it', () => {
    const ends = [-40.1, 150.1].map(celsius);
    const ranges = ends.map((temperature) => extrapolatedDynamicViscosity(oil, temperature).range);
    expect(ranges).toEqual(['below', 'above']);
    for (const temperature of ends) {
      const error = refusal(() => dynamicViscosityAt(oil, temperature));
      expect(error.parameter).toBe('temperature');
      expect(error.hint).toContain('extrapolated');
    }
  });

  it('gives no density that it would not take', () => {
    const light = { ...oil, expansion: ppmPerKelvin(2000) };
    // By hand: 885 exp(-0.41 (1 + 0.8 * 0.41)) = 513.4.
    const error = refusal(() => extrapolatedDynamicViscosity(light, celsius(220)));
    expect(error.parameter).toBe('temperature');
    expect(error.message).toContain('513.4 kg/m³');
  });

  it.each([
    ['oil.line', { ...oil, line: [line[0]] }],
    ['oil.line[1].viscosity', { ...oil, line: [line[0], { ...line[1], viscosity: 110 }] }],
    ['oil.density', { ...oil, density: 0.885 }],
    ['oil.density', { ...oil, density: kilogramPerCubicMetre(745) }],
    ['oil.expansion', { ...oil, expansion: 700 }],
    ['oil.grade', { ...oil, grade: 30 }],
    ['oil', null],
  ])('names %s where that is wrong', (parameter, wrong) => {
    for (const ask of [dynamicViscosityAt, extrapolatedDynamicViscosity]) {
      expect(refusal(() => ask(wrong as never, celsius(80))).parameter).toBe(parameter);
    }
  });
});
