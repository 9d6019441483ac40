import type { Limits, Span } from '../judging/index.js';
import {
  guardFields,
  guardList,
  guardWhole,
  guardWord,
  judgeSpan,
  showNumber,
} from '../judging/internal.js';
import { normalTail } from '../numerics/index.js';
import { type Length, type Ratio, RebuildInputError } from '../quantities/index.js';
import { guardStack, guardStackLimits, type StackSize } from './guard-stack.js';
import { shareBelow, sigmaCoverage } from './stack-domains.js';
import { drawStacks } from './stack-draws.js';
import { meanOf, partsOf, varianceOf } from './stack-moments.js';
import type {
  MonteCarloStack,
  RootSumSquareStack,
  StackByMethod,
  StackContributor,
  StackMethod,
  StackUp,
  WorstCaseStack,
} from './stack-types.js';
import { worstCase } from './worst-case.js';

const EVERY_METHOD = ['kind', 'limits', 'sigmas', 'seed', 'draws', 'shares'] as const;
const WORST = ['kind', 'limits'] as const;
const SQUARES = ['kind', 'limits', 'sigmas'] as const;
const RANDOM = ['kind', 'limits', 'seed', 'draws', 'shares'] as const;
const METHODS = ['worst case', 'root sum square', 'Monte Carlo'] as const;
const SHARES = [0.005, 0.05, 0.5, 0.95, 0.995] as const;

type Method<K extends StackMethod['kind']> = Extract<StackMethod, { readonly kind: K }>;

/**
 * What several sizes come to together: a clearance, a stand-off, an end float. Every size counts by its
 * sensitivity: 1 for a bore, -1 for the piston in it, -2 for the wall of two shells.
 *
 * **Worst case** takes every size at its worst end at once. It is sure, and for measured sizes it is the one to judge by.
 *
 *     span.min = sensitivity_1 * min_1 + sensitivity_2 * max_2   the second negative; and so on
 *     span.max = sensitivity_1 * max_1 + sensitivity_2 * min_2   likewise
 *
 * **Root sum square** adds the spreads as variances. It assumes that the sizes are independent and that each is spread as
 * it is said to be; a batch turned to one end of its tolerance breaks that. How many stacks lie outside of
 * limits follows from it only if the stack is normal, as it is where every size is.
 *
 *     standardDeviation = sqrt(((sensitivity_1 * (max_1 - min_1))² + (sensitivity_2 * (max_2 - min_2))²) / 12)   uniform
 *
 * **Monte Carlo** assumes the same and no more: it puts stacks together at random and counts, whatever the
 * distributions. The seed decides the draws, so that the answer is the same to the last bit each time.
 *
 * All three speak of parts to come. Parts that lie measured on the bench have one size each, and are chosen to fit: see
 * `selectFit`.
 *
 * @param contributors - the sizes that stack up, at least one [m]
 * @param method - worst case, root sum square or Monte Carlo, with the limits of the stack if there are any
 * @returns nominal and span or spread, what every size brings, and how the stack stands to its limits
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, there is no contributor,
 * a span is reversed, a tolerance is negative, a tolerance stands beside a span, a nominal lies outside its span, the
 * distribution is unknown, the method is unknown, the limits have no bound, the limits are reversed, the shares are not
 * in order, or the seed is no whole number
 * @see Source: worst case and variances are of every textbook; random draws by JCGM 101:2008
 * @example
 * ```ts
 * const sizes: StackContributor[] = [
 *   { name: 'bore', size: { min: mm(87.20), max: mm(87.25) } },
 *   { name: 'piston', size: { min: mm(87.165), max: mm(87.215) }, sensitivity: -1 },
 * ];
 * const { span } = stackUp(sizes, { kind: 'worst case' });
 * format(span.min, mm); // "-0.015 mm"
 * format(span.max, mm); // "0.085 mm"
 * const limits = { min: mm(0.025), max: mm(0.045) };
 * const { outside } = stackUp(sizes, { kind: 'Monte Carlo', seed: 1, limits });
 * outside && outside.share.toFixed(2); // "0.64"
 * ```
 */
