/**
 * Threads, bolts and their tightening.
 *
 * @packageDocumentation
 */
export { type LikelyThread, type MeasuredThread, nearestThreads } from './nearest-threads.js';
export { type ThreadAreas, threadAreas } from './thread-areas.js';
export type { ThreadForm, ThreadSize } from './thread-forms.js';
export { threadOf } from './thread-of.js';
export { type Thread, type ThreadSeries, threadsIn } from './thread-series.js';
