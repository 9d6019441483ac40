import type { FileProblem } from './file-problem.js';
import { type Given, isObject } from './given.js';
import { whose } from './whose.js';

/** The problems as lines of a message: each with its place and whose it is, those that are alike in one line. */
export function problemLines(problems: readonly FileProblem[], file: unknown): readonly string[] {
  const given = isObject(file) ? file : {};
  const groups = new Map<string, FileProblem[]>();
  for (const problem of problems) {
    const key = kindOf(problem) ?? `${groups.size}`;
    const group = groups.get(key);
    if (group) group.push(problem);
    else groups.set(key, [problem]);
  }
  return [...groups.values()].flatMap((group) => linesOf(group, given));
}

/** As many that are alike are one mistake made again and again. */
const ALIKE = 4;

function linesOf(group: readonly FileProblem[], file: Given): readonly string[] {
  const [first, ...others] = group;
  if (first === undefined) return [];
  if (group.length < ALIKE) return group.map((each) => lineOf(each, file));
  const column = COLUMN.exec(first.path)?.[2];
  if (column !== undefined && NO_UNIT.test(first.message)) {
    return [
      `readings: ${group.length} cells in the column "${column}" have no unit; ${headingFor(column, file)}`,
    ];
  }
  const rows = others.map(({ path }) => COLUMN.exec(path)?.[1] ?? path);
  const more = rows.length - MOST_PLACES;
  const where = `${rows.slice(0, MOST_PLACES).join(', ')}${more > 0 ? ` and ${more} more` : ''}`;
  const places = column === undefined ? 'the same at' : 'the same on lines';
  return [`${lineOf(first, file)} (${places} ${where})`];
}

/** The most places of problems that are alike. */
const MOST_PLACES = 10;

function lineOf({ path, message }: FileProblem, file: Given): string {
  const owner = whose(path, file);
  return `${path}${owner === undefined ? '' : ` (${owner})`}: ${message}`;
}

/** A cell of a CSV of readings: its line and its column. */
const COLUMN = /^readings, line (\d+): (.+)$/;
const NO_UNIT = /^"[^"]*" has no unit, /;
const WRONG_UNIT = /^"[^"]*" (is not .*) Did you mean "[^"]* (?:in|mm)"\?$/;
const NO_TEXT = /^-?[\d.e-]+ (is not text; .*)/;

/** What problems have in common that are one mistake made again and again; undefined if they are none. */
function kindOf({ path, message }: FileProblem): string | undefined {
  const column = COLUMN.exec(path)?.[2];
  if (column === undefined) {
    return NO_UNIT.test(message)
      ? 'no unit'
      : (NO_TEXT.exec(message)?.[1] ?? WRONG_UNIT.exec(message)?.[1]);
  }
  return `${column}: ${message.replace(/"(?:[^"\\]|\\.)*"|\d+/g, '')}`;
}

function headingFor(column: string, { units }: Given): string {
  const length = units === 'metric' ? 'mm' : 'in';
  return `write it in the heading, "${column} [${column === 'angle' ? 'deg' : length}]"`;
}
