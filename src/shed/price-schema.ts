import { marked, parsePrice, textAs, writePrice } from '../reading/index.js';

/** A price of a shed file. */
export const price = marked(textAs('amount and currency in quotes, e.g. "14.50 EUR"', parsePrice), {
  json: () => ({
    description: 'price: an amount and the three letters of its currency',
    examples: ['14.50 EUR', 'EUR 14.50'],
  }),
  write: writePrice,
});
