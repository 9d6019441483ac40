import type { WrittenCard } from '../judging/internal.js';
import type { UnitSystem } from '../quantities/index.js';
import { readingOf } from './shop-values.js';

/** The values that a card is tried with: those written on it, or else the middle of what is usual. */
export const exampleOf = (
  card: WrittenCard & { readonly topic: string },
  system: UnitSystem,
): Readonly<Record<string, number>> =>
  Object.freeze(
    Object.fromEntries(
      Object.entries(card.letters).map(([letter, written]) => {
        const { round, at, unit } = readingOf(card, written, system);
        const own = card.example?.[letter];
        if (own === undefined) return [letter, round(at(0.5))];
        // Examples are written in metric units.
        const isReadAlike = unit === readingOf(card, written, 'metric').unit;
        return [letter, isReadAlike ? own : round(own)];
      }),
    ),
  );
