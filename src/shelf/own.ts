import type { OwnLimits } from '../judging/own-limits.js';
import type { Dimension } from '../quantities/dimensions.js';
import type { StatedLimits } from './sheet.js';

/** Limits as the sheet states them, in the form that the calculations take; none gives none. */
export function own<D extends Dimension>(stated: StatedLimits<D> | undefined): OwnLimits<D> {
  if (stated === undefined) return {};
  const { source, ...limits } = stated;
  return {
    limits,
    basis: { kind: 'specified', ...(source !== undefined && { by: source }) },
  };
}
