import type { Block } from '../src/pages/index.js';

/** The blocks that a report is made of, from its text, whose lines are wrapped. */
export function blocksOf(text: string): readonly Block[] {
  const sections = text.replaceAll('\f', '\n\n').split(/\n{2,}/);
  return sections.flatMap((section, i) => {
    const lines = unwrapped(section.split('\n').filter((line) => line !== ''));
    const under = lines.findIndex((line) => UNDERLINE.test(line));
    if (under < 1) return blocksIn(lines);
    const level = i === 0 || lines[under]?.startsWith('=') ? 1 : 2;
    const heading = lines.slice(0, under).join(' ');
    return [{ kind: 'heading', level, text: heading }, ...blocksIn(lines.slice(under + 1))];
  });
}

/** What stands under a heading. */
const UNDERLINE = /^(?:-{3,}|={3,})$/;

/** The longest line of a report, in characters. */
const WIDTH = 96;

/** Lines put together again that were wrapped: the first word of the next one had no room on the line before. */
function unwrapped(lines: readonly string[]): readonly string[] {
  return lines.reduce<string[]>((all, line, i) => {
    const [before, whole] = [lines[i - 1] ?? '', all.at(-1) ?? ''];
    const [word = ''] = line.trim().split(' ');
    const isWrapped =
      before.length + 1 + word.length > WIDTH &&
      leadOf(line) >= leadOf(whole) &&
      !(isOfTable(line) || BOX.test(line) || UNDERLINE.test(line));
    if (isWrapped) all[all.length - 1] = `${whole} ${line.trim()}`;
    else all.push(line);
    return all;
  }, []);
}

const leadOf = (line: string): number => line.length - line.trimStart().length;

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
    } else if (isRow(line) && isOfTable(lines[i + 1] ?? '')) {
      blocks.push(tableOf(run(isOfTable)));
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

/** Columns stand two or three spaces apart, and nothing else of a report does. */
const isRow = (line: string): boolean => /\S {2,}\S/.test(line);

/** A row, or what a wide cell goes on with below it. */
const isOfTable = (line: string): boolean => isRow(line) || /^ {6,}\S/.test(line);

function tableOf(lines: readonly string[]): Block {
  const width = lines.reduce((most, { length }) => Math.max(most, length), 0);
  const isGap = Array.from({ length: width }, (_, at) =>
    lines.every((line) => (line[at] ?? ' ') === ' '),
  );
  const starts = isGap.flatMap((gap, at) =>
    !gap && (at === 0 || isGap.slice(Math.max(0, at - 2), at).every(Boolean)) ? [at] : [],
  );
  const rows = lines.map((line) => starts.map((at, k) => line.slice(at, starts[k + 1]).trim()));
  // A cell too wide for the page goes on below, where the first column is empty.
  const whole = rows.reduce<string[][]>((all, row) => {
    const above = all.at(-1);
    if (above && row[0] === '')
      row.forEach((cell, k) => {
        above[k] = `${above[k]} ${cell}`.trim();
      });
    else all.push([...row]);
    return all;
  }, []);
  const [heading = [], ...body] = whole;
  const isNumber = (cell = '') => /^[-−+\d.\s%]*$/.test(cell) || / to \d/.test(cell);
  const left = heading.findIndex((_, k) => body.every((row) => isNumber(row[k])));
  return { kind: 'table', heading, rows: body, left: left === -1 ? heading.length : left };
}
