import { printable, WIDTH } from '../pages/index.js';

/** A sentence for one line, from its longest wording to its shortest: the first that fits the page is taken. */
export type Line = readonly string[];

/** What to say of one topic where a plan tells what to do. */
export interface Topic {
  /** One sentence for each thing; none if there is nothing to say. */
  readonly lines: readonly Line[];
  /** All of them in one sentence, for where there is no room for a line each. */
  readonly summed: Line;
}

/** A topic that never takes more than one line. */
export const oneLine = (...wordings: Line): Topic => ({ lines: [wordings], summed: wordings });

/** A topic of which there is nothing to say. */
export const NOTHING: Topic = { lines: [], summed: [] };

/** The wording that fits the page; the last one is cut if it must be. */
export function fitting(line: Line): string {
  const wordings = line.map(printable);
  const fits = wordings.find(({ length }) => length <= WIDTH);
  return fits ?? `${(wordings.at(-1) ?? '').slice(0, WIDTH - 2)} …`;
}

/** `1 part`, `3 parts`. */
export const countParts = (count: number): string => (count === 1 ? '1 part' : `${count} parts`);
