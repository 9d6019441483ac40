import { RebuildInputError } from '../quantities/index.js';
import { type ClassTable, classTable, gradesWith, LETTERS, stepOf } from './class-table.js';
import { STEP_ENDS } from './iso-deviations.js';

const OF_ONE = /^(\d+(?:\.\d+)?) ?([A-Za-z]{1,2}\d{1,2})$/;
const OF_TWO = /^(\d+(?:\.\d+)?) ?([A-Za-z]{1,2}\d{1,2}) ?\/ ?([A-Za-z]{1,2}\d{1,2})$/;

/** A class at a size as it was read; the deviation and the tolerance are in micrometres. */
export interface ReadClass {
  readonly table: ClassTable;
  readonly millimetres: number;
  readonly upper: number;
  readonly tolerance: number;
}

/** Reads the designation of one part: a basic size in millimetres, a letter and a grade. */
export function readOne(designation: string): ReadClass {
  const found = typeof designation === 'string' ? OF_ONE.exec(designation) : null;
  if (!found) throw unreadable(designation, 'a letter and a grade', '40H7');
  return classAt(designation, Number(found[1]), found[2] as string);
}

/** Reads the designation of a fit: a basic size, the class of the hole, a stroke, and that of the shaft. */
export function readTwo(designation: string): readonly [hole: ReadClass, shaft: ReadClass] {
  const found = typeof designation === 'string' ? OF_TWO.exec(designation) : null;
  if (!found) throw unreadable(designation, 'the classes of hole and shaft', '40H7/g6');
  const size = Number(found[1]);
  const hole = classAt(designation, size, found[2] as string);
  const shaft = classAt(designation, size, found[3] as string);
  if (hole.table.isHole && !shaft.table.isHole) return [hole, shaft];
  throw refused(
    designation,
    'a hole in capitals, a stroke and a shaft in small letters',
    'The hole comes first, e.g. 40H7/g6.',
  );
}

function classAt(whole: string, millimetres: number, name: string): ReadClass {
  const step = stepOf(millimetres);
  if (step === undefined) {
    throw refused(
      whole,
      'of a basic size above 0 and up to and including 500 mm',
      'The basic size comes first, in millimetres: 40H7. Inch fits have classes such as RC4.',
    );
  }
  const table = classTable(name);
  if (!table) throw noSuchClass(whole, name);
  const upper = table.uppers[step];
  if (upper === undefined) throw notAtThisSize(whole, table, step);
  if (millimetres <= 1 && table.barredUpTo1mm) {
    throw refused(
      whole,
      'a class that is used at this size',
      `ISO 286-1 has ${table.barredUpTo1mm} up to and including 1 mm.`,
    );
  }
  return { table, millimetres, upper, tolerance: table.tolerances[step] as number };
}

function unreadable(designation: unknown, what: string, example: string): RebuildInputError {
  return new RebuildInputError({
    parameter: 'designation',
    value: designation,
    expected: `a basic size in millimetres followed by ${what}`,
    hint: `Write it as on the drawing, with a decimal point and nothing behind it, e.g. ${example}.`,
    example: `'${example}'`,
  });
}

const refused = (value: string, expected: string, hint: string): RebuildInputError =>
  new RebuildInputError({ parameter: 'designation', value, expected, hint });

function noSuchClass(whole: string, name: string): RebuildInputError {
  const letter = name.replace(/\d+$/, '');
  const isHole = letter !== letter.toLowerCase();
  const letters = isHole ? LETTERS.map((one) => one.toUpperCase()) : LETTERS;
  return letters.includes(letter)
    ? refused(whole, 'of a grade from 01, 0 and 1 to 18', 'Write the grade as in H7.')
    : refused(
        whole,
        'of a letter of ISO 286-1',
        `${isHole ? 'Holes' : 'Shafts'} have: ${letters.join(', ')}.`,
      );
}

function notAtThisSize(whole: string, { letter, isHole }: ClassTable, step: number) {
  const cased = isHole ? letter.toUpperCase() : letter;
  const grades = gradesWith(letter, isHole, step);
  if (grades.length > 0) {
    return refused(
      whole,
      `of a grade that has ${cased} at this size`,
      `These have it: ${grades.join(', ')}.`,
    );
  }
  const end = STEP_ENDS[step];
  return refused(
    whole,
    'of a letter that is defined at this size',
    `ISO 286-1 has no ${cased} in the step of sizes that ends at ${end} mm.`,
  );
}
