import { BLANK, type Block, type Entry } from './blocks.js';
import { printable } from './text.js';

/** Starts a new page when a browser prints it. */
const PAGE_BREAK = '<div style="break-before: page"></div>';

/** Prints blocks as Markdown, with the tables and boxes of the GitHub flavour. */
export function asMarkdown(blocks: readonly Block[]): string {
  return `${blocks.map((block) => markdownOf(block)).join('\n\n')}\n`;
}

function markdownOf(block: Block): string {
  switch (block.kind) {
    case 'page break':
      return PAGE_BREAK;
    case 'heading':
      return `${'#'.repeat(block.level)} ${escaped(block.text)}`;
    case 'paragraph':
      return unlisted(escaped(block.text));
    case 'caution':
      return `> **Caution:** ${escaped(block.text)}`;
    case 'checks':
      return block.items.map((item) => `- [ ] ${filled(item)}`).join('\n');
    case 'list':
      return block.items.map((item) => `- ${unlisted(filled(item))}`).join('\n');
    case 'table': {
      const ruler = block.heading.map((_, i) => (i < block.left ? '---' : '---:'));
      const rows = [block.heading.map(escaped), ruler, ...block.rows.map((row) => row.map(filled))];
      return rows.map((row) => `| ${row.join(' | ')} |`).join('\n');
    }
  }
}

/** Room to write in is eight underlines between spaces, which Markdown prints as they are. */
function filled(entry: Entry): string {
  if (typeof entry === 'string') return escaped(entry);
  return entry.write === '' ? BLANK : `${escaped(entry.write)}: ${BLANK}`;
}

/** Text that Markdown shows unchanged: its special characters are escaped. */
export function escaped(text: string): string {
  return printable(text)
    .replace(/[\\`*_[\]|~$#]/g, '\\$&')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;');
}

/** Escapes what would begin a list or underline a heading at the beginning of a line. */
function unlisted(text: string): string {
  return text.replace(/^([-+=])/, '\\$1').replace(/^(\d+)([.)])(?= |$)/, '$1\\$2');
}
