import { type BasedLimits, type Finding, judge, type OwnLimits } from '../judging/index.js';
import { ownLimitsOr, toleratedWear } from '../judging/internal.js';
import { thou } from '../quantities/index.js';
import type { Shape } from './shape.js';

/** The out-of-round or taper a journal may have before it is ground, where the maker's limit is not known. */
const rule = (): BasedLimits<'length'> => ({
  limits: { max: thou(0.5) },
  basis: {
    kind: 'common practice',
    rule: 'journal out-of-round and taper up to 0.0005 in (0.013 mm)',
  },
});

/** Limits for the out-of-round and taper of a journal: the caller's, or the rule of thumb. */
export function journalShapeLimits(
  parameter: string,
  own: OwnLimits<'length'>,
): BasedLimits<'length'> {
  return ownLimitsOr(parameter, own, rule(), toleratedWear);
}

/** Out-of-round and taper of a part against the same limits. */
export function judgeShape(
  { outOfRound, taper }: Pick<Shape, 'outOfRound' | 'taper'>,
  allowed: BasedLimits<'length'>,
): readonly [outOfRound: Finding<'length'>, taper: Finding<'length'>] {
  const judged = { dimension: 'length', ...allowed } as const;
  return [
    judge({ feature: 'out-of-round', value: outOfRound, ...judged }),
    judge({ feature: 'taper', value: taper, ...judged }),
  ];
}
