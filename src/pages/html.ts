import { escapedMarkup } from './markup.js';
import type { PageLine, PageSection, PageTable, Sentence, Task } from './sections.js';

/** Pictures that belong to a section, as markup. */
export interface Pictures {
  /** The heading of the section. */
  readonly after: string;
  readonly pictures: readonly string[];
}

/**
 * Prints sections as one web page that needs nothing else: no script, nothing to load, and a policy that forbids both. It
 * can be printed. Pictures stand below the section they belong to, or at the end where there is none.
 */
export function asHtml(
  sections: readonly PageSection[],
  pictures: readonly Pictures[] = [],
): string {
  const title = spoken(sections[0]?.heading ?? '');
  const headings = sections.map(({ heading }) => heading);
  const words = (text: string) => leading(escapedMarkup(text), headings);
  const body = sections.map(({ heading, lines }, i) => {
    const level = i === 0 ? 'h1' : 'h2';
    const first = headings.indexOf(heading) === i;
    const its = first ? pictures.filter(({ after }) => after === heading) : [];
    const mark = first ? ` id="${markOf(nameOf(heading))}"` : '';
    return `<section${mark}><${level}>${escapedMarkup(spoken(heading))}</${level}>\n${markupOf(lines, words)}\n${figures(its)}</section>`;
  });
  const homeless = pictures.filter(({ after }) => !headings.includes(after));
  return `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escapedMarkup(title)}</title>
<style>${STYLE}</style>
</head>
<body>
<main>
${body.join('\n')}
${figures(homeless)}</main>
</body>
</html>
`;
}

/** A heading in capitals as it is read: `WHAT TO DO` becomes `What to do`. A name in it stays as it is. */
const spoken = (heading: string): string =>
  heading.replace(/^[A-Z][A-Z ]*[A-Z](?![\w])/, (words) => words[0] + words.slice(1).toLowerCase());

/** What the text calls a section: `ENGINE 1` of `ENGINE 1: block B`. */
const nameOf = (heading: string): string => heading.replace(/:.*/s, '');

/** What a link to a section names. */
const markOf = (name: string): string => `section-${name.toLowerCase().replace(/[^a-z\d]+/g, '-')}`;

/** Text in which `see TO BUY` leads to that section, by the name that the page gives it. */
function leading(text: string, headings: readonly string[]): string {
  return text.replace(
    /\b(see|to) ([A-Z]{2,}(?: [A-Z\d]+)*)/g,
    (found, lead: string, name: string) =>
      headings.some((heading) => nameOf(heading) === name)
        ? `${lead} <a href="#${markOf(name)}">${spoken(name)}</a>`
        : found,
  );
}

const figures = (all: readonly Pictures[]): string => {
  const drawn = all.flatMap(({ pictures }) => pictures);
  if (drawn.length === 0) return '';
  return `<div class="pictures">\n${drawn.map((picture) => `<figure>${picture}</figure>`).join('\n')}\n</div>\n`;
};

/** Lines of one kind that follow each other. */
type Run =
  | { readonly kind: 'paragraph'; readonly text: string }
  | { readonly kind: 'items'; readonly items: string[] }
  | { readonly kind: 'tasks'; readonly items: string[] }
  | { readonly kind: 'table'; readonly table: PageTable };

/** Turns text into markup. */
type Words = (text: string) => string;

function markupOf(lines: readonly PageLine[], words: Words): string {
  const runs: Run[] = [];
  for (const line of lines) {
    const last = runs.at(-1);
    const { kind, text } = kindOf(line);
    if (kind === 'table') runs.push({ kind, table: line as PageTable });
    else if (kind === 'paragraph') runs.push({ kind, text });
    else if (last?.kind === kind) last.items.push(text);
    else runs.push({ kind, items: [text] });
  }
  return runs.map((run) => printed(run, words)).join('\n');
}

/** What is set in stands below what it belongs to: an item of a list. */
function kindOf(line: PageLine): { readonly kind: Run['kind']; readonly text: string } {
  if (typeof line === 'object' && 'task' in line)
    return { kind: 'tasks', text: (line as Task).task };
  if (typeof line === 'object' && 'rows' in line) return { kind: 'table', text: '' };
  const text = typeof line === 'string' ? line : (line as Sentence).text;
  return { kind: text.startsWith(' ') ? 'items' : 'paragraph', text };
}

