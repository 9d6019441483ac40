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
import {
  exactRows,
  rememberedExactRows,
  rememberedRoundedRows,
  roundedRows,
  SP811,
} from './sp811.js';

const oneIn = (symbol: UnitSymbol): number => unitTable[symbol](1);

describe('rounded to seven digits', () => {
  for (const [given, expected] of roundedRows) {
    const name = `1 ${given} in the coherent SI unit`;
    check({ source: SP811, name, given, expected, tolerance: { relative: 1e-6 }, got: oneIn });
  }
  for (const [given, expected] of rememberedRoundedRows) {
    const name = `1 ${given}, as ${SP811} has it`;
    const tolerance = { relative: 1e-6 };
    check({ basis: 'from memory', name, given, expected, tolerance, got: oneIn });
  }
});

describe('exact', () => {
  for (const [given, expected] of exactRows) {
    const name = `1 ${given} is so by definition`;
    check({ source: SP811, name, given, expected, got: oneIn });
  }
  for (const [given, expected] of rememberedExactRows) {
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
