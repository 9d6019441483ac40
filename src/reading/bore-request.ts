import type { BoreRequest } from '../cylinders/index.js';
import type { Shape } from '../measuring/index.js';
import type { Length } from '../quantities/index.js';
import type { BoreKind } from './engine-kind.js';
import { own } from './stated-limits.js';

/** A bore as it was measured. */
export interface MeasuredBore {
  readonly name: string;
  readonly shape: Shape;
  readonly wall?: Length | undefined;
  readonly faults?: readonly string[];
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
): BoreRequest {
  return {
    standard,
    steps,
    cylinders: bores.map(({ name, shape: measured, wall, faults }) => {
      const { smallest, largest, outOfRound, taper } = measured;
      return {
        name,
        smallest,
        largest,
        outOfRound,
        taper,
        ...(faults && { faults }),
        ...(wall !== undefined && { wall }),
      };
    }),
    ...(stroke !== undefined && { stroke }),
    ...(honingAllowance !== undefined && { honingAllowance }),
    ...(leastWall !== undefined && { leastWall }),
    ...(sizeAllowance !== undefined && { sizeAllowance }),
    ...(wear !== undefined && { wear }),
    ...(shape !== undefined && { shape: own(shape) }),
  };
}
