/** Words that say nothing of what is looked for. */
const SMALL = new Set(
  'a an and are be can do for from how i in is it many much my not of on or the to what which with'.split(
    ' ',
  ),
);

/** What is looked for: the words that say something, or all of them if none does. */
export function tellingWords(text: string): readonly string[] {
  const words = text.split(/[^\p{L}\p{N}°.]+/u).filter((word) => word !== '');
  const telling = words.filter((word) => !SMALL.has(word.toLowerCase()));
  return telling.length > 0 ? telling : words;
}
