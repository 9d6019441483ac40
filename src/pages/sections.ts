import { alignedLines, brokenLines, underlined } from './text.js';

/** What stands in a section: a short line as it is, a sentence, a task or a table. */
export type PageLine = string | Sentence | Task | PageTable;

/** A sentence that is broken where the page ends. */
export interface Sentence {
  /** It; spaces at its beginning set it in below the sentence before it. */
  readonly text: string;
  /** How far the lines after the first are set in. */
  readonly indent: number;
}

/** Something to do, with its number and a box to tick. */
export interface Task {
  readonly task: string;
  readonly number: number;
}

/** A table. */
export interface PageTable {
  readonly heading: readonly string[];
  readonly rows: readonly (readonly string[])[];
  /** How many columns of words come before the columns of numbers. */
  readonly left: number;
}

/** A section of a report. */
export interface PageSection {
  readonly heading: string;
  readonly lines: readonly PageLine[];
}

export const section = (heading: string, lines: readonly PageLine[]): PageSection => ({
  heading,
  lines,
});
export const wrap = (text: string, indent: number): readonly PageLine[] => [{ text, indent }];
export const task = (number: number, text: string): PageLine => ({ number, task: text });
export const columns = (
  heading: readonly string[],
  rows: readonly (readonly string[])[],
  left = 1,
): readonly PageLine[] => [{ heading, rows, left }];

/** Prints sections as plain text. */
export const asText = (sections: readonly PageSection[]): string =>
  `${sections.map(({ heading, lines }) => underlined(heading, lines.flatMap(printedLines))).join('\n\n')}\n`;

/** The lines that one takes on a page. */
export function printedLines(line: PageLine): readonly string[] {
  if (typeof line === 'string') return [line];
  if ('text' in line) return brokenLines(line.text, line.indent);
  if ('task' in line) {
    return brokenLines(`${String(line.number).padStart(2)}. [ ] ${line.task}`, TASK_INDENT);
  }
  return alignedLines(line.heading, line.rows, line.left);
}

const TASK_INDENT = 8;
