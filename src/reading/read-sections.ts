import type { z } from 'zod';
import { FileError } from './file-error.js';
import type { FileProblem } from './file-problem.js';
import { pathOf, readJson } from './file-text.js';
import { type Given, isObject } from './given.js';
import { unknownField } from './nearest.js';
import { withoutOwnFields } from './own-fields.js';
import { salvage } from './salvage.js';
import { type FileKind, otherFile } from './which-file.js';

/**
 * The object in a file, from JSON text or already parsed, without what is not for us: `$schema`, for the editor, and the
 * fields of the owner. Its problems are its repeated keys, and a `$schema` that is no text.
 */
export function givenIn(
  input: unknown,
  file: FileKind,
  fieldsOfIt: string,
): { readonly given: Given; readonly problems: readonly FileProblem[] } {
  const json = typeof input === 'string' ? readJson(input, file) : { value: input, problems: [] };
  if (isObject(json.value)) {
    const other = otherFile(json.value, file);
    if (other !== undefined) throw new FileError(input, [{ path: file, message: other }], file);
    const { $schema = '', ...given } = withoutOwnFields(json.value) as Given;
    const wrong = typeof $schema === 'string' ? [] : [NO_TEXT];
    return { given, problems: [...json.problems, ...wrong] };
  }
  const message = `must be an object with ${fieldsOfIt}`;
  const problems = 'value' in json ? [{ path: file, message }] : json.problems;
  throw new FileError(input, problems, file);
}

const NO_TEXT: FileProblem = { path: '$schema', message: 'must be text, in quotes' };

/** The part of a file that could be read. */
interface Reading {
  /** The valid sections, and the valid parts of the others. */
  readonly sound: Readonly<Record<string, unknown>>;
  /** The problems of the rest, in the order of the file. */
  readonly problems: readonly FileProblem[];
}

/** Reads each section on its own, so a mistake in one hides none in another. */
export function readSections(given: Given, sections: Readonly<Record<string, z.ZodType>>): Reading {
  const known = Object.keys(sections);
  const sound: Record<string, unknown> = {};
  const unknown = Object.keys(given)
    .filter((key) => !known.includes(key))
    .map((path) => ({ path, message: unknownField(path, known) }));
  const problems = Object.entries(sections).flatMap(([key, schema]) => {
    const value = Object.hasOwn(given, key) ? given[key] : undefined;
    const read = salvage(schema, value);
    if (read.sound !== undefined) sound[key] = read.sound;
    return read.issues.flatMap((issue) => problemsOf(key, issue));
  });
  return { sound, problems: [...unknown, ...problems] };
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
