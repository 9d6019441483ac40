import type { Cost } from './cost.js';

/** `60.00 EUR`, with a third decimal if it is not zero; `nothing` for zero. */
export function sayCost({ amount, currency }: Cost): string {
  if (amount === 0) return 'nothing';
  const [cents, tenths] = [amount.toFixed(2), amount.toFixed(3)];
  const number = Number(cents) === Number(tenths) ? cents : tenths;
  return currency === undefined ? number : `${number} ${currency}`;
}
