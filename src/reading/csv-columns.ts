import { didYouMean } from './nearest.js';
import { isUnitOf } from './with-unit.js';

/** The columns of a file of readings. Angles may be columns of their own instead. */
const COLUMNS = ['part', 'feature', 'station', 'angle', 'reading'] as const;
type ColumnName = (typeof COLUMNS)[number];

/** A column of the file. */
export interface Column {
  /** Its heading in small letters, without its unit. */
  readonly name: string;
  /** Its place in a row. */
  readonly at: number;
  /** The unit in its heading. */
  readonly unit?: string;
}

/** The columns of a file of readings. */
export interface Columns {
  readonly part: Column;
  readonly feature: Column;
  readonly station: Column;
  readonly angle?: Column;
  readonly reading?: Column;
  /** A column for each angle that its heading names. */
  readonly angles: readonly Column[];
  /** Columns of the owner: a date, a note. */
  readonly others: readonly Column[];
}

/** The columns that a header names, or what is wrong with it. */
export type HeaderRead =
  | { readonly columns: Columns; readonly problems?: never }
  | { readonly columns?: never; readonly problems: readonly string[] };

const ALL = /* @__PURE__ */ (() =>
  `the columns are ${COLUMNS.join(', ')}; a unit stands in brackets, "reading [in]", and angles may be columns, "90 deg"`)();

/** Reads the headings, in any order, in small letters or capitals. */
export function columnsIn(typed: readonly string[]): HeaderRead {
  const headings = typed.map(headingOf);
  const known = new Map<string, Column>();
  const problems: string[] = [];
  for (const column of headings) {
    const name = knownName(column) ?? angleIn(column);
    const shown = typed[column.at] as string;
    if (name === undefined) continue;
    const other = known.get(name);
    if (other === undefined) known.set(name, column);
    else if (other.name === column.name) problems.push(`has column "${shown}" twice; ${ALL}`);
    else problems.push(`has columns "${other.name}" and "${shown}", which are one; ${ALL}`);
    const dimension = name === 'angle' ? 'angle' : 'length';
    if (
      column.unit !== undefined &&
      !/part|feature/.test(name) &&
      !isUnitOf(column.unit, dimension)
    ) {
      const example = dimension === 'angle' ? 'angle [deg]' : `${column.name} [in]`;
      problems.push(`"${shown}" names no unit of ${dimension}; write e.g. "${example}"`);
    }
  }
  if (!COLUMNS.some((name) => known.has(name))) {
    const wanted = `must name the columns, separated by commas, semicolons or tabs: ${COLUMNS.join(', ')}`;
    return { problems: [wanted] };
  }
  const angles = headings.filter((column) => angleIn(column) !== undefined);
  const others = headings.filter((each) => !knownName(each) && !angleIn(each));
  const missing = neededWith(angles, known).filter((name) => !known.has(name));
  const all = [
    ...problems,
    ...others.flatMap((column) => strangeColumn(column, typed[column.at] as string, missing)),
    ...missing.map((name) => `has no column "${name}"; ${ALL}`),
  ];
  if (all.length > 0) return { problems: all };
  const named = COLUMNS.flatMap((name) => {
    const column = known.get(name);
    return column ? [[name, column] as const] : [];
  });
  // The three that each file needs are not missing.
  return { columns: { ...(Object.fromEntries(named) as unknown as Columns), angles, others } };
}

/** A heading with its unit apart: `Diameter [mm]`. What else stands in parentheses is a remark. */
function headingOf(typed: string, at: number): Column {
  const found = /^(.*?)\s*(?:\[([^[\]]*)\]|\(([^()]*)\))$/.exec(typed);
  const [, , bracketed, inParentheses = ''] = found ?? [];
  const isUnit = isUnitOf(inParentheses, 'length') || isUnitOf(inParentheses, 'angle');
  const unit = bracketed?.trim() ?? (isUnit ? inParentheses : undefined);
  const name = (found?.[1] ?? typed).toLowerCase();
  return { name, at, ...(unit !== undefined && { unit }) };
}

function knownName({ name }: Column): ColumnName | undefined {
  return name === 'diameter' ? 'reading' : COLUMNS.find((each) => each === name);
}

/** The angle that a heading names, in degrees. */
function angleIn({ name }: Column): string | undefined {
  const degrees = /^([+\-−]?\d+(?:[.,]\d+)?)\s*(?:deg|degrees?|°)$/.exec(name)?.[1];
  return degrees === undefined
    ? undefined
    : `${Number(degrees.replace('−', '-').replace(',', '.'))}`;
}

/** The columns that a file needs: angles that are columns hold the readings. */
function neededWith(
  angles: readonly Column[],
  known: ReadonlyMap<string, Column>,
): readonly ColumnName[] {
  if (angles.length === 0) return COLUMNS;
  return known.has('angle') ? COLUMNS : ['part', 'feature', 'station'];
}

/** What is wrong with a column that is none of ours: it may be one of ours, misspelt. Nothing that was read is passed over. */
function strangeColumn(
  { name }: Column,
  typed: string,
  missing: readonly ColumnName[],
): readonly string[] {
  if (/^[+\-−]?\d/.test(name)) {
    return [`"${typed}" is no angle that can be read; write it with its unit, "90 deg"`];
  }
  if (/^(?:reading|diameter)\W*\d+$/.test(name)) {
    return [`"${typed}" is a second column of readings; write a row for each reading`];
  }
  const ours: readonly string[] = missing.includes('reading') ? [...missing, 'diameter'] : missing;
  const question = didYouMean(name, ours);
  return question === undefined ? [] : [`"${typed}" is not a column; ${question} ${ALL}`];
}
