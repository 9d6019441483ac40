import type { SizeOrSpan, Span } from '../../judging/index.js';
import { guardFields, guardSpan } from '../../judging/internal.js';
import type { MeanExpansion } from '../../measuring/index.js';
import { guardExpansion, partTemperature } from '../../measuring/internal.js';
import type { Temperature } from '../../quantities/index.js';

/** A part of a running engine: how it grows and how warm it gets. */
export interface RunningPart {
  /** How it grows, for example from `meanExpansion`. */
  readonly expansion: MeanExpansion;
  /** How warm it runs; temperatures are seldom known, so best the span they lie in [K]. */
  readonly temperature: SizeOrSpan<Temperature>;
}

/** By what a part is larger than where it was measured, with the temperatures that decide it. */
export interface Growth {
  /** Least and most that its size is multiplied by. */
  readonly by: Span<number>;
  /** Whether it runs, or was measured, outside of the temperatures that its coefficient is the mean over. */
  readonly isOutside: boolean;
}

const PART = ['expansion', 'temperature'] as const;

/** 20 °C, for which sizes are stated. */
export const ROOM = 293.15 as Temperature;

/** How a part grows from where it was measured to where it runs. */
export function growthOf(at: string, part: RunningPart, measuredAt: Temperature): Growth {
  guardFields(at, part, PART);
  const { coefficient, from, to } = guardExpansion(`${at}.expansion`, part.expansion);
  const runs = guardSpan(`${at}.temperature`, part.temperature, partTemperature, 'temperature');
  // Below the temperature of measuring, what grows most shrinks most.
  const [cold, hot] = [runs.min - measuredAt, runs.max - measuredAt];
  const min = 1 + cold * (cold < 0 ? coefficient.max : coefficient.min);
  const max = 1 + hot * (hot < 0 ? coefficient.min : coefficient.max);
  const isOutside = runs.min < from || runs.max > to || measuredAt < from || measuredAt > to;
  return { by: { min, max }, isOutside };
}

/** The names of the parts that are outside of their coefficients' temperatures. */
export const namesOutside = <N extends string>(
  growths: {
    readonly [K in N]?: Growth;
  },
): readonly N[] => (Object.keys(growths) as N[]).filter((name) => growths[name]?.isOutside);
