import type { BoreRequest } from '../cylinders/index.js';
import type { Length } from '../quantities/index.js';
import type { Accuracy } from './accuracy.js';
import { certaintyOf } from './certainty.js';
import type { BoreKind } from './engine-kind.js';
import { type MeasuredPart, sizesOf } from './measured-part.js';
import { own } from './stated-limits.js';

/** A bore as it was measured. */
export interface MeasuredBore extends MeasuredPart {
  readonly wall?: Length | undefined;
}

/** The input of `borePlan`: the bores of a block, and the maker's data. */
export function boreRequest(
  {
    standard,
    stroke,
    honingAllowance,
    leastWall,
    sizeAllowance,
    wear,
    shape,
  }: Omit<BoreKind, 'steps' | 'pistonClearance' | 'ringGap'>,
  steps: readonly Length[],
  bores: readonly MeasuredBore[],
  accuracy: Accuracy,
): BoreRequest {
  const { uncertainty: sizeUncertainty } = certaintyOf('bore size', accuracy, standard.max);
  return {
    standard,
    steps,
    cylinders: bores.map(({ wall, ...bore }) => ({
      ...sizesOf(bore),
      ...(wall !== undefined && { wall }),
    })),
    ...(stroke !== undefined && { stroke }),
    ...(honingAllowance !== undefined && { honingAllowance }),
    ...(leastWall !== undefined && { leastWall }),
    ...(sizeAllowance !== undefined && { sizeAllowance }),
    ...(wear !== undefined && { wear }),
    shape: { ...own(shape), ...certaintyOf('bore shape', accuracy) },
    ...(sizeUncertainty !== undefined && { sizeUncertainty }),
  };
}
