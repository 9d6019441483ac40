import {
  format,
  inch,
  type Length,
  mm,
  oilClearanceSpan,
  pistonClearanceSpan,
  type StackContributor,
  stackUp,
  thou,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { refusal } from '../quantities/refusal.js';

const bore: StackContributor = { name: 'bore', size: { min: mm(87.2), max: mm(87.25) } };
const piston: StackContributor = {
  name: 'piston',
  size: { min: mm(87.165), max: mm(87.215) },
  sensitivity: -1,
};
const fit = { min: mm(0.025), max: mm(0.045) };
const draws = 200_000;

/** A bell over the same span. */
const bell = (contributor: StackContributor, sigmas: number): StackContributor => ({
  ...contributor,
  distribution: { kind: 'normal', sigmas },
});

describe('the worst case', () => {
  it('is the span that the clearances of the library have, to the bit', () => {
    const size = (from: number, to: number) =>
      fc
        .tuple(
          fc.double({ min: from, max: to, noNaN: true }),
          fc.double({ min: 0, max: 1e-4, noNaN: true }),
        )
        .map(([min, width]) => ({ min: min as Length, max: (min + width) as Length }));
    fc.assert(
      fc.property(
        size(0.0565, 0.057),
        size(0.0015, 0.0016),
        size(0.0535, 0.0538),
        (housing, wall, journal) => {
          const stack = [
            { name: 'housing', size: housing },
            { name: 'wall', size: wall, sensitivity: -2 },
            { name: 'journal', size: journal, sensitivity: -1 },
          ];
          const { span } = stackUp(stack, { kind: 'worst case' });
          expect(span).toEqual(
            oilClearanceSpan({ housingBore: housing, shellWall: wall, journal }),
          );
          // As it was written before there was one function for all spans.
          expect(span.min).toBe(housing.min - 2 * wall.max - journal.max);
          expect(span.max).toBe(housing.max - 2 * wall.min - journal.min);
          const close = {
            min: (housing.min - wall.min) as Length,
            max: (housing.max - wall.min) as Length,
          };
          const gap = [
            { name: 'bore', size: housing },
            { name: 'piston', size: close, sensitivity: -1 },
          ];
          expect(stackUp(gap, { kind: 'worst case' }).span).toEqual(
            pistonClearanceSpan({ bore: housing, piston: close }),
          );
        },
      ),
      { numRuns: 50 },
    );
  });

  it('judges the worse end, and tells what every size brings', () => {
    const stack = stackUp([bore, piston], { kind: 'worst case', limits: fit });
    expect(stack.finding).toMatchObject({ verdict: 'below', basis: { kind: 'specified' } });
    expect(stack.finding?.margin).toBeCloseTo(mm(-0.04), 12);
    expect(stack.parts.map(({ name }) => name)).toEqual(['bore', 'piston']);
    expect(stack.parts[0]?.width).toBeCloseTo(mm(0.05), 12);
    expect(stack.parts[0]?.shareOfVariance).toBeCloseTo(0.5, 9);
    expect(format(stack.nominal, mm)).toBe('0.035 mm');
  });

  it('takes a size with a tolerance as the span about it', () => {
    const size = { name: 'shim', size: thou(10), tolerance: thou(0.5) };
    const { span } = stackUp([size], { kind: 'worst case' });
    expect([span.min, span.max]).toEqual([thou(10) - thou(0.5), thou(10) + thou(0.5)]);
  });
});

describe('root sum square', () => {
  it('adds variances: 3 and 4 make 5', () => {
    // Normal sizes whose three sigmas are 3 and 4 thou: together 5 thou.
    const stack = stackUp(
      [
        bell({ name: 'a', size: inch(1), tolerance: thou(3) }, 3),
        bell({ name: 'b', size: inch(2), tolerance: thou(4), sensitivity: -1 }, 3),
      ],
      {
        kind: 'root sum square',
        limits: { min: (inch(-1) - thou(5)) as Length, max: (inch(-1) + thou(5)) as Length },
      },
    );
    expect(stack.isNormal).toBe(true);
    expect(stack.span.max - stack.mean).toBeCloseTo(thou(5), 12);
    // The share of a normal distribution past three sigmas, both sides: Abramowitz and Stegun, table 26.1.
    expect(stack.shareOutsideIfNormal).toBeCloseTo(0.0026998, 7);
  });

  it('is not normal as soon as one size that varies is not', () => {
    const isNormal = (sizes: readonly StackContributor[]) =>
      stackUp(sizes, { kind: 'root sum square' }).isNormal;
    expect(isNormal([bell(bore, 3), piston])).toBe(false);
    expect(isNormal([bell(bore, 3), { name: 'gauge', size: mm(87) }])).toBe(true);
  });

  it('is all or nothing where nothing varies', () => {
    const share = (max: Length) =>
      stackUp([{ name: 'a', size: mm(1) }], { kind: 'root sum square', limits: { max } })
        .shareOutsideIfNormal;
    expect([share(mm(1)), share(mm(0.9))]).toEqual([0, 1]);
  });
});

describe('Monte Carlo', () => {
  const random = { kind: 'Monte Carlo', seed: 3, draws } as const;

  it('counts what the exact convolution says: bore and piston of TM 10-3930-653-14&P', () => {
    // Two uniform spans of 0.05 mm differ by a triangle from -0.015 to 0.085 mm with its peak at 0.035. What lies
    // further from the peak than 0.010 mm, on either side, is (1 - 0.01 / 0.05)² = 0.64 of it.
    const { outside } = stackUp([bore, piston], { ...random, limits: fit });
    expect(outside?.standardError).toBeCloseTo(Math.sqrt((0.64 * 0.36) / draws), 5);
    expect(Math.abs((outside?.share as number) - 0.64)).toBeLessThan(
      4 * (outside?.standardError as number),
    );
    expect(Math.abs((outside?.below as number) - 0.32)).toBeLessThan(0.005);
  });

  it('counts a trapezoid where the spans differ', () => {
    // Spans of 4 and 2 mm: a trapezoid on ±3 mm, flat within ±1 mm at a height of 1/4. Past 2 mm lies a triangle of
    // 1 mm and half the height, 1/16.
    const stack = stackUp(
      [
        { name: 'a', size: { min: mm(-2), max: mm(2) } },
        { name: 'b', size: { min: mm(-1), max: mm(1) }, sensitivity: -1 },
      ],
      { ...random, limits: { max: mm(2) }, shares: [0.25, 0.5] },
    );
    expect(stack.outside?.above).toBeCloseTo(1 / 16, 2);
    // A quarter lies below -1 mm: the triangle there is 2 mm long and 1/4 high.
    expect(stack.quantiles.map(({ value }) => value)).toEqual([
      expect.closeTo(mm(-1), 4),
      expect.closeTo(0, 4),
    ]);
    expect(stack.standardDeviation / mm(1)).toBeCloseTo(Math.sqrt((16 + 4) / 12), 2);
  });

  it('has the mean and deviation that root sum square works out, whatever the distributions', () => {
    const sizes: StackContributor[] = [
      {
        name: 'a',
        size: { min: mm(0), max: mm(9) },
        nominal: mm(2),
        distribution: { kind: 'triangular' },
      },
      bell({ name: 'b', size: { min: mm(1), max: mm(5) }, sensitivity: -2 }, 2),
      { name: 'c', size: { min: mm(3), max: mm(4) } },
    ];
    const drawn = stackUp(sizes, random);
    const { mean, standardDeviation } = stackUp(sizes, { kind: 'root sum square' });
    // By hand: 11/3 - 6 + 3.5; and (4 + 14 + 49) / 18 + 4 + 1/12 under the root.
    expect(mean / mm(1)).toBeCloseTo(11 / 3 - 2.5, 12);
    expect(standardDeviation / mm(1)).toBeCloseTo(Math.sqrt(67 / 18 + 4 + 1 / 12), 12);
    expect(Math.abs(drawn.mean - mean)).toBeLessThan((4 * standardDeviation) / Math.sqrt(draws));
    expect(drawn.standardDeviation / standardDeviation).toBeCloseTo(1, 2);
  });

  it('gives the same to the bit for a seed, and something else for another', () => {
    const of = (seed: number) =>
      stackUp([bell(bore, 3), piston], { kind: 'Monte Carlo', seed, draws: 2_000 });
    expect(of(9)).toEqual(of(9));
    expect(of(9).mean).not.toBe(of(10).mean);
  });

  it('does not claim that what it never drew cannot be', () => {
    const wide = { min: mm(-1), max: mm(1) };
    const { outside } = stackUp([bore, piston], { ...random, draws: 1_000, limits: wide });
    expect(outside?.share).toBe(0);
    expect(outside?.standardError).toBeGreaterThan(0.0005);
  });
});

describe('a stack is refused', () => {
  const worst = { kind: 'worst case' } as const;
  it.each<[string, string, unknown, unknown]>([
    ['of nothing', 'contributors', [], worst],
    [
      'with a negative tolerance',
      'contributors[0].tolerance',
      [{ name: 'a', size: mm(1), tolerance: mm(-1) }],
      worst,
    ],
    [
      'with a tolerance beside a span',
      'contributors[0].tolerance',
      [{ ...bore, tolerance: mm(1) }],
      worst,
    ],
    [
      'with a span reversed',
      'contributors[1].size',
      [bore, { name: 'b', size: { min: mm(2), max: mm(1) } }],
      worst,
    ],
    ['with a nominal outside', 'contributors[0].nominal', [{ ...bore, nominal: mm(80) }], worst],
    [
      'with an unknown distribution',
      'contributors[0].distribution.kind',
      [{ ...bore, distribution: { kind: 'even' } }],
      worst,
    ],
    ['with sigmas of none', 'contributors[0].distribution.sigmas', [bell(bore, 0)], worst],
    ['by an unknown method', 'method.kind', [bore], { kind: 'guess' }],
    ['without a method', 'method', [bore], undefined],
    ['without a seed', 'method.seed', [bore], { kind: 'Monte Carlo' }],
    ['with half a draw', 'method.draws', [bore], { kind: 'Monte Carlo', seed: 1, draws: 1000.5 }],
    [
      'with shares out of order',
      'method.shares[1]',
      [bore],
      { kind: 'Monte Carlo', seed: 1, shares: [0.5, 0.1] },
    ],
    ['with draws for a worst case', 'method.draws', [bore], { kind: 'worst case', draws: 1000 }],
    [
      'with limits reversed',
      'method.limits',
      [bore],
      { kind: 'worst case', limits: { min: mm(2), max: mm(1) } },
    ],
  ])('%s', (_, parameter, contributors, method) => {
    expect(refusal(() => stackUp(contributors as never, method as never)).parameter).toBe(
      parameter,
    );
  });
});
