import type { WrittenCard } from '../judging/internal.js';
import type { UnitSystem } from '../quantities/index.js';
import { readIn, shopReading } from './shop-values.js';

/** The values that a card is tried with: those written on it, or else the middle of what is usual. */
export const exampleOf = (
  card: WrittenCard,
  wanted: UnitSystem,
  ofLiquid: boolean,
): Readonly<Record<string, number>> => {
  const system = readIn(card, wanted);
  return Object.freeze(
    Object.fromEntries(
      Object.entries(card.letters).map(([letter, written]) => {
        const { round, at, unit } = shopReading(written, system, ofLiquid);
        const own = card.example?.[letter];
        if (own === undefined) return [letter, round(at(0.5))];
        // Examples are written in metric units.
        const isReadAlike = unit === shopReading(written, 'metric', ofLiquid).unit;
        return [letter, isReadAlike ? own : round(own)];
      }),
    ),
  );
};
