import { BLANK, type Block, type Entry } from './blocks.js';
import { alignedLines, brokenLines, underlined } from './text.js';

/** Prints blocks as plain text. A form feed begins every new page. */
export function asPlainText(blocks: readonly Block[]): string {
  const texts = blocks.map((block) => textOf(block));
  return `${texts.join('\n\n').replaceAll('\f\n\n', '\f')}\n`;
}

function textOf(block: Block): string {
  switch (block.kind) {
    case 'page break':
      return '\f';
    case 'heading':
      return underlined(block.text, [], block.level === 1 ? '=' : '-');
    case 'paragraph':
      return brokenLines(block.text, 0).join('\n');
    case 'caution':
      return brokenLines(`CAUTION: ${block.text}`, 4).join('\n');
    case 'checks':
      return block.items.flatMap((item) => brokenLines(`[ ] ${filled(item)}`, 4)).join('\n');
    case 'list':
      return block.items.flatMap((item) => brokenLines(filled(item), 4)).join('\n');
    case 'table':
      return alignedLines(
        block.heading,
        block.rows.map((row) => row.map(filled)),
        block.left,
      ).join('\n');
  }
}

function filled(entry: Entry): string {
  if (typeof entry === 'string') return entry;
  return entry.write === '' ? BLANK : `${entry.write}: ${BLANK}`;
}
