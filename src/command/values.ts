import { didYouMean, either } from '../reading/index.js';
import { WrongCommand } from './wrong-command.js';

/** One of a few words; a misspelt one is refused with the nearest. */
export function oneOf<W extends string>(
  word: string | undefined,
  words: readonly W[],
  where: string,
): W {
  const found = words.find((each) => each === word);
  if (found) return found;
  const which = either(words);
  if (word === undefined) throw new WrongCommand(`${where} needs ${which}`);
  const near = didYouMean(word, words);
  throw new WrongCommand(`${where}: "${word}" is not ${which}${near ? `; ${near}` : ''}`);
}
