import type { BasedLimits, Basis } from '../judging/index.js';
import type { CrankTrain } from '../motion/index.js';
import { own, type SparkData, statedBasis, type TimingData } from '../reading/index.js';
import {
  type OneTooth,
  oneTooth,
  type SparkToTime,
  type TimingCard,
  type TimingToList,
  timingCard,
} from '../timing/index.js';

/** Where valves and spark come, and the gaps of points and plug. */
export interface TimingSetting {
  /** Every event that is known, in degrees, on the rim and as travel of the piston. */
  readonly card: TimingCard;
  /** How far the valves are out for a tooth. */
  readonly tooth?: OneTooth;
  /** Gap of the points. */
  readonly pointsGap?: BasedLimits<'length'>;
  /** Gap of the spark plug. */
  readonly plugGap?: BasedLimits<'length'>;
}

/** Where valves and spark come, as far as the file tells. */
export function timingSetting(
  { rimDiameter, spark, valves, gears, source, ...gaps }: TimingData,
  crank: CrankTrain | undefined,
): TimingSetting {
  const pointsGap = statedBasis(gaps.pointsGap);
  const plugGap = statedBasis(gaps.plugGap);
  const basis: Basis = { kind: 'specified', ...(source !== undefined && { by: source }) };
  return {
    card: timingCard({
      ...(rimDiameter !== undefined && { rimDiameter }),
      ...(crank && { crank }),
      ...(spark && { spark: sparkOf(spark) }),
      // A file tells a place as before or after, never both.
      ...(valves && { valves: valves as NonNullable<TimingToList['valves']> }),
      basis,
    }),
    ...(gears && {
      tooth: oneTooth({ crankTeeth: gears.crankTeeth, gearTeeth: gears.camTeeth }),
    }),
    ...(pointsGap && { pointsGap }),
    ...(plugGap && { plugGap }),
  };
}

function sparkOf({ starting, ...spark }: SparkData): SparkToTime {
  const { limits, basis } = own(starting);
  return { ...spark, ...(limits && { limits }), ...(basis && { basis }) };
}
