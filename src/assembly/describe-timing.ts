import type { Wording } from '../judging/index.js';
import { noteOf } from '../judging/internal.js';
import { degree, format } from '../quantities/index.js';
import { describeTimingCard } from '../timing/index.js';
import { sayLimits } from './say-limits.js';
import type { TimingSetting } from './timing-setting.js';

/** Describes where valves and spark come, in sentences without full stops. */
export function describeTiming(
  { card, tooth, pointsGap, plugGap }: TimingSetting,
  wording: Wording,
): readonly string[] {
  return [
    ...(tooth
      ? [
          `a timing gear one tooth out of mesh puts the valves ${format(tooth.atCrank, degree)} of the crank out`,
        ]
      : []),
    ...(pointsGap
      ? [
          `gap of the points ${sayLimits(pointsGap, 'length', wording.units)} ${noteOf(pointsGap.basis, wording)}: set it before the spark is timed, as it moves the spark`,
        ]
      : []),
    ...(plugGap
      ? [
          `gap of the spark plug ${sayLimits(plugGap, 'length', wording.units)} ${noteOf(plugGap.basis, wording)}`,
        ]
      : []),
    ...describeTimingCard(card, wording),
  ];
}
