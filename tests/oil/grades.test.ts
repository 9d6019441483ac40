import { centistokes, isoGrade, type KinematicViscosity, saeGrade, valueIn } from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { notNumbers, refusal } from '../quantities/refusal.js';

const numbers = (least: number, most: number) =>
  fc.double({ min: Math.log(least), max: Math.log(most), noNaN: true }).map(Math.exp);

describe('saeGrade', () => {
  it('has no gap from SAE 8 to SAE 60', () => {
    fc.assert(
      fc.property(numbers(4, 26.09), (v) => {
        const { grades, standing } = saeGrade(centistokes(v));
        expect(standing).toBe('graded');
        expect(grades.length).toBeGreaterThan(0);
        expect(grades.length).toBeLessThanOrEqual(3);
      }),
    );
  });

  it('gives no grade, and says on which side, past all of them', () => {
    expect(saeGrade(centistokes(3.99))).toEqual({
      grades: [],
      winterNotRuledOut: ['0W', '5W'],
      standing: 'thinner',
    });
    expect(saeGrade(centistokes(3))).toEqual({
      grades: [],
      winterNotRuledOut: [],
      standing: 'thinner',
    });
    expect(saeGrade(centistokes(26.1))).toMatchObject({ grades: [], standing: 'thicker' });
  });

  it('never loses a grade to a thicker oil but for a thicker grade', () => {
    fc.assert(
      fc.property(numbers(3, 30), numbers(1, 1.5), (v, times) => {
        const [thin, thick] = [saeGrade(centistokes(v)), saeGrade(centistokes(v * times))];
        const last = (grades: readonly string[]) => Number(grades.at(-1) ?? 0);
        if (thick.standing === 'graded')
          expect(last(thick.grades)).toBeGreaterThanOrEqual(last(thin.grades));
        expect(thick.winterNotRuledOut.slice(0, thin.winterNotRuledOut.length)).toEqual(
          thin.winterNotRuledOut,
        );
      }),
    );
  });

  it('keeps a viscosity at a limit in the upper grade whatever its last digit', () => {
    for (const off of [-1e-12, 0, 1e-12]) {
      const { grades, winterNotRuledOut } = saeGrade(centistokes(9.3 * (1 + off)));
      expect(grades).toEqual(['30']);
      expect(winterNotRuledOut).toContain('25W');
    }
    expect(saeGrade(centistokes(9.3 * (1 - 1e-8))).grades).toEqual(['20']);
  });
});

describe('isoGrade', () => {
  const name = (v: number) => isoGrade(centistokes(v)).grade?.name;

  it('gives a grade that the viscosity is in, or the two that it is between', () => {
    fc.assert(
      fc.property(numbers(2.5, 2800), (v) => {
        const { grade, thinner, thicker } = isoGrade(centistokes(v));
        if (grade) {
          expect(valueIn(grade.limits.min, centistokes)).toBeLessThanOrEqual(v * (1 + 1e-9));
          expect(valueIn(grade.limits.max, centistokes)).toBeGreaterThanOrEqual(v * (1 - 1e-9));
        }
        expect(valueIn(thinner?.limits.max as never, centistokes)).toBeLessThan(v);
        expect(valueIn(thicker?.limits.min as never, centistokes)).toBeGreaterThan(v);
      }),
    );
  });

  it('has nothing thinner than the first and nothing thicker than the last', () => {
    expect(isoGrade(centistokes(1.9))).not.toHaveProperty('grade');
    expect(isoGrade(centistokes(1.9))).not.toHaveProperty('thinner');
    expect(isoGrade(centistokes(1.9)).thicker?.name).toBe('ISO VG 2');
    expect(isoGrade(centistokes(2.2))).not.toHaveProperty('thinner');
    expect(isoGrade(centistokes(3200))).not.toHaveProperty('thicker');
    expect(isoGrade(centistokes(9000)).thinner?.name).toBe('ISO VG 3200');
  });

  it('counts both limits in, whatever their last digit', () => {
    for (const off of [-1e-12, 0, 1e-12]) {
      expect(name(28.8 * (1 + off))).toBe('ISO VG 32');
      expect(name(35.2 * (1 + off))).toBe('ISO VG 32');
    }
    expect(name(28.8 * (1 - 1e-8))).toBeUndefined();
    expect(name(35.2 * (1 + 1e-8))).toBeUndefined();
  });
});

it.each(notNumbers.map((value) => [value]))('a grade of %s is refused', (value) => {
  const v = value as KinematicViscosity;
  expect(refusal(() => saeGrade(v)).parameter).toBe('viscosityAt100C');
  expect(refusal(() => isoGrade(v)).parameter).toBe('viscosityAt40C');
});

it('a viscosity at 100 °C alone gives the oil no winter grade', () => {
  const found = saeGrade(centistokes(11.1));
  expect(Object.keys(found)).toEqual(['grades', 'winterNotRuledOut', 'standing']);
});
