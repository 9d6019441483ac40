import { inch, type Length, mm, thou } from '../quantities/index.js';
import { sameStep } from '../reading/index.js';

/** `10`, `.010`, `-10`, `10 under`, `0.25 mm`, `U/S 20`, `+020`: a number, and words that say that it is a size. */
const SIZE = /^(?:u\/?s|o\/?s|under(?:size)?|over(?:size)?)?\s*[-+]?\s*(\d*\.?\d+)\s*(.*)$/i;
const WORDS = /^(?:thou|in|inch|"|mm)?\s*(?:u\/?s|o\/?s|under(?:size)?|over(?:size)?)?$/i;
const STANDARD = /^(?:std\.?|standard)$/i;

/**
 * The step that a mark names, if it names one of these. A number is taken for thou, inches or millimetres, whichever
 * makes it a step. A mark is evidence of what a part was once machined to, and nothing is counted on it.
 */
export function stepMarked(mark: string, steps: readonly Length[]): Length | undefined {
  const text = mark.trim();
  if (STANDARD.test(text)) return steps.find((step) => step === 0);
  const [, number, words] = SIZE.exec(text) ?? [];
  if (number === undefined || !WORDS.test(words ?? '')) return undefined;
  const value = Number(number);
  const sizes = [thou(value), inch(value), mm(value)];
  return steps.find((step) => step > 0 && sizes.some((size) => sameStep(size, step)));
}
