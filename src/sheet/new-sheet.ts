import { guardFields, guardText, guardWhole } from '../judging/internal.js';
import type { UnitSystem } from '../quantities/index.js';
import { guardSystem } from '../quantities/internal.js';
import {
  CYLINDERS,
  MAINS,
  numbered,
  type StarterFile,
  standardIn,
  UNIT_OF,
} from '../reading/index.js';
import { fieldExamples } from './field-examples.js';
import { WAITING } from './left-waiting.js';
import { readSheet } from './read-sheet.js';

/** What a new inspection sheet is written from. */
export interface NewSheet {
  /** Name of the engine. */
  readonly name: string;
  /** The units of the file. */
  readonly units: UnitSystem;
  /** Number of cylinders [-]. */
  readonly cylinders: number;
  /** Number of main bearings with shells; 0 if the crankshaft runs in rolling bearings [-]. */
  readonly mains: number;
  /** The maker's span of a standard rod journal, as text: `1.6245 in to 1.6250 in`; if it is known. */
  readonly rodJournal?: string;
  /** The same of a main journal, if it is known. */
  readonly mainJournal?: string;
  /** The same of a standard bore, if it is known. */
  readonly bore?: string;
}

const FIELDS = [
  'name',
  'units',
  'cylinders',
  'mains',
  'rodJournal',
  'mainJournal',
  'bore',
] as const;

const NOTES = [
  'Fill in what you measured, and leave the rest out: the report says what was not measured.',
  'A rod or main is judged once its journal was read at two stations; its clearance and its shells only with its housingBore. One with a single station counts as not measured; a shed file takes it half read.',
  'Print the schema beside this file, and an editor helps you to type: crankwright schema sheet > sheet.schema.json',
  'x-rods, x-mains and x-cylinders wait for readings. Nothing reads them: take the x- from its name once you have filled in some of it. What is left as it stands here counts as not measured.',
  'A table has a list of diameters for each station, one for each angle, in bare numbers. A station is how far along the journal, or down from the deck, they were read.',
  'x-examples shows how to write end play, shells, pistons, rings, limits and a leak. It is of a made-up engine: write your own figures where its names say, outside of it.',
  'Then: crankwright report THIS-FILE',
];

/** Angles that show an oval wherever it lies. */
const ANGLES = ['0 deg', '60 deg', '120 deg'];

/**
 * Makes a new inspection sheet from a few answers: the engine and its standard sizes, and rods, mains and cylinders
 * that wait for their readings under names that are not read. It tells in its notes what to do with it. `readSheet` reads
 * it as it is.
 *
 * @param answers - name, units and counts of the engine, and its standard sizes as far as they are known
 * @returns the value of the file, for `JSON.stringify`
 * @throws {RebuildInputError} when an answer is missing, unknown or impossible
 * @example
 * ```ts
 * const file = newSheet({ name: 'pump set', units: 'inch', cylinders: 2, mains: 2, bore: '3.0000 in to 3.0005 in' });
 * readSheet(file).engine; // "pump set"
 * ```
 */
export function newSheet(answers: NewSheet): StarterFile {
  guardFields('answers', answers, FIELDS);
  const { units, rodJournal, mainJournal, bore } = answers;
  const name = guardText('answers.name', answers.name);
  guardSystem('answers.units', units);
  const cylinders = guardWhole('answers.cylinders', answers.cylinders, CYLINDERS, COUNT);
  const mains = guardWhole('answers.mains', answers.mains, MAINS, COUNT);
  const standard = (field: string, text: string) => ({
    standard: standardIn(`answers.${field}`, text, units),
  });
  const crankshaft = {
    ...(rodJournal !== undefined && { rodJournals: standard('rodJournal', rodJournal) }),
    ...(mainJournal !== undefined && { mainJournals: standard('mainJournal', mainJournal) }),
  };
  const toFill = (stations: number) => ({
    unit: UNIT_OF[units],
    angles: ANGLES,
    stations: Array.from({ length: stations }, () => null),
    diameters: Array.from({ length: stations }, () => ANGLES.map(() => null)),
  });
  const bearing = { journal: { readings: toFill(2) }, housingBore: null };
  const file = {
    $schema: 'sheet.schema.json',
    'x-notes': NOTES,
    version: 1,
    engine: name,
    units,
    ...(Object.keys(crankshaft).length > 0 && { crankshaft }),
    ...(bore !== undefined && { bores: standard('bore', bore) }),
    [WAITING.rods]: numbered('rod', cylinders).map((each) => ({ ...each, ...bearing })),
    ...(mains > 0 && {
      [WAITING.mains]: numbered('main', mains).map((each) => ({ ...each, ...bearing })),
    }),
    [WAITING.cylinders]: numbered('cylinder', cylinders).map((each) => ({
      ...each,
      bore: { readings: toFill(3) },
    })),
    'x-examples': fieldExamples(units),
  };
  // Sizes that belong to no engine are refused as in any other file.
  readSheet(file);
  return file;
}

const COUNT = 'Count them, and give a number without quotes.';
