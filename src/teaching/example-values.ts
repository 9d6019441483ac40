import type { CardName } from './cards.js';
import { type CardValues, cardNamed } from './evaluate.js';
import { exampleOf } from './example.js';
import { unitsAsked, type WorkedOptions } from './worked-options.js';

/**
 * Values to try a card with, each rounded as a shop reads it in the units asked for. `card.example` holds the same as
 * a metric shop reads it.
 *
 * @param name - name of the card
 * @param options - the units that the shop reads, inches without it
 * @returns a number for each letter [SI]
 * @throws {RebuildInputError} when a field is misspelt, there is no such card or the unit system is unknown
 * @example
 * ```ts
 * const { D_j } = exampleValues('oilClearance', { units: 'inch' });
 * format(D_j as Length, inch); // "2.1260 in"
 * ```
 */
export function exampleValues(name: CardName, options: WorkedOptions = {}): CardValues {
  const card = cardNamed(name);
  return exampleOf(card, unitsAsked(options));
}
