import { fitOf, limitsOfSize, micrometre, RebuildInputError, valueIn } from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const deviations = (designation: string) => {
  const { min, max } = limitsOfSize(designation).deviations;
  return [valueIn(min, micrometre), valueIn(max, micrometre)].map(
    (value) => Math.round(value * 100) / 100 + 0,
  );
};
const refusal = (run: () => unknown): RebuildInputError => {
  try {
    run();
  } catch (error) {
    if (error instanceof RebuildInputError) return error;
  }
  throw new Error('was taken');
};
const size = fc.integer({ min: 11, max: 5000 }).map((tenths) => tenths / 10);
const grade = fc.integer({ min: 1, max: 18 });

describe('limits of size', () => {
  it('have the end of a range in the range: 30 belongs to the one over 18 up to 30', () => {
    expect(deviations('30H7')).toEqual([0, 21]);
    expect(deviations('30.001H7')).toEqual([0, 25]);
    expect(deviations('18H7')).toEqual([0, 18]);
    expect(deviations('500H7')).toEqual([0, 63]);
    // The steps within a range too: c has 120 over 30 up to 40 mm and 130 above.
    expect(deviations('40c11')[1]).toBe(-120);
    expect(deviations('40.1c11')[1]).toBe(-130);
  });

  it('read a designation with or without a space, and with decimals', () => {
    expect(limitsOfSize('40 H7')).toEqual(limitsOfSize('40H7'));
    expect(limitsOfSize('40.00H7')).toEqual(limitsOfSize('40H7'));
    expect(limitsOfSize('12.5h6').basic).toBe(0.0125);
    expect(limitsOfSize('12.3456789012345678h6').basic).toBeCloseTo(0.0123456789012, 12);
    expect(fitOf('40 H7 / g6')).toEqual(fitOf('40H7/g6'));
    expect(limitsOfSize('40H01').grade).toBe('IT01');
    expect(limitsOfSize('40H0').grade).toBe('IT0');
  });

  it('have j of one grade where the table has no more', () => {
    expect(deviations('40j6')).toEqual([-5, 11]);
    expect(deviations('40j7')).toEqual([-10, 15]);
    expect(deviations('2j8')).toEqual([-6, 8]);
    expect(deviations('40J8')).toEqual([-15, 24]);
    expect(refusal(() => limitsOfSize('40j8')).hint).toBe('These have it: 5, 6, 7.');
    expect(refusal(() => limitsOfSize('40J9')).hint).toBe('These have it: 6, 7, 8.');
  });

  it('have k with a deviation for IT4 to IT7 alone', () => {
    expect(deviations('40k6')).toEqual([2, 18]);
    expect(deviations('40k8')).toEqual([0, 39]);
    expect(deviations('40k3')).toEqual([0, 4]);
    expect(deviations('3k6')).toEqual([0, 6]);
  });

  it('have K up to IT8, and above it only up to 3 mm', () => {
    expect(deviations('3K9')).toEqual([-25, 0]);
    expect(refusal(() => limitsOfSize('40K9')).hint).toBe('These have it: 3, 4, 5, 6, 7, 8.');
  });

  it('leave Δ out above IT7 for P to ZC, above IT8 for M and N, and up to 3 mm', () => {
    expect(deviations('40P7')).toEqual([-42, -17]);
    expect(deviations('40P8')).toEqual([-65, -26]);
    expect(deviations('40M8')).toEqual([-34, 5]);
    expect(deviations('40M9')).toEqual([-71, -9]);
    expect(deviations('40N9')).toEqual([-62, 0]);
    expect(deviations('3N9')).toEqual([-29, -4]);
    expect(deviations('3P6')).toEqual([-12, -6]);
  });

  it.each([
    ['40J9x', 'a basic size in millimetres followed by a letter and a grade'],
    ['H7', 'a basic size in millimetres followed by a letter and a grade'],
    ['40', 'a basic size in millimetres followed by a letter and a grade'],
    ['.5H7', 'a basic size in millimetres followed by a letter and a grade'],
    ['40.H7', 'a basic size in millimetres followed by a letter and a grade'],
    ['40,5H7', 'a basic size in millimetres followed by a letter and a grade'],
    ['-40H7', 'a basic size in millimetres followed by a letter and a grade'],
    ['40  H7', 'a basic size in millimetres followed by a letter and a grade'],
    ['501H7', 'of a basic size above 0 and up to and including 500 mm'],
    ['500.01H7', 'of a basic size above 0 and up to and including 500 mm'],
    ['0H7', 'of a basic size above 0 and up to and including 500 mm'],
    ['40H19', 'of a grade from 01, 0 and 1 to 18'],
    ['40H00', 'of a grade from 01, 0 and 1 to 18'],
    ['40I7', 'of a letter of ISO 286-1'],
    ['40ab7', 'of a letter of ISO 286-1'],
    ['40Js7', 'of a letter of ISO 286-1'],
    ['24t6', 'of a letter that is defined at this size'],
    ['14v6', 'of a letter that is defined at this size'],
    ['18y6', 'of a letter that is defined at this size'],
    ['51cd8', 'of a letter that is defined at this size'],
    ['40N2', 'of a grade that has N at this size'],
    ['1A9', 'a class that is used at this size'],
    ['0.8b9', 'a class that is used at this size'],
    ['1H14', 'a class that is used at this size'],
    ['1N9', 'a class that is used at this size'],
  ])('refuse %s, and say what is expected', (designation, expected) => {
    expect(refusal(() => limitsOfSize(designation))).toMatchObject({
      parameter: 'designation',
      value: designation,
      expected,
    });
  });

  it.each([
    ['40H7', 'a basic size in millimetres followed by the classes of hole and shaft'],
    ['40H7/', 'a basic size in millimetres followed by the classes of hole and shaft'],
    ['H7/g6', 'a basic size in millimetres followed by the classes of hole and shaft'],
    ['40/g6', 'a basic size in millimetres followed by the classes of hole and shaft'],
    ['40g6/H7', 'a hole in capitals, a stroke and a shaft in small letters'],
    ['40H7/H6', 'a hole in capitals, a stroke and a shaft in small letters'],
    ['40H7/g19', 'of a grade from 01, 0 and 1 to 18'],
  ])('refuse the fit %s', (designation, expected) => {
    expect(refusal(() => fitOf(designation))).toMatchObject({ parameter: 'designation', expected });
  });

  it('take 1 mm itself as small, and what is over it as not', () => {
    expect(deviations('1.01A9')[0]).toBe(270);
    expect(deviations('1.01N9')).toEqual([-29, -4]);
  });

  it('of H and h mirror each other, and JS lies evenly, by any size and grade', () => {
    fc.assert(
      fc.property(size, grade, (basic, it) => {
        const [hole = 0, shaft] = [deviations(`${basic}H${it}`), deviations(`${basic}h${it}`)];
        expect(hole).toEqual([...shaft].reverse().map((value) => 0 - value + 0));
        const { min, max } = limitsOfSize(`${basic}JS${it}`).deviations;
        expect(max).toBe(-min);
        expect(limitsOfSize(`${basic}js${it}`).deviations).toEqual({ min, max });
      }),
      { numRuns: 50 },
    );
  });

  it('of A to H mirror those of a to h', () => {
    fc.assert(
      fc.property(
        size,
        grade,
        fc.constantFrom('a', 'b', 'c', 'd', 'e', 'f', 'g', 'h'),
        (basic, it, letter) => {
          const shaft = deviations(`${basic}${letter}${it}`);
          const hole = deviations(`${basic}${letter.toUpperCase()}${it}`);
          expect(hole[0]).toBe(0 - (shaft[1] ?? 0) + 0);
        },
      ),
      { numRuns: 50 },
    );
  });

  it('of a hole P to ZC one grade coarser than its shaft, in a fit of either basis, leave the same interference', () => {
    // The rule that Δ is there for: H7/p6 is P7/h6.
    fc.assert(
      fc.property(
        size.filter((basic) => basic > 3),
        fc.constantFrom('p', 'r', 's', 'u', 'x', 'z', 'za', 'zb', 'zc'),
        fc.constantFrom([6, 5], [7, 6]),
        (basic, letter, [hole, shaft]) => {
          const onHole = fitOf(`${basic}H${hole}/${letter}${shaft}`);
          const onShaft = fitOf(`${basic}${letter.toUpperCase()}${hole}/h${shaft}`);
          expect(onShaft.clearance.min).toBeCloseTo(onHole.clearance.min, 12);
          expect(onShaft.clearance.max).toBeCloseTo(onHole.clearance.max, 12);
        },
      ),
      { numRuns: 50 },
    );
  });

  it('widen with the size and with the grade', () => {
    fc.assert(
      fc.property(size, size, grade, (one, other, it) => {
        const tolerance = (basic: number, of: number) => limitsOfSize(`${basic}h${of}`).tolerance;
        const [small, large] = [Math.min(one, other), Math.max(one, other)];
        expect(tolerance(small, it)).toBeLessThanOrEqual(tolerance(large, it));
        if (it < 18) expect(tolerance(one, it)).toBeLessThan(tolerance(one, it + 1));
      }),
      { numRuns: 50 },
    );
  });

  it('lie as far apart as the tolerance, and add up to a fit', () => {
    fc.assert(
      fc.property(
        size,
        fc.constantFrom('H7/g6', 'H8/f7', 'H7/k6', 'N7/h6', 'H7/u6', 'JS7/h6'),
        (basic, classes) => {
          const { hole, shaft, clearance, interference, kind } = fitOf(`${basic}${classes}`);
          for (const part of [hole, shaft]) {
            expect(part.limits.max - part.limits.min).toBeCloseTo(part.tolerance, 12);
            expect(part.limits.min - part.basic).toBeCloseTo(part.deviations.min, 12);
          }
          expect(clearance.min).toBeCloseTo(hole.limits.min - shaft.limits.max, 12);
          expect(clearance.max).toBeCloseTo(hole.limits.max - shaft.limits.min, 12);
          expect(interference).toEqual({ min: 0 - clearance.max, max: 0 - clearance.min });
          const signs = [clearance.min >= 0, clearance.max <= 0];
          expect(kind).toBe(signs[0] ? 'clearance' : signs[1] ? 'interference' : 'transition');
        },
      ),
      { numRuns: 50 },
    );
  });
});
