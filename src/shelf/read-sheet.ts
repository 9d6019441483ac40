import { RebuildInputError } from '../quantities/error.js';
import { inspectionSteps } from './inspect.js';
import { sections } from './schema.js';
import type { Sheet } from './sheet.js';
import { problemAt, SheetError, type SheetProblem } from './sheet-error.js';

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
  const fieldsGiven = raw as Readonly<Record<string, unknown>>;
  const problems: SheetProblem[] = unknownSections(fieldsGiven);
  const sheet: Record<string, unknown> = {};
  const failed = new Set<string>();
  for (const [key, schema] of Object.entries(sections)) {
    const result = schema.safeParse(ownField(fieldsGiven, key));
    if (!result.success) {
      failed.add(key);
      problems.push(...result.error.issues.flatMap((issue) => problemsOf(key, issue)));
    } else if (result.data !== undefined) sheet[key] = result.data;
  }
  problems.push(
    ...repeatedNames(sheet),
    ...unknownShells(sheet, failed),
    ...refusals(sheet, failed),
  );
  if (problems.length > 0) throw new SheetError(input, problems);
  return sheet as unknown as Sheet;
}

function parseJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch (error) {
    const message = `is not JSON: ${error instanceof Error ? error.message : String(error)}`;
    throw new SheetError(text, [{ path: 'sheet', message }]);
  }
}

const ownField = (fields: Readonly<Record<string, unknown>>, key: string): unknown =>
  Object.hasOwn(fields, key) ? fields[key] : undefined;

function unknownSections(fieldsGiven: object): SheetProblem[] {
  const known = Object.keys(sections);
  return Object.keys(fieldsGiven)
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

/** Names that stand twice. */
function repeatedNames(sheet: Partial<Sheet>): SheetProblem[] {
  return (['rods', 'mains', 'shells', 'cylinders'] as const).flatMap((section) => {
    const names = (sheet[section] ?? []).map(({ name }) => name);
    return names.flatMap((name, i) => {
      const message = `"${name}" stands twice; give each its own name`;
      return names.indexOf(name) === i ? [] : [{ path: `${section}[${i}].name`, message }];
    });
  });
}

/** Shells that are fitted but not on the list. */
function unknownShells(sheet: Partial<Sheet>, failed: ReadonlySet<string>): SheetProblem[] {
  if (failed.has('shells')) return [];
  return (['rods', 'mains'] as const).flatMap((kind) =>
    (sheet[kind] ?? []).flatMap(({ fittedShells }, i) => {
      const known = sheet.shells?.some(({ name, fits }) => name === fittedShells && fits === kind);
      if (fittedShells === undefined || known) return [];
      const message = `"${fittedShells}" is not among the shells for ${kind}; list it there, with 0 pairs if it is scrap`;
      return [{ path: `${kind}[${i}].fittedShells`, message }];
    }),
  );
}

/** Tries every part of the inspection whose input is sound, for readings that contradict each other. */
function refusals(sheet: Partial<Sheet>, failed: ReadonlySet<string>): SheetProblem[] {
  return inspectionSteps(sheet).flatMap(({ needs, pathOf, inspect }) => {
    if (needs.some((section) => failed.has(section))) return [];
    try {
      inspect();
      return [];
    } catch (error) {
      if (!(error instanceof RebuildInputError)) throw error;
      return [problemAt(pathOf(error.parameter), error)];
    }
  });
}
