import { RebuildInputError } from '../../quantities/error.js';
import { type Counted, type Part, SECTIONS, type Shelf } from '../shelf.js';

/**
 * Refuses a shelf with counts or prices that `readShelf` would not give: they go into
 * the solver as they are, and into the length of lists.
 */
export function guardCounts(shelf: Shelf): void {
  const { cylinders, mains, rodsPerJournal = 1 } = shelf.engine;
  guardWhole('engine.cylinders', cylinders, 1, 24);
  guardWhole('engine.mains', mains, 0, 25);
  guardWhole('engine.rodsPerJournal', rodsPerJournal, 1, 2);
  for (const section of SECTIONS) {
    const own: readonly Numbered[] = shelf[section] ?? [];
    const offered: readonly Numbered[] = shelf.toBuy?.[section] ?? [];
    own.forEach((part, i) => {
      guardPart(`${section}[${i}]`, part);
    });
    offered.forEach((part, i) => {
      guardPart(`toBuy.${section}[${i}]`, part);
    });
  }
  shelf.machining?.forEach(({ price }, i) => {
    guardAmount(`machining[${i}].price.amount`, price.amount);
  });
}

type Numbered = Part &
  Counted & {
    readonly pairs?: number;
    readonly price?: { readonly amount: number };
  };

function guardPart(at: string, { pairs, count, price }: Numbered): void {
  if (pairs !== undefined) guardWhole(`${at}.pairs`, pairs, 0, 10_000);
  if (count !== undefined) guardWhole(`${at}.count`, count, 0, 10_000);
  if (price !== undefined) guardAmount(`${at}.price.amount`, price.amount);
}

function guardWhole(parameter: string, value: number, least: number, most: number): void {
  if (Number.isInteger(value) && value >= least && value <= most) return;
  throw notFromReader(parameter, value, `a whole number from ${least} to ${most}`);
}

function guardAmount(parameter: string, value: number): void {
  if (Number.isFinite(value) && value >= 0 && value <= 1e9) return;
  throw notFromReader(parameter, value, 'an amount of money, 0 or more');
}

function notFromReader(parameter: string, value: unknown, expected: string): RebuildInputError {
  const hint = 'Make the shelf with readShelf, and pass that on as it came.';
  return new RebuildInputError({ parameter: `shelf.${parameter}`, value, expected, hint });
}
