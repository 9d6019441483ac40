import type { Block } from '../src/pages/index.js';

/**
 * The blocks that a report is made of, from its text. The lines of the text must not be wrapped: the page does
 * that. So every line is a block or part of one.
 */
export function blocksOf(text: string): readonly Block[] {
  const sections = text.replaceAll('\f', '\n\n').split(/\n{2,}/);
  return sections.flatMap((section, i) => {
    const lines = section.split('\n').filter((line) => line !== '');
    const under = lines.findIndex((line) => /^(?:-{3,}|={3,})$/.test(line));
    if (under < 1) return blocksIn(lines);
    const level = i === 0 || lines[under]?.startsWith('=') ? 1 : 2;
    const heading = lines.slice(0, under).join(' ');
    return [{ kind: 'heading', level, text: heading }, ...blocksIn(lines.slice(under + 1))];
  });
}

/** A box to tick, with the number before it if it has one. */
const BOX = /^\s*(\d+\. )?\[ \] /;

function blocksIn(lines: readonly string[]): readonly Block[] {
  const blocks: Block[] = [];
  let i = 0;
  /** The lines from here on that are alike. */
  const run = (isAlike: (line: string) => boolean): readonly string[] => {
    const end = lines.findIndex((line, at) => at >= i && !isAlike(line));
    const found = lines.slice(i, end === -1 ? lines.length : end);
    i += found.length;
    return found;
  };
  while (i < lines.length) {
    const line = lines[i] as string;
    if (BOX.test(line)) {
      const items = run((each) => BOX.test(each)).map((each) => each.replace(BOX, '$1'));
      blocks.push({ kind: 'checks', items });
    } else if (isRow(line) && isRow(lines[i + 1] ?? '')) {
      blocks.push(tableOf(run(isRow)));
    } else if (/^ {2,}\S/.test(line)) {
      const items = run((each) => /^ {2,}\S/.test(each) && !BOX.test(each));
      blocks.push({ kind: 'list', items: items.map((each) => each.trim()) });
    } else {
      blocks.push({ kind: 'paragraph', text: line });
      i += 1;
    }
  }
  return blocks;
}

/** Columns stand three spaces apart, and nothing else of a report does. */
const isRow = (line: string): boolean => /\S {3,}\S/.test(line);

function tableOf(lines: readonly string[]): Block {
  const width = lines.reduce((most, { length }) => Math.max(most, length), 0);
  const isGap = Array.from({ length: width }, (_, at) =>
    lines.every((line) => (line[at] ?? ' ') === ' '),
  );
  const starts = isGap.flatMap((gap, at) =>
    !gap && (at === 0 || isGap.slice(Math.max(0, at - 3), at).every(Boolean)) ? [at] : [],
  );
  const rows = lines.map((line) => starts.map((at, k) => line.slice(at, starts[k + 1]).trim()));
  const [heading = [], ...body] = rows;
  const isNumber = (cell = '') => /^[-−+\d.\s%]*$/.test(cell) || / to \d/.test(cell);
  const left = heading.findIndex((_, k) => body.every((row) => isNumber(row[k])));
  return { kind: 'table', heading, rows: body, left: left === -1 ? heading.length : left };
}
