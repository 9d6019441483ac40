import type { Limits, OwnLimits } from '../judging/index.js';
import type { Dimension, Quantity } from '../quantities/index.js';

/** Limits with the document or person that set them. */
export interface StatedLimits<D extends Dimension> extends Limits<Quantity<D>> {
  /** Who set them, for example the manual and its page. */
  readonly source?: string;
}

/** The limits of a file in the form that the calculations take; empty if there are none. */
export function own<D extends Dimension>(stated: StatedLimits<D> | undefined): OwnLimits<D> {
  if (stated === undefined) return {};
  const { source, ...limits } = stated;
  return {
    limits,
    basis: { kind: 'specified', ...(source !== undefined && { by: source }) },
  };
}
