import { largestOf } from '../quantities/internal.js';

/** The longest line of a page, in characters. */
const WIDTH = 96;
/** Between the columns of a table; narrower where the page is tight. */
const [GAP, NARROW_GAP] = ['   ', '  '];

/** A heading, underlined, and its lines. */
export function section(heading: string, lines: readonly string[], underline = '-'): string {
  const title = wrap(heading, 0);
  const longest = largestOf(title.map((line) => line.length));
  return [...title, underline.repeat(longest), ...lines].join('\n');
}

/** Breaks a sentence into lines, those after the first indented. */
export function wrap(text: string, indent: number): string[] {
  const lead = /^ */.exec(text)?.[0] ?? '';
  const [first = '', ...others] = wrapped(text, WIDTH - indent, WIDTH - lead.length);
  return [lead + first, ...others.map((line) => ' '.repeat(indent) + line)];
}

/**
 * A table: the first columns to the left, by default one, the others to the
 * right. One that is too wide for the page has its widest cells broken.
 */
export function columns(
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

/** Text as it can stand on one line of a page: without line breaks and whatever steers a terminal or turns text round. */
export function printable(text: string): string {
  return text
    .replace(/[\p{Cc}\p{Zl}\p{Zp}\u202a-\u202e\u2066-\u2069]/gu, ' ')
    .replace(/ +/g, ' ')
    .trim();
}

/** A sentence with a capital at its beginning. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** What a row of a table takes. */
const widthOf = (widths: readonly number[], gap: string): number =>
  widths.reduce((sum, width) => sum + gap.length + width, -gap.length);

/** Takes from the widest columns until a row fits the page. */
function fitted(natural: readonly number[], gap: string): readonly number[] {
  const widths = [...natural];
  while (widthOf(widths, gap) > WIDTH) {
    const widest = largestOf(widths);
    widths[widths.indexOf(widest)] = widest - 1;
  }
  return widths;
}

/** Lines of at most so many characters, the first perhaps of others; a word that is longer is cut. */
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
