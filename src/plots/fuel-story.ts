import { type SumpEntry, type SumpStory, sumpLog } from '../oil/index.js';
import { hour, type Time, valueIn } from '../quantities/index.js';

/** Into so many straight pieces each stretch of time is drawn. */
const PIECES = 16;

/** How long an entry of a log takes. */
export const timeOf = (entry: SumpEntry): number =>
  'running' in entry ? entry.running : 'standing' in entry ? entry.standing : 0;

/** How much of the oil is fuel at an hour. */
export interface Point {
  readonly hours: number;
  readonly fraction: number;
}
/** A time in which the engine ran or stood, in hours. */
export interface Stretch {
  readonly state: 'running' | 'standing';
  readonly from: number;
  readonly to: number;
}

/** What was in the sump from hour to hour, and what it did. Draining and topping up take no time. */
export function storyOf(story: SumpStory): {
  readonly points: readonly Point[];
  readonly stretches: readonly Stretch[];
} {
  const { oil, fuel = 0 } = story;
  const pieces = Math.max(1, Math.min(PIECES, Math.floor(2000 / story.log.length)));
  const log = story.log.flatMap((entry): readonly SumpEntry[] => {
    if ('running' in entry) {
      return Array.from({ length: pieces }, () => ({ running: (entry.running / pieces) as Time }));
    }
    if ('standing' in entry) {
      return Array.from({ length: pieces }, () => ({
        standing: (entry.standing / pieces) as Time,
      }));
    }
    return [entry];
  });
  let hours = 0;
  const points: Point[] = [{ hours, fraction: oil + fuel === 0 ? 0 : fuel / (oil + fuel) }];
  for (const [i, { fraction }] of sumpLog({ ...story, log }).after.entries()) {
    hours += valueIn(timeOf(log[i] as SumpEntry) as Time, hour);
    points.push({ hours, fraction });
  }
  const stretches: Stretch[] = [];
  let at = 0;
  for (const entry of story.log) {
    const to = at + valueIn(timeOf(entry) as Time, hour);
    if (to > at)
      stretches.push({ state: 'running' in entry ? 'running' : 'standing', from: at, to });
    at = to;
  }
  return { points, stretches };
}
