import { closest, distance } from 'fastest-levenshtein';

/** The longest name to look for. */
const LONGEST = 60;

/** The known word that was probably meant, if one is near: at most one slip for every three letters, plus one. */
export function nearest(word: string, known: readonly string[]): string | undefined {
  if (word.length > LONGEST || known.length === 0) return undefined;
  const near = closest(word, known);
  return distance(word, near) <= word.length / 3 + 1 ? near : undefined;
}

/** The same as a question to follow a semicolon: `did you mean "oversize"?`. */
export function didYouMean(word: unknown, known: readonly string[]): string | undefined {
  const near = typeof word === 'string' ? nearest(word, known) : undefined;
  return near === undefined ? undefined : `did you mean "${near}"?`;
}

/** The message for an unknown field. */
export function unknownField(name: string, known: readonly string[]): string {
  const question = didYouMean(name, known);
  return `is not a known field; ${question ? `${question} ` : ''}known fields here: ${known.join(', ')}`;
}

/** Alternatives: `a, b or c`. */
export function either(words: readonly string[]): string {
  const last = words.at(-1) ?? '';
  return words.length < 2 ? last : `${words.slice(0, -1).join(', ')} or ${last}`;
}
