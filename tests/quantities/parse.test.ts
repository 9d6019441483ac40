import {
  type Dimension,
  format,
  inch,
  mm,
  parse,
  parseLength,
  thou,
  type Unit,
  unitTable,
  valueIn,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const units = Object.values(unitTable) as readonly Unit<Dimension>[];

describe('parseLength reads', () => {
  it.each([
    ['2-1/8 in', inch(2.125)],
    ['2 1/8"', inch(2.125)],
    ['2  1/8 in', inch(2.125)],
    ['-2-1/8 in', inch(-2.125)],
    ['- 2 1/8 in', inch(-2.125)],
    ['7/16 in', inch(0.4375)],
    ['0/5 in', inch(0)],
    ['2.1248 in', inch(2.1248)],
    ['2.1248in', inch(2.1248)],
    ['  2.1248   in  ', inch(2.1248)],
    ['2. in', inch(2)],
    ['.5 in', inch(0.5)],
    ['+.020 in', inch(0.02)],
    ['+ 0.020 in', inch(0.02)],
    ['-0.0005 in', inch(-0.0005)],
    ['−0.0005 in', inch(-0.0005)],
    ['21e-1 in', inch(2.1)],
    ['5E+1 mm', mm(50)],
    ['53.97 mm', mm(53.97)],
    ['1.5 thou', thou(1.5)],
    ['1.5 mils', thou(1.5)],
    ['2 thousandths', thou(2)],
    ['3 tenths', thou(0.3)],
    ['12 µm', mm(0.012)],
    ['12 μm', mm(0.012)],
    ['12 microns', mm(0.012)],
    ['2 Inches', inch(2)],
    ['2 INCH', inch(2)],
    ['2 MM', mm(2)],
    ['2″', inch(2)],
    ['2”', inch(2)],
    ["1'", inch(12)],
    ['1′', inch(12)],
    ['1.5 feet', inch(18)],
    ['0.05 metres', mm(50)],
  ])('%s', (text, wanted) => {
    expect(valueIn(parseLength(text), inch)).toBeCloseTo(valueIn(wanted, inch), 12);
  });

  it.each([
    ['20 under', thou(20)],
    ['20under', thou(20)],
    ['20 UNDER', thou(20)],
    ['10 undersize', thou(10)],
    ['0.50 mm under', mm(0.5)],
    ['0.020 in under', thou(20)],
    ['.020" under', thou(20)],
    ['20 thou under', thou(20)],
    ['20 over', thou(20)],
    ['30 oversize', thou(30)],
    ['0.50 mm over', mm(0.5)],
    ['20 thou over', thou(20)],
  ])('the undersize or oversize %s', (text, wanted) => {
    expect(parseLength(text)).toBeCloseTo(wanted, 15);
  });
});

describe('parse reads', () => {
  it.each([
    ['18 ft-lb', 'torque', 18 * 1.3558179483314],
    ['18 lbf·ft', 'torque', 18 * 1.3558179483314],
    ['18 LB-FT', 'torque', 18 * 1.3558179483314],
    ['18 ft-lbf', 'energy', 18 * 1.3558179483314],
    ['24 N m', 'torque', 24],
    ['104 °F', 'temperature', 313.15],
    ['104 F', 'temperature', 313.15],
    ['40 deg C', 'temperature', 313.15],
    ['-40 °C', 'temperature', 233.15],
    ['18 °F', 'temperatureDifference', 10],
    ['20 C', 'temperatureDifference', 20],
    ['120 psig', 'gaugePressure', 120 * 6894.757293168362],
    ['35 MPa', 'pressure', 35e6],
    ['35 KPA', 'pressure', 35e3],
    ['8 mPa·s', 'dynamicViscosity', 0.008],
    ['32 mm2/s', 'kinematicViscosity', 32e-6],
    ['1 US quart', 'volume', 0.000946352946],
    ['1 imperial quart', 'volume', 0.0011365225],
    ['50 cc', 'volume', 50e-6],
    ['16 oz', 'mass', 0.45359237],
    ['12 per minute', 'rate', 0.2],
    ['5 % by volume', 'volumeFraction', 0.05],
    ['5 % m/m', 'massFraction', 0.05],
    ['0.05 vol/vol', 'volumeFraction', 0.05],
    ['0.05 mass/mass', 'massFraction', 0.05],
    ['0.05', 'ratio', 0.05],
    ['0.05 -', 'ratio', 0.05],
    ['3600 r/min', 'rotationalSpeed', 120 * Math.PI],
    ['90°', 'angle', Math.PI / 2],
    ['1.2e-5 1/K', 'thermalExpansion', 12e-6],
    ['12 ppm/°C', 'thermalExpansion', 12e-6],
    ['5 ppm/F', 'thermalExpansion', 9e-6],
    ['2000 J/kg/K', 'specificHeat', 2000],
    ['0.5 BTU/(lb F)', 'specificHeat', 2093.4],
  ] as const)('%s as %s', (text, dimension, wanted) => {
    expect(parse(text, dimension) / wanted).toBeCloseTo(1, 12);
  });

  it('what format prints, for every unit', () => {
    const value = fc.integer({ min: -10_000_000, max: 10_000_000 });
    fc.assert(
      fc.property(fc.constantFrom(...units), value, fc.nat({ max: 6 }), (unit, n, decimals) => {
        // Nothing is colder than nothing.
        const x = (unit.dimension === 'temperature' ? Math.abs(n) : n) / 10 ** decimals;
        const printed = format(unit(x), unit, decimals);
        const read = valueIn(parse(printed, unit.dimension), unit);
        const offset = unit.offset === 0 ? 0 : 1000;
        expect(Math.abs(read - x)).toBeLessThanOrEqual(2e-15 * (Math.abs(x) + offset));
        expect(format(parse(printed, unit.dimension), unit, decimals)).toBe(printed);
      }),
      { numRuns: 3000 },
    );
  });

  it('a mixed number as its whole and its fraction together', () => {
    const whole = fc.nat({ max: 999 });
    const under = fc.integer({ min: 2, max: 128 });
    fc.assert(
      fc.property(whole, under, fc.nat(), fc.constantFrom('-', ' '), (n, d, seed, joint) => {
        const over = seed % d;
        expect(parseLength(`${n}${joint}${over}/${d} in`)).toBe(inch((n * d + over) / d));
      }),
    );
  });
});
