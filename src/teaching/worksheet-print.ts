import { guardFields, guardLayout, guardTruth, guardWord, namedFrom } from '../judging/internal.js';
import { equation } from './card-typeset.js';
import { readAs } from './cards-about.js';
import { solution } from './exercise.js';
import type { Exercise } from './exercise-types.js';
import { inGreek } from './greek.js';
import { worksheetLayout } from './layouts.js';
import { notesOn } from './sheet-notes.js';
import { tex } from './tex.js';
import { onPaper } from './unfold.js';
import { workedMarkdown, workedText } from './worked-print.js';
import type { Worksheet } from './worksheet.js';

/** How to print a worksheet. */
export interface WorksheetOptions {
  /** Plain text, or Markdown with its equations in TeX. */
  readonly format: 'text' | 'markdown';
  /** Whether the answers follow, worked, on a page of their own. */
  readonly answers?: boolean;
}

/** To be filled in by whoever works the sheet. */
const WHO_AND_WHEN = 'Name: ______________________________   Date: ______________';

/** Begins a new page when the sheet is printed. */
const PAGE = { text: '\f', markdown: '<div style="break-before: page"></div>\n\n' } as const;

/**
 * Prints a worksheet, to be handed out.
 *
 * @param sheet - what `worksheet` gave
 * @param options - as text or Markdown, with or without the answers
 * @returns the sheet; the answers begin on a new page
 * @throws {RebuildInputError} when a field is misspelt, the sheet is not one, the format is unknown or
 * `answers` is neither true nor false
 * @example
 * ```ts
 * const sheet = worksheet({ about: 'bearings', seed: 7, units: 'inch', count: 2 });
 * printWorksheet(sheet, { format: 'text', answers: true }).includes('Answers to the worksheet'); // true
 * ```
 */
export function printWorksheet(sheet: Worksheet, options: WorksheetOptions): string {
  guardLayout('sheet', sheet, worksheetLayout, 'worksheet');
  guardFields('options', options, ['format', 'answers']);
  const format = guardWord('options.format', options.format, ['text', 'markdown']);
  if (options.answers !== undefined) guardTruth('options.answers', options.answers);
  const read = readAs(sheet.about);
  const about = read === undefined ? sheet.about : `${sheet.about} (read as ${read})`;
  const title = `Worksheet on ${about}, seed ${sheet.seed}, ${sheet.units} units`;
  const problems = sheet.problems.map((problem, index) => PRINTED[format](problem, index + 1));
  const questions = `${headed(title, 1, format)}\n${WHO_AND_WHEN}\n\n${problems.join('\n')}`;
  if (options.answers !== true) return questions;
  const answers = sheet.problems.map((problem, index) =>
    namedFrom(
      () => ({ problem: `sheet.problems[${index}]` }),
      () => answerTo(problem, index + 1, format),
    ),
  );
  const heading = headed(
    `Answers to the worksheet on ${sheet.about}, seed ${sheet.seed}`,
    1,
    format,
  );
  return `${questions}\n${PAGE[format]}${heading}\n${answers.join('\n')}`;
}

type Format = WorksheetOptions['format'];

const headed = (text: string, level: number, format: Format) =>
  format === 'text' ? `${text}\n` : `${'#'.repeat(level)} ${text}\n`;

/** The title of a problem, with its units where they are not those of the sheet. */
const titleOf = ({ title, units, toldIn }: Exercise) =>
  `${capital(title)}${toldIn === units ? '' : ` (in ${toldIn} units)`}`;

/** A difference of temperatures is told as one in words. */
const inWords = (unit: string) => unit.replace(/^Δ(.*)$/, '$1 of rise');

const capital = (text: string) => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

/** The letter or the function that a definition defines. */
const definedBy = (line: string) => /^\w+/.exec(line)?.[0] ?? '';

const PRINTED: Readonly<Record<Format, (problem: Exercise, number: number) => string>> = {
  text: (problem, number) => {
    const { given, asks, formula, where, defines } = problem;
    const meanings = new Map(defines.map(({ symbol, meaning }) => [symbol, meaning]));
    const letter = inGreek(asks.symbol);
    return [
      `${number}. ${titleOf(problem)}`,
      ...given.map(({ symbol, text, meaning }) => `   ${inGreek(symbol)} = ${text}   ${meaning}`),
      `   ${letter} = ${inGreek(onPaper(formula))}`,
      ...where.map((line) =>
        `   where ${inGreek(onPaper(line))}   ${meanings.get(definedBy(line)) ?? ''}`.trimEnd(),
      ),
      ...notesOn(problem).map((note) => `   ${note}`),
      `   To find: ${asks.meaning}. ${letter} = ________ ${inWords(asks.unit)}`.trimEnd(),
      '',
    ].join('\n');
  },
  markdown: (problem, number) => {
    const { given, asks, formula, where, defines } = problem;
    const letters = new Set([
      asks.symbol,
      ...given.map(({ symbol }) => symbol),
      ...where.map(definedBy),
    ]);
    return [
      headed(`${number}. ${titleOf(problem)}`, 2, 'markdown'),
      ...given.map(({ symbol, text, meaning }) => `- \`${inGreek(symbol)}\` = ${text}: ${meaning}`),
      ...defines.map(({ symbol, meaning }) => `- \`${inGreek(symbol)}\`: ${meaning}`),
      '',
      ...[`${asks.symbol} = ${formula}`, ...where].flatMap((line) => [
        `$$${equation(line, letters, tex)}$$`,
        '',
      ]),
      ...notesOn(problem).flatMap((note) => [note, '']),
      `To find: ${asks.meaning}. \`${inGreek(asks.symbol)}\` = ________ ${inWords(asks.unit)}`.trimEnd(),
      '',
    ].join('\n');
  },
};

function answerTo(problem: Exercise, number: number, format: Format): string {
  const worked = solution(problem);
  const answer = `${number}. ${inGreek(problem.asks.symbol)} = ${problem.answer.text}`;
  return format === 'text'
    ? `${answer}\n\n${workedText(worked)}`
    : `${headed(answer, 2, format)}\n${workedMarkdown(worked)}`;
}
