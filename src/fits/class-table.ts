import { toleranceOf, upperDeviation } from './deviations.js';
import { RANGE_OF_STEP, STEP_ENDS } from './iso-deviations.js';

/** Letters of ISO 286-1, in their order. */
export const LETTERS: readonly string[] =
  /* @__PURE__ */ 'a b c cd d e ef f fg g h js j k m n p r s t u v x y z za zb zc'.split(' ');

/** One class at all sizes. */
export interface ClassTable {
  /** Letter and grade: `H7`. */
  readonly name: string;
  /** The letter in small, whether of a hole or a shaft. */
  readonly letter: string;
  readonly isHole: boolean;
  /** Number of the grade: -1 of IT01, 0 of IT0. */
  readonly grade: number;
  /** Upper deviation in each step of sizes [µm]; undefined where there is no such class. */
  readonly uppers: readonly (number | undefined)[];
  /** Tolerance in each step of sizes [µm]. */
  readonly tolerances: readonly number[];
  /** What is not to be used up to 1 mm, if this is not: a note to the tables. */
  readonly barredUpTo1mm: string | undefined;
}

/** Classes that were asked for; there are about a thousand. */
const made = /* @__PURE__ */ new Map<string, ClassTable>();

/** The table of a class by its name; undefined if its letter or its grade does not exist. */
export function classTable(name: string): ClassTable | undefined {
  const known = made.get(name);
  if (known) return known;
  const table = makeTable(name);
  if (table) made.set(name, table);
  return table;
}

function makeTable(name: string): ClassTable | undefined {
  const found = /^([A-Z]{1,2}|[a-z]{1,2})(01|0|[1-9]|1[0-8])$/.exec(name);
  if (!found) return undefined;
  const [, written = '', number] = found;
  const letter = written.toLowerCase();
  if (!LETTERS.includes(letter)) return undefined;
  const isHole = letter !== written;
  const grade = number === '01' ? -1 : Number(number);
  return {
    name,
    letter,
    isHole,
    grade,
    uppers: RANGE_OF_STEP.map((_, step) => upperDeviation({ letter, isHole, grade, step })),
    tolerances: RANGE_OF_STEP.map((range) => toleranceOf(grade, range)),
    barredUpTo1mm: barredUpTo1mm(letter, isHole, grade),
  };
}

/** What the notes to the tables bar on sizes of up to 1 mm. */
function barredUpTo1mm(letter: string, isHole: boolean, grade: number): string | undefined {
  if (letter === 'a' || letter === 'b') return 'no a, b, A or B';
  if (grade >= 14) return 'no grade from IT14 on';
  return isHole && letter === 'n' && grade > 8 ? 'no N above IT8' : undefined;
}

/** The step of every whole millimetre; made when it is first asked for. */
let steps: Uint8Array | undefined;

/** The first step that a size does not exceed: all of them end at whole millimetres. */
export function stepOf(millimetres: number): number | undefined {
  steps ??= Uint8Array.from({ length: 501 }, (_, size) =>
    STEP_ENDS.findIndex((end) => size <= end),
  );
  return millimetres > 0 ? steps[Math.ceil(millimetres)] : undefined;
}

/** The grades that a letter has in a step of sizes. */
export function gradesWith(letter: string, isHole: boolean, step: number): readonly number[] {
  const all = Array.from({ length: 18 }, (_, i) => i + 1);
  return all.filter((grade) => upperDeviation({ letter, isHole, grade, step }) !== undefined);
}