function printed(run: Run, words: Words): string {
  switch (run.kind) {
    case 'paragraph':
      return `<p>${words(run.text)}</p>`;
    case 'items':
      return `<ul>\n${run.items.map((item) => `<li>${words(item)}</li>`).join('\n')}\n</ul>`;
    case 'tasks':
      return `<ol class="tasks">\n${run.items.map((item) => `<li><span class="box" aria-hidden="true"></span>${words(item)}</li>`).join('\n')}\n</ol>`;
    case 'table':
      return tableOf(run.table, words);
  }
}

function tableOf({ heading, rows, left }: PageTable, words: Words): string {
  const side = (i: number) => (i < left ? '' : ' class="number"');
  const head = heading.map((text, i) => `<th scope="col"${side(i)}>${escapedMarkup(text)}</th>`);
  const body = rows.map((row) => {
    const cells = heading.map((_, i) => {
      const text = words(row[i] ?? '');
      return i === 0 ? `<th scope="row">${text}</th>` : `<td${side(i)}>${text}</td>`;
    });
    return `<tr>${cells.join('')}</tr>`;
  });
  return `<div class="table"><table>\n<thead><tr>${head.join('')}</tr></thead>\n<tbody>\n${body.join('\n')}\n</tbody>\n</table></div>`;
}

/** Plain, dark on white or the other way round as the reader has it, and always dark on white on paper. */
const STYLE = `
:root { color-scheme: light; --crankwright-paper: #ffffff; --crankwright-ink: #1a1a1a; --crankwright-soft: #6b6b6b; --crankwright-mark: #1f5f99; --crankwright-alarm: #b3261e; }
@media screen and (prefers-color-scheme: dark) {
  :root { color-scheme: dark; --crankwright-paper: #161616; --crankwright-ink: #ececec; --crankwright-soft: #a3a3a3; --crankwright-mark: #7db4e6; --crankwright-alarm: #ff8a80; }
}
body { margin: 0; background: var(--crankwright-paper); color: var(--crankwright-ink); font: 1rem/1.5 system-ui, sans-serif; }
main { max-width: 47rem; margin: 0 auto; padding: 1rem; }
h1 { font-size: 1.6rem; line-height: 1.25; }
h2 { font-size: 1.2rem; margin: 2rem 0 0.5rem; border-bottom: 1px solid var(--crankwright-soft); }
p { margin: 0.4rem 0; overflow-wrap: anywhere; }
ul, ol { margin: 0.4rem 0; padding-left: 1.6rem; overflow-wrap: anywhere; }
li { margin: 0.25rem 0; }
.box { display: inline-block; width: 0.8em; height: 0.8em; margin-right: 0.5em; border: 1.5px solid currentColor; vertical-align: -0.05em; }
.table { overflow-x: auto; }
table { border-collapse: collapse; margin: 0.5rem 0; font-variant-numeric: tabular-nums; }
a { color: var(--crankwright-mark); }
th, td { padding: 0.15rem 0.9rem 0.15rem 0; text-align: left; vertical-align: top; }
thead th { border-bottom: 1px solid var(--crankwright-soft); }
tbody th { font-weight: normal; }
.number { text-align: right; white-space: nowrap; }
.pictures { display: grid; grid-template-columns: repeat(auto-fill, minmax(min(100%, 20rem), 1fr)); gap: 0.75rem; align-items: start; margin: 1rem 0; }
figure { margin: 0; }
figure:has(> svg.wide) { grid-column: 1 / -1; }
svg.wide { display: none; }
@media print, screen and (min-width: 47rem) {
  svg.wide { display: block; }
  svg.narrow { display: none; }
}
@page { margin: 15mm; }
@media print {
  main { max-width: none; padding: 0; }
  body { font-size: 10.5pt; }
  h1, h2, p:has(+ .table), p:has(+ ul), p:has(+ ol) { break-after: avoid; }
  figure, tr, li { break-inside: avoid; }
}
`;
