import Papa from 'papaparse';
import type { FileProblem } from './file-error.js';
import { tooLong, tooMany, withoutMark } from './file-text.js';
import { didYouMean } from './nearest.js';

/** The columns of a file of readings, in any order, in small letters or capitals. */
const COLUMNS = ['part', 'feature', 'station', 'angle', 'reading'] as const;

/** One row of the file, and the line it begins on. */
export interface ReadingRow extends Readonly<Record<(typeof COLUMNS)[number], string>> {
  readonly line: number;
}

/** The result of reading a CSV of readings. */
export interface ReadingRows {
  readonly rows: readonly ReadingRow[];
  readonly problems: readonly FileProblem[];
  /** No row was read: the file is too long, or its header is wrong. */
  readonly unread: boolean;
}

/** A place in the file. */
export const lineOf = (line: number): string => `readings, line ${line}`;

/** The most lines: a shed has a few hundred readings, a dealer's of hundreds of engines some ten thousands. */
const MOST_LINES = 200_000;

/** Reads the rows of a CSV of readings. Every cell is plain text. */
export function readingRows(text: string): ReadingRows {
  // With one kind of line end, lines can be counted; a quoted cell may hold some too.
  const long = tooLong(text);
  const plain = long === undefined ? withoutMark(text).replace(/\r\n?/g, '\n') : '';
  const message = long ?? tooManyLines(plain);
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
      ? `has an unmatched quotation mark: ${quoted.get(row)}`
      : `has ${cells.length} cells, but the header has ${headings.length}`;
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

/** The line each row begins on: a quoted cell may span several lines. */
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
    return [problem(`must name the columns, separated by commas: ${names}`)];
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
