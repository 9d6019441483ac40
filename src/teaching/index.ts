/**
 * The mathematics, written out: a card for every formula, worked with numbers
 * and units by mathjs.
 *
 * @packageDocumentation
 */
export type {
  AnyDomain,
  CardDefined,
  CardLetter,
  CardRefusal,
  CardResult,
  WrittenCard,
} from '../judging/internal.js';
export { cardMathml, cardTex } from './card-typeset.js';
export { type CardName, cards } from './cards.js';
export { cardsAbout } from './cards-about.js';
export { type CheckedAnswer, check } from './check.js';
export { type CardValues, evaluateCard } from './evaluate.js';
export { exampleValues } from './example-values.js';
export { exercise, solution } from './exercise.js';
export type { Exercise, ExerciseAsk, ExerciseDefined, ExerciseGiven } from './exercise-types.js';
export type { CardTopic, FormulaCard } from './formula-card.js';
export type { NumberSlip, ReadingSlip, Slip } from './slip-types.js';
export { worked } from './worked.js';
export type { WorkedOptions } from './worked-options.js';
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
