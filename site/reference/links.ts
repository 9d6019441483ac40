import { type Application, JSX, type PageEvent, type Reflection } from 'typedoc';
import { type CardName, cardNames, cards } from '../cards.js';
import { capital } from '../pages/layout.js';

/**
 * Links from the reference to the pages that compute: in the sidebar, on the first page, and on each function. Loads
 * what makes its search take sentences, and its tables fit a phone.
 */
export function linkToPages(app: Application): void {
  app.renderer.hooks.on('sidebar.begin', (context) => {
    const links = PAGES.map(([path, title]) =>
      JSX.createElement('li', null, link(context.relativeURL(path), title)),
    );
    const about = { 'aria-label': 'Pages that compute' };
    return JSX.createElement('nav', about, JSX.createElement('ul', null, ...links));
  });
  app.renderer.hooks.on('head.end', (context) => {
    const style = { rel: 'stylesheet', href: context.relativeURL('pages/reference.css') };
    const script = { type: 'module', src: context.relativeURL('pages/search.js') };
    return JSX.createElement(
      JSX.Fragment,
      null,
      JSX.createElement('link', style),
      JSX.createElement('script', script),
    );
  });
  app.renderer.hooks.on('content.begin', (context) => {
    const { model } = context.page as PageEvent<Reflection>;
    const pages = model.isProject() ? PAGES : pagesOf(model.name);
    if (pages.length === 0) return JSX.createElement(JSX.Fragment, null);
    const links = pages.map(([path, title]) => link(context.relativeURL(path), title));
    const between = links.flatMap((each, i) => (i > 0 ? [', ', each] : [each]));
    return JSX.createElement('p', { class: 'tsd-panel' }, 'Try it: ', ...between);
  });
}

const link = (href: string, title: string) => JSX.createElement('a', { href }, title);

const PAGES = [
  ['formulas/index.html', 'Formulas, live'],
  ['your-parts.html', 'Your engine or shed'],
] as const;

/** The pages of the formulas that a function computes. */
const pagesOf = (name: string): readonly (readonly [string, string])[] =>
  cardNames
    .filter((card: CardName) => cards[card].of.name === name)
    .map((card) => [`formulas/${card}.html`, capital(cards[card].name)]);
