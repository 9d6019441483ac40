import { guardWhole } from '../../judging/guards.js';
import { RebuildInputError } from '../../quantities/error.js';
import type { Price } from '../price.js';
import { type Counted, type Part, SECTIONS, type Shelf } from '../shelf.js';

/**
 * Refuses a shelf with counts or prices that `readShelf` would not give: they go into
 * the solver as they are, and into the length of lists.
 */
export function guardCounts(shelf: Shelf): void {
  const { cylinders, mains } = shelf.engine;
  guardWhole('shelf.engine.cylinders', cylinders, [1, 24], HINT);
  guardWhole('shelf.engine.mains', mains, [0, 25], HINT);
  for (const section of SECTIONS) {
    guardParts(`shelf.${section}`, shelf[section] ?? []);
    guardParts(`shelf.toBuy.${section}`, shelf.toBuy?.[section] ?? []);
  }
  shelf.machining?.forEach(({ price }, i) => {
    guardAmount(`shelf.machining[${i}].price.amount`, price.amount);
  });
}

const HINT = 'Pass on what readShelf gives.';

function guardParts(at: string, parts: readonly (Part & Numbered)[]): void {
  parts.forEach(({ pairs, count, price }, i) => {
    if (pairs !== undefined) guardWhole(`${at}[${i}].pairs`, pairs, [0, 10_000], HINT);
    if (count !== undefined) guardWhole(`${at}[${i}].count`, count, [0, 10_000], HINT);
    if (price !== undefined) guardAmount(`${at}[${i}].price.amount`, price.amount);
  });
}

interface Numbered extends Counted {
  readonly pairs?: number;
  readonly price?: Price;
}

function guardAmount(parameter: string, value: number): void {
  if (value >= 0 && value <= 1e9) return;
  throw new RebuildInputError({
    parameter,
    value,
    expected: 'an amount of money, 0 or more',
    hint: HINT,
  });
}
