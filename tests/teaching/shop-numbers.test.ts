import { type Dimension, parse, type ThreadSeries, threadsIn, type UnitSystem } from 'crankwright';
import { type CardName, cards, check, type Exercise, exercise } from 'crankwright/teaching';
import { describe, expect, it } from 'vitest';
import { compute } from '../support/card-values.js';

const names = Object.keys(cards) as CardName[];
const systems = ['inch', 'metric'] as const;
const seeds = Array.from({ length: 21 }, (_, seed) => seed);

const drawn = (name: CardName, units: UnitSystem): readonly Exercise[] =>
  seeds.map((seed) => exercise(name, seed, { units }));
const texts = (name: CardName, symbol: string, units: UnitSystem) =>
  drawn(name, units).map(
    ({ given }) => given.find((letter) => letter.symbol === symbol)?.text ?? expect.fail(symbol),
  );

/** How many digits a number is written with; zeros at the end of a whole number only hold its place. */
const digitsOf = (value: number): number => {
  const [whole = '', decimals = ''] = `${Math.abs(value)}`.split('.');
  const digits = decimals === '' ? whole.replace(/0+$/, '') : whole + decimals;
  return digits.replace(/^0+/, '').length;
};
/** The places after the point. */
const placesOf = (value: number): number => `${value}`.split('.')[1]?.length ?? 0;
/** What a size is written to: a tenth of a thou, or a micrometre. */
const PLACES: Readonly<Record<string, number>> = { in: 4, thou: 1, mm: 3 };

/** The letters that count something, by their field. */
const COUNTS: Readonly<Record<string, number>> = { drops: 1, lobes: 1, coils: 4, deadCoils: 4 };

