/**
 * The mathematics, written out: a card for every formula, worked with numbers
 * and units by mathjs.
 *
 * @packageDocumentation
 */
export type { CardInput, CardSymbol, FormulaCard } from './card.js';
export { type CardName, cards } from './cards/index.js';
export { type CardValues, evaluateCard } from './evaluate.js';
export { workedSteps } from './worked-steps.js';
