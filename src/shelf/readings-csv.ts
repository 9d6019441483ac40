import Papa from 'papaparse';
import { didYouMean } from './nearest.js';
import type { SheetProblem } from './sheet-error.js';

/** The columns of a file of readings, in any order. */
const COLUMNS = ['part', 'feature', 'station', 'angle', 'reading'] as const;

/** One row of the file, and the line that it begins on. */
export interface ReadingRow extends Readonly<Record<(typeof COLUMNS)[number], string>> {
  readonly line: number;
}

/** What a file of readings holds. */
export interface ReadingRows {
  readonly rows: readonly ReadingRow[];
  readonly problems: readonly SheetProblem[];
  /** The columns could not be told apart, so that no row was read. */
  readonly unread: boolean;
}

/** Where something stands in the file. */
export const lineOf = (line: number): string => `readings, line ${line}`;

/** Reads the rows of a file of readings. Every cell is text, and nothing but text. */
export function readingRows(text: string): ReadingRows {
  // One kind of line end, so that lines can be counted; a quoted cell may hold some too.
  const plain = text.replace(/\r\n?/g, '\n');
  const { data, errors } = Papa.parse<string[]>(plain, { delimiter: ',', newline: '\n' });
  const lines = linesOf(data);
  const quoted = new Map(errors.map(({ row = 0, message }) => [row, message]));
  const [header, ...rows] = data
    .map((cells, i) => ({ cells: cells.map((cell) => cell.trim()), line: lines[i] ?? 1, row: i }))
    .filter(({ cells }) => cells.some((cell) => cell !== ''));
  const wrong = headerProblems(header?.cells ?? [], header?.line ?? 1);
  if (wrong.length > 0) return { rows: [], problems: wrong, unread: true };

  const problems: SheetProblem[] = [];
  const sound = rows.flatMap(({ cells, line, row }): readonly ReadingRow[] => {
    const width = header?.cells.length;
    const message = quoted.has(row)
      ? `has a quotation mark too few or too many: ${quoted.get(row)}`
      : `has ${cells.length} cells, and the header has ${width}`;
    if (quoted.has(row) || cells.length !== width) {
      problems.push({ path: lineOf(line), message });
      return [];
    }
    const named = COLUMNS.map((column) => [column, cells[header?.cells.indexOf(column) ?? 0]]);
    return [{ ...Object.fromEntries(named), line }];
  });
  return { rows: sound, problems, unread: false };
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

function headerProblems(header: readonly string[], line: number): readonly SheetProblem[] {
  const all = `the columns are ${COLUMNS.join(', ')}`;
  const known: readonly string[] = COLUMNS;
  const problem = (message: string): SheetProblem => ({ path: lineOf(line), message });
  if (!header.some((column) => known.includes(column))) {
    return [problem(`must name the columns, with commas between: ${all}`)];
  }
  return [
    ...header.flatMap((column, i) => {
      if (known.includes(column)) {
        const twice = header.indexOf(column) < i;
        return twice ? [problem(`has column "${column}" twice; ${all}`)] : [];
      }
      const question = didYouMean(column, COLUMNS);
      return [problem(`"${column}" is not a column; ${question ? `${question} ` : ''}${all}`)];
    }),
    ...COLUMNS.filter((column) => !header.includes(column)).map((column) =>
      problem(`has no column "${column}"; ${all}`),
    ),
  ];
}
