import { BLANK } from '../../src/pages/blocks.js';
import type { Block, Entry } from '../../src/pages/index.js';
import type { Paper } from '../planner-words.js';
import { element } from './page.js';
import { sectionsOf } from './printed-page.js';

/**
 * A paper as a section of the page, the first one open, the others written when they are opened. It grows a part
 * at a time, so that the page moves on in between.
 */
export async function showPaper(paper: Paper, place: HTMLElement): Promise<void> {
  const section = element('section', { class: 'paper', 'data-paper': paper.title });
  const whole = element(
    'details',
    place.childElementCount === 0 ? { open: '' } : {},
    element('summary', {}, element('h2', {}, paper.title)),
    element('p', { class: 'over' }, ...savingOf(paper)),
    section,
  );
  place.append(whole);
  if (!whole.open)
    await new Promise((resolve) => whole.addEventListener('toggle', resolve, { once: true }));
  for (const part of partsOf(paper)) {
    section.append(...part);
    await new Promise((resolve) => requestAnimationFrame(resolve));
  }
  section.dataset['whole'] = 'yes';
}

/** What is written before the next frame: a section of a page, or a few blocks. */
function* partsOf({ shown }: Paper): Generator<readonly Node[]> {
  if (shown.as === 'page') {
    for (const section of sectionsOf(shown.page)) yield [section];
    return;
  }
  for (let i = 0; i < shown.blocks.length; i += AT_ONCE) {
    yield shown.blocks.slice(i, i + AT_ONCE).flatMap(nodesOf);
  }
}

/** How many blocks are written before the next frame. */
const AT_ONCE = 5;

/** Links to keep a paper as a file, and to print the page. */
function savingOf({ title, text, shown }: Paper): readonly Node[] {
  const name = title.toLowerCase().replaceAll(' ', '-');
  const print = element('button', { type: 'button' }, 'Print');
  print.addEventListener('click', () => window.print());
  return [
    ...(shown.as === 'page'
      ? [linkTo(shown.page, 'text/html', `${name}.html`, 'Save as a page')]
      : []),
    linkTo(text, 'text/plain', `${name}.txt`, 'Save as text'),
    print,
  ];
}

function linkTo(contents: string, type: string, download: string, words: string): HTMLElement {
  const link = element('a', { download }, words);
  link.href = URL.createObjectURL(new Blob([contents], { type: `${type};charset=utf-8` }));
  return link;
}

function nodesOf(block: Block): readonly Node[] {
  switch (block.kind) {
    case 'page break':
      return [];
    case 'heading':
      return [element(block.level === 1 ? 'h3' : 'h4', {}, block.text)];
    case 'paragraph':
      return [element('p', {}, block.text)];
    case 'caution':
      return [element('p', { class: 'caution' }, `Caution: ${block.text}`)];
    case 'checks':
      return [element('ul', { class: 'checks' }, ...block.items.map(boxOf))];
    case 'list':
      return [element('ul', {}, ...block.items.map((item) => element('li', {}, said(item))))];
    case 'table':
      return [tableOf(block)];
  }
}

const boxOf = (item: Entry): HTMLElement =>
  element('li', {}, element('label', {}, element('input', { type: 'checkbox' }), ` ${said(item)}`));

function tableOf({ heading, rows, left }: Extract<Block, { kind: 'table' }>): HTMLElement {
  const sort = (column: number) => ({ class: column < left ? 'words' : 'number' });
  const head = heading.map((cell, i) => element('th', { scope: 'col', ...sort(i) }, cell));
  const body = rows.map((row) =>
    element('tr', {}, ...row.map((cell, i) => element('td', sort(i), said(cell)))),
  );
  const table = element(
    'table',
    {},
    element('thead', {}, element('tr', {}, ...head)),
    element('tbody', {}, ...body),
  );
  return element(
    'div',
    { class: 'table', tabindex: '0', role: 'region', 'aria-label': heading.join(', ') },
    table,
  );
}

/** Text, or a label and room to write on paper behind it. */
function said(entry: Entry): string {
  if (typeof entry === 'string') return entry;
  return entry.write === '' ? BLANK : `${entry.write}: ${BLANK}`;
}
