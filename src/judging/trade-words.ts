import { distance } from 'fastest-levenshtein';
import { LONGEST_NAME, nearest } from '../quantities/internal.js';

/** What the trade also says, and the words that it may mean in a list. Spelling alone does not tell these. */
const ALSO: Readonly<Record<string, readonly string[]>> = {
  alloy: ['aluminium alloy'],
  babbitt: ['white metal'],
  'bearing metal': ['white metal', 'tin babbitt', 'lead babbitt'],
  'carbon steel': ['steel'],
  'cast iron': ['grey iron'],
  coarse: ['UNC', 'metric coarse'],
  'copper grease': ['anti-seize'],
  fine: ['UNF', 'metric fine'],
  'freeze cracked': ['frost-cracked'],
  'frost heaved': ['frost-cracked'],
  frozen: ['frost-cracked'],
  gunmetal: ['bronze', 'tin bronze'],
  'light alloy': ['aluminium alloy'],
  lubricated: ['oiled'],
  'mild steel': ['steel'],
  oil: ['oiled'],
  'phosphor bronze': ['bronze', 'tin bronze'],
  'white metal': ['tin babbitt', 'lead babbitt'],
};

/** `grade 5` and `class 8.8` stand in lists by the standard that sets them. */
const FILLERS: readonly string[] = ['class', 'grade', 'property'];

/** The words of a list that somebody most likely meant by another: the trade's own, those that hold it, or the nearest. */
export function wordsMeant(word: unknown, words: readonly string[]): readonly string[] {
  if (typeof word !== 'string' || word.length > LONGEST_NAME) return [];
  const said = partsOf(word).join(' ');
  const also = (Object.hasOwn(ALSO, said) ? (ALSO[said] ?? []) : []).filter((each) =>
    words.includes(each),
  );
  if (also.length > 0) return also;
  const same = words.filter((each) => partsOf(each).join('') === said.replaceAll(' ', ''));
  if (same.length > 0) return same;
  const holding = said === '' ? [] : words.filter((each) => holds(partsOf(each), partsOf(word)));
  if (holding.length > 0) return holding.slice(0, MOST);
  const near = nearest(word, words);
  return near !== undefined && isMisspelt(partsOf(word), partsOf(near)) ? [near] : [];
}

const MOST = 3;

const partsOf = (text: string): readonly string[] =>
  text
    .toLowerCase()
    .split(/[\s_-]+/)
    .filter((part) => part !== '' && !FILLERS.includes(part));

const holds = (parts: readonly string[], said: readonly string[]): boolean =>
  said.every((one) => parts.some((part) => part === one || isSlip(one, part)));

/** One slip in a word long enough to be known by the rest. */
const isSlip = (one: string, part: string): boolean =>
  part.length >= 6 && !/\d/.test(one + part) && distance(one, part) <= 1;

/** Part by part: aluminium bronze is not aluminium alloy, nor 8.8 9.8, misspelt. */
const isMisspelt = (said: readonly string[], parts: readonly string[]): boolean =>
  said.length === parts.length &&
  said.every(
    (one, i) =>
      one === parts[i] || (!/\d/.test(one) && nearest(one, [parts[i] ?? '']) !== undefined),
  );
