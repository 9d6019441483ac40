import type { BasedLimits, Basis, Limits } from '../judging/index.js';
import { type Domain, guardLimits, ownBasisOr } from '../judging/internal.js';
import type { Ratio } from '../quantities/index.js';

/** The caller's own limits of a share or a count. */
export interface OwnRatioLimits {
  /** What it must lie between [-]. */
  readonly limits?: Limits<Ratio>;
  /** Who set them; by default the caller. */
  readonly basis?: Basis;
}

/** The caller's limits if there are any, else the default with its basis. */
export function ownRatioLimitsOr(
  { limits, basis }: OwnRatioLimits,
  fallback: BasedLimits<'ratio'>,
  domain: Domain<'ratio'>,
  at: string,
): BasedLimits<'ratio'> {
  const by = ownBasisOr(at, 'limits', limits, basis, fallback.basis);
  if (limits === undefined) return fallback;
  const { limitsOf } = fallback;
  const own = guardLimits(`${at}.limits`, limits, domain, 'ratio');
  return { limits: own, basis: by, ...(limitsOf && { limitsOf }) };
}
