import { showValue } from '../quantities/internal.js';
import type { FileProblem } from './file-problem.js';
import {
  type Break,
  type RepeatedKey,
  type TextPlace,
  type WantedPlace,
  walkJson,
} from './json-walk.js';

/** A shed of thousands of parts, with years of history, is shorter. */
const MOST_CHARACTERS = 20_000_000;

/** The text of a file without the byte order mark that some editors write. */
export const withoutMark = (text: string): string => text.replace(/^\uFEFF/, '');

/** The message for a text that is too long, if it is. */
export function tooLong({ length }: string): string | undefined {
  return length > MOST_CHARACTERS ? tooMany(length, MOST_CHARACTERS, 'characters') : undefined;
}

/** The message for a file with too many characters or lines. */
export const tooMany = (count: number, most: number, what: string): string =>
  `has ${count} ${what}, but the limit is ${most}; is it the right file?`;

/** The result of reading JSON. */
export interface JsonText {
  /** The value; absent if the text is not JSON. */
  readonly value?: unknown;
  /** Why the text is not JSON, or every repeated key. */
  readonly problems: readonly FileProblem[];
}

/** Reads JSON, with a byte order mark or without. */
export function readJson(text: string, file: 'sheet' | 'shed' | 'work'): JsonText {
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

/** A path in the form of a problem: `rods[1].journal`. */
export function pathOf([first, ...others]: readonly PropertyKey[]): string {
  const step = (each: PropertyKey) => (typeof each === 'number' ? `[${each}]` : `.${String(each)}`);
  return `${typeof first === 'number' ? step(first) : String(first)}${others.map(step).join('')}`;
}

function twice({ path, places: [first, again] }: RepeatedKey): FileProblem {
  const where =
    first.line === again.line
      ? `both times on line ${first.line}, at characters ${first.character} and ${again.character}`
      : `at ${told(first)} and ${told(again)}`;
  return { path: pathOf(path), message: `is given twice, ${where}; keep one of the two` };
}

const told = ({ line, character }: TextPlace) => `line ${line}, character ${character}`;

function describeBreak({ character, found, isToken, wanted, open }: Break): string {
  const place = `at character ${character}`;
  const stillOpen = open ? `; the ${open.bracket} at ${told(open)} is still open` : '';
  if (found === '') return `the text ends, but ${wanted} should follow${stillOpen}`;
  if (wanted === 'fewer brackets') return `the bracket ${place} is nested too deeply`;
  if (found.startsWith('"') && !isToken) {
    return /value|name/.test(wanted)
      ? `the text that begins ${place} has no closing quotation mark on its line, or an extra backslash`
      : `the quotation mark ${place} is not expected there; inside text write \\"`;
  }
  const before = afterMissingComma(found, wanted);
  if (before !== undefined) return `a comma is missing ${place}, before ${before}`;
  return `${showValue(found)} ${place}, but ${wanted} should be there${adviceOn(found, wanted, stillOpen)}`;
}

/** What stands where a comma is missing before it: a name with its colon, or another item of a list. */
function afterMissingComma(found: string, wanted: WantedPlace): string | undefined {
  const name = /^("(?:[^"\\]|\\.)*")\s*:/.exec(found)?.[1];
  if (wanted === 'a comma or }') return name === undefined ? undefined : `the name ${name}`;
  const item = /^(?:\{|\[|"(?:[^"\\]|\\.)*"(?=\s*(?:,|\]|$)))/.exec(found)?.[0];
  return wanted === 'a comma or ]' && item !== undefined ? item : undefined;
}

/** What to do about the commonest slips. */
function adviceOn(found: string, wanted: WantedPlace, stillOpen: string): string {
  const closes = /^[}\]]/.test(found);
  if (closes && /^another/.test(wanted)) return '; remove the comma before it';
  // A bracket that closes, but not the last that was opened.
  if (closes) return stillOpen;
  if (/^(?:\/\/|\/\*|#)/.test(found)) return '; JSON has no comments: write it in a field "x-note"';
  if (found.startsWith("'")) return '; JSON has double quotes only';
  return '';
}