describe.each(systems)('numbers on %s sheets', (units) => {
  it('are whole where they count, and quarters where they count coils', () => {
    const counted = names.flatMap((name) =>
      Object.entries(cards[name].letters).flatMap(([symbol, { field }]) => {
        const parts = COUNTS[field];
        return parts === undefined ? [] : [{ name, symbol, parts }];
      }),
    );
    expect(new Set(counted.map(({ name }) => name)).size).toBeGreaterThan(8);
    for (const { name, symbol, parts } of counted) {
      for (const { values } of drawn(name, units)) {
        expect(Number.isInteger((values[symbol] as number) * parts), name).toBe(true);
      }
    }
  });

  it.each<[CardName, string, readonly string[]]>([
    ['vBlockFactor', 'a', ['60 deg', '90 deg', '120 deg']],
    ['vBlockFactor', 'n', ['3', '5']],
    ['throwPhase', 'phi', ['180 deg']],
    ['throwPhaseAlong', 'phi', ['180 deg']],
    ['leastStack', 'k_1', ['1']],
    ['leastStack', 'k_2', ['-1']],
  ])('draw for %s %s what is made', (name, symbol, made) => {
    expect(texts(name, symbol, units).filter((text) => !made.includes(text))).toEqual([]);
  });

  it('are limits of fuel in half percents', () => {
    for (const name of ['timeToDilution', 'timeToDilutionWithLoss'] as const) {
      for (const text of texts(name, 'x', units)) expect(text).toMatch(/^\d(\.5)? vol%$/);
    }
  });

  it('are answers as a shop writes them: sizes to a tenth of a thou or a micrometre, the rest to four digits', () => {
    for (const name of names) {
      for (const { answer, asks } of drawn(name, units)) {
        const { value, unit, text } = answer;
        const places = asks.dimension === 'length' ? PLACES[unit] : undefined;
        // A film or a gap under half a thou has no tenths to spare.
        if (places !== undefined && digitsOf(value) > 2) {
          expect(placesOf(value), `${name} ${text}`).toBeLessThanOrEqual(places);
        } else {
          expect(digitsOf(value), `${name} ${text}`).toBeLessThanOrEqual(4);
        }
      }
    }
  });

  it('are given to four digits, but for sizes that are read with a micrometer', () => {
    for (const name of names) {
      for (const { given } of drawn(name, units)) {
        for (const { value, unit, text } of given) {
          if (PLACES[unit] !== undefined) continue;
          expect(digitsOf(value), `${name} ${text}`).toBeLessThanOrEqual(4);
        }
      }
    }
  });

  it('are answers that are right as they are printed, and that the numbers given lead to', () => {
    for (const name of names) {
      for (const problem of drawn(name, units)) {
        const { given, answer, value, tolerance } = problem;
        expect(check(problem, answer.text), `${name} ${answer.text}`).toEqual({ outcome: 'right' });
        const asPrinted = Object.fromEntries(
          given.map(({ symbol, text, unit }) => {
            const dimension = cards[name].letters[symbol]?.domain.dimension as Dimension;
            return [symbol, unit === '' ? Number(text) : parse(text, dimension)];
          }),
        );
        const found = compute(cards[name], asPrinted) ?? Number.NaN;
        expect(Math.abs(found - value), `${name} ${answer.text}`).toBeLessThanOrEqual(
          tolerance + 1e-12 * Math.abs(value),
        );
      }
    }
  });

  it('are viscosity indices as ASTM D2270 reports them, to the whole number', () => {
    for (const name of [
      'viscosityIndex',
      'viscosityIndexOfThickOil',
      'viscosityIndexAbove100',
    ] as const) {
      for (const problem of drawn(name, units)) {
        expect(problem.answer.text).toMatch(/^\d+$/);
        expect(check(problem, `${problem.answer.value + 1}`).outcome).not.toBe('right');
        expect(check(problem, `${problem.answer.value - 1}`).outcome).not.toBe('right');
      }
    }
  });

  it('are in one set of units where oil or fuel is measured out', () => {
    const ofInches = /\b(?:in|thou|ft|psi|lbf|US qt)\b|°F/;
    const ofMillilitres = /\bm?L\b/;
    const measured = names
      .flatMap((name) => drawn(name, units))
      .map(({ given, answer }) => [...given, answer].map(({ text }) => text).join('; '))
      .filter((texts) => ofMillilitres.test(texts));
    expect(measured.length).toBeGreaterThan(200);
    expect(measured.filter((texts) => ofInches.test(texts))).toEqual([]);
  });

  it('are speeds in steps of 50 rpm and wanted compression ratios in halves', () => {
    const omegas = names.filter((name) => 'omega' in cards[name].letters);
    expect(omegas.length).toBeGreaterThan(8);
    for (const name of omegas) {
      for (const text of texts(name, 'omega', units)) expect(text, name).toMatch(/[05]0 rpm$/);
    }
    for (const name of ['skimForRatio', 'gasketForRatio'] as const) {
      for (const text of texts(name, 'epsilon', units)) expect(text, name).toMatch(/^\d+(\.5)?$/);
    }
  });

  it.each<[CardName, readonly ThreadSeries[], number]>([
    ['unifiedMinorDiameter', ['UNC', 'UNF'], 6],
    ['unifiedStressArea', ['UNC', 'UNF'], 5],
    ['threadMinorDiameter', ['metric coarse', 'metric fine'], 8],
    ['threadStressArea', ['metric coarse', 'metric fine'], 5],
    [
      'threadPitchDiameter',
      units === 'inch' ? ['UNC', 'UNF'] : ['metric coarse', 'metric fine'],
      8,
    ],
  ])(
    'are for %s threads of the standard series, and not always the same',
    (name, series, least) => {
      const listed = series
        .flatMap(threadsIn)
        .map(({ diameter, pitch }) => `${diameter.toPrecision(3)} ${pitch.toPrecision(3)}`);
      const met = drawn(name, units).map(
        ({ values: { d = 0, P = 0 } }) => `${d.toPrecision(3)} ${P.toPrecision(3)}`,
      );
      expect(met.filter((thread) => !listed.includes(thread))).toEqual([]);
      expect(new Set(met).size).toBeGreaterThanOrEqual(least);
    },
  );

  // Oil clearances of small engines run from about 1 to 4 thou: common practice.
  it('are clearances that a shop meets where a gauging thread was flattened', () => {
    for (const { value, answer } of drawn('flattenedThreadGap', units)) {
      expect(value, answer.text).toBeGreaterThanOrEqual(25e-6);
      expect(value, answer.text).toBeLessThanOrEqual(102e-6);
    }
  });

  it('are undersizes that shells are made in', () => {
    const made = {
      inch: ['10 thou', '20 thou', '30 thou', '40 thou'],
      metric: ['0.25 mm', '0.5 mm', '0.75 mm', '1 mm'],
    }[units];
    const written = [
      ...texts('explainClearance', 's', units),
      ...texts('explainTightClearance', 's', units),
      ...texts('targetDiameter', 'u', units),
    ];
    expect(written.filter((text) => !made.includes(text))).toEqual([]);
  });

  it('are limits as a manual writes them: half thou, or hundredths of a millimetre', () => {
    const round = { inch: /^\d+(\.5)? thou$/, metric: /^\d+(\.\d{1,2})? mm$/ }[units];
    for (const [name, symbol] of [
      ['leastWashers', 'e_most'],
      ['mostWashers', 'e_least'],
      ['journalLeft', 'a'],
      ['boreNeeded', 'h'],
      ['mostShellWallToSuit', 'c'],
      ['ringFilingNeeded', 'g_min'],
    ] as const) {
      for (const text of texts(name, symbol, units)) expect(text, name).toMatch(round);
    }
  });

  it('are read to a tenth of a thou or to a micrometre, and no finer', () => {
    const finer = { inch: /^-?\d+\.\d{5,} in$|^-?\d+\.\d{2,} thou$/, metric: /^-?\d+\.\d{4,} mm$/ };
    // Pitches are not read but calculated from threads to the inch.
    const readings = names.flatMap((name) =>
      drawn(name, units).flatMap(({ given }) => given.filter(({ symbol }) => symbol !== 'P')),
    );
    expect(readings.map(({ text }) => text).filter((text) => finer[units].test(text))).toEqual([]);
  });

  it('are those of a thread in the only system that it is made in', () => {
    for (const text of texts('threadStressArea', 'P', units)) expect(text).toMatch(/ mm$/);
    for (const text of texts('unifiedStressArea', 'd', units)) expect(text).toMatch(/ in$/);
    for (const { asks } of drawn('threadStressArea', units)) expect(asks.unit).toBe('mm²');
  });

  it('leave a grey iron ring whole', () => {
    for (const name of ['ringClosedStress', 'ringSpreadStress'] as const) {
      for (const { value } of drawn(name, units)) expect(value, name).toBeLessThan(360e6);
    }
  });
});

