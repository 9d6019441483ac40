import { type BasedLimits, type Finding, judge, type OwnLimits } from '../judging/index.js';
import { ownLimitsOr, toleratedWear } from '../judging/internal.js';
import { thou } from '../quantities/index.js';
import type { Shape } from './shape.js';

/** The out-of-round or taper a journal may have before it is ground, where the maker's limit is not known. */
const rule = (): BasedLimits<'length'> => ({
  limits: { max: thou(0.5) },
  limitsOf: 'service',
  basis: {
    kind: 'common practice',
    rule: 'journal out-of-round and taper up to 0.0005 in (0.013 mm)',
  },
});

/**
 * The most that a rule of thumb leaves in doubt. Limits of other engines for a worn journal run up to this
 * (TM 9-6115-604-34, p. 9-62: rebuild when out-of-round exceeds 0.002 in); past it no document lets one stay.
 */
export const MOST_IN_DOUBT = /* @__PURE__ */ thou(2);

/** Limits for the out-of-round and taper of a journal: the caller's, or the rule of thumb. */
export function journalShapeLimits(
  parameter: string,
  own: OwnLimits<'length'>,
): BasedLimits<'length'> {
  return ownLimitsOr(parameter, own, rule(), toleratedWear);
}

/** Out-of-round and taper of a part against their limits, which may be the same. */
export function judgeShape(
  { outOfRound, taper }: Pick<Shape, 'outOfRound' | 'taper'>,
  outOfRoundAllowed: BasedLimits<'length'>,
  taperAllowed = outOfRoundAllowed,
): readonly [outOfRound: Finding<'length'>, taper: Finding<'length'>] {
  const dimension = 'length';
  return [
    judge({ feature: 'out-of-round', dimension, value: outOfRound, ...outOfRoundAllowed }),
    judge({ feature: 'taper', dimension, value: taper, ...taperAllowed }),
  ];
}
