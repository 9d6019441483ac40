import type { z } from 'zod';
import type { RebuildInputError } from '../quantities/error.js';
import { contradictions } from './contradictions.js';
import { items, sections } from './schema.js';
import type { Sheet } from './sheet.js';
import { SheetError, type SheetProblem } from './sheet-error.js';

/**
 * Reads an inspection sheet: JSON text or the value it holds, with every
 * quantity as text with its unit. All mistakes come in one error, each with
 * its path; a mistake in one section hides none in another.
 *
 * @param input - JSON text, or the parsed value
 * @returns the sheet with every quantity in SI
 * @throws {SheetError} (a {@link RebuildInputError}) when anything is missing, misspelt, out of range or contradictory
 * @example
 * ```ts
 * const sheet = readSheet('{ "version": 1, "engine": "pump set", "units": "inch" }');
 * sheet.engine; // "pump set"
 * ```
 */
export function readSheet(input: unknown): Sheet {
  const raw = typeof input === 'string' ? parseJson(input) : input;
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw)) {
    const message = 'must be an object with version, engine, units and what was measured';
    throw new SheetError(input, [{ path: 'sheet', message }]);
  }
  const given = raw as Readonly<Record<string, unknown>>;
  const { sheet, places, problems } = readSections(given);
  const crankshaftRead = !problems.some(({ path }) => path.startsWith('crankshaft'));
  const all = [
    ...unknownSections(given),
    ...problems,
    ...repeatedNames(given),
    ...unknownShells(given),
    ...bareUndersizes(given),
    ...contradictions(sheet)
      // A crankshaft that could not be read is not missing besides.
      .filter(({ path }) => crankshaftRead || !path.startsWith('crankshaft'))
      .map(({ path, message }) => ({ path: placeOf(path, places), message })),
  ];
  if (all.length > 0) throw new SheetError(input, all);
  return sheet as Sheet;
}

/** What of a sheet could be read. */
interface Reading {
  /** The sound sections, and the sound items of lists. */
  readonly sheet: Partial<Sheet>;
  /** Where the items of such a list stand in the sheet. */
  readonly places: Readonly<Record<string, readonly number[]>>;
  /** What is wrong with the rest. */
  readonly problems: readonly SheetProblem[];
}

function readSections(given: Readonly<Record<string, unknown>>): Reading {
  const sheet: Record<string, unknown> = {};
  const places: Record<string, number[]> = {};
  const problems: SheetProblem[] = [];
  for (const [key, schema] of Object.entries(sections)) {
    const value = Object.hasOwn(given, key) ? given[key] : undefined;
    const result = schema.safeParse(value);
    if (result.success) {
      if (result.data !== undefined) sheet[key] = result.data;
      continue;
    }
    problems.push(...result.error.issues.flatMap((issue) => problemsOf(key, issue)));
    const sound = Array.isArray(value) ? soundItems(value, items[key]) : [];
    if (sound.length === 0) continue;
    sheet[key] = sound.map(({ item }) => item);
    places[key] = sound.map(({ place }) => place);
  }
  return { sheet, places, problems };
}

function soundItems(list: readonly unknown[], schema: z.ZodType | undefined) {
  return list.flatMap((each, place) => {
    const result = schema?.safeParse(each);
    return result?.success ? [{ item: result.data, place }] : [];
  });
}

function parseJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch (error) {
    const message = `is not JSON: ${error instanceof Error ? error.message : String(error)}`;
    throw new SheetError(text, [{ path: 'sheet', message }]);
  }
}

function unknownSections(given: object): SheetProblem[] {
  const known = Object.keys(sections);
  return Object.keys(given)
    .filter((key) => !known.includes(key))
    .map((path) => ({ path, message: `is not a field; known fields here: ${known.join(', ')}` }));
}

interface Issue {
  readonly code?: string | undefined;
  readonly message: string;
  readonly path: readonly PropertyKey[];
  readonly keys?: readonly string[];
}

/** A problem of the schema at its path; one for each unknown field. */
function problemsOf(section: string, issue: Issue): SheetProblem[] {
  const path = issue.path.reduce<string>(
    (place, step) => `${place}${typeof step === 'number' ? `[${step}]` : `.${String(step)}`}`,
    section,
  );
  return issue.keys === undefined
    ? [{ path, message: issue.message }]
    : issue.keys.map((key) => ({
        path: `${path}.${key}`,
        message: `is not a field; ${issue.message}`,
      }));
}

/** A list of the sheet as it came, item by item, however spoilt. */
function rawItems(given: Readonly<Record<string, unknown>>, section: string) {
  const list = given[section];
  const each = Array.isArray(list) ? list : [];
  return each.map(
    (item: unknown) => (Object(item) === item ? item : {}) as Record<string, unknown>,
  );
}

/** Names that stand twice. */
function repeatedNames(given: Readonly<Record<string, unknown>>): SheetProblem[] {
  return ['rods', 'mains', 'shells', 'cylinders'].flatMap((section) => {
    const names = rawItems(given, section).map((item) => item['name']);
    return names.flatMap((name, i) => {
      if (typeof name !== 'string' || names.indexOf(name) === i) return [];
      const message = `"${name}" stands twice; give each its own name`;
      return [{ path: `${section}[${i}].name`, message }];
    });
  });
}

/** Shells that are fitted but not on the list. */
function unknownShells(given: Readonly<Record<string, unknown>>): SheetProblem[] {
  const shells = rawItems(given, 'shells');
  return ['rods', 'mains'].flatMap((kind) =>
    rawItems(given, kind).flatMap(({ fittedShells }, i) => {
      if (typeof fittedShells !== 'string') return [];
      if (shells.some((shell) => shell['name'] === fittedShells && shell['fits'] === kind))
        return [];
      const message = `"${fittedShells}" is not among the shells for ${kind}; list it there, with 0 pairs if it is scrap`;
      return [{ path: `${kind}[${i}].fittedShells`, message }];
    }),
  );
}

/** Undersizes without a unit, which on a metric engine are not thou. */
function bareUndersizes(given: Readonly<Record<string, unknown>>): SheetProblem[] {
  if (given['units'] !== 'metric') return [];
  return rawItems(given, 'shells').flatMap(({ undersize }, i) => {
    if (typeof undersize !== 'string' || !/^\s*\d+\s*under/i.test(undersize)) return [];
    const message = `"${undersize}" has no unit, and this engine is metric: write it in mm, e.g. "0.25 mm under"`;
    return [{ path: `shells[${i}].undersize`, message }];
  });
}

/** Where an item stands in the sheet, which of a list that could not all be read is not where it was kept. */
function placeOf(path: string, places: Reading['places']): string {
  return path.replace(
    /^(\w+)\[(\d+)\]/,
    (_, section: string, i: string) => `${section}[${places[section]?.[Number(i)] ?? i}]`,
  );
}
