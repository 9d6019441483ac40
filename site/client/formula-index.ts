import { tellingWords } from '../small-words.js';
import { byId, takeTheme } from './page.js';

takeTheme();

const input = byId<HTMLInputElement>('find');
const found = byId('found');
const items = [...document.querySelectorAll<HTMLElement>('li[data-words]')];
const sections = [...document.querySelectorAll<HTMLElement>('section.formulas')];

input.addEventListener('input', show);
document.body.dataset['ready'] = 'yes';

/** Shows the formulas that have the most of the words. */
function show(): void {
  const words = tellingWords(input.value.toLowerCase());
  const hits = items.map((item) => {
    const text = item.dataset['words'] ?? '';
    return words.filter((word) => text.includes(word)).length;
  });
  const most = hits.reduce((a, b) => Math.max(a, b), 0);
  items.forEach((item, i) => {
    item.hidden = words.length > 0 && (most === 0 || hits[i] !== most);
  });
  for (const section of sections) {
    section.hidden = !section.querySelector('li:not([hidden])');
  }
  const shown = items.filter(({ hidden }) => !hidden).length;
  found.textContent =
    words.length === 0
      ? ''
      : shown === 0
        ? 'No formula has these words.'
        : `${shown} of ${items.length} formulas`;
}
