import { element } from './page.js';

/**
 * The sections of a page that the library printed, to stand on this one: its headings one floor down, boxes that can be
 * ticked, and tables that scroll by keyboard. The policy of this site takes no style from markup, so that what the
 * pictures say of their inks is set by script. Each section is read when it is asked for.
 */
export function* sectionsOf(page: string): Generator<Element> {
  const main = page.slice(page.indexOf('<main>') + '<main>'.length, page.indexOf('</main>'));
  // Text is escaped in the markup: what looks like a tag or an attribute here is one.
  for (const section of main.split(/(?=<section>)/)) {
    const markup = section
      .replaceAll(/<(\/?)h([12])>/g, (_, slash, level) => `<${slash}h${Number(level) + 2}>`)
      .replaceAll(' style="', ' data-style="');
    const { body } = new DOMParser().parseFromString(markup, 'text/html');
    yield* [...body.children].map(adopted);
  }
}

function adopted(section: Element): Element {
  const own = document.importNode(section, true);
  for (const each of own.querySelectorAll<SVGElement>('[data-style]')) {
    each.style.cssText = each.dataset['style'] ?? '';
    delete each.dataset['style'];
  }
  for (const box of own.querySelectorAll('.box')) {
    const item = box.parentElement;
    const input = element('input', { type: 'checkbox' });
    box.remove();
    item?.replaceChildren(element('label', {}, input, ' ', ...item.childNodes));
  }
  for (const table of own.querySelectorAll('.table')) {
    const heading = [...table.querySelectorAll('thead th')].map(({ textContent }) => textContent);
    table.setAttribute('tabindex', '0');
    table.setAttribute('role', 'region');
    table.setAttribute('aria-label', heading.join(', '));
  }
  return own;
}
