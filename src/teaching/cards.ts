import { clearanceCards } from '../bearings/clearance.cards.js';
import type { FormulaCard } from '../judging/internal.js';

const everyCard = {
  ...clearanceCards,
};

/** The name of a card. */
export type CardName = keyof typeof everyCard;

/** Every formula of the library, one card each. */
export const cards: Readonly<Record<CardName, FormulaCard>> = everyCard;