// Three quarters of the proof load of class 8.8 and grade 5, by the stress areas of handbooks.
// source: ISO 898-1: M10, 58.0 mm² coarse and 61.2 mm² fine, 580 MPa; ASME B1.1 and SAE J429: 3/8-16 UNC 0.0775 in² and
// 3/8-24 UNF 0.0878 in², 85 000 psi; from memory.
const LBF = 4.4482216;
const MOST = {
  coarse: { metric: 0.75 * 58 * 580, inch: 0.75 * 0.0775 * 85_000 * LBF },
  fine: { metric: 0.75 * 61.2 * 580, inch: 0.75 * 0.0878 * 85_000 * LBF },
} as const;

describe.each(systems)('bolts on %s sheets', (units) => {
  const size = units === 'metric' ? '10 mm' : '0.375 in';

  it.each([
    'tighteningTorque',
    'screwTorque',
    'torqueToStretch',
    'boltStretch',
    'loadOnBolt',
    'clampLeft',
    'opensAt',
    'turnOfNut',
  ] as const)('%s preloads them to three quarters of their proof load at most', (name) => {
    for (const { values } of drawn(name, units)) {
      const { F } = values;
      expect(F).toBeLessThanOrEqual(MOST.coarse[units]);
    }
  });

  it('are not overloaded by a torque', () => {
    for (const { value } of drawn('preloadFromTorque', units)) {
      expect(value).toBeLessThanOrEqual(MOST.coarse[units]);
    }
  });

  it('are not overloaded at the next slot of a castle nut', () => {
    for (const { value, values } of drawn('torqueAtSlot', units)) {
      const { K = Number.NaN, d = Number.NaN } = values;
      expect(value / (K * d)).toBeLessThanOrEqual(MOST.fine[units]);
    }
  });

  it('are of a size with that proof load', () => {
    for (const name of ['tighteningTorque', 'preloadFromTorque', 'torqueAtSlot'] as const) {
      expect(new Set(texts(name, 'd', units))).toEqual(new Set([size]));
    }
  });
});
