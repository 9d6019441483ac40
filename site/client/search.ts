import { tellingWords } from '../small-words.js';

// The search of the reference looks for each word inside of others: with "how much to grind" it finds whatever has
// "to" in its name. So it is given the words that say something.
const input = document.getElementById('tsd-search-input');
const { get, set } = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value') ?? {};
if (input && get && set) {
  Object.defineProperty(input, 'value', {
    get: () => tellingWords(get.call(input)).join(' '),
    set: (text) => set.call(input, text),
  });
}
