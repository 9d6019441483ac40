import type { UnitSystem } from '../../src/quantities/index.js';
import { workedSteps } from '../../src/teaching/index.js';
import type { CardName, Values } from '../cards.js';

/** The working of a card, a line each. */
export const workingOf = (name: CardName, values: Values, units: UnitSystem): readonly string[] =>
  workedSteps(name, values, { units });
