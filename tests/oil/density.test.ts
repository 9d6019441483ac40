import {
  apiGravity,
  celsius,
  type Density,
  densityAt,
  densityFromApiGravity,
  fahrenheit,
  kilogramPerCubicMetre,
  perKelvin,
  ppmPerKelvin,
  ratio,
  valueIn,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { notNumbers, refusal } from '../quantities/refusal.js';

/** Lubricating oils by their density at 15 °C, both ends among them. */
const anyOil = fc.double({ min: 800, max: 1164, noNaN: true }).map(kilogramPerCubicMetre);
const anyLiquid = fc.double({ min: 600, max: 1250, noNaN: true }).map(kilogramPerCubicMetre);
const anyTemperature = fc.double({ min: -50, max: 150, noNaN: true }).map(celsius);
const anyExpansion = fc.double({ min: 100, max: 2000, noNaN: true }).map(ppmPerKelvin);
/** Oils and expansions that stay within 600 to 1250 kg/m³ at every temperature. */
const commonOil = fc.double({ min: 860, max: 1040, noNaN: true }).map(kilogramPerCubicMetre);
const commonExpansion = fc.double({ min: 300, max: 1500, noNaN: true }).map(ppmPerKelvin);
const cooler = fc.double({ min: -50, max: 145, noNaN: true }).map(celsius);
const at = celsius(15);

describe('API gravity', () => {
  it('is got back from the density that it gives', () => {
    fc.assert(
      fc.property(fc.double({ min: -10, max: 104, noNaN: true }), (gravity) => {
        expect(apiGravity(densityFromApiGravity(ratio(gravity)))).toBeCloseTo(gravity, 10);
      }),
    );
  });

  it('takes what it gives, both ways round, from one end of the scale to the other', () => {
    fc.assert(
      fc.property(fc.double({ min: -10, max: 104, noNaN: true }), (gravity) => {
        let there = ratio(gravity);
        for (let turn = 0; turn < 5; turn++) there = apiGravity(densityFromApiGravity(there));
        expect(there).toBeCloseTo(gravity, 9);
      }),
    );
    expect(densityFromApiGravity(ratio(-10))).toBeCloseTo((999.016 * 141.5) / 121.5, 9);
  });

  it('falls as the oil is denser', () => {
    expect(apiGravity(kilogramPerCubicMetre(900))).toBeLessThan(
      apiGravity(kilogramPerCubicMetre(899)),
    );
  });

  it('outside the scale is refused', () => {
    expect(refusal(() => densityFromApiGravity(ratio(-10.1))).parameter).toBe('gravity');
    expect(refusal(() => densityFromApiGravity(ratio(104.1))).parameter).toBe('gravity');
    for (const density of [600, 1164]) {
      const error = refusal(() => apiGravity(kilogramPerCubicMetre(density)));
      expect(error.parameter).toBe('density');
    }
    expect(refusal(() => apiGravity(0.886 as Density)).hint).toContain('kilogramPerCubicMetre');
  });
});

describe('densityAt takes what it gives', () => {
  it('for every lubricating oil and every temperature', () => {
    fc.assert(
      fc.property(anyOil, fc.array(anyTemperature, { maxLength: 5 }), (density, temperatures) => {
        let known = { density, at };
        for (const temperature of [...temperatures, at]) {
          known = { density: densityAt({ ...known, temperature }), at: temperature };
        }
        expect(known.density / density).toBeCloseTo(1, 12);
      }),
    );
  });

  it('for every liquid with its expansion, or does not give it', () => {
    fc.assert(
      fc.property(
        anyLiquid,
        anyTemperature,
        anyTemperature,
        anyExpansion,
        (density, from, temperature, expansion) => {
          const [there] = attempt(() => densityAt({ density, at: from, temperature, expansion }));
          if (there === undefined) return;
          expect(densityAt({ density: there, at, temperature: at, expansion })).toBe(there);
        },
      ),
    );
  });

  it('and names the temperature that takes a liquid out of the domain', () => {
    const petrol = { density: kilogramPerCubicMetre(620), at, expansion: ppmPerKelvin(1600) };
    const error = refusal(() => densityAt({ ...petrol, temperature: celsius(60) }));
    // By hand: 620 exp(-0.072 (1 + 0.8 * 0.072)) = 574.5.
    expect(error.parameter).toBe('temperature');
    expect(error.message).toContain('574.5 kg/m³');
    expect(error.message).toContain('600 … 1250 kg/m³');
    const heavy = { density: kilogramPerCubicMetre(1200), at, expansion: ppmPerKelvin(2000) };
    expect(refusal(() => densityAt({ ...heavy, temperature: celsius(-50) })).parameter).toBe(
      'temperature',
    );
  });
});

/** What a call gives; nothing where it is refused for its temperature. */
function attempt<T>(call: () => T): readonly T[] {
  try {
    return [call()];
  } catch (error) {
    expect(error).toMatchObject({ name: 'RebuildInputError', parameter: 'temperature' });
    return [];
  }
}

describe('densityAt', () => {
  it('comes back to what it began with, there and back', () => {
    fc.assert(
      fc.property(commonOil, anyTemperature, anyTemperature, (density, one, other) => {
        const there = densityAt({ density, at: one, temperature: other });
        const back = densityAt({ density: there, at: other, temperature: one });
        expect(back / density).toBeCloseTo(1, 12);
      }),
    );
  });

  it('does not matter which way round it is taken', () => {
    fc.assert(
      fc.property(anyOil, anyTemperature, anyTemperature, (density, one, other) => {
        const straight = densityAt({ density, at, temperature: other });
        const first = densityAt({ density, at, temperature: one });
        const round = densityAt({ density: first, at: one, temperature: other });
        expect(round / straight).toBeCloseTo(1, 12);
      }),
    );
  });

  it('falls as it warms, and stays where it is not warmed', () => {
    const by = fc.double({ min: 0.5, max: 5, noNaN: true });
    fc.assert(
      fc.property(commonOil, cooler, commonExpansion, by, (density, temperature, expansion, d) => {
        const warmer = celsius(temperature - 273.15 + d);
        for (const known of [
          { density, at },
          { density, at, expansion },
        ]) {
          expect(densityAt({ ...known, temperature: warmer })).toBeLessThan(
            densityAt({ ...known, temperature }),
          );
          expect(densityAt({ ...known, temperature: at })).toBe(density);
        }
      }),
    );
  });

  it('follows the expansion given, for a small change', () => {
    fc.assert(
      fc.property(commonOil, cooler, commonExpansion, (density, from, expansion) => {
        const temperature = celsius(from - 273.15 + 0.01);
        const after = densityAt({ density, at: from, temperature, expansion });
        expect((1 - after / density) / 0.01 / expansion).toBeCloseTo(1, 4);
      }),
    );
  });

  it('takes lubricating oil to grow by 0.6278 kg/m³ for a kelvin over its density', () => {
    const density = kilogramPerCubicMetre(880);
    const temperature = celsius(90);
    const given = densityAt({ density, at, temperature, expansion: perKelvin(0.6278 / 880) });
    expect(given / densityAt({ density, at, temperature })).toBeCloseTo(1, 14);
  });

  it('reaches from -50 to 150 °C', () => {
    const known = { density: kilogramPerCubicMetre(880), at };
    expect(
      valueIn(densityAt({ ...known, temperature: celsius(-50) }), kilogramPerCubicMetre),
    ).toBeGreaterThan(915);
    expect(
      valueIn(densityAt({ ...known, temperature: celsius(150) }), kilogramPerCubicMetre),
    ).toBeLessThan(800);
    for (const temperature of [celsius(-50.1), celsius(150.1)]) {
      expect(refusal(() => densityAt({ ...known, temperature })).parameter).toBe('temperature');
      const other = { ...known, at: temperature, temperature: at };
      expect(refusal(() => densityAt(other)).parameter).toBe('at');
    }
  });
});

describe('densityAt refuses', () => {
  const known = { density: kilogramPerCubicMetre(880), at, temperature: fahrenheit(100) };

  it.each(notNumbers.map((value) => [value]))('the number %s', (value) => {
    for (const field of ['density', 'at', 'temperature', 'expansion']) {
      // An expansion that is left out is the default.
      if (field === 'expansion' && value === undefined) continue;
      expect(refusal(() => densityAt({ ...known, [field]: value })).parameter).toBe(field);
    }
  });

  it('petrol without its expansion, and takes it with one', () => {
    const petrol = { ...known, density: kilogramPerCubicMetre(745) };
    expect(refusal(() => densityAt(petrol)).hint).toContain('ppmPerKelvin(1200) for petrol');
    expect(() => densityAt({ ...petrol, expansion: ppmPerKelvin(1200) })).not.toThrow();
  });

  it('an expansion in parts per million without its unit', () => {
    const bare = { ...known, expansion: 700 as never };
    expect(refusal(() => densityAt(bare)).hint).toContain('ppmPerKelvin');
  });
});
