import { closest, distance } from 'fastest-levenshtein';

/** The longest name to look for, here and wherever slips are sought. */
export const LONGEST_NAME = 60;

/** The known word that was probably meant, if one is near: at most one slip for every three letters, plus one. */
export function nearest(word: string, known: readonly string[]): string | undefined {
  if (word.length > LONGEST_NAME || known.length === 0) return undefined;
  const near = closest(word, known);
  return distance(word, near) <= word.length / 3 + 1 ? near : undefined;
}
