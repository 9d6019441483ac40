import configureMeasurements from 'convert-units';
import { coherentUnit, type UnitSymbol, unitTable } from 'crankwright';
import { exactMeasures } from 'crankwright/convert-units';
import { describe } from 'vitest';
import { check } from './check.js';
import {
  exactRows,
  rememberedExactRows,
  rememberedRoundedRows,
  roundedRows,
  SP811,
} from './sp811.js';

const convert = configureMeasurements(exactMeasures);
const oneIn = (symbol: UnitSymbol): number =>
  convert(1).from(symbol).to(coherentUnit[unitTable[symbol].dimension]);

describe('the factors of convert-units with our measures', () => {
  for (const [given, expected] of roundedRows) {
    const tolerance = { relative: 1e-6 };
    check({ source: SP811, name: `1 ${given}`, given, expected, tolerance, got: oneIn });
  }
  for (const [given, expected] of rememberedRoundedRows) {
    const tolerance = { relative: 1e-6 };
    check({ basis: 'from memory', name: `1 ${given}`, given, expected, tolerance, got: oneIn });
  }
  for (const [given, expected] of exactRows) {
    check({ source: SP811, name: `1 ${given}, exactly`, given, expected, got: oneIn });
  }
  for (const [given, expected] of rememberedExactRows) {
    check({ basis: 'from memory', name: `1 ${given}, exactly`, given, expected, got: oneIn });
  }
});
