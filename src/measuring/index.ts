/**
 * From readings to size and shape: journals and bores, and how far a reading may be off.
 *
 * @packageDocumentation
 */
export { type BoreOptions, type BoreShape, boreShape } from './bore.js';
export type { Contributor, Spread } from './budget/contributor.js';
export { describeSettling } from './budget/describe-settling.js';
export {
  type BudgetShare,
  type CoverageOptions,
  type ExpandedUncertainty,
  expandedUncertainty,
} from './budget/expanded-uncertainty.js';
export {
  type AnyInstrument,
  type Instrument,
  instrumentBudget,
  type RepeatReadings,
} from './budget/instruments.js';
export {
  type InstrumentUncertainty,
  type ReadingUncertainty,
  readingUncertainty,
  type StatedUncertainty,
} from './budget/reading-uncertainty.js';
export { type Repeatability, repeatability } from './budget/repeatability.js';
export { type Bettering, type Settling, whatSettles } from './budget/settling.js';
export type { WarmthOfReading } from './budget/temperature.js';
export { type EngineMaterial, type MeanExpansion, meanExpansion } from './expansion.js';
export { journalShape } from './journal.js';
export { radiusFromSagitta } from './sagitta.js';
export type {
  DiameterReading,
  Form,
  LineShape,
  Shape,
  ShapeOptions,
  StationShape,
} from './shape.js';
export {
  type ReadWarm,
  type SizeAt20C,
  type SizeReadWarm,
  sizeAt20C,
} from './size-at-20c.js';
export type { InDoubt } from './standing.js';
