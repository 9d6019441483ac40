import { type BasedLimits, type Finding, judge, type OwnLimits } from '../judging/index.js';
import { outOfTrue, ownLimitsOr } from '../judging/internal.js';
import { type Length, thou } from '../quantities/index.js';

const rule = (): BasedLimits<'length'> => ({
  limits: { max: thou(2) },
  limitsOf: 'service',
  basis: {
    kind: 'common practice',
    rule: 'a crankshaft runs true to 0.002 in (0.05 mm), full indicator reading, or it is bent',
  },
});

/** Whether the full indicator reading of a journal tells of a bent crankshaft: against the caller's limits, or the rule of thumb. */
export function judgeRunout(
  parameter: string,
  runout: Length,
  own: OwnLimits<'length'>,
): Finding<'length'> {
  const allowed = ownLimitsOr(parameter, own, rule(), outOfTrue);
  return judge({ feature: 'runout', dimension: 'length', value: runout, ...allowed });
}
