/** The longest object or list that is printed on one line. */
const LONGEST_LINE = 88;

/** How JSON is printed: the indent of its level, what a level adds, and the end of a line. */
export interface JsonStyle {
  readonly indent: string;
  readonly step: string;
  readonly newline: string;
}

/** The style of a new file. */
export const NEW_FILE: JsonStyle = { indent: '', step: '  ', newline: '\n' };

/** JSON for people: what has nothing nested in it stands on one line if it is short, as a reading does. */
export function printJson(value: unknown, style: JsonStyle): string {
  const flat = printOnOneLine(value);
  if (typeof value !== 'object' || value === null) return flat;
  const entries = Object.entries(value);
  const isNested = entries.some(([, each]) => typeof each === 'object' && each !== null);
  if (entries.length === 0 || (!isNested && flat.length <= LONGEST_LINE)) return flat;
  const inner = { ...style, indent: style.indent + style.step };
  const lines = entries.map(([key, each]) => {
    const name = Array.isArray(value) ? '' : `${JSON.stringify(key)}: `;
    return `${style.newline}${inner.indent}${name}${printJson(each, inner)}`;
  });
  const [open, close] = Array.isArray(value) ? '[]' : '{}';
  return `${open}${lines.join(',')}${style.newline}${style.indent}${close}`;
}

/** JSON on one line, with a space after every comma and colon. */
export function printOnOneLine(value: unknown): string {
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  if (Array.isArray(value)) return `[${value.map(printOnOneLine).join(', ')}]`;
  const fields = Object.entries(value).map(
    ([key, each]) => `${JSON.stringify(key)}: ${printOnOneLine(each)}`,
  );
  return fields.length === 0 ? '{}' : `{ ${fields.join(', ')} }`;
}
