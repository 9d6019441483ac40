import {
  celsius,
  type EngineMaterial,
  type MeanExpansion,
  meanExpansion,
  mm,
  ppmPerKelvin,
  type Span,
  sizeAt20C,
  type ThermalExpansion,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { refusal } from '../quantities/refusal.js';

const warm = (material: EngineMaterial, degrees: number) => ({
  temperature: celsius(degrees),
  expansion: meanExpansion(material),
});
const exact = (coefficient: number, degrees: number) => ({
  temperature: celsius(degrees),
  expansion: {
    coefficient: ppmPerKelvin(coefficient),
    from: celsius(0),
    to: celsius(100),
    source: 'made up',
  },
});

describe('sizeAt20C', () => {
  it('is the size that was read at 20 °C', () => {
    const read = { size: mm(70), part: warm('brass', 20), instrument: warm('steel', 20) };
    expect(sizeAt20C(read).size).toBe(mm(70));
    expect(sizeAt20C(read).span).toEqual({ min: mm(70), max: mm(70) });
  });

  it('is smaller than a warm part read with a cool instrument, larger the other way round', () => {
    const [hot, cool] = [exact(23, 30), exact(11.5, 20)];
    // 100 mm · 23 ppm/K · 10 K is 23 µm; 100 mm · 11.5 ppm/K · 10 K is 11.5 µm.
    const part = sizeAt20C({ size: mm(100), part: hot, instrument: cool });
    expect(part.size).toBeCloseTo(mm(100 - 0.023), 7);
    const instrument = sizeAt20C({ size: mm(100), part: cool, instrument: exact(11.5, 30) });
    expect(instrument.size).toBeCloseTo(mm(100.0115), 8);
  });

  it('needs no correction where both are alike and equally warm', () => {
    fc.assert(
      fc.property(fc.integer({ min: -40, max: 200 }), (degrees) => {
        const both = exact(11.5, degrees);
        expect(sizeAt20C({ size: mm(50), part: both, instrument: both }).size).toBe(mm(50));
      }),
    );
  });

  it('lies within the span of its coefficients, which grows with the distance from 20 °C', () => {
    const width = (degrees: number) => {
      const read = {
        size: mm(80),
        part: warm('cast piston alloy', degrees),
        instrument: warm('steel', degrees),
      };
      const { size, span } = sizeAt20C(read);
      expect(size).toBeGreaterThanOrEqual(span.min);
      expect(size).toBeLessThanOrEqual(span.max);
      return span.max - span.min;
    };
    expect(width(25)).toBeLessThan(width(30));
    expect(width(0)).toBeGreaterThan(width(15));
  });

  it('names what was read outside the range of its coefficient', () => {
    const read = { size: mm(80), part: warm('bronze', 10), instrument: warm('steel', 10) };
    expect(sizeAt20C(read).outsideRange).toEqual(['part']);
  });

  it('refuses what is no reading, by name', () => {
    const good = { size: mm(80), part: exact(20, 30), instrument: exact(11.5, 30) };
    const named = (more: object) => refusal(() => sizeAt20C({ ...good, ...more })).parameter;
    expect(named({ size: 80 })).toBe('size');
    expect(named({ part: { ...good.part, temperature: 30 } })).toBe('part.temperature');
    expect(named({ instrument: null })).toBe('instrument');
    const { expansion } = good.part;
    const withExpansion = (more: object) =>
      named({ part: { ...good.part, expansion: { ...expansion, ...more } } });
    expect(withExpansion({ coefficient: 20 })).toBe('part.expansion.coefficient');
    expect(withExpansion({ from: celsius(200) })).toBe('part.expansion');
    expect(withExpansion({ coefficient: { min: 3e-5, max: 2e-5 } })).toBe(
      'part.expansion.coefficient',
    );
  });
});

describe('meanExpansion', () => {
  const all = [
    'aluminium alloy',
    'cast piston alloy',
    'forged piston alloy',
    'magnesium alloy',
    'steel',
    'grey iron',
    'bronze',
    'brass',
    'white metal',
  ] as const satisfies readonly EngineMaterial[];

  it.each(all)('of %s is what its sources print', (material) => {
    const { coefficient, from, to, source }: MeanExpansion = meanExpansion(material);
    const { min, max } = coefficient as Span<ThermalExpansion>;
    expect(min).toBeLessThan(max);
    expect(from).toBeLessThan(to);
    // The source names both numbers.
    for (const end of [min, max]) expect(source).toContain((end * 1e6).toFixed(1));
  });

  it('of nothing in the table is refused', () => {
    for (const material of ['tin', 'toString', undefined]) {
      expect(refusal(() => meanExpansion(material as EngineMaterial)).parameter).toBe('material');
    }
  });
});
