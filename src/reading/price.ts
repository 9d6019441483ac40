import { RebuildInputError } from '../quantities/index.js';

/** An amount of money in one currency. */
export interface Price {
  /** How much, in whole units and parts of the currency [-]. */
  readonly amount: number;
  /** The currency, by its three letters of ISO 4217. */
  readonly currency: string;
}

/** No currency has smaller parts than thousandths, and no part of a small engine costs a milliard. */
const AMOUNT = /^(?:\d{1,9}(?:\.\d{1,3})?|\.\d{1,3})$/;
/** A number that JSON would take; nobody writes a price like that. */
const EXPONENT = /\d\.?[eE][+-]?\d/;
const EXAMPLE = 'Write amount and currency, e.g. 14.50 EUR.';

/**
 * Reads a price: an amount and the three letters of its currency, one before
 * the other. Nothing is guessed: the sign $ stands for many currencies.
 */
export function parsePrice(text: string): Price {
  if (!/\d/.test(text)) throw refused(text, 'has no amount', EXAMPLE);
  if (/\p{Sc}/u.test(text)) {
    const hint = 'Many currencies share a sign: write the three letters, e.g. 14.50 USD.';
    throw refused(text, 'has a sign for its currency', hint);
  }
  if (EXPONENT.test(text)) {
    throw refused(text, 'is written with an exponent', 'Write the amount out, e.g. 1000 EUR.');
  }
  const [currency, another] = text.match(/\p{L}+/gu) ?? [];
  if (currency === undefined) throw refused(text, 'has no currency', EXAMPLE);
  if (another !== undefined) {
    throw refused(text, 'names more than one currency', 'Write one amount in one currency.');
  }
  if (!/^[A-Z]{3}$/.test(currency)) {
    const hint = `Currencies are written with three capital letters, e.g. EUR.`;
    throw refused(text, 'has no currency that can be read', hint);
  }
  const amount = text.replace(currency, '').trim();
  if (/^[-−]/.test(amount)) throw refused(text, 'is negative', 'What is free costs 0.');
  const atItsEnd = text.trim().startsWith(currency) || text.trim().endsWith(currency);
  if (!atItsEnd || !AMOUNT.test(amount)) {
    const hint = 'Write at most three decimals after a point, and nothing between thousands.';
    throw refused(text, 'has no amount that can be read', hint);
  }
  return { amount: Number(amount), currency };
}

function refused(text: string, problem: string, hint: string): RebuildInputError {
  return new RebuildInputError({
    parameter: 'price',
    value: text,
    expected: 'a price',
    problem,
    hint,
  });
}
