/**
 * From readings to size and shape: journals and bores. How sizes stack up, and which part fits which place.
 *
 * @packageDocumentation
 */
export { type BoreOptions, type BoreShape, boreShape } from './bore.js';
export type { FitPair, FitPart, FitPlace, FitRequest, SelectedFit } from './fit-types.js';
export { journalShape } from './journal.js';
export { radiusFromSagitta } from './sagitta.js';
export { selectFit } from './select-fit.js';
export type {
  DiameterReading,
  Form,
  LineShape,
  Shape,
  ShapeOptions,
  StationShape,
} from './shape.js';
export type {
  MonteCarloStack,
  RootSumSquareStack,
  ShareOutside,
  SizeDistribution,
  StackByMethod,
  StackContributor,
  StackMethod,
  StackPart,
  StackUp,
  WorstCaseStack,
} from './stack-types.js';
export { stackUp } from './stack-up.js';
export type { InDoubt } from './standing.js';
