import type { RebuildInputError } from '../quantities/index.js';
import {
  bareSteps,
  FileError,
  type FileProblem,
  type Given,
  givenIn,
  isObject,
  rawItems,
  readSections,
  stepsIn,
} from '../reading/index.js';
import { contradictions, type SoundSheet } from './contradictions.js';
import { onlyFilledIn } from './not-filled-in.js';
import { sections } from './schema.js';
import type { Sheet } from './sheet.js';

/**
 * Reads an inspection sheet: JSON text or the parsed value, with every quantity as text with its
 * unit. One error lists all mistakes, each with its path; a mistake in one section hides none in
 * another. A rod, main or cylinder whose journal or bore was not read, or at too few places to tell its shape,
 * counts as not measured; null in it is what was not filled in. A repeated key is a mistake, because `JSON.parse` would silently drop the first.
 *
 * @param input - JSON text of at most 20 million characters, or the parsed value
 * @returns the sheet with every quantity in SI
 * @throws {FileError} (a {@link RebuildInputError}) when a field is missing, misspelt, repeated, out of range or contradictory, or
 * the text is too long or not JSON
 * @example
 * ```ts
 * const sheet = readSheet('{ "version": 1, "engine": "pump set", "units": "inch" }');
 * sheet.engine; // "pump set"
 * ```
 */
export function readSheet(input: unknown): Sheet {
  const fieldsOfIt = 'version, engine, units and the readings';
  const { given, problems: repeated } = givenIn(input, 'sheet', fieldsOfIt);
  const { given: filledIn, notFilledIn, pathInFile } = onlyFilledIn(given);
  const { sound, problems } = readSections(filledIn, sections);
  const inFile = ({ path, message }: FileProblem) => ({ path: pathInFile(path), message });
  const crankshaftRead = !problems.some(({ path }) => path.startsWith('crankshaft'));
  const all = [
    ...repeated,
    ...problems.map(inFile),
    ...repeatedNames(given),
    ...unknownShells(given),
    ...bareUndersizes(given),
    // A crankshaft that could not be read is not also reported as missing.
    ...contradictions(sound as SoundSheet)
      .filter(({ path }) => crankshaftRead || !path.startsWith('crankshaft'))
      .map(inFile),
  ];
  if (all.length > 0) throw new FileError(input, all, 'sheet', given);
  return {
    ...(sound as unknown as Sheet),
    ...(Object.keys(notFilledIn).length > 0 && { notFilledIn }),
  };
}

/** Names used twice. */
function repeatedNames(given: Given): readonly FileProblem[] {
  return ['rods', 'mains', 'shells', 'cylinders', 'valves'].flatMap((section) => {
    const seen = new Set<unknown>();
    return rawItems(given[section]).flatMap(({ name }, i) => {
      if (typeof name !== 'string' || !seen.has(name)) {
        seen.add(name);
        return [];
      }
      const message = `"${name}" is used twice; give each its own name`;
      return [{ path: `${section}[${i}].name`, message }];
    });
  });
}

/** Fitted shells that are not in the list. */
function unknownShells(given: Given): readonly FileProblem[] {
  const shells = rawItems(given['shells']);
  return ['rods', 'mains'].flatMap((kind) => {
    const known = new Set(shells.flatMap(({ name, fits }) => (fits === kind ? [name] : [])));
    return rawItems(given[kind]).flatMap(({ fittedShells }, i) => {
      if (typeof fittedShells !== 'string' || known.has(fittedShells)) return [];
      const message = `"${fittedShells}" is not in the list of shells for ${kind}; add it, with 0 pairs if it is scrap`;
      return [{ path: `${kind}[${i}].fittedShells`, message }];
    });
  });
}

/** Undersizes without a unit on a metric engine: they cannot be thou. */
function bareUndersizes(given: Given): readonly FileProblem[] {
  const crankshaft = isObject(given['crankshaft']) ? given['crankshaft'] : {};
  return bareSteps(given['units'], [
    ...rawItems(given['shells']).map(({ undersize }, i) => ({
      path: `shells[${i}].undersize`,
      step: undersize,
    })),
    ...['rodJournals', 'mainJournals'].flatMap((kind) =>
      stepsIn(crankshaft[kind], `crankshaft.${kind}`),
    ),
  ]);
}
