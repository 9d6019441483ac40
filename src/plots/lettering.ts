import { printable } from '../pages/index.js';

/** Size of the letters of a picture, in pixels whatever its width, so that they can be read on a phone. */
export const LETTER_SIZE = 12;

/** How wide letters are, in shares of their size: a little more than in most sans serif faces. */
const NARROW = 0.39;
const WIDE = 0.98;
const CAPITAL = 0.72;
const USUAL = 0.63;
const SQUARE = 1;

const widthOfLetter = (letter: string): number => {
  if (/[ijlft.,:;|!'()[\] ]/.test(letter)) return NARROW;
  if (/[mwMW@%—]/.test(letter)) return WIDE;
  if (/[A-Z]/.test(letter)) return CAPITAL;
  return letter.charCodeAt(0) > 0x2e7f ? SQUARE : USUAL;
};

/** How wide a text will be at the most. There is nothing to measure it with, so this is an estimate. */
export function widthOfWords(text: string, size = LETTER_SIZE): number {
  let sum = 0;
  for (const letter of text) sum += widthOfLetter(letter);
  return sum * size;
}

/** Text in lines that fit a width; a word that is too long is cut. */
export function inLines(text: string, width: number, size = LETTER_SIZE): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of printable(text).split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (widthOfWords(longer, size) <= width) {
      line = longer;
      continue;
    }
    if (line !== '') lines.push(line);
    line = '';
    for (const letter of word) {
      if (line !== '' && widthOfWords(line + letter, size) > width) {
        lines.push(line);
        line = '';
      }
      line += letter;
    }
  }
  return [...lines, line];
}
