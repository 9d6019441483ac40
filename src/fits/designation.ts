import { RebuildInputError } from '../quantities/index.js';
import { type ClassTable, classTable, gradesWith, LETTERS, stepOf } from './class-table.js';
import { STEP_ENDS } from './iso-deviations.js';

/** A letter and a grade, as far as their shape goes. */
const CLASS = /^[A-Za-z]{1,2}\d{1,2}$/;

/** A class at a size as it was read; the deviation and the tolerance are in micrometres. */
export interface ReadClass {
  readonly table: ClassTable;
  readonly millimetres: number;
  readonly upper: number;
  readonly tolerance: number;
}

/** Reads the designation of one part: a basic size in millimetres, a letter and a grade. */
export function readOne(designation: string): ReadClass {
  const end = endOfSize(designation);
  const start = pastSpace(designation, end);
  const name = end > 0 ? designation.slice(start) : '';
  const table = classTable(name);
  if (!table && !CLASS.test(name)) throw unreadable(designation, 'a letter and a grade', '40H7');
  return classAt(designation, sizeIn(designation, end), name, table);
}

/** Reads the designation of a fit: a basic size, the class of the hole, a stroke, and that of the shaft. */
export function readTwo(designation: string): readonly [hole: ReadClass, shaft: ReadClass] {
  const end = endOfSize(designation);
  const stroke = end > 0 ? designation.indexOf('/', end) : -1;
  const before = stroke > 0 && designation[stroke - 1] === ' ' ? stroke - 1 : stroke;
  const ofHole = stroke > 0 ? designation.slice(pastSpace(designation, end), before) : '';
  const ofShaft = stroke > 0 ? designation.slice(pastSpace(designation, stroke + 1)) : '';
  const [hole, shaft] = [classTable(ofHole), classTable(ofShaft)];
  if (!(hole || CLASS.test(ofHole)) || !(shaft || CLASS.test(ofShaft))) {
    throw unreadable(designation, 'the classes of hole and shaft', '40H7/g6');
  }
  const size = sizeIn(designation, end);
  const read = [
    classAt(designation, size, ofHole, hole),
    classAt(designation, size, ofShaft, shaft),
  ] as const;
  if (read[0].table.isHole && !read[1].table.isHole) return read;
  throw refused(
    designation,
    'a hole in capitals, a stroke and a shaft in small letters',
    'The hole comes first, e.g. 40H7/g6.',
  );
}

// Read by hand, digit by digit: a regular expression takes longer than all the rest.

const ZERO = 48;
const POINT = 46;
const SPACE = 32;
const isDigit = (code: number): boolean => code >= ZERO && code < ZERO + 10;

/** Where the number at the start of a designation ends: digits, and a point with digits behind it; 0 without one. */
function endOfSize(text: string): number {
  if (typeof text !== 'string') return 0;
  let end = 0;
  while (isDigit(text.charCodeAt(end))) end++;
  if (end === 0 || text.charCodeAt(end) !== POINT || !isDigit(text.charCodeAt(end + 1))) return end;
  end++;
  while (isDigit(text.charCodeAt(end))) end++;
  return end;
}

/** The number that ends there. Digits as a whole, divided once, are the nearest number to what is written. */
function sizeIn(text: string, end: number): number {
  if (end > MOST_DIGITS) return Number(text.slice(0, end));
  let digits = 0;
  let scale = 0;
  for (let i = 0; i < end; i++) {
    const code = text.charCodeAt(i);
    if (code === POINT) scale = 1;
    else {
      digits = digits * 10 + (code - ZERO);
      scale *= 10;
    }
  }
  return scale === 0 ? digits : digits / scale;
}

/** As many are held exactly. */
const MOST_DIGITS = 15;

const pastSpace = (text: string, at: number): number =>
  at > 0 && text.charCodeAt(at) === SPACE ? at + 1 : at;

function classAt(
  whole: string,
  millimetres: number,
  name: string,
  table: ClassTable | undefined,
): ReadClass {
  const step = stepOf(millimetres);
  if (step === undefined) {
    throw refused(
      whole,
      'of a basic size above 0 and up to and including 500 mm',
      'The basic size comes first, in millimetres: 40H7. Inch fits have classes such as RC4.',
    );
  }
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
