import { RebuildInputError } from '../quantities/index.js';

/** An amount of money in one currency. */
export interface Price {
  /** How much, in whole units and parts of the currency [-]. */
  readonly amount: number;
  /** The currency, as the three letters of ISO 4217. */
  readonly currency: string;
}

/** At most nine digits, and thousandths: no currency has smaller parts. */
const AMOUNT = /^(?:\d{1,9}(?:\.\d{1,3})?|\.\d{1,3})$/;
/** An exponent, valid in JSON but not in a price. */
const EXPONENT = /\d\.?[eE][+-]?\d/;
const EXAMPLE = 'Write amount and currency, e.g. 14.50 EUR.';

/**
 * Reads a price: an amount and the three letters of its currency, in either order. It does not
 * guess: many currencies share the sign $.
 */
export function parsePrice(text: string): Price {
  if (!/\d/.test(text)) throw refused(text, 'has no amount', EXAMPLE);
  if (/\p{Sc}/u.test(text)) {
    const hint = 'Many currencies share a sign: write the three letters, e.g. 14.50 USD.';
    throw refused(text, 'uses a currency sign', hint);
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
    const hint = `Write the currency as three capital letters, e.g. EUR.`;
    throw refused(text, 'has no readable currency', hint);
  }
  const amount = text.replace(currency, '').trim();
  if (/^[-−]/.test(amount)) throw refused(text, 'is negative', 'If it is free, write 0.');
  const atItsEnd = text.trim().startsWith(currency) || text.trim().endsWith(currency);
  if (!atItsEnd || !AMOUNT.test(amount)) {
    const hint = 'Write at most three decimals after a point, and no separator between thousands.';
    throw refused(text, 'has no readable amount', hint);
  }
  return { amount: Number(amount), currency };
}

/** A price as text that `parsePrice` reads back. */
export function writePrice({ amount, currency }: Price): string {
  const hundredths = amount.toFixed(2);
  const isWhole = Number.isInteger(amount) || Number(hundredths) !== amount;
  return `${isWhole ? amount : hundredths} ${currency}`;
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
