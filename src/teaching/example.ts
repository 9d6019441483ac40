import type { WrittenCard } from '../judging/internal.js';
import { shopValue } from './shop-values.js';

/** The values that a card is tried with: those written on it, or else the middle of what is usual. */
export const exampleOf = (card: WrittenCard, ofLiquid: boolean): Readonly<Record<string, number>> =>
  Object.freeze(
    card.example ??
      Object.fromEntries(
        Object.entries(card.letters).map(([letter, written]) => [
          letter,
          shopValue(written, 0.5, 'metric', ofLiquid),
        ]),
      ),
  );
