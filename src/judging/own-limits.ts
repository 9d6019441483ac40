import {
  type Dimension,
  type Length,
  type Quantity,
  RebuildInputError,
} from '../quantities/index.js';
import { type Basis, guardBasis } from './basis.js';
import { guardFields, guardObject } from './guards.js';
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
export function ownLimitsOr(
  parameter: string,
  own: OwnLimits<'length'>,
  fallback: BasedLimits<'length'>,
  guard: (parameter: string, bound: Length) => Length,
): BasedLimits<'length'> {
  guardObject(parameter, own);
  const basis = ownBasisOr(parameter, 'limits', own.limits, own.basis, fallback.basis);
  if (own.limits === undefined) return fallback;
  return { limits: guardLimits(`${parameter}.limits`, own.limits, guard, 'length'), basis };
}

/**
 * Who set the limits or thresholds: whom the caller names, else the caller, or the fallback
 * where there are none. A basis of nothing is refused.
 */
export function ownBasisOr(
  parameter: string,
  field: 'limits' | 'thresholds',
  own: object | undefined,
  basis: Basis | undefined,
  fallback: Basis,
): Basis {
  const named = basis === undefined ? undefined : guardBasis(`${parameter}.basis`, basis);
  if (own === undefined && named !== undefined) {
    throw new RebuildInputError({
      parameter: `${parameter}.${field}`,
      value: undefined,
      expected: `the ${field} that the basis is of`,
      hint: `Give ${field} with a basis, or neither.`,
    });
  }
  return named ?? (own === undefined ? fallback : { kind: 'specified' });
}

/** A recommendation may be passed on as own limits, just as it came: its target is let be. */
export type WithTarget<Own extends OwnLimits<'length'>> = Own & { readonly target?: unknown };

/** Refuses an object that is to hold own limits and nothing else, if it has a field besides. */
export function guardOwnLimits(parameter: string, own: OwnLimits<'length'>): void {
  guardFields(parameter, own as WithTarget<OwnLimits<'length'>>, OWN_LIMITS);
}

const OWN_LIMITS = ['limits', 'basis', 'target'] as const;
