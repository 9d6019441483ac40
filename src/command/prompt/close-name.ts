import { distance } from 'fastest-levenshtein';
import { nearest } from '../../quantities/internal.js';

/** The name that was most likely meant, with one slip for every four letters at most: one that is far off is no help. */
export function closeName(word: string, names: readonly string[]): string | undefined {
  const near = nearest(word, names);
  const most = Math.max(1, word.length / 4);
  return near !== undefined && distance(word, near) <= most ? near : undefined;
}
