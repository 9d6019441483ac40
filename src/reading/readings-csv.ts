import Papa from 'papaparse';
import type { FileProblem } from './file-error.js';
import { tooLong, tooMany, withoutMark } from './file-text.js';
import { didYouMean } from './nearest.js';

/** The columns of a file of readings, in any order, in small letters or capitals. */
const COLUMNS = ['part', 'feature', 'station', 'angle', 'reading'] as const;

/** One row of the file, and the line that it begins on. */
export interface ReadingRow extends Readonly<Record<(typeof COLUMNS)[number], string>> {
  readonly line: number;
}

/** What a file of readings holds. */
export interface ReadingRows {
  readonly rows: readonly ReadingRow[];
  readonly problems: readonly FileProblem[];
  /** No row was read: there are too many, or their columns cannot be told apart. */
  readonly unread: boolean;
}

/** Where something stands in the file. */
export const lineOf = (line: number): string => `readings, line ${line}`;

/** A shed has some hundreds of readings. */
const MOST_LINES = 20_000;

/** Reads the rows of a file of readings. Every cell is text, and nothing but text. */
export function readingRows(text: string): ReadingRows {
  // One kind of line end, so that lines can be counted; a quoted cell may hold some too.
  const plain = withoutMark(text).replace(/\r\n?/g, '\n');
  const message = tooLong(text) ?? tooManyLines(plain);
  if (message !== undefined) return unread([{ path: 'readings', message }]);
  const { data, errors } = Papa.parse<string[]>(plain, { delimiter: ',', newline: '\n' });
  const lines = linesOf(data);
  const quoted = new Map(errors.map(({ row = 0, message }) => [row, message]));
  const [header, ...rows] = data
    .map((cells, i) => ({ cells: cells.map((cell) => cell.trim()), line: lines[i] ?? 1, row: i }))
    .filter(({ cells }) => cells.some((cell) => cell !== ''));
  const typed = header?.cells ?? [];
  // Some write their headings in capitals.
  const headings = typed.map((heading) => heading.toLowerCase());
  const wrong = headerProblems(headings, typed, header?.line ?? 1);
  if (wrong.length > 0) return unread(wrong);

  const problems: FileProblem[] = [];
  const places = COLUMNS.map((column) => [column, headings.indexOf(column)] as const);
  const sound = rows.flatMap(({ cells, line, row }): readonly ReadingRow[] => {
    const message = quoted.has(row)
      ? `has a quotation mark too few or too many: ${quoted.get(row)}`
      : `has ${cells.length} cells, and the header has ${headings.length}`;
    if (quoted.has(row) || cells.length !== headings.length) {
      problems.push({ path: lineOf(line), message });
      return [];
    }
    const named = places.map(([column, place]) => [column, cells[place]]);
    return [{ ...Object.fromEntries(named), line }];
  });
  return { rows: sound, problems, unread: false };
}

/** A file whose rows were not read. */
const unread = (problems: readonly FileProblem[]): ReadingRows => ({
  rows: [],
  problems,
  unread: true,
});

function tooManyLines(plain: string): string | undefined {
  const count = plain.replace(/\n$/, '').split('\n').length;
  return count > MOST_LINES ? tooMany(count, MOST_LINES, 'lines') : undefined;
}

/** The line that each row begins on: a quoted cell may go on over several. */
function linesOf(rows: readonly (readonly string[])[]): readonly number[] {
  let line = 1;
  return rows.map((cells) => {
    const first = line;
    line += cells.reduce((sum, cell) => sum + cell.split('\n').length - 1, 1);
    return first;
  });
}

function headerProblems(
  headings: readonly string[],
  typed: readonly string[],
  line: number,
): readonly FileProblem[] {
  const names = COLUMNS.join(', ');
  const all = `the columns are ${names}`;
  const known: readonly string[] = COLUMNS;
  const problem = (message: string): FileProblem => ({ path: lineOf(line), message });
  if (!headings.some((heading) => known.includes(heading))) {
    return [problem(`must name the columns, with commas between: ${names}`)];
  }
  return [
    ...headings.flatMap((heading, i) => {
      if (known.includes(heading)) {
        const twice = headings.indexOf(heading) < i;
        return twice ? [problem(`has column "${typed[i]}" twice; ${all}`)] : [];
      }
      const question = didYouMean(heading, COLUMNS);
      return [problem(`"${typed[i]}" is not a column; ${question ? `${question} ` : ''}${all}`)];
    }),
    ...COLUMNS.filter((column) => !headings.includes(column)).map((column) =>
      problem(`has no column "${column}"; ${all}`),
    ),
  ];
}
