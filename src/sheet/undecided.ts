import type { Wording } from '../judging/index.js';
import { sayOddReading } from '../measuring/internal.js';
import { type PageLine, wrap } from '../pages/index.js';
import type { BearingReport } from './inspect-bearings.js';

/** What stands in the way of every decision: readings to take again, or a crankshaft that reads as bent. */
export function undecidedFor(
  parts: readonly Pick<BearingReport, 'name' | 'readAgain' | 'oddSize' | 'bent'>[],
  wording: Wording,
): readonly PageLine[] {
  const odd = parts.flatMap(({ name, readAgain = [] }) =>
    readAgain.flatMap((each) => wrap(`${name}: ${sayOddReading(each, wording)}`, 4)),
  );
  if (odd.length > 0) return ['Decision: none, as a reading does not fit the others.', ...odd];
  if (parts.some(({ oddSize }) => oddSize !== undefined)) {
    return ['Decision: none, as one reads where no step and no wear takes it.'];
  }
  return parts.some(({ bent }) => bent)
    ? ['Decision: none, as the crankshaft is not shown to be straight.']
    : [];
}
