import { distance } from 'fastest-levenshtein';
import { nearest } from '../../quantities/internal.js';

/** The name that was most likely meant, with one slip for every four letters at most: one that is far off is no help. */
export function closeName(word: string, names: readonly string[]): string | undefined {
  const near = nearest(word, names);
  const most = Math.max(1, word.length / 4);
  return near !== undefined && distance(word, near) <= most ? near : undefined;
}

/** `ringgap` is how several begin: `; ringGapAlongBore, ringGapHot and ringGapIn begin so`. */
export function beginningSo(unknown: string, names: readonly string[]): string {
  if (unknown.length < 4) return '';
  const begun = names.filter((name) => name.toLowerCase().startsWith(unknown.toLowerCase()));
  if (begun.length === 0) return '';
  const shown = begun.sort().slice(0, 4);
  const last = shown.length === begun.length ? shown.pop() : 'others';
  return shown.length === 0 ? `; ${last} begins so` : `; ${shown.join(', ')} and ${last} begin so`;
}
