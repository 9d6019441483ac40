import type { RebuildInputError } from '../../quantities/index.js';
import { readWork } from './work-file.js';

/**
 * The boxes of a build sheet that nobody filled in. `afterMachining` passes over them.
 *
 * @param work - the record of work: JSON text, or the parsed value
 * @returns what to measure or check, in the order of the boxes
 * @throws {FileError} (a {@link RebuildInputError}) when the record cannot be read
 * @example
 * ```ts
 * emptyBoxes({
 *   version: 1,
 *   boxes: [
 *     { part: 'rods A', feature: 'rod A1', reading: '1.7507 in' },
 *     { part: 'rods A', feature: 'rod A2', reading: '' },
 *   ],
 * }); // ["rods A, rod A2"]
 * ```
 */
export function emptyBoxes(work: unknown): readonly string[] {
  const { boxes, checks } = readWork(work);
  const empty = ({ reading }: { readonly reading: string }) => reading === '';
  return [
    ...new Set([
      ...boxes.filter(empty).map(({ part, feature }) => `${part}, ${feature}`),
      ...checks.filter(empty).map(({ what }) => what),
    ]),
  ];
}
