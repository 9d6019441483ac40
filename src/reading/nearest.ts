import { distance } from 'fastest-levenshtein';
import { wordsMeant } from '../judging/internal.js';
import { LONGEST_NAME, nearest } from '../quantities/internal.js';

/** Whether a name is most likely another one, misspelt. `engine A` is not `engine B`, nor is `no. 12` `no. 13`. */
export function isSlipOf(typed: string, name: string): boolean {
  const [one, other] = [typed, name].map((text) => text.toLowerCase().split(/[\s_-]+/)) as [
    string[],
    string[],
  ];
  if (one.join('') === other.join('')) return true;
  if (one.length !== other.length) return false;
  const differing = one
    .map((word, i) => [word, other[i] ?? ''] as const)
    .filter(([word, its]) => word !== its);
  return differing.length === 1 && differing.every(([word, its]) => isSlip(word, its));
}

/** One slip in a word of some letters, two in a long one; or its letters in another order. */
function isSlip(word: string, its: string): boolean {
  if (word.length > LONGEST_NAME || its.length < 3 || /\d/.test(word + its)) return false;
  // Short words differ by a letter and are both meant: odd and old.
  if (its.length === 3 && word.length === 3) return false;
  const isMixed = [...word].sort().join('') === [...its].sort().join('');
  return distance(word, its) <= (isMixed || its.length >= 8 ? 2 : 1);
}

/** The nearest word as a question to follow a semicolon: `did you mean "oversize"?`. */
export function didYouMean(word: unknown, known: readonly string[]): string | undefined {
  const near = typeof word === 'string' ? nearest(word, known) : undefined;
  return near === undefined ? undefined : `did you mean "${near}"?`;
}

/** The same of a word of the trade: of `cast iron`, `did you mean "grey iron"?`. */
export function wordMeant(word: unknown, known: readonly string[]): string | undefined {
  const meant = wordsMeant(word, known).map((each) => `"${each}"`);
  return meant.length === 0 ? undefined : `did you mean ${either(meant)}?`;
}

/** The one name that a name cuts short, word by word, as a question: `crank B` is short for `crankshaft B`. */
export function shortFor(short: string, names: readonly string[]): string | undefined {
  const words = short.toLowerCase().split(/[\s_-]+/);
  const long = names.filter((name) => {
    const its = name.toLowerCase().split(/[\s_-]+/);
    return its.length === words.length && its.every((word, i) => word.startsWith(words[i] ?? ' '));
  });
  const [only, ...others] = short.trim() === '' ? [] : long;
  return only === undefined || others.length > 0 ? undefined : `did you mean "${only}"?`;
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
