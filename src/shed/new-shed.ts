import { guardFields, guardText, guardWhole, guardWord } from '../judging/internal.js';
import { RebuildInputError, type UnitSystem } from '../quantities/index.js';
import { guardSystem } from '../quantities/internal.js';
import { CYLINDERS, MAINS, numbered, type StarterFile, standardIn } from '../reading/index.js';
import { readShed } from './read-shed.js';

/** What a new shed file is written from. */
export interface NewShed {
  /** Name of the engine. */
  readonly name: string;
  /** The units of the file. */
  readonly units: UnitSystem;
  /** Number of cylinders [-]. */
  readonly cylinders: number;
  /** Number of main bearings with shells; 0 if the crankshaft runs in rolling bearings [-]. */
  readonly mains: number;
  /** The maker's span of a standard rod journal, as text: `1.6245 in to 1.6250 in`. */
  readonly rodJournal: string;
  /** The same of a main journal; needed if there are mains. */
  readonly mainJournal?: string;
  /** The same of a standard bore. */
  readonly bore: string;
  /** How the oil gets to the bearings, if that is known. */
  readonly lubrication?: 'splash' | 'pump';
  /** How many engines the parts come from; by default 1. */
  readonly cores?: number;
}

const FIELDS = [
  'name',
  'units',
  'cylinders',
  'mains',
  'rodJournal',
  'mainJournal',
  'bore',
  'lubrication',
  'cores',
] as const;

/** One letter for each engine that parts come from. */
const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';

/** What to do with the file, in the file. */
const NOTES = [
  'Fill in what you know. What you do not know may be left out: it then counts as not measured.',
  'Print the schema beside this file, and an editor helps you to type: crankwright schema shed > shed.schema.json',
  'Write the rows to fill with readings: crankwright new readings THIS-FILE > readings.csv',
  'Then: crankwright plan THIS-FILE --readings readings.csv',
  'List what else is on the shelf: shells (fits, undersize, pairs), ringSets and thrustWashers; and what you can buy or have done: toBuy, machining.',
  'Faults that you see belong to a part: "faults": ["scored"]. Have crankshafts, rods, blocks and heads tested for cracks before you spend money on them.',
  'These parts are what engines usually hold, named for you: take out what you do not have. An engine that is not taken apart belongs under cores: { "name": "engine C", "condition": "seized", "lacks": ["magneto"] }, without its parts.',
  'Every part may have a condition (ran, turns, seized, not seen) and marks. A magneto or a carburettor goes under otherParts with its kind; engine.alsoNeeds says what a complete engine needs besides.',
];

/**
 * Makes a new shed file from a few answers: the engine, and the parts of as many engines as there are, with names and
 * without readings. It tells in its notes what to do with it. `readShed` reads it as it is.
 *
 * @param answers - name, units, counts and standard sizes of the engine
 * @returns the value of the file, for `JSON.stringify`
 * @throws {RebuildInputError} when an answer is missing, unknown or impossible
 * @example
 * ```ts
 * const file = newShed({
 *   name: 'pump set', units: 'inch', cylinders: 2, mains: 0,
 *   rodJournal: '1.6245 in to 1.6250 in', bore: '3.0000 to 3.0005', cores: 3,
 * });
 * readShed(file).blocks?.map(({ name }) => name); // ["block A", "block B", "block C"]
 * ```
 */
export function newShed(answers: NewShed): StarterFile {
  guardFields('answers', answers, FIELDS);
  const { units, mainJournal, lubrication, cores = 1 } = answers;
  const name = guardText('answers.name', answers.name);
  guardSystem('answers.units', units);
  const cylinders = guardWhole('answers.cylinders', answers.cylinders, CYLINDERS, COUNT);
  const mains = guardWhole('answers.mains', answers.mains, MAINS, COUNT);
  const count = guardWhole('answers.cores', cores, [0, LETTERS.length], COUNT);
  const standard = (field: 'rodJournal' | 'mainJournal' | 'bore', text: string) => ({
    standard: standardIn(`answers.${field}`, text, units),
  });
  if (mains > 0 !== (mainJournal !== undefined)) throw wrongMainJournal(mainJournal);
  const letters = [...LETTERS].slice(0, count);
  const file = {
    $schema: 'shed.schema.json',
    notes: NOTES,
    version: 1,
    shed: name,
    units,
    engine: {
      name,
      cylinders,
      mains,
      rodJournals: standard('rodJournal', answers.rodJournal),
      ...(mainJournal !== undefined && { mainJournals: standard('mainJournal', mainJournal) }),
      bores: standard('bore', answers.bore),
      ...(lubrication !== undefined && {
        lubrication: guardWord('answers.lubrication', lubrication, ['splash', 'pump']),
      }),
    },
    ...partsOf(letters, cylinders, mains),
  };
  // Sizes that belong to no engine are refused as in any other file.
  readShed(file);
  return file;
}

const COUNT = 'Count them, and give a number without quotes.';

/** The parts of engines, with names alone. */
function partsOf(letters: readonly string[], cylinders: number, mains: number) {
  const each = <P extends object>(word: string, places: (letter: string) => P) =>
    letters.map((letter) => ({
      name: `${word} ${letter}`,
      from: `engine ${letter}`,
      ...places(letter),
    }));
  const nothing = () => ({});
  return {
    blocks: each('block', () => ({
      bores: numbered('cylinder', cylinders),
      ...(mains > 0 && { mainHousings: numbered('main housing', mains) }),
    })),
    crankshafts: each('crankshaft', () => ({
      ...(mains > 0 && { mainJournals: numbered('main', mains) }),
      rodJournals: numbered('rod', cylinders),
    })),
    rods: each('rods', () => ({ rods: numbered('rod', cylinders) })),
    pistonSets: each('pistons', () => ({ pistons: numbered('piston', cylinders) })),
    heads: each('head', nothing),
    valveSets: each('valves', nothing),
  };
}

const wrongMainJournal = (value: string | undefined) =>
  new RebuildInputError({
    parameter: 'answers.mainJournal',
    value,
    expected:
      "the maker's size of a main journal if there are mains with shells, and none otherwise",
    ...(value !== undefined && { problem: 'is given, but there are no mains with shells' }),
    hint: 'A crankshaft in rolling bearings has 0 mains.',
  });
