import {
  type Contributor,
  celsiusDifference,
  expandedUncertainty,
  type Instrument,
  inch,
  instrumentBudget,
  type Length,
  meanExpansion,
  mm,
  readingUncertainty,
  repeatability,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { notNumbers, refusal } from '../../quantities/refusal.js';

const tenth = inch(0.0001);
const limits = (name: string, halfWidth: Length, more: object = {}): Contributor => ({
  name,
  kind: 'rectangular',
  halfWidth,
  ...more,
});
const standardOf = (...all: Contributor[]) => expandedUncertainty(all).standard;

describe('repeatability', () => {
  it('is the scatter about the mean', () => {
    // 2, 4, 4, 4, 5, 5, 7, 9: the mean is 5 and the squares add to 32.
    const found = repeatability([2, 4, 4, 4, 5, 5, 7, 9].map(mm));
    expect(found.mean).toBeCloseTo(mm(5), 15);
    expect(found.standardDeviation).toBeCloseTo(mm(Math.sqrt(32 / 7)), 15);
    expect(found.standardError).toBeCloseTo(mm(Math.sqrt(32 / 7 / 8)), 15);
    expect(found.degreesOfFreedom).toBe(7);
  });

  it('does not mind what is added to every reading', () => {
    const steps = fc.array(fc.integer({ min: 0, max: 50 }), { minLength: 2, maxLength: 9 });
    fc.assert(
      fc.property(steps, fc.integer({ min: 1, max: 500 }), (micrometres, size) => {
        const near = repeatability(micrometres.map((n) => mm(n / 1000)));
        const far = repeatability(micrometres.map((n) => mm(size + n / 1000)));
        expect(far.standardDeviation).toBeCloseTo(near.standardDeviation, 14);
      }),
    );
  });

  it('is none of readings that are alike', () => {
    expect(repeatability([mm(5), mm(5), mm(5)]).standardDeviation).toBe(0);
  });

  it('needs two readings, each a number', () => {
    expect(refusal(() => repeatability([])).parameter).toBe('readings');
    expect(refusal(() => repeatability([mm(5)])).parameter).toBe('readings');
    for (const wrong of notNumbers) {
      const named = refusal(() => repeatability([mm(5), wrong as Length])).parameter;
      expect(named).toBe('readings[1]');
    }
  });
});

describe('the uncertainty of a result', () => {
  it('is what each kind of contributor adds', () => {
    const half = mm(0.006);
    const of = (more: object) => standardOf({ name: 'it', ...more } as Contributor);
    expect(of({ kind: 'rectangular', halfWidth: half })).toBeCloseTo(half / Math.sqrt(3), 15);
    expect(of({ kind: 'triangular', halfWidth: half })).toBeCloseTo(half / Math.sqrt(6), 15);
    expect(of({ kind: 'arcsine', halfWidth: half })).toBeCloseTo(half / Math.sqrt(2), 15);
    expect(of({ kind: 'normal', expanded: half, coverageFactor: 2 })).toBeCloseTo(half / 2, 15);
    expect(of({ kind: 'readings', standardDeviation: half, readings: 9 })).toBeCloseTo(
      half / 3,
      15,
    );
    expect(of({ kind: 'standard error', standardError: half })).toBeCloseTo(half, 15);
    expect(of({ kind: 'rectangular', halfWidth: 2, sensitivity: -half })).toBeCloseTo(
      (2 * half) / Math.sqrt(3),
      15,
    );
  });

  it('adds squares, and names the largest first', () => {
    const { standard, shares } = expandedUncertainty([
      { name: 'small', kind: 'standard error', standardError: mm(0.003) },
      { name: 'large', kind: 'standard error', standardError: mm(0.004) },
    ]);
    expect(standard).toBeCloseTo(mm(0.005), 15);
    expect(shares.map(({ name }) => name)).toEqual(['large', 'small']);
    expect(shares.map(({ share }) => share)).toEqual([
      expect.closeTo(0.64, 12),
      expect.closeTo(0.36, 12),
    ]);
  });

  it('has a factor of 2 where the degrees of freedom are without number', () => {
    const sure = expandedUncertainty([limits('a', tenth)]);
    expect(sure.coverageFactor).toBeCloseTo(2, 3);
    expect(sure).not.toHaveProperty('degreesOfFreedom');
  });

  it('scales with its contributors, and grows with each and with the coverage', () => {
    const widths = fc.integer({ min: 1, max: 900 });
    const degrees = fc.integer({ min: 1, max: 40 });
    fc.assert(
      fc.property(widths, widths, widths, degrees, (a, b, more, degreesOfFreedom) => {
        const all = (scale: number, extra = 0): Contributor[] => [
          limits('a', mm((scale * (a + extra)) / 1e5)),
          limits('b', mm((scale * b) / 1e5), { degreesOfFreedom }),
        ];
        const one = expandedUncertainty(all(1));
        const ten = expandedUncertainty(all(10));
        expect(ten.expanded / one.expanded).toBeCloseTo(10, 9);
        const [few, many] = [one, ten].map((each) => each.degreesOfFreedom ?? 1);
        expect((few ?? 0) / (many ?? 1)).toBeCloseTo(1, 9);
        expect(expandedUncertainty(all(1, more)).standard).toBeGreaterThan(one.standard);
        const surer = expandedUncertainty(all(1), { coverage: 0.99 });
        expect(surer.expanded).toBeGreaterThan(one.expanded);
      }),
      { numRuns: 40 },
    );
  });

  it('holds numbers of any size', () => {
    for (const scale of [1e-200, 1e-90, 1e60]) {
      const { expanded, shares } = expandedUncertainty([
        limits('a', scale as Length),
        limits('b', (scale / 2) as Length),
      ]);
      expect(expanded / scale).toBeCloseTo(2 * Math.sqrt(1.25 / 3), 3);
      expect(shares[0]?.share).toBeCloseTo(0.8, 12);
    }
  });

  it.each<[object, string]>([
    [{ halfWidth: -1 }, '.halfWidth'],
    [{ halfWidth: Number.NaN }, '.halfWidth'],
    [{ degreesOfFreedom: 0 }, '.degreesOfFreedom'],
    [{ degreesOfFreedom: Infinity }, '.degreesOfFreedom'],
    [{ sensitivity: Infinity }, '.sensitivity'],
    [{ halfWidth: 1e60, sensitivity: 1e60 }, '.sensitivity'],
    [{ name: '' }, '.name'],
    [{ common: 'yes' }, '.common'],
    [{ kind: 'guess' }, '.kind'],
    [{ expanded: 1 }, '.expanded'],
    [{ kind: 'normal', halfWidth: undefined }, '.halfWidth'],
  ])('refuses a contributor with %j', (more, parameter) => {
    const wrong = limits('a', tenth, more);
    expect(refusal(() => expandedUncertainty([limits('b', tenth), wrong])).parameter).toBe(
      `contributors[1]${parameter}`,
    );
    expect(refusal(() => readingUncertainty([wrong])).parameter).toBe(`instrument[0]${parameter}`);
  });

  it.each<[object, string]>([
    [{ kind: 'readings', standardDeviation: 1, readings: 1 }, '.readings'],
    [{ kind: 'readings', standardDeviation: 1, readings: 2.5 }, '.readings'],
    [{ kind: 'readings', standardDeviation: -1, readings: 5 }, '.standardDeviation'],
    [{ kind: 'readings', standardDeviation: 1, readings: 0, degreesOfFreedom: 4 }, '.readings'],
    [{ kind: 'standard error', standardError: '1' }, '.standardError'],
    [{ kind: 'normal', expanded: 1, coverageFactor: 0 }, '.coverageFactor'],
    [{ kind: 'normal', expanded: -1, coverageFactor: 2 }, '.expanded'],
  ])('refuses %j', (spread, parameter) => {
    const wrong = { name: 'a', ...spread } as Contributor;
    expect(refusal(() => expandedUncertainty([wrong])).parameter).toBe(
      `contributors[0]${parameter}`,
    );
  });

  it('refuses an empty budget, one that adds nothing, and a coverage that is none', () => {
    expect(refusal(() => expandedUncertainty([])).parameter).toBe('contributors');
    expect(refusal(() => expandedUncertainty([limits('a', mm(0))])).parameter).toBe('contributors');
    for (const coverage of [0, 1, -1, 2, Number.NaN, '0.95']) {
      const options = { coverage: coverage as number };
      const named = refusal(() => expandedUncertainty([limits('a', tenth)], options)).parameter;
      expect(named).toBe('options.coverage');
    }
  });
});

describe('the uncertainty of a reading', () => {
  it('is what a person says, and √2 of it for a difference', () => {
    const { size, difference } = readingUncertainty({ expanded: tenth });
    expect(size).toBe(tenth);
    expect(difference).toBeCloseTo(Math.SQRT2 * tenth, 15);
  });

  it('loses in a difference what is common, and doubles the square of the rest', () => {
    const own = limits('resolution', tenth);
    const zero = limits('zero error', tenth, { common: true });
    const { size, difference } = readingUncertainty([own, zero]);
    const alone = expandedUncertainty([own]).expanded;
    expect(size).toBeCloseTo(Math.SQRT2 * alone, 12);
    expect(difference).toBeCloseTo(Math.SQRT2 * alone, 12);
    expect(readingUncertainty([zero]).difference).toBe(0);
    expect(readingUncertainty([own]).difference).toBeCloseTo(Math.SQRT2 * alone, 12);
  });

  it('cannot be stated as none, or in a bare number', () => {
    for (const expanded of [0, -tenth, 0.1, Number.NaN]) {
      const named = refusal(() => readingUncertainty({ expanded: expanded as Length })).parameter;
      expect(named).toBe('instrument.expanded');
    }
    expect(refusal(() => readingUncertainty(null as never)).parameter).toBe('instrument');
  });
});

describe('the budget of an instrument', () => {
  const repeats = { standardDeviation: inch(0.00005), degreesOfFreedom: 9 };
  const micrometer: Instrument = { kind: 'micrometer', division: tenth, zeroError: tenth, repeats };
  const warmth = {
    size: inch(2.75),
    apart: celsiusDifference(2),
    from20C: celsiusDifference(10),
    part: meanExpansion('cast piston alloy'),
    instrument: meanExpansion('steel'),
  };

  it('has half a division, the repeat readings and the zero', () => {
    expect(instrumentBudget(micrometer)).toEqual([
      { name: 'resolution', kind: 'rectangular', halfWidth: tenth / 2 },
      { name: 'repeatability', kind: 'readings', readings: 1, ...repeats },
      { name: 'zero error', kind: 'rectangular', halfWidth: tenth, common: true },
    ]);
  });

  it('takes repeat readings as they are', () => {
    const readings = [2.1241, 2.1242, 2.124].map(inch);
    const [, line] = instrumentBudget({ ...micrometer, repeats: readings, readings: 3 });
    const { standardDeviation } = repeatability(readings);
    expect(line).toMatchObject({ standardDeviation, readings: 3, degreesOfFreedom: 2 });
  });

  it('has all of the micrometer in a bore gauge, as common to its readings', () => {
    const setWith = instrumentBudget({ ...micrometer, warmth });
    const bore = instrumentBudget({ kind: 'bore gauge', division: tenth, repeats, setWith });
    const setting = bore.slice(2);
    expect(setting.map(({ name }) => name)).toEqual(setWith.map(({ name }) => `setting: ${name}`));
    expect(setting.every(({ common }) => common)).toBe(true);
    const [own, whole] = [setWith, bore].map(readingUncertainty);
    expect(whole?.size).toBeGreaterThan(own?.size ?? Infinity);
    // What it was set with does not show in a taper or an out-of-round.
    const alone = readingUncertainty(bore.slice(0, 2)).difference;
    expect(whole?.difference).toBeCloseTo(alone, 15);
  });

  it('has the warmth, as common', () => {
    const lines = instrumentBudget({ ...micrometer, warmth }).slice(3);
    expect(lines.map(({ name }) => name)).toEqual([
      'part and instrument not equally warm',
      'expansion unlike that of the instrument',
    ]);
    // 2.75 in · 2 K · 21.5 ppm/K and 2.75 in · 10 K · (21.5 - 11.2) ppm/K, each over √3.
    const [apart, unlike] = lines.map((line) => standardOf(line));
    expect(apart).toBeCloseTo((inch(2.75) * 2 * 21.5e-6) / Math.sqrt(3), 12);
    expect(unlike).toBeCloseTo((inch(2.75) * 10 * 10.3e-6) / Math.sqrt(3), 12);
    expect(lines.every(({ common }) => common)).toBe(true);
  });

  it('has only the spread of the coefficients left where sizes are corrected', () => {
    const lines = instrumentBudget({ ...micrometer, warmth: { ...warmth, corrected: true } });
    const [, part, instrument] = lines.slice(3).map((line) => standardOf(line));
    expect(part).toBeCloseTo((inch(2.75) * 10 * 1e-6) / Math.sqrt(3), 12);
    expect(instrument).toBeCloseTo((inch(2.75) * 10 * 0.45e-6) / Math.sqrt(3), 12);
  });

  it('has the travel of an indicator and the blade of a feeler in every reading', () => {
    const dial = instrumentBudget({
      kind: 'dial indicator',
      division: tenth,
      repeats,
      travelError: tenth,
    });
    const feeler = instrumentBudget({
      kind: 'feeler gauge',
      division: inch(0.001),
      repeats,
      bladeError: tenth,
    });
    expect(dial[2]).toEqual({ name: 'travel error', kind: 'rectangular', halfWidth: tenth });
    expect(feeler[2]).toEqual({ name: 'blade error', kind: 'rectangular', halfWidth: tenth });
  });

  it.each<[object, string]>([
    [{ kind: 'ruler' }, 'instrument.kind'],
    [{ kind: 'toString' }, 'instrument.kind'],
    [{ division: 0 }, 'instrument.division'],
    [{ division: 0.1 }, 'instrument.division'],
    [{ zeroError: -1e-6 }, 'instrument.zeroError'],
    [{ zeroError: undefined }, 'instrument.zeroError'],
    [{ repeats: undefined }, 'instrument.repeats'],
    [{ repeats: [mm(5)] }, 'instrument.repeats'],
    [{ repeats: [mm(5), null] }, 'instrument.repeats[1]'],
    [{ repeats: { ...repeats, degreesOfFreedom: 0 } }, 'instrument.repeats.degreesOfFreedom'],
    [{ repeats: { ...repeats, standardDeviation: -1 } }, 'instrument.repeats.standardDeviation'],
    [{ readings: 0 }, 'instrument.readings'],
    [{ setWith: [] }, 'instrument.setWith'],
    [{ warmth: { ...warmth, apart: -1 } }, 'instrument.warmth.apart'],
    [{ warmth: { ...warmth, from20C: 293 } }, 'instrument.warmth.from20C'],
    [{ warmth: { ...warmth, size: 2.75 } }, 'instrument.warmth.size'],
    [{ warmth: { ...warmth, corrected: 1 } }, 'instrument.warmth.corrected'],
    [{ warmth: { ...warmth, part: {} } }, 'instrument.warmth.part.source'],
  ])('refuses %j', (more, parameter) => {
    const wrong = { ...micrometer, ...more } as Instrument;
    expect(refusal(() => instrumentBudget(wrong)).parameter).toBe(parameter);
  });

  it('refuses a bore gauge that was set with nothing', () => {
    for (const setWith of [undefined, [], [{ name: 'a' }]]) {
      const bore = {
        kind: 'bore gauge',
        division: tenth,
        repeats,
        setWith,
      } as unknown as Instrument;
      expect(refusal(() => instrumentBudget(bore)).parameter).toMatch(/^instrument\.setWith/);
    }
  });
});
