import type { BasedLimits, Basis, Limits, LimitsOf, OwnLimits } from '../judging/index.js';
import type { Dimension, Quantity } from '../quantities/index.js';

/** Limits with the document or person that set them. */
export interface StatedLimits<D extends Dimension> extends Limits<Quantity<D>> {
  /** Who set them, for example the manual and its page. */
  readonly source?: string;
  /** How far wear may take a part past them and leave it in service: the service limit, or wear limit, of the manual. */
  readonly service?: Limits<Quantity<D>> & {
    /** Who set it; by default who set the limits. */
    readonly source?: string;
  };
}

/** The limits of a file in the form that the calculations take; empty if there are none. */
export function own<D extends Dimension>(stated: StatedLimits<D> | undefined): OwnLimits<D> {
  if (stated === undefined) return {};
  const { source, service, ...limits } = stated;
  const worn = service && ownService(service, source);
  const none = limits.min === undefined && limits.max === undefined;
  return {
    ...(!none && { limits, basis: specifiedBy(source) }),
    ...(worn && { service: worn }),
  };
}

function ownService<D extends Dimension>(
  { source, ...limits }: NonNullable<StatedLimits<D>['service']>,
  by: string | undefined,
): NonNullable<OwnLimits<D>['service']> {
  return { limits, basis: specifiedBy(source ?? by) };
}

function specifiedBy(by: string | undefined): Basis {
  return { kind: 'specified', ...(by !== undefined && { by }) };
}

/** The limits of a file for a feature that has no rule of thumb; undefined if there are none. */
export function statedBasis<D extends Dimension>(
  stated: StatedLimits<D> | undefined,
  limitsOf: LimitsOf = 'new parts',
): BasedLimits<D> | undefined {
  const { limits, basis, service } = own(stated);
  const worn = service && {
    limits: service.limits,
    basis: service.basis ?? specifiedBy(undefined),
  };
  if (limits && basis) return { limits, basis, limitsOf, ...(worn && { service: worn }) };
  return worn && { ...worn, limitsOf: 'service' };
}
