/** The letters and digits of a report alone: without lines under headings, boxes, rules to write on, and spaces. */
export const bare = (text: string): string =>
  text
    .replace(/^(?:-{3,}|={3,})$/gm, '')
    .replaceAll('[ ]', '')
    .replaceAll(/caution: /gi, 'Caution:')
    .replace(/[\s_]/g, '');

/** What a printed page says, without its markup. */
export const wordsOnPage = (page: string): string =>
  page
    .slice(page.indexOf('<main>'), page.indexOf('</main>'))
    .replace(/<[^>]*>/g, '')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&amp;', '&');

/** The words of a build sheet in the order of the alphabet: text breaks the cells of a table where a page does not. */
export const wordsOf = (text: string): readonly string[] =>
  text
    .replace(/^(?:-{3,}|={3,})$/gm, '')
    .replaceAll('[ ]', '')
    .replaceAll('CAUTION:', 'Caution:')
    .replaceAll('_', ' ')
    .split(/\s+/)
    .filter((word) => word !== '' && word !== ':')
    .sort();
