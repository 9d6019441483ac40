import { showValue } from '../quantities/internal.js';
import type { FileProblem } from './file-error.js';
import { type Break, type RepeatedKey, walkJson } from './json-walk.js';

/** A shed of a thousand parts takes less. */
const MOST_CHARACTERS = 2_000_000;

/** The text of a file without the byte order mark that some editors begin it with. */
export const withoutMark = (text: string): string => text.replace(/^\uFEFF/, '');

/** What is said of a text that is too long to be the right file, if it is. */
export function tooLong({ length }: string): string | undefined {
  return length > MOST_CHARACTERS ? tooMany(length, MOST_CHARACTERS, 'characters') : undefined;
}

/** What is said of a file that holds more of something than is read. */
export const tooMany = (count: number, most: number, what: string): string =>
  `has ${count} ${what}, and at most ${most} are read; is it the right file?`;

/** What a text of JSON holds. */
export interface JsonText {
  /** Its value; absent if it is not JSON. */
  readonly value?: unknown;
  /** Why it is not JSON, or every key in it that stands twice. */
  readonly problems: readonly FileProblem[];
}

/** Reads JSON, with a byte order mark or without. */
export function readJson(text: string, file: 'sheet' | 'shed'): JsonText {
  const message = tooLong(text);
  if (message !== undefined) return { problems: [{ path: file, message }] };
  const plain = withoutMark(text);
  const { repeated, broken } = walkJson(plain);
  if (broken === undefined) return { value: JSON.parse(plain), problems: repeated.map(twice) };
  return {
    problems: [
      { path: `${file}, line ${broken.line}`, message: `is not JSON: ${describeBreak(broken)}` },
    ],
  };
}

/** A path as problems name it: `rods[1].journal`. */
export function pathOf([first, ...others]: readonly PropertyKey[]): string {
  const step = (each: PropertyKey) => (typeof each === 'number' ? `[${each}]` : `.${String(each)}`);
  return `${typeof first === 'number' ? step(first) : String(first)}${others.map(step).join('')}`;
}

function twice({ path, lines: [first, again] }: RepeatedKey): FileProblem {
  const where =
    first === again ? `both times on line ${first}` : `on line ${first} and on line ${again}`;
  return { path: pathOf(path), message: `stands twice, ${where}; keep one of the two` };
}

function describeBreak({ character, found, isToken, wanted }: Break): string {
  const place = `at character ${character}`;
  if (found === '') return `the text ends where ${wanted} should stand`;
  if (wanted === 'fewer brackets') return `the bracket ${place} stands inside too many others`;
  if (found.startsWith('"') && !isToken) {
    return /value|name/.test(wanted)
      ? `the quotation mark ${place} begins text that does not end on its line, or has a backslash too many`
      : `the quotation mark ${place} is one too many; inside text write \\"`;
  }
  const isComma = /^another/.test(wanted) && /^[}\]]/.test(found);
  const comma = isComma ? '; the comma before it is one too many' : '';
  return `${showValue(found)} ${place} stands where ${wanted} should${comma}`;
}
