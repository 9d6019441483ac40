import type { Span } from '../judging/index.js';
import { NANOMETRE } from '../judging/internal.js';
import type { Length } from '../quantities/index.js';

/** What two parts do that are within their limits: always run free, always press, or either. */
export type FitKind = 'clearance' | 'transition' | 'interference';

/** How far the limits of a part are from its basic size, in some small unit, so that differences are exact. */
interface Deviations {
  readonly lower: number;
  readonly upper: number;
}

/** What the deviations of a hole and a shaft leave between them, and how many metres so many of their units are. */
export function betweenParts(
  hole: Deviations,
  shaft: Deviations,
  metres: (units: number) => Length,
) {
  const least = metres(hole.lower - shaft.upper);
  const most = metres(hole.upper - shaft.lower);
  return {
    clearance: { min: least, max: most },
    interference: turnedRound(least, most),
    kind: kindOfFit(least, most),
  };
}

/** A clearance as an interference: what is least of one is most of the other. */
const turnedRound = (least: Length, most: Length): Span<Length> => ({
  min: (0 - most) as Length,
  max: (0 - least) as Length,
});

/** The kind of fit that has so much clearance at least and at most. */
export function kindOfFit(least: Length, most: Length): FitKind {
  if (least >= -NANOMETRE) return 'clearance';
  return most <= NANOMETRE ? 'interference' : 'transition';
}
