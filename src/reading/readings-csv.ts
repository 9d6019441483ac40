import Papa from 'papaparse';
import { type Column, type Columns, columnsIn } from './csv-columns.js';
import type { FileProblem } from './file-problem.js';
import { tooLong, tooMany, withoutMark } from './file-text.js';
import { withUnit } from './with-unit.js';

/** One reading of the file. */
export interface ReadingRow {
  /** The line its row begins on. */
  readonly line: number;
  readonly part: string;
  readonly feature: string;
  readonly station: string;
  readonly angle: string;
  /** Empty if nothing was read. */
  readonly reading: string;
  /** The headings that angle and reading stand under. */
  readonly under: { readonly angle: string; readonly reading: string };
  /** The cells of the owner's own columns, by their headings. */
  readonly others: Readonly<Record<string, string>>;
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

/** Reads the rows of a CSV of readings, as spreadsheets write it. Every cell is plain text. */
export function readingRows(text: string): ReadingRows {
  const long = tooLong(text);
  if (long !== undefined) return unread([{ path: 'readings', message: long }]);
  // With one kind of line end, lines can be counted; a quoted cell may hold some too. Some programs write on the first line
  // what separates cells.
  const plain = withoutMark(text)
    .replace(/\r\n?/g, '\n')
    .replace(/^sep=.(?=\n)/i, '');
  const message = tooManyLines(plain);
  if (message !== undefined) return unread([{ path: 'readings', message }]);
  const delimiter = delimiterOf(plain);
  const { data, errors } = Papa.parse<string[]>(plain, { delimiter, newline: '\n' });
  const lines = linesOf(data);
  const quoted = new Map(errors.map(({ row = 0, message }) => [row, message]));
  const [header, ...rows] = data
    .map((cells, i) => ({ cells: cells.map((cell) => cell.trim()), line: lines[i] ?? 1, row: i }))
    .filter(({ cells }) => cells.some((cell) => cell !== ''));
  const headings = header?.cells ?? [];
  const { columns, problems: wrong } = columnsIn(headings);
  if (columns === undefined) {
    const path = lineOf(header?.line ?? 1);
    return unread(wrong.map((message) => ({ path, message })));
  }

  const problems: FileProblem[] = [];
  const sound = rows.filter(({ cells, line, row }) => {
    const message = quoted.has(row)
      ? `has an unmatched quotation mark: ${quoted.get(row)}`
      : wrongWidth(cells, headings.length, columns);
    if (message !== undefined) problems.push({ path: lineOf(line), message });
    return message === undefined;
  });
  const hasCommas = delimiter !== ',' && !sound.some(({ cells }) => hasPoint(cells, columns));
  const read = sound.flatMap(({ cells, line }) => rowsOf(cells, line, columns, hasCommas));
  return { rows: read, problems, unread: false };
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

/** What separates the cells: that which makes the most columns of the header. */
function delimiterOf(plain: string): string {
  const start = plain.trimStart();
  const widths = [',', ';', '\t'].map((delimiter) => {
    const { data } = Papa.parse<string[]>(start, { delimiter, newline: '\n', preview: 1 });
    return { delimiter, width: data[0]?.length ?? 0 };
  });
  return widths.reduce((best, each) => (each.width > best.width ? each : best)).delimiter;
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

/** A row may lack the owner's cells at its end, and may have empty ones too many. */
function wrongWidth(cells: readonly string[], width: number, columns: Columns): string | undefined {
  const { others, angles, ...named } = columns;
  const last = Math.max(...[...Object.values<Column>(named), ...angles].map(({ at }) => at));
  if (cells.length > last && cells.slice(width).every((cell) => cell === '')) return undefined;
  return `has ${cells.length} cells, but the header has ${width}`;
}

/** Whether a number in the row has a decimal point: then a comma is no decimal comma. */
function hasPoint(cells: readonly string[], { station, angle, reading, angles }: Columns): boolean {
  const columns = [station, angle, reading, ...angles];
  return columns.some((column) => column && /\d?\.\d/.test(cells[column.at] ?? ''));
}

/** The readings of a row: one, or one under each angle that is a column. What is empty there was not read. */
function rowsOf(
  cells: readonly string[],
  line: number,
  { part, feature, station, angle, reading, angles, others }: Columns,
  hasCommas: boolean,
): readonly ReadingRow[] {
  const textIn = ({ at }: Column) => cells[at] ?? '';
  const numberIn = (column: Column) => {
    const text = textIn(column);
    return withUnit(hasCommas ? text.replace(/^([+\-−]?\d*),(?=\d)/, '$1.') : text, column.unit);
  };
  const common = {
    line,
    part: textIn(part),
    feature: textIn(feature),
    station: numberIn(station),
    others: Object.fromEntries(others.map((column) => [column.name, textIn(column)])),
  };
  const wide = angles.flatMap((column): readonly ReadingRow[] => {
    if (textIn(column) === '') return [];
    const under = { angle: column.name, reading: column.name };
    const around = column.name.replace(',', '.');
    return [{ ...common, angle: around, reading: numberIn(column), under }];
  });
  if (wide.length > 0 && (reading === undefined || textIn(reading) === '')) return wide;
  const under = { angle: angle?.name ?? 'angle', reading: reading?.name ?? 'reading' };
  const around = angle ? numberIn(angle) : '';
  const own = { ...common, angle: around, reading: reading ? numberIn(reading) : '', under };
  return [...wide, own];
}
