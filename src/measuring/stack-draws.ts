import type { Limits } from '../judging/index.js';
import { normal, quantilesOf, type RandomBits, randomBits, uniform } from '../numerics/index.js';
import type { Length, Ratio } from '../quantities/index.js';
import type { StackSize } from './guard-stack.js';
import type { MonteCarloStack, ShareOutside } from './stack-types.js';

/** What random stacks show. */
type Drawn = Pick<
  MonteCarloStack,
  'mean' | 'standardDeviation' | 'drawn' | 'quantiles' | 'outside'
>;

/** Puts so many stacks together at random and counts. */
export function drawStacks(
  sizes: readonly StackSize[],
  draws: number,
  seed: number,
  shares: readonly number[],
  limits: Limits<Length> | undefined,
): Drawn {
  const bits = randomBits(seed);
  const stacks = new Float64Array(draws);
  for (const size of sizes) addDraws(stacks, size, bits);
  const { min: least = -Infinity, max: most = Infinity } = limits ?? {};
  let [sum, min, max, below, above] = [0, Infinity, -Infinity, 0, 0];
  // By index: a million draws take twice as long otherwise.
  for (let i = 0; i < draws; i++) {
    const stack = stacks[i] as number;
    sum += stack;
    if (stack < min) min = stack;
    if (stack > max) max = stack;
    if (stack < least) below++;
    else if (stack > most) above++;
  }
  const mean = sum / draws;
  let squares = 0;
  for (let i = 0; i < draws; i++) squares += ((stacks[i] as number) - mean) ** 2;
  const quantiles = quantilesOf(stacks, shares);
  return {
    mean: mean as Length,
    standardDeviation: Math.sqrt(squares / (draws - 1)) as Length,
    drawn: { min: min as Length, max: max as Length },
    quantiles: shares.map((share, i) => ({ share, value: quantiles[i] as Length })),
    ...(limits && { outside: shareOf(below, above, draws) }),
  };
}

/** Adds to every stack a size of its own. All draws of a size come before those of the next. */
function addDraws(stacks: Float64Array, size: StackSize, bits: RandomBits): void {
  const { span, nominal, sensitivity, distribution } = size;
  const count = stacks.length;
  const width = sensitivity * (span.max - span.min);
  const from = sensitivity * span.min;
  if (width === 0) {
    for (let i = 0; i < count; i++) stacks[i] = (stacks[i] as number) + from;
  } else if (distribution.kind === 'uniform') {
    for (let i = 0; i < count; i++)
      stacks[i] = (stacks[i] as number) + from + width * uniform(bits);
  } else if (distribution.kind === 'normal') {
    const deviation = width / (2 * distribution.sigmas);
    const middle = from + width / 2;
    for (let i = 0; i < count; i++)
      stacks[i] = (stacks[i] as number) + middle + deviation * normal(bits);
  } else {
    const peak = (nominal - span.min) / (span.max - span.min);
    for (let i = 0; i < count; i++) {
      stacks[i] = (stacks[i] as number) + from + width * triangular(uniform(bits), peak);
    }
  }
}

/** Where a triangle over 0 to 1 with its peak at a place has a share of its area below. */
const triangular = (share: number, peak: number): number =>
  share < peak ? Math.sqrt(share * peak) : 1 - Math.sqrt((1 - share) * (1 - peak));

/** The standard error is that of a share with one more draw on either side (Laplace), so that it is never 0. */
function shareOf(below: number, above: number, draws: number): ShareOutside {
  const likely = (below + above + 1) / (draws + 2);
  return {
    share: ((below + above) / draws) as Ratio,
    below: (below / draws) as Ratio,
    above: (above / draws) as Ratio,
    standardError: Math.sqrt((likely * (1 - likely)) / (draws + 2)) as Ratio,
  };
}
