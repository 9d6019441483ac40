import { type CardName, cards } from '../cards.js';
import { wordsFor } from '../search-words.js';
import { capital, escaped, pageHtml } from './layout.js';
import { anchorOf, topics } from './topics.js';

/** The page that lists all formulas by topic. */
export function formulaIndex(): string {
  const main = `<h1>Formulas</h1>
<p>Every formula of the library on a page of its own: type your readings, see the result, move an input and see what it does.</p>
<p class="find"><label for="find">Find a formula</label>
<input type="search" id="find" autocomplete="off" placeholder="petrol in the oil" aria-describedby="found"></p>
<p id="found" class="hint" aria-live="polite"></p>
<nav aria-label="Topics"><ul class="topics">${topics
    .map(({ topic, title }) => `<li><a href="#${anchorOf(topic)}">${escaped(title)}</a></li>`)
    .join('')}</ul></nav>
${topics
  .map(
    ({
      topic,
      title,
      names,
    }) => `<section class="formulas"><h2 id="${anchorOf(topic)}">${escaped(title)}</h2>
<ul>
${names.map(itemHtml).join('\n')}
</ul></section>`,
  )
  .join('\n')}`;
  return pageHtml({ title: 'Formulas', root: '../', script: 'formula-index', main });
}

/** A formula in the list, with the words that it is found by. */
function itemHtml(name: CardName): string {
  const { name: title, gives, letters, of } = cards[name];
  const words = [
    title,
    gives.meaning,
    of.name,
    name,
    wordsFor(of.name),
    ...Object.values(letters).map(({ meaning }) => meaning),
  ];
  return `<li data-words="${escaped(words.join(' ').toLowerCase())}"><a href="${name}.html">${escaped(capital(title))}</a></li>`;
}
