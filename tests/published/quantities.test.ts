import {
  absolutePressure,
  celsius,
  convert,
  fahrenheit,
  format,
  inch,
  kPaGauge,
  mm,
  parseLength,
  standardAtmosphere,
  type UnitSymbol,
  unitTable,
} from 'crankwright';
import { describe } from 'vitest';
import { check } from './check.js';

const SP811 = 'NIST SP 811 (2008), appendix B.8';
type Row = readonly [symbol: UnitSymbol, coherent: number];
const oneIn = (symbol: UnitSymbol): number => unitTable[symbol](1);

describe('rounded to seven digits', () => {
  const seen: readonly Row[] = [
    ['lbf', 4.448222],
    ['lbf·ft', 1.355818],
    ['lbf·in', 0.1129848],
    ['psi', 6894.757],
    ['psi gauge', 6894.757],
    ['reyn', 6894.757],
    ['US gal', 3.785412e-3],
    ['inHg', 3386.389],
    ['inHg gauge', 3386.389],
  ];
  for (const [given, expected] of seen) {
    const name = `1 ${given} in the coherent SI unit`;
    check({ source: SP811, name, given, expected, tolerance: { relative: 1e-6 }, got: oneIn });
  }
  const remembered: readonly Row[] = [
    ['ft·lbf energy', 1.355818],
    ['hp', 745.6999],
    ['metric hp', 735.4988],
    ['US fl oz', 2.957353e-5],
    ['US pt', 4.731765e-4],
    ['US qt', 9.463529e-4],
    ['imp fl oz', 2.841306e-5],
    ['oz', 2.834952e-2],
    ['lb/in³', 2.76799e4],
    ['lbf/in', 175.1268],
    ['rpm', 0.1047198],
    ['deg', 1.745329e-2],
    ['US gal/min', 6.30902e-5],
  ];
  for (const [given, expected] of remembered) {
    const name = `1 ${given}, as ${SP811} has it`;
    const tolerance = { relative: 1e-6 };
    check({ basis: 'from memory', name, given, expected, tolerance, got: oneIn });
  }
});

describe('exact', () => {
  const seen: readonly Row[] = [
    ['in', 0.0254],
    ['thou', 2.54e-5],
    ['lb', 0.45359237],
    ['imp gal', 4.54609e-3],
    ['in³', 1.6387064e-5],
    ['kgf/cm²', 98_066.5],
    ['cP', 0.001],
    ['cSt', 1e-6],
  ];
  for (const [given, expected] of seen) {
    const name = `1 ${given} is so by definition`;
    check({ source: SP811, name, given, expected, got: oneIn });
  }
  const remembered: readonly Row[] = [
    ['Btu/(lb·°F)', 4186.8],
    ['kgf', 9.80665],
    ['kgf·m', 9.80665],
    ['ft', 0.3048],
    ['electric hp', 746],
    ['bar', 100_000],
    ['ft/min', 5.08e-3],
  ];
  for (const [given, expected] of remembered) {
    const name = `1 ${given} is so by definition`;
    check({ basis: 'from memory', name, given, expected, got: oneIn });
  }
  check({
    basis: 'from memory',
    name: 'the standard atmosphere is 101 325 Pa',
    given: kPaGauge(0),
    expected: 101_325,
    got: (reading): number => absolutePressure(reading, standardAtmosphere),
  });
});

describe('on the bench', () => {
  check({
    basis: 'common practice',
    name: 'three horsepowers are three',
    given: ['hp', 'metric hp', 'electric hp'] as const,
    expected: 3,
    got: (symbols) => new Set(symbols.map(oneIn)).size,
  });
  check({
    basis: 'common practice',
    name: 'a gallon is four quarts, eight pints or 231 cubic inches; an imperial one is larger',
    given: 1,
    expected: [4, 8, 231, true],
    got: (n) => [
      convert(n, 'US gal', 'US qt'),
      convert(n, 'US gal', 'US pt'),
      convert(n, 'US gal', 'in³'),
      convert(n, 'imp gal', 'US gal') > 1.2,
    ],
  });
  check({
    basis: 'common practice',
    name: 'the freezing and boiling points of water, and the point where both scales agree',
    given: [32, 212, -40],
    expected: [0, 100, -40],
    got: (all) => all.map((f) => convert(f, '°F', '°C')),
    tolerance: { absolute: 1e-9 },
  });
  check({
    source: 'ISO 1',
    name: 'sizes are stated at 20 °C, which is 68 °F',
    given: celsius(20),
    expected: ['68.0 °F', 293.15],
    got: (reference) => [format(reference, fahrenheit), reference],
  });
  check({
    basis: 'common practice',
    name: 'two and an eighth inches are 53.975 mm',
    given: '2-1/8"',
    expected: mm(53.975),
    got: parseLength,
  });
  check({
    source: 'TM 9-2815-260-24',
    name: 'an oil clearance of 0.0016 to 0.0043 in, printed to the micrometre',
    given: [inch(0.0016), inch(0.0043)],
    expected: ['0.041 mm', '0.109 mm'],
    got: (ends) => ends.map((end) => format(end, mm)),
  });
});
