import {
  type Dimension,
  type Length,
  type Quantity,
  RebuildInputError,
} from '../quantities/index.js';
import { type Basis, guardBasis } from './basis.js';
import { type Certainty, guardCertainty } from './certainty.js';
import { guardFields, guardObject } from './guards.js';
import { guardLimits, type Limits, type LimitsOf } from './limits.js';
import { showLength } from './showing.js';

/** A caller's own service limit. */
export interface OwnService<D extends Dimension> {
  /** What a worn part may still lie between, in the coherent SI unit of its dimension. */
  readonly limits: Limits<Quantity<D>>;
  /** Who set it; by default the caller. */
  readonly basis?: Basis;
}

/** The caller's own limits, which win over every rule of thumb, and how well the value that is judged is known. */
export interface OwnLimits<D extends Dimension> extends Certainty<D> {
  /** What the value must lie between, in the coherent SI unit of its dimension. */
  readonly limits?: Limits<Quantity<D>>;
  /** Who set them; by default the caller. */
  readonly basis?: Basis;
  /** How far wear may take the part past them and leave it in service. */
  readonly service?: OwnService<D>;
}

/** Limits together with who set them, and how well the value that is judged by them is known. */
export interface BasedLimits<D extends Dimension> extends Certainty<D> {
  /** What the value must lie between, in the coherent SI unit of its dimension. */
  readonly limits: Limits<Quantity<D>>;
  /** Who says so. */
  readonly basis: Basis;
  /** Whether they are of new parts or of worn ones, where that matters; by default of new parts. */
  readonly limitsOf?: LimitsOf;
  /** The service limit, if one is known. */
  readonly service?: ServiceLimits<D>;
}

/** A service limit together with who set it. */
export interface ServiceLimits<D extends Dimension> {
  /** What a worn part may still lie between, in the coherent SI unit of its dimension. */
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
  const service = ownService(`${parameter}.service`, own.service, guard);
  // A service limit of the caller's own says that the limits beside it are of new parts.
  const limitsOf = service ? 'new parts' : fallback.limitsOf;
  const certainty = guardCertainty(`${parameter}.`, own, 'length');
  if (own.limits === undefined) {
    return { ...(service === undefined ? fallback : withService(fallback, service)), ...certainty };
  }
  const limits = guardLimits(`${parameter}.limits`, own.limits, guard, 'length');
  if (service) guardWider(`${parameter}.service.limits`, service.limits, limits);
  return {
    limits,
    basis,
    ...(limitsOf && { limitsOf }),
    ...(service && { service }),
    ...certainty,
  };
}

function ownService(
  parameter: string,
  own: OwnService<'length'> | undefined,
  guard: (parameter: string, bound: Length) => Length,
): ServiceLimits<'length'> | undefined {
  if (own === undefined) return undefined;
  guardFields(parameter, own, OWN_SERVICE);
  const limits = guardLimits(`${parameter}.limits`, own.limits, guard, 'length');
  const { basis = { kind: 'specified' } } = own;
  return { limits, basis: guardBasis(`${parameter}.basis`, basis) };
}

const OWN_SERVICE = ['limits', 'basis'] as const;

/** The default limits, less those that the caller's own service limit contradicts. */
function withService(
  { limits, basis }: BasedLimits<'length'>,
  service: ServiceLimits<'length'>,
): BasedLimits<'length'> {
  const { min, max } = limits;
  const kept = {
    ...(min !== undefined && min >= (service.limits.min ?? -Infinity) && { min }),
    ...(max !== undefined && max <= (service.limits.max ?? Infinity) && { max }),
  };
  const none = kept.min === undefined && kept.max === undefined;
  return none
    ? { ...service, limitsOf: 'service' }
    : { limits: kept, basis, limitsOf: 'new parts', service };
}

/** Refuses a service limit that new parts would be past. */
function guardWider(parameter: string, service: Limits<Length>, limits: Limits<Length>): void {
  for (const [end, sign] of ENDS_OUTWARD) {
    const [worn, fresh] = [service[end], limits[end]];
    if (worn === undefined || fresh === undefined || sign * (worn - fresh) >= 0) continue;
    throw new RebuildInputError({
      parameter: `${parameter}.${end}`,
      value: worn,
      shown: showLength(worn),
      expected: `at ${end === 'max' ? 'least' : 'most'} ${showLength(fresh)}, the ${end} of new parts`,
      hint: 'A part wears past its new fit before it is worn out. Are the two swapped?',
    });
  }
}

const ENDS_OUTWARD = [
  ['min', -1],
  ['max', 1],
] as const;

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

const OWN_LIMITS = ['limits', 'basis', 'service', 'uncertainty', 'rule', 'target'] as const;
