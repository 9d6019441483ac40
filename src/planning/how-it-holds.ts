import type { Ratio } from '../quantities/index.js';
import { type Accuracy, undescribed } from '../reading/index.js';
import type { Shed } from '../shed/index.js';
import { type Judged, judgedOf, mayFail } from './clearances.js';
import { notDescribedFor } from './guard-holds-with.js';
import { isNear } from './is-near.js';
import type { LeftOver } from './left-over-types.js';
import type { Build, NearClearance, Plan } from './plan-types.js';
import { spareFor } from './spares.js';
import { toMeasure } from './to-measure.js';

/** How likely the clearances of a plan are to hold, and which of them to measure once more. */
export function howItHolds(
  shed: Shed,
  builds: readonly Build[],
  leftOver: readonly LeftOver[],
  accuracy: Accuracy,
): Pick<Plan, 'allHold' | 'near' | 'notDescribed'> {
  const judged = builds.flatMap((build) => judgedOf(build).map((one) => ({ build, one })));
  const known = judged.filter(({ one }) => undescribed(one.feature, accuracy).length === 0);
  const failing = known.reduce((sum, { one }) => sum + mayFail(one), 0);
  const near = judged
    .filter(({ one }) => isNear(one))
    .map(({ build, one }) => nearOf(shed, build, one, leftOver, accuracy))
    .sort((a, b) => atRisk(b) - atRisk(a) || a.holds - b.holds);
  return {
    ...(known.length > 0 && { allHold: Math.max(0, 1 - failing) as Ratio }),
    near,
    notDescribed: notDescribedFor([...new Set(judged.map(({ one }) => one.feature))], shed),
  };
}

/** The chance that it fails times the money that rests on it. */
const atRisk = ({ holds, atStake }: NearClearance): number => (1 - holds) * atStake.amount;

function nearOf(
  shed: Shed,
  build: Build,
  one: Judged,
  leftOver: readonly LeftOver[],
  accuracy: Accuracy,
): NearClearance {
  const { of, place, finding } = one;
  const instead = spareFor({ shed, build, one, leftOver, accuracy });
  return {
    engine: build.name,
    of,
    ...(place !== undefined && { place }),
    finding,
    holds: (1 - mayFail(one)) as Ratio,
    atStake: build.cost,
    measure: toMeasure(build, one),
    ...(instead !== undefined && { instead }),
  };
}
