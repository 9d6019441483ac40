import type { RebuildInputError } from '../quantities/error.js';
import { bareSteps, stepsIn } from './checks/bare-steps.js';
import { problemsFrom, where } from './checks/check.js';
import { bearingChecks } from './checks/shelf-bearings.js';
import { boreChecks, leastWallMissing } from './checks/shelf-bores.js';
import { countProblems, currencyProblems } from './checks/shelf-counts.js';
import { type RawPart, rawParts, repeatedNames } from './checks/shelf-names.js';
import { stepProblems } from './checks/shelf-steps.js';
import { guardEndPlayLimits } from './checks/sizes.js';
import type { SoundShelf } from './checks/sound-shelf.js';
import { type Given, givenIn, isObject, readSections } from './read-sections.js';
import { joinReadings } from './readings.js';
import { SheetError, type SheetProblem } from './sheet-error.js';
import type { Shelf } from './shelf.js';
import { shelfSections } from './shelf-schema.js';

/**
 * Reads a shelf of parts: JSON text or the value it holds, with every quantity as
 * text with its unit and every price with its currency. Readings may stand in a CSV
 * file of their own, with the columns `part, feature, station, angle, reading`. All
 * mistakes come in one error, each with its path or its line; a mistake in one part
 * hides none in another. A key that stands twice is one, as `JSON.parse` would drop the
 * first without a word. A shelf without any parts is a sound one.
 *
 * @param input - JSON text of at most 2 million characters, or the parsed value
 * @param readings - CSV text of at most 20 000 lines that joins it; by default none
 * @returns the shelf with every quantity in SI
 * @throws {SheetError} (a {@link RebuildInputError}) when anything is missing, misspelt, given twice, out of range or contradictory, or
 * the text is not JSON, or is too long
 * @example
 * ```ts
 * const shelf = readShelf(
 *   {
 *     version: 1,
 *     shelf: 'the shed',
 *     units: 'inch',
 *     engine: {
 *       name: 'pump set',
 *       cylinders: 2,
 *       mains: 0,
 *       rodJournals: { standard: { min: '1.6245 in', max: '1.6250 in' } },
 *       bores: { standard: { min: '3.0000 in', max: '3.0005 in' } },
 *     },
 *     rods: [{ name: 'rod A', rods: [{ name: 'big end' }] }],
 *   },
 *   'part, feature, station, angle, reading\nrod A, big end, , , 1.7507 in',
 * );
 * shelf.rods?.map(({ name }) => name); // ["rod A"]
 * ```
 */
export function readShelf(input: unknown, readings?: string): Shelf {
  const fieldsOfIt = 'version, shelf, units, engine and the parts there are';
  const { given, repeated } = givenIn(input, 'shelf', fieldsOfIt);
  const joined = joinReadings(given, readings);
  const { sound, problems } = readSections(joined.given, shelfSections);
  const found = [...problems, ...contradictionsOf(joined.given, sound as SoundShelf)];
  const all = [...repeated, ...found.flatMap(joined.placeOf), ...joined.problems];
  if (all.length > 0) throw new SheetError(input, all, 'shelf');
  return sound as unknown as Shelf;
}

/** What does not go together: in the file as it came, however spoilt, and in what of it is sound. */
function contradictionsOf(given: Given, shelf: SoundShelf): readonly SheetProblem[] {
  const parts = rawParts(given);
  const bare = bareStepsOf(given, parts);
  return [
    ...repeatedNames(parts),
    ...bare,
    ...countProblems(shelf),
    ...currencyProblems(shelf),
    ...leastWallMissing(shelf),
    ...stepProblems(shelf, bare),
    ...problemsFrom([
      ...bearingChecks(shelf, 'rods'),
      ...bearingChecks(shelf, 'mains'),
      ...boreChecks(shelf),
      ...where('engine.endPlay', shelf.engine?.endPlay, guardEndPlayLimits),
    ]),
  ];
}

/** Undersizes and oversizes without a unit, which on a metric shelf are not thou. */
function bareStepsOf(given: Given, parts: readonly RawPart[]): readonly SheetProblem[] {
  const engine = isObject(given['engine']) ? given['engine'] : {};
  return bareSteps(given['units'], [
    ...['rodJournals', 'mainJournals', 'bores'].flatMap((field) =>
      stepsIn(engine[field], `engine.${field}`),
    ),
    ...parts.flatMap(({ path, part }) =>
      ['undersize', 'oversize'].map((field) => ({ path: `${path}.${field}`, step: part[field] })),
    ),
  ]);
}
