import { expect } from 'vitest';

/** Holds a page of text to what every page must be: within its width, ended, and without a hole. */
export function expectPage(text: string): void {
  expect(text.split('\n').filter((line) => line.length > 96)).toEqual([]);
  expectNoHole(text);
  expect(text.endsWith('\n')).toBe(true);
  expect(text.endsWith('\n\n')).toBe(false);
}

/** Holds any text to having no number that is none, and nothing that is not text. */
export function expectNoHole(text: string): void {
  expect(text).not.toMatch(/undefined|NaN|Infinity|\[object|null|-0\.0+\b/);
}

/** The text with its line breaks undone, so that a sentence can be looked for. */
export const flowing = (text: string): string => text.replace(/\s+/g, ' ');

/** Whether the numbers of notes that a page refers to are those that it lists. */
export function expectNotesListed(text: string, from: string): void {
  const at = text.indexOf(from);
  const marks = new Set(text.slice(0, at).match(/\[\d+\]/g));
  const listed = text.slice(at).match(/^\[\d+\]/gm);
  expect([...marks].sort()).toEqual([...(listed ?? [])].sort());
}

/** Names that a page must bear: long, of several lines, steering a terminal, or of Markdown and HTML. */
export const HOSTILE_NAMES: readonly string[] = [
  'a | b || c',
  '**bold** _it_ `code` ~~gone~~ # 1. - + [x](y) ![z](w) $m$',
  '<script>alert(1)</script> &amp; <!-- x -->',
  '1. not a list',
  '- not a list',
  '# not a heading',
  '\\| \\',
  'two\nlines\r\n\fand a page',
  '\u001b[31mred\u001b[0m \u202ereversed',
  '__proto__',
  'x'.repeat(300),
  '________',
  '日本 № 5 – ½″',
];
