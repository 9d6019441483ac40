import { differenceIn, isSameData } from '../../reading/index.js';
import type { HistoryEntry } from '../part.js';

/** What may have a history. */
interface WithHistory {
  readonly name: string;
  readonly history?: unknown;
}

/** What the entries of its history say that are new. */
export function doneSince(old: WithHistory, part: WithHistory): readonly string[] {
  const entries = ({ history }: WithHistory) => (history ?? []) as readonly HistoryEntry[];
  const known = entries(old);
  return entries(part)
    .filter((entry) => !known.some((each) => isSameData(each, entry)))
    .map(({ what, on }) => (on === undefined ? what : `${what} (${on})`));
}

/** The fields that differ, each to the first place where it does. */
export function fieldsThatDiffer(older: object, newer: object): readonly string[] {
  const [was, is] = [new Map(Object.entries(older)), new Map(Object.entries(newer))];
  return [...new Set([...was.keys(), ...is.keys()])].flatMap((key) => {
    const within = differenceIn(was.get(key), is.get(key));
    return within === undefined ? [] : [`${key}${within}`];
  });
}
