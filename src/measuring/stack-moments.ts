import type { Length, Ratio } from '../quantities/index.js';
import type { StackSize } from './guard-stack.js';
import type { StackPart } from './stack-types.js';

/** Mean of a size. */
export function meanOf({ span: { min, max }, nominal, distribution }: StackSize): number {
  return distribution.kind === 'triangular' ? (min + nominal + max) / 3 : (min + max) / 2;
}

/** Variance of a size. */
export function varianceOf({ span: { min, max }, nominal, distribution }: StackSize): number {
  const [width, below, above] = [max - min, nominal - min, max - nominal];
  switch (distribution.kind) {
    case 'uniform':
      return (width * width) / 12;
    case 'triangular':
      return (below * below + below * above + above * above) / 18;
    case 'normal':
      return (width / (2 * distribution.sigmas)) ** 2;
  }
}

/** What every size brings to the stack. */
export function partsOf(sizes: readonly StackSize[]): readonly StackPart[] {
  const brought = sizes.map((size) => size.sensitivity ** 2 * varianceOf(size));
  const all = brought.reduce((sum, variance) => sum + variance, 0);
  return sizes.map(({ name, span, sensitivity }, i) => ({
    name,
    width: (Math.abs(sensitivity) * (span.max - span.min)) as Length,
    shareOfVariance: (all > 0 ? (brought[i] as number) / all : 0) as Ratio,
  }));
}
