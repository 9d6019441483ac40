import { NANOMETRE } from '../../judging/internal.js';
import { type Length, parseLength, type RebuildInputError } from '../../quantities/index.js';
import { readWork, type WorkFile } from './work-file.js';

/**
 * What was filled in of a build sheet and lies outside its own limits, as the file states them. `afterMachining` keeps
 * such readings, and does not mark the engine as built. A reading at a limit is within it; one without a stated limit is
 * not judged, but no clearance is less than nothing.
 *
 * @param work - the record of work: JSON text, or the parsed value
 * @returns what lies outside, each with its reading and what it may be, in the order of the boxes
 * @throws {FileError} (a {@link RebuildInputError}) when the record cannot be read
 * @example
 * ```ts
 * outsideLimits({
 *   version: 1,
 *   boxes: [
 *     { part: 'rods A', feature: 'rod A1', mayBe: '1.7500 to 1.7510 in', reading: '1.7507 in' },
 *     { part: 'rods A', feature: 'rod A2', mayBe: '1.7500 to 1.7510 in', reading: '1.7513 in' },
 *   ],
 * }); // ["rods A, rod A2: 1.7513 in, and it may be 1.7500 to 1.7510 in"]
 * ```
 */
export function outsideLimits(work: unknown): readonly string[] {
  return outsideIn(readWork(work));
}

/** What a record that was read has outside its limits. */
export function outsideIn({ boxes, checks }: WorkFile): readonly string[] {
  const sizes = boxes.map(({ part, feature, mayBe, reading }) => ({
    what: `${part}, ${feature}`,
    limits: mayBe,
    reading,
  }));
  const clearances = checks.map((check) => ({ ...check, isClearance: true }));
  return [...new Set([...sizes, ...clearances].flatMap(complaintsOf))];
}

interface Judged {
  readonly what: string;
  readonly limits?: string | undefined;
  readonly reading: string;
  readonly isClearance?: boolean;
}

function complaintsOf({ what, limits = '', reading, isClearance }: Judged): readonly string[] {
  const size = lengthIn(reading);
  if (size === undefined) return [];
  if (isClearance && size < 0)
    return [`${what}: ${reading}, and no clearance is less than nothing`];
  const { min, max } = limitsIn(limits);
  const isWithin =
    (min === undefined || size >= min - NANOMETRE) &&
    (max === undefined || size <= max + NANOMETRE);
  if (isWithin) return [];
  const again = isSlip(size, { min, max }, isClearance ?? false) ? READ_AGAIN : '';
  return [`${what}: ${reading}, and it may be ${limits}${again}`];
}

/** What follows a reading that is no wear and no fault of the work. */
export const READ_AGAIN =
  '; read it again first, as a digit or a turn of the thimble may have slipped';

/** A turn of a metric thimble, the smaller one; no part comes back so far off [m]. */
const TURN = 0.0005;

/** Whether a reading is so far off that it was misread: a size by a turn of the thimble, a clearance fivefold. */
function isSlip(
  size: Length,
  { min, max }: ReturnType<typeof limitsIn>,
  isClearance: boolean,
): boolean {
  if (isClearance)
    return (max !== undefined && size > 5 * max) || (min !== undefined && size < min / 5);
  const off = Math.max(size - (max ?? size), (min ?? size) - size);
  return off >= TURN - NANOMETRE;
}

/** The limits that a build sheet writes: `1.7500 to 1.7510 in`, `at least 0.0300 in`, `at most 0.0040 in`. */
function limitsIn(text: string): {
  readonly min?: Length | undefined;
  readonly max?: Length | undefined;
} {
  const [, low = '', high = '', unit = ''] = /^(\S+) to (\S+) (\S+)$/.exec(text) ?? [];
  if (low !== '') return { min: lengthIn(`${low} ${unit}`), max: lengthIn(`${high} ${unit}`) };
  const [, which, bound = ''] = /^(at least|at most) (.+)$/.exec(text) ?? [];
  if (which === 'at least') return { min: lengthIn(bound) };
  if (which === 'at most') return { max: lengthIn(bound) };
  const only = lengthIn(text);
  return { min: only, max: only };
}

/** A length as it is written, or nothing: an empty box, or words. What is wrong with a reading, the shed file tells. */
function lengthIn(text: string): Length | undefined {
  try {
    return parseLength(text);
  } catch {
    return undefined;
  }
}
