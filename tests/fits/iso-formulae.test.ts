import { limitsOfSize, micrometre, valueIn } from 'crankwright';
import { describe, expect, it } from 'vitest';

// Every table of ISO 286-1 was made from formulae in D, the geometric mean of the ends of a range [mm], and rounded. They
// are held against the tables here: an independent way to the same numbers, from memory of annex A.

const RANGES = [3, 6, 10, 18, 30, 50, 80, 120, 180, 250, 315, 400, 500];
const STEPS = [
  3, 6, 10, 14, 18, 24, 30, 40, 50, 65, 80, 100, 120, 140, 160, 180, 200, 225, 250, 280, 315, 355,
  400, 450, 500,
];
const meansOf = (ends: readonly number[]) =>
  // The first range counts as from 1 mm.
  ends.map((end, i) => ({ end, mean: Math.sqrt(end * (ends[i - 1] ?? 1)) }));

const inMicrometres = (designation: string) => {
  const { tolerance, deviations } = limitsOfSize(designation);
  return {
    tolerance: valueIn(tolerance, micrometre),
    upper: valueIn(deviations.max, micrometre),
    lower: valueIn(deviations.min, micrometre),
  };
};

/** How far a value of the table is from its formula, as a share of it. */
const shareOff = (table: number, formula: number) => Math.abs(table / formula - 1);

describe('the tolerances of ISO 286-1', () => {
  const MULTIPLES = [7, 10, 16, 25, 40, 64, 100, 160, 250, 400, 640, 1000, 1600, 2500];

  it.each(MULTIPLES.map((multiple, i) => [`IT${i + 5}`, multiple]))(
    '%s is %d i, where i = 0.45 D^(1/3) + 0.001 D, but for rounding',
    (name, multiple) => {
      for (const { end, mean } of meansOf(RANGES)) {
        const unit = 0.45 * Math.cbrt(mean) + 0.001 * mean;
        const { tolerance } = inMicrometres(`${end}h${String(name).slice(2)}`);
        // 8 of 7.3, 150 of 143.7. Up to 3 mm the standard sets more: 10 of 8.7.
        const share = end > 3 ? 0.1 : 0.16;
        const allowed = Math.max(share * multiple * unit, 0.5);
        expect(Math.abs(tolerance - multiple * unit)).toBeLessThanOrEqual(allowed);
      }
    },
  );

  it.each([
    ['01', 0.3, 0.008],
    ['0', 0.5, 0.012],
    ['1', 0.8, 0.02],
  ] as const)('IT%s is %d + %d D, but for rounding', (grade, constant, slope) => {
    for (const { end, mean } of meansOf(RANGES)) {
      const { tolerance } = inMicrometres(`${end}h${grade}`);
      expect(shareOff(tolerance, constant + slope * mean)).toBeLessThan(0.29);
    }
  });

  it('IT2 to IT4 lie evenly by their ratio between IT1 and IT5, but for rounding', () => {
    for (const end of RANGES) {
      const of = (grade: number) => inMicrometres(`${end}h${grade}`).tolerance;
      for (const grade of [2, 3, 4]) {
        const between = of(1) * (of(5) / of(1)) ** ((grade - 1) / 4);
        expect(shareOff(of(grade), between)).toBeLessThan(0.2);
      }
    }
  });
});

