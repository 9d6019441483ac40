import type { Dimension, Quantity } from '../quantities/dimensions.js';
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

/** The caller's limits if there are any, else the default with its basis. */
export function ownLimitsOr<D extends Dimension>(
  parameter: string,
  own: OwnLimits<D>,
  dimension: D,
  fallback: BasedLimits<D>,
): BasedLimits<D> {
  guardObject(parameter, own);
  const basis = own.basis && guardBasis(`${parameter}.basis`, own.basis);
  if (own.limits === undefined) return fallback;
  const limits = guardLimits(`${parameter}.limits`, own.limits, dimension);
  return { limits, basis: basis ?? { kind: 'specified' } };
}
