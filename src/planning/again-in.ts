import type { TriagedPart } from '../shed/index.js';
import { saysAgain } from '../shed/internal.js';
import type { Build, MeasureAgain } from './plan-types.js';

/** What to measure again of the parts that engines take, as the triage of them tells. */
export function againIn(
  builds: readonly Build[],
  parts: readonly TriagedPart[],
): readonly MeasureAgain[] {
  const taken = new Set(builds.flatMap((build) => build.parts.map(({ name }) => name)));
  return parts.flatMap(({ section, name, because }) => {
    const its = because.filter(saysAgain);
    return its.length > 0 && taken.has(name) ? [{ section, name, because: its }] : [];
  });
}
