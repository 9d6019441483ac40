import type { WrittenCard } from '../judging/internal.js';
import type { UnitSystem } from '../quantities/index.js';
import { asMade, readingOf } from './shop-values.js';

/** The values that a card is tried with: those written on it, or else the middle of what is usual. */
export function exampleOf(
  card: WrittenCard & { readonly topic: string },
  system: UnitSystem,
): Readonly<Record<string, number>> {
  const letters = Object.entries(card.letters).map(([letter, written]) => {
    const { round, at, unit } = readingOf(card, written, system);
    // Examples are written in metric units.
    const isReadAlike = unit === readingOf(card, written, 'metric').unit;
    return { letter, round, isReadAlike, from: card.example?.[letter] ?? at(0.5) };
  });
  const made = asMade(
    card,
    Object.fromEntries(letters.map(({ letter, from }) => [letter, from])),
    system,
  );
  return Object.freeze(
    Object.fromEntries(
      letters.map(({ letter, round, isReadAlike, from }) => {
        const isWritten = isReadAlike && card.example?.[letter] === made[letter];
        return [letter, isWritten ? from : round(made[letter] as number)];
      }),
    ),
  );
}
