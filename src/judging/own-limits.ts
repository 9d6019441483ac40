import type { Dimension, Quantity } from '../quantities/dimensions.js';
import { RebuildInputError } from '../quantities/error.js';
import { type Basis, guardBasis } from './basis.js';
import { guardObject } from './guards.js';
import { guardLimits, type Limits } from './limits.js';

/** The caller's own limits. They win over every rule of thumb. */
export interface OwnLimits<D extends Dimension> {
  /** What the value must lie between, in the coherent SI unit of its dimension. */
  readonly limits?: Limits<Quantity<D>>;
  /** Who set them; by default the caller. */
  readonly basis?: Basis;
}

/** Limits together with who set them. */
export interface BasedLimits<D extends Dimension> {
  /** What the value must lie between, in the coherent SI unit of its dimension. */
  readonly limits: Limits<Quantity<D>>;
  /** Who says so. */
  readonly basis: Basis;
}

/**
 * The caller's limits if there are any, else the default with its basis. Limits
 * past what the part can have are refused: most often a bare number in inches.
 */
export function ownLimitsOr<D extends Dimension>(
  parameter: string,
  own: OwnLimits<D>,
  fallback: BasedLimits<D>,
  guard: (parameter: string, bound: Quantity<D>) => Quantity<D>,
): BasedLimits<D> {
  guardObject(parameter, own);
  const basis = own.basis && guardBasis(`${parameter}.basis`, own.basis);
  if (own.limits === undefined) {
    if (basis === undefined) return fallback;
    throw new RebuildInputError({
      parameter: `${parameter}.limits`,
      value: undefined,
      expected: 'the limits that the basis is of',
      hint: 'Give limits with a basis, or neither.',
    });
  }
  const limits = guardLimits(`${parameter}.limits`, own.limits, guard);
  return { limits, basis: basis ?? { kind: 'specified' } };
}

/** The fields of {@link OwnLimits}, and the target that a recommendation has besides. */
export const OWN_LIMITS = ['limits', 'basis', 'target'];
