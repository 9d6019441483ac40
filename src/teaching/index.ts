/**
 * The mathematics, written out: a card for every formula, worked with numbers
 * and units by mathjs.
 *
 * @packageDocumentation
 */
export type {
  AnyDomain,
  CardLetter,
  CardRefusal,
  CardResult,
  FormulaCard,
} from '../judging/internal.js';
export { type CardName, cards } from './cards.js';
export { type CardValues, evaluateCard } from './evaluate.js';
export { workedSteps } from './worked-steps.js';
