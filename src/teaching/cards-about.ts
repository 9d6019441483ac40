import { guardText } from '../judging/internal.js';
import { type CardName, cards } from './cards.js';
import type { CardTopic } from './formula-card.js';

/**
 * The cards of a topic, or those that are about some words: all of the words stand in the name of the formula, in
 * what it gives, or in what goes in. Those that have them in their name come first.
 *
 * @param about - a topic such as `'bearings'`, in the singular or in the plural, or words such as `'ring gap'`
 * @returns names of cards; none where nothing fits
 * @throws {RebuildInputError} when the words are not text
 * @example
 * ```ts
 * cardsAbout('crankshaft').length; // 6
 * cardsAbout('drops'); // ["dropVolume","dripFlow"]
 * ```
 */
export function cardsAbout(about: CardTopic | (string & {})): readonly CardName[] {
  const found =
    guardText('about', about)
      .toLowerCase()
      .match(/[\p{L}\d]+/gu) ?? [];
  const words = found.filter((word) => !SMALL.has(word));
  const names = Object.keys(cards) as CardName[];
  const ofTopic = names.filter((name) => stems(cards[name].topic.split(' ')) === stems(words));
  if (ofTopic.length > 0) return ofTopic;
  const scored = names.map((name) => ({ name, score: scoreOf(name, words.map(stem)) }));
  return scored
    .filter(({ score }) => score > 0)
    .sort((a, b) => b.score - a.score)
    .map(({ name }) => name);
}

/** Words as they were read, where one is in the text of a card only once its last letter is left off: `shels`. */
export function readAs(about: string): string | undefined {
  const texts = cardsAbout(about).map((name) => {
    const { name: title, gives, letters, topic } = cards[name];
    const meanings = Object.values(letters).map(({ meaning }) => meaning);
    return [title, name.replaceAll(/[A-Z]/g, ' $&'), gives.meaning, topic, ...meanings].join(' ');
  });
  const known =
    texts
      .join(' ')
      .toLowerCase()
      .match(/[\p{L}\d]+/gu) ?? [];
  const read = about.toLowerCase().replaceAll(/[\p{L}\d]+/gu, (word) => {
    const isKnown =
      SMALL.has(word) || known.some((one) => one.startsWith(word) || one === stem(word));
    const meant = isKnown ? undefined : known.find((one) => one.startsWith(stem(word)));
    return meant === undefined ? word : `${stem(meant)}s`;
  });
  return read === about.toLowerCase() ? undefined : read;
}

/** Words that say nothing of what a formula is about. */
const SMALL: ReadonlySet<string> = /* @__PURE__ */ new Set(
  /* @__PURE__ */ 'a an and by do for from how i in is it many much of on the to what when where which with'.split(
    ' ',
  ),
);

/** Words may stand in the singular or in the plural. */
const stem = (word: string) => (word.length > 3 ? word.replace(/s$/, '') : word);

/** Words put together, so that `bearing` is `bearings`. */
const stems = (words: readonly string[]) => words.map(stem).join(' ');

/** How well a card fits words: not at all unless it has every one of them. */
function scoreOf(name: CardName, words: readonly string[]): number {
  const { name: title, gives, letters, topic } = cards[name];
  const weighed: readonly (readonly [text: string, weight: number])[] = [
    [`${title} ${name.replaceAll(/[A-Z]/g, ' $&')}`, 4],
    [gives.meaning, 2],
    [
      `${topic} ${Object.values(letters)
        .map(({ meaning }) => meaning)
        .join(' ')}`,
      1,
    ],
  ];
  const scores = words.map((word) =>
    weighed.reduce(
      (sum, [text, weight]) =>
        sum + (new RegExp(`(?<![\\p{L}\\d])${word}`, 'iu').test(text) ? weight : 0),
      0,
    ),
  );
  return scores.length > 0 && scores.every((score) => score > 0)
    ? scores.reduce((sum, score) => sum + score, 0)
    : 0;
}
