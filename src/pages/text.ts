import { largestOf } from '../quantities/internal.js';

/** The longest line, in characters. */
export const WIDTH = 96;
/** The gap between the columns of a table; the narrow one is for wide tables. */
const [GAP, NARROW_GAP] = ['   ', '  '];

/** An underlined heading and its lines. */
export function underlined(heading: string, lines: readonly string[], underline = '-'): string {
  const title = brokenLines(heading, 0);
  const longest = largestOf(title.map((line) => line.length));
  return [...title, underline.repeat(longest), ...lines].join('\n');
}

/** Breaks a sentence into lines and indents those after the first. */
export function brokenLines(text: string, indent: number): string[] {
  const lead = /^ */.exec(text)?.[0] ?? '';
  const [first = '', ...others] = wrapped(text, WIDTH - indent, WIDTH - lead.length);
  return [lead + first, ...others.map((line) => ' '.repeat(indent) + line)];
}

/**
 * A table. The first columns, by default one, are aligned left and the others right. If it is too
 * wide for the page, its widest cells are broken into lines.
 */
export function alignedLines(
  heading: readonly string[],
  rows: readonly (readonly string[])[],
  left = 1,
): string[] {
  const all = [heading, ...rows].map((row) => heading.map((_, i) => printable(row[i] ?? '')));
  const natural = heading.map((_, i) => largestOf(all.map((row) => row[i]?.length ?? 0)));
  const gap = widthOf(natural, GAP) <= WIDTH ? GAP : NARROW_GAP;
  const widths = fitted(natural, gap);
  return all.flatMap((row) => {
    const cells = row.map((cell, i) => wrapped(cell, widths[i] ?? 0));
    const height = largestOf(cells.map((lines) => lines.length));
    return Array.from({ length: height }, (_, line) =>
      cells
        .map((lines, i) => {
          const [text, width] = [lines[line] ?? '', widths[i] ?? 0];
          return i < left ? text.padEnd(width) : text.padStart(width);
        })
        .join(gap)
        .trimEnd(),
    );
  });
}

/** Text for one line: without line breaks, terminal control characters and characters that reverse text. */
export function printable(text: string): string {
  return text
    .replace(/[\p{Cc}\p{Zl}\p{Zp}\u202a-\u202e\u2066-\u2069]/gu, ' ')
    .replace(/ +/g, ' ')
    .trim();
}

/** A sentence with a capital letter at its beginning. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** The width of a table row. */
const widthOf = (widths: readonly number[], gap: string): number =>
  widths.reduce((sum, width) => sum + gap.length + width, -gap.length);

/** Narrows the widest columns until a row fits the page. */
function fitted(natural: readonly number[], gap: string): readonly number[] {
  const widths = [...natural];
  while (widthOf(widths, gap) > WIDTH) {
    const widest = largestOf(widths);
    widths[widths.indexOf(widest)] = widest - 1;
  }
  return widths;
}

/** Lines of at most `width` characters, the first of at most `firstWidth`; a longer word is cut. */
function wrapped(text: string, width: number, firstWidth = width): readonly string[] {
  const lines: string[] = [];
  const room = () => (lines.length === 0 ? firstWidth : width);
  let line = '';
  for (const word of printable(text).split(' ')) {
    if (line !== '' && line.length + 1 + word.length > room()) {
      lines.push(line);
      line = '';
    }
    line += line === '' ? word : ` ${word}`;
    while (line.length > room()) {
      const cut = room();
      lines.push(line.slice(0, cut));
      line = line.slice(cut);
    }
  }
  return [...lines, line];
}
