import type { FormulaCard } from '../card.js';
import { bearingCards } from './bearings.js';
import { crankshaftCards } from './crankshaft.js';
import { cylinderCards } from './cylinders.js';
import { filmCards } from './film.js';
import { motionCards } from './motion.js';
import { oilCards } from './oil.js';
import { orbitCards } from './orbit.js';
import { sumpCards } from './sump.js';
import { viscosityCards } from './viscosity.js';

const everyCard = {
  ...crankshaftCards,
  ...bearingCards,
  ...cylinderCards,
  ...filmCards,
  ...motionCards,
  ...oilCards,
  ...orbitCards,
  ...sumpCards,
  ...viscosityCards,
};

/** The name of a card. */
export type CardName = keyof typeof everyCard;

/** Every formula of the library, one card each. */
export const cards: Readonly<Record<CardName, FormulaCard>> = everyCard;
