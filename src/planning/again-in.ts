import type { TriagedPart } from '../shed/index.js';
import { saysAgain } from '../shed/internal.js';
import type { ReadAgain } from './measure-types.js';
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

/** The readings of the parts of a shed that no step and no wear come to. */
export const readAgainIn = (parts: readonly TriagedPart[]): readonly ReadAgain[] =>
  parts.flatMap(({ section, name, because }) => {
    const its = because.filter((reason) => reason.kind === 'too far off');
    return its.length > 0 ? [{ section, name, because: its }] : [];
  });
