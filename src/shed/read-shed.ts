import { aroundBores, assemblyChecks } from '../assembly/index.js';
import type { RebuildInputError } from '../quantities/index.js';
import {
  type AssemblyData,
  bareSteps,
  checkIfGiven,
  FileError,
  type FileProblem,
  type Given,
  givenIn,
  guardEndPlayLimits,
  isObject,
  problemsFrom,
  readSections,
  stepsIn,
} from '../reading/index.js';
import { asWritten } from './as-written.js';
import { bearingChecks } from './checks/bearings.js';
import { belongingProblems } from './checks/belonging.js';
import { boreChecks, leastWallMissing } from './checks/bores.js';
import { coreProblems } from './checks/cores.js';
import { countProblems, currencyProblems } from './checks/counts.js';
import { futureDates } from './checks/dates.js';
import { historyProblems } from './checks/history.js';
import { kindProblems } from './checks/kinds.js';
import { type RawPart, rawParts, repeatedNames } from './checks/names.js';
import type { SoundShed } from './checks/sound-shed.js';
import { stepProblems } from './checks/steps.js';
import { supersessionProblems } from './checks/supersessions.js';
import { toMakeProblems } from './checks/to-make.js';
import { joinReadings } from './readings.js';
import { shedSections } from './schema.js';
import type { Shed } from './shed.js';
import { guardToday } from './today.js';

/**
 * Reads a shed file: JSON text or the parsed value, with every quantity as text with its unit and
 * every price with its currency. The readings may be in a CSV file, with the columns
 * `part, feature, station, angle, reading`. One error lists all mistakes, each with its path or its
 * line; a mistake in one part hides none in another. A repeated key is a mistake, because
 * `JSON.parse` would silently drop the first. A shed without any parts is valid.
 *
 * @param input - JSON text of at most 20 million characters, or the parsed value
 * @param readings - CSV text of readings, at most 200 000 lines; by default none
 * @param options - `today`, as `2026-11-26`: no date of a part may be after it; by default dates are not compared with it
 * @returns the shed with every quantity in SI
 * @throws {FileError} (a {@link RebuildInputError}) when a field is missing, misspelt, repeated, out of range or contradictory, or
 * the text is too long or not JSON
 * @throws {RebuildInputError} when `today` is not a day
 * @example
 * ```ts
 * const shed = readShed(
 *   {
 *     version: 1,
 *     shed: 'the shed',
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
 * shed.rods?.map(({ name }) => name); // ["rod A"]
 * ```
 */
export function readShed(
  input: unknown,
  readings?: string,
  options: { readonly today?: string } = {},
): Shed {
  const today = guardToday(options);
  const fieldsOfIt = 'version, shed, units, engine and the parts';
  const { given, problems: repeated } = givenIn(input, 'shed', fieldsOfIt);
  const joined = joinReadings(given, readings);
  const { sound, problems } = readSections(joined.given, shedSections);
  const found = [
    ...problems,
    ...contradictionsOf(joined.given, sound as SoundShed),
    ...futureDates(joined.given, today),
  ];
  const all = [...repeated, ...found.flatMap(joined.placeOf), ...joined.problems];
  if (all.length > 0) throw new FileError(input, all, 'shed', given);
  return { ...(sound as unknown as Shed), asWritten: asWritten(input, readings) };
}

/** Finds contradictions, in the raw file and in the parts of it that could be read. */
function contradictionsOf(given: Given, shed: SoundShed): readonly FileProblem[] {
  const parts = rawParts(given);
  const bare = bareStepsOf(given, parts);
  return [
    ...repeatedNames(parts),
    ...bare,
    ...countProblems(shed),
    ...currencyProblems(shed),
    ...leastWallMissing(shed),
    ...historyProblems(shed),
    ...supersessionProblems(shed),
    ...belongingProblems(shed),
    ...coreProblems(shed),
    ...kindProblems(shed),
    ...toMakeProblems(shed, parts),
    ...stepProblems(shed, bare),
    ...problemsFrom([
      ...bearingChecks(shed, 'rods'),
      ...bearingChecks(shed, 'mains'),
      ...boreChecks(shed),
      // A figure that could not be read is undefined there, as if it were not given.
      ...assemblyChecks(
        'engine.assembly',
        shed.engine?.assembly as AssemblyData | undefined,
        aroundBores(shed.engine?.bores),
      ),
      ...checkIfGiven('engine.endPlay', shed.engine?.endPlay, guardEndPlayLimits),
    ]),
  ];
}

/** Undersizes and oversizes without a unit in a metric shed: they cannot be thou. */
function bareStepsOf(given: Given, parts: readonly RawPart[]): readonly FileProblem[] {
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