export function stackUp<M extends StackMethod>(
  contributors: readonly StackContributor[],
  method: M,
): StackByMethod[M['kind']];
export function stackUp(contributors: readonly StackContributor[], method: StackMethod): StackUp {
  const sizes = guardStack(contributors);
  guardFields('method', method, EVERY_METHOD);
  switch (guardWord('method.kind', method.kind, METHODS)) {
    case 'worst case':
      return worst(sizes, method as Method<'worst case'>);
    case 'root sum square':
      return squares(sizes, method as Method<'root sum square'>);
    case 'Monte Carlo':
      return random(sizes, method as Method<'Monte Carlo'>);
  }
}

function worst(sizes: readonly StackSize[], method: Method<'worst case'>): WorstCaseStack {
  guardFields('method', method, WORST);
  const limits = guardStackLimits(method.limits);
  const span = worstCase(sizes.map(({ sensitivity, span: size }) => [sensitivity, size] as const));
  return {
    method: 'worst case',
    ...common(sizes),
    span,
    ...(limits && {
      finding: judgeSpan({
        feature: 'stack-up',
        dimension: 'length',
        value: span,
        limits,
        basis: { kind: 'specified' },
      }),
    }),
  };
}

function squares(
  sizes: readonly StackSize[],
  method: Method<'root sum square'>,
): RootSumSquareStack {
  guardFields('method', method, SQUARES);
  const limits = guardStackLimits(method.limits);
  const { sigmas = 3 } = method;
  const reach = sigmaCoverage('method.sigmas', sigmas as Ratio);
  const mean = summed(sizes, meanOf);
  const deviation = Math.sqrt(
    sizes.reduce((sum, size) => sum + size.sensitivity ** 2 * varianceOf(size), 0),
  );
  const varying = sizes.filter(({ span, sensitivity }) => sensitivity !== 0 && span.max > span.min);
  return {
    method: 'root sum square',
    ...common(sizes),
    mean,
    standardDeviation: deviation as Length,
    span: { min: mean - reach * deviation, max: mean + reach * deviation } as Span<Length>,
    isNormal: varying.every(({ distribution }) => distribution.kind === 'normal'),
    ...(limits && { shareOutsideIfNormal: normalOutside(mean, deviation, limits) }),
  };
}

function random(sizes: readonly StackSize[], method: Method<'Monte Carlo'>): MonteCarloStack {
  guardFields('method', method, RANDOM);
  const { draws: wanted = 100_000, shares: asked = SHARES } = method;
  const limits = guardStackLimits(method.limits);
  const seed = guardWhole(
    'method.seed',
    method.seed,
    [0, 1_000_000_000],
    'Any whole number will do; keep it, and the answer stays the same.',
  );
  const draws = guardWhole(
    'method.draws',
    wanted,
    [1_000, 10_000_000],
    'The standard error of a share tells whether there were enough.',
  );
  const shares = guardShares(asked);
  return {
    method: 'Monte Carlo',
    ...common(sizes),
    seed,
    draws,
    ...drawStacks(sizes, draws, seed, shares, limits),
  };
}

const common = (sizes: readonly StackSize[]) => ({
  nominal: summed(sizes, ({ nominal }) => nominal),
  parts: partsOf(sizes),
});

const summed = (sizes: readonly StackSize[], of: (size: StackSize) => number): Length =>
  sizes.reduce((sum, size) => sum + size.sensitivity * of(size), 0) as Length;

/** The share of a normal stack outside its limits; of a stack that does not vary, none or all of it. */
function normalOutside(mean: number, deviation: number, { min, max }: Limits<Length>): Ratio {
  const past = (by: number) => (deviation > 0 ? normalTail(by / deviation) : by < 0 ? 1 : 0);
  const below = min === undefined ? 0 : past(mean - min);
  return Math.min(1, below + (max === undefined ? 0 : past(max - mean))) as Ratio;
}

function guardShares(shares: readonly number[]): readonly number[] {
  guardList('method.shares', shares, 0, 'shares');
  shares.forEach((share, i) => {
    const at = `method.shares[${i}]`;
    shareBelow(at, share as Ratio);
    if (i === 0 || share >= (shares[i - 1] as number)) return;
    throw new RebuildInputError({
      parameter: at,
      value: share,
      shown: showNumber(share),
      expected: `at least ${showNumber(shares[i - 1] as number)}, the share before it`,
      hint: 'Put the shares in ascending order.',
    });
  });
  return shares;
}
