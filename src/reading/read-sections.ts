import type { z } from 'zod';
import { FileError, type FileProblem } from './file-error.js';
import { pathOf, readJson } from './file-text.js';
import { strangeField } from './nearest.js';
import { salvage } from './salvage.js';

/** A file as it came: an object whose fields may be anything. */
export type Given = Readonly<Record<string, unknown>>;

/** The object that a file holds, as JSON text or as it is parsed, and the keys of it that stand twice. */
export function givenIn(
  input: unknown,
  file: 'sheet' | 'shed',
  fieldsOfIt: string,
): { readonly given: Given; readonly repeated: readonly FileProblem[] } {
  const json = typeof input === 'string' ? readJson(input, file) : { value: input, problems: [] };
  if (isObject(json.value)) return { given: json.value, repeated: json.problems };
  const message = `must be an object with ${fieldsOfIt}`;
  const problems = 'value' in json ? [{ path: file, message }] : json.problems;
  throw new FileError(input, problems, file);
}

/** What of a file could be read. */
interface Reading {
  /** The sound sections, and what is sound of others. */
  readonly sound: Readonly<Record<string, unknown>>;
  /** What is wrong with the rest, in the order of the file. */
  readonly problems: readonly FileProblem[];
}

/** Reads each section on its own, so that a mistake in one hides nothing in another. */
export function readSections(given: Given, sections: Readonly<Record<string, z.ZodType>>): Reading {
  const known = Object.keys(sections);
  const sound: Record<string, unknown> = {};
  const strange = Object.keys(given)
    .filter((key) => !known.includes(key))
    .map((path) => ({ path, message: strangeField(path, known) }));
  const problems = Object.entries(sections).flatMap(([key, schema]) => {
    const value = Object.hasOwn(given, key) ? given[key] : undefined;
    const read = salvage(schema, value);
    if (read.sound !== undefined) sound[key] = read.sound;
    return read.issues.flatMap((issue) => problemsOf(key, issue));
  });
  return { sound, problems: [...strange, ...problems] };
}

interface Issue {
  readonly message: string;
  readonly path: readonly PropertyKey[];
  readonly keys?: readonly string[];
}

/** A problem of the schema at its path; one for each unknown field. */
function problemsOf(section: string, issue: Issue): FileProblem[] {
  const path = pathOf([section, ...issue.path]);
  if (issue.keys === undefined) return [{ path, message: issue.message }];
  const messages = issue.message.split('\n');
  return issue.keys.map((key, i) => ({ path: `${path}.${key}`, message: messages[i] ?? '' }));
}

/** A list of the file as it came, item by item, however spoilt. */
export function rawItems(list: unknown): readonly Given[] {
  const each: readonly unknown[] = Array.isArray(list) ? list : [];
  return each.map((item) => (isObject(item) ? item : {}));
}

/** Whether a value is an object with named fields. */
export function isObject(value: unknown): value is Given {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
