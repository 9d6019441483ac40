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
  WrittenCard,
} from '../judging/internal.js';
export { cardMathml, cardTex } from './card-typeset.js';
export { type CardName, cards } from './cards.js';
export { cardsAbout } from './cards-about.js';
export { type CheckedAnswer, check, type Slip } from './check.js';
export { type CardValues, evaluateCard } from './evaluate.js';
export { exampleValues } from './example-values.js';
export { exercise, solution } from './exercise.js';
export type { Exercise, ExerciseAsk, ExerciseGiven } from './exercise-types.js';
export type { CardTopic, FormulaCard } from './formula-card.js';
export type { NumberSlip } from './slips.js';
export { type WorkedOptions, worked } from './worked.js';
export { workedMarkdown, workedMathml, workedText } from './worked-print.js';
export type {
  PrintedQuantity,
  WorkedConstant,
  WorkedConversion,
  WorkedFormula,
  WorkedLetter,
  WorkedStep,
} from './worked-types.js';
export { type Worksheet, type WorksheetRequest, worksheet } from './worksheet.js';
export { printWorksheet, type WorksheetOptions } from './worksheet-print.js';
