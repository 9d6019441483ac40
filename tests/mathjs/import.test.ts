import * as cw from 'crankwright';
import { coherentUnit, type Dimension, type Unit, valueIn } from 'crankwright';
import { crankwright } from 'crankwright/mathjs';
import fc from 'fast-check';
import { all, create, type FactoryFunctionMap } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { constants } from '../../src/mathjs/functions.js';
import { importInto } from '../../src/mathjs/import.js';
import { nameOfUnit, namesOf, unitByName } from '../../src/mathjs/unit-names.js';
import { expectRefusal } from './refusal.js';

const instance = () => create(all as FactoryFunctionMap);
const math = instance();
const { exact, names } = importInto(math, () => 'inch');
math.import(names);

const unitsAndNames = [...unitByName];

describe("constants in a caller's own mathjs", () => {
  it('has all that the library exports', () => {
    const isUnit = (value: unknown) => typeof value === 'function';
    const holdsNumber = (value: unknown): boolean =>
      typeof value === 'number' ||
      (typeof value === 'object' && value !== null && Object.values(value).some(holdsNumber));
    const exported = Object.entries(cw).filter(([, value]) => !isUnit(value) && holdsNumber(value));
    expect(exported.map(([name]) => name).sort()).toEqual([...constants.keys()].sort());
    expect(exported.map(([name]) => name)).toContain('petrolSpanAt20C');
  });

  it('gives them as units of mathjs, exact, and takes them back', () => {
    // Standard atmosphere: 101325 Pa by definition. Petrol at 20 °C: 0.5 to 1.0 mm²/s, see src/oil/petrol.ts.
    expect(math.evaluate('standardAtmosphere to Pa').toNumber('Pa')).toBe(101325);
    expect(math.evaluate('petrolSpanAt20C.max to cSt').toNumber('cSt')).toBeCloseTo(1, 12);
    expect(() => math.evaluate('petrolSpanAt20C.max = 3 cSt')).toThrow(TypeError);
    const blend =
      '{law: "Refutas", parts: [{fraction: 50 percentByMass, viscosity: petrolAt20C}, {fraction: 50 percentByMass, viscosity: petrolAt20C}]}';
    expect(math.evaluate(`blendViscosity(${blend})`).toNumber('cSt')).toBeCloseTo(0.55, 9);
  });
});

describe("units in a caller's own mathjs", () => {
  it.each(unitsAndNames)('%s is ours to the last bit, up to 15 digits', (name, unit) => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 999_999_999 }),
        fc.integer({ min: 0, max: 9 }),
        (n, e) => {
          const typed = Number(`${n}e-${e}`);
          const given = math.unit(typed, name);
          expect(exact.valueOf(given, unit.dimension)).toBe(unit(typed));
        },
      ),
      { numRuns: 20 },
    );
  });

  it('has every unit that is no ratio, under the name that it is exported by', () => {
    const dimensions = new Set(unitsAndNames.map(([, unit]) => unit.dimension));
    expect([...dimensions].sort()).toEqual(
      Object.keys(coherentUnit)
        .filter((name) => name !== 'ratio')
        .sort(),
    );
    for (const unit of new Set(unitsAndNames.map(([, each]) => each as Unit<Dimension>))) {
      expect(namesOf(unit)[0]).toBe(nameOfUnit(unit));
    }
  });

  it('keeps gauge pressure and fractions apart from all else', () => {
    for (const sum of [
      '1 psiGauge + 1 psi',
      '1 percentByVolume + 1',
      '1 percentByVolume + 1 percentByMass',
    ]) {
      expect(() => math.evaluate(sum), sum).toThrow();
    }
  });

  it('puts right what mathjs has rounded', () => {
    // 1 psi = 8 896 443 230 521 / 1 290 320 000 Pa exactly.
    expect(math.evaluate('1 psi to Pa').toNumber('Pa')).toBe(6894.757293168362);
  });

  it('leaves it to mathjs how it prints a product', () => {
    const fresh = instance();
    fresh.import(crankwright(fresh));
    expect(fresh.evaluate('20 N * 1 m').toString()).toBe('20 J');
    expect(fresh.evaluate('2 N / (1 m^2)').toString()).toBe('2 Pa');
  });

  it('may be imported into one instance twice', () => {
    const twice = instance();
    twice.import(crankwright(twice));
    expect(() => crankwright(twice, { units: 'metric' })).not.toThrow();
  });
});

describe('functions in a mathjs of the caller', () => {
  it('gives results in the units asked for', () => {
    const metric = instance();
    metric.import(crankwright(metric, { units: 'metric' }));
    const typed =
      'oilClearance({housingBore: 2.251 inch, journal: 2.105 inch, shellWall: 62 thou})';
    expect(math.format(math.evaluate(typed), 6)).toBe('0.022 inch');
    expect(math.format(metric.evaluate(typed), 6)).toBe('0.5588 mm');
  });

  it('gives how far a temperature is from its limit as a difference', () => {
    const judged = math.evaluate(
      'judge({feature: "oil", dimension: "temperature", value: 200 degF, limits: {max: 220 degF}, basis: {kind: "specified"}})',
    );
    expect(exact.is(judged.margin, 'temperatureDifference')).toBe(true);
    expect(
      valueIn(
        exact.valueOf(judged.margin, 'temperatureDifference') as never,
        unitByName.get('fahrenheitDifference') as never,
      ),
    ).toBeCloseTo(20, 9);
  });

  const sizes = (journal: string) =>
    `oilClearance({housingBore: 2.251 inch, journal: ${journal}, shellWall: 62 thou})`;
  it.each([
    [sizes('2.105'), 'journal', 'has no unit; expected a length'],
    [sizes('20 N m'), 'journal', '20 N m is not a length'],
    [sizes('20 degC'), 'journal', '20 °C is not a length'],
    [sizes('2.105 m'), 'journal', 'outside'],
    ['oilClearance({jurnal: 2 inch})', 'sizes.jurnal', 'not a known field'],
    ['oilClearance(1, 2)', 'oilClearance', 'too many'],
    ['viscosityAt([], 60 celsiusDifference)', 'temperature', 'is not a temperature'],
    ['absolutePressure(120 psi, 14.7 psi)', 'reading', 'is not a gauge pressure'],
    ['apiGravity(0.88)', 'density', 'has no unit; expected a density'],
    ['fuelInSump({leak: 1 quart})', 'leak', 'may be a US or an imperial one'],
  ])('refuses %s for %s', (typed, parameter, message) => {
    expectRefusal(() => math.evaluate(typed), parameter, message);
  });

  it.each([
    [undefined, undefined, 'math'],
    [{}, undefined, 'math'],
    [instance(), { units: 'imperial' }, 'options.units'],
    [instance(), { unit: 'inch' }, 'options.unit'],
  ])('refuses what is no instance, and options it does not know', (given, options, parameter) => {
    expectRefusal(() => crankwright(given as never, options as never), parameter, '');
  });
});