describe('the deviations of shafts of ISO 286-1', () => {
  const over =
    (limit: number, below: (d: number) => number, above: (d: number) => number) => (d: number) =>
      d > limit ? above(d) : below(d);
  const BELOW: Readonly<Record<string, (mean: number) => number>> = {
    a: over(
      120,
      (d) => 265 + 1.3 * d,
      (d) => 3.5 * d,
    ),
    b: over(
      160,
      (d) => 140 + 0.85 * d,
      (d) => 1.8 * d,
    ),
    c: over(
      40,
      (d) => 52 * d ** 0.2,
      (d) => 95 + 0.8 * d,
    ),
    d: (d) => 16 * d ** 0.44,
    e: (d) => 11 * d ** 0.41,
    f: (d) => 5.5 * d ** 0.41,
    g: (d) => 2.5 * d ** 0.34,
  };

  it.each(Object.keys(BELOW))('%s follows its formula, but for rounding', (letter) => {
    const ends = ['a', 'b', 'c'].includes(letter) ? STEPS : RANGES;
    for (const { end, mean } of meansOf(ends)) {
      const formula = (BELOW[letter] as (mean: number) => number)(mean);
      expect(Math.abs(0 - inMicrometres(`${end}${letter}7`).upper - formula)).toBeLessThanOrEqual(
        // c is raised by up to a seventh from 10 to 40 mm.
        Math.max((letter === 'c' ? 0.16 : 0.06) * formula, 1.1),
      );
    }
  });

  it.each(['cd', 'ef', 'fg'])(
    '%s is the geometric mean of its neighbours, but for rounding',
    (letter) => {
      const [left, right] = letter;
      for (const end of RANGES.slice(0, 6)) {
        const of = (one: string | undefined) => 0 - inMicrometres(`${end}${one}7`).upper;
        const mean = Math.sqrt(of(left) * of(right));
        expect(Math.abs(of(letter) - mean)).toBeLessThanOrEqual(Math.max(0.04 * mean, 1));
      }
    },
  );

  const toleranceOf = (end: number, grade: number) => inMicrometres(`${end}h${grade}`).tolerance;
  const ABOVE: Readonly<Record<string, (mean: number, end: number) => number>> = {
    k: (d) => 0.6 * Math.cbrt(d),
    m: (_, end) => toleranceOf(end, 7) - toleranceOf(end, 6),
    n: (d) => 5 * d ** 0.34,
    t: (d, end) => toleranceOf(end, 7) + 0.63 * d,
    u: (d, end) => toleranceOf(end, 7) + d,
    v: (d, end) => toleranceOf(end, 7) + 1.25 * d,
    x: (d, end) => toleranceOf(end, 7) + 1.6 * d,
    y: (d, end) => toleranceOf(end, 7) + 2 * d,
    z: (d, end) => toleranceOf(end, 7) + 2.5 * d,
    za: (d, end) => toleranceOf(end, 8) + 3.15 * d,
    zb: (d, end) => toleranceOf(end, 9) + 4 * d,
    zc: (d, end) => toleranceOf(end, 10) + 5 * d,
  };
  const FIRST: Readonly<Record<string, number>> = { t: 30, v: 18, y: 24 };

  it.each(Object.keys(ABOVE))('%s follows its formula, but for rounding', (letter) => {
    const ends = ['k', 'm', 'n'].includes(letter) ? RANGES : STEPS;
    for (const { end, mean } of meansOf(ends)) {
      if (end < (FIRST[letter] ?? 0)) continue;
      const formula = (ABOVE[letter] as (mean: number, end: number) => number)(mean, end);
      const { lower } = inMicrometres(`${end}${letter}6`);
      // Up to 18 mm the standard sets more than the formula, never less.
      if (end > 18 || ends === RANGES) {
        expect(Math.abs(lower - formula)).toBeLessThanOrEqual(Math.max(0.085 * formula, 2.1));
      } else {
        expect(lower).toBeGreaterThanOrEqual(0.97 * formula);
      }
    }
  });

  it('p is IT7 and 0 to 5 µm, s is IT8 and 1 to 4 µm up to 50 mm, and r is the geometric mean of both', () => {
    for (const { end, mean } of meansOf(STEPS)) {
      const of = (letter: string) => inMicrometres(`${end}${letter}6`).lower;
      if (end > 3) {
        expect(of('p') - toleranceOf(end, 7)).toBeGreaterThanOrEqual(0);
        expect(of('p') - toleranceOf(end, 7)).toBeLessThanOrEqual(5);
      }
      if (end <= 50) {
        expect(of('s') - toleranceOf(end, 8)).toBeGreaterThanOrEqual(0);
        expect(of('s') - toleranceOf(end, 8)).toBeLessThanOrEqual(4);
      } else {
        expect(shareOff(of('s'), toleranceOf(end, 7) + 0.4 * mean)).toBeLessThan(0.03);
      }
      expect(Math.abs(of('r') - Math.sqrt(of('p') * of('s')))).toBeLessThanOrEqual(1.3);
    }
  });
});
