/**
 * From readings to size and shape: journals and bores, roundness, runout and bend, how far a reading may be off, how
 * sizes stack up, and which part fits which place.
 *
 * @packageDocumentation
 */
export type { Bend, BendDoubt, BendStation, BendVerdict, StationRunout } from './bend-types.js';
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
export { type Bettering, type Settling, type StatedAs, whatSettles } from './budget/settling.js';
export type { WarmthOfReading } from './budget/temperature.js';
export { describeOddReading } from './describe-odd-reading.js';
export { type EngineMaterial, type MeanExpansion, meanExpansion } from './expansion.js';
export type { FitPair, FitPart, FitPlace, FitRequest, SelectedFit } from './fit-types.js';
export {
  type Harmonics,
  type HarmonicsOptions,
  harmonics,
  type Lobes,
} from './harmonics.js';
export { journalShape } from './journal.js';
export { type OddReadingOptions, oddReadings } from './odd-readings.js';
export type { OddReading, Suspect } from './odd-types.js';
export type { DiameterReading } from './readings.js';
export type { Repeats } from './repeats.js';
export {
  type LeastSquaresCircle,
  type MinimumZone,
  type Roundness,
  type RoundnessOptions,
  type RoundnessVerdict,
  roundness,
} from './roundness.js';
export { type Runout, runout } from './runout.js';
export { radiusFromSagitta } from './sagitta.js';
export { selectFit } from './select-fit.js';
export { bend } from './shaft-bend.js';
export type {
  Form,
  LineShape,
  Shape,
  ShapeOptions,
  StationShape,
  StillToRead,
} from './shape.js';
export {
  type ReadWarm,
  type SizeAt20C,
  type SizeReadWarm,
  sizeAt20C,
} from './size-at-20c.js';
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
export { type DialReading, type PlanePoint, pointsFromDial } from './trace.js';
export { shareOfOvalSeen, twoPointOutOfRound } from './two-point.js';
export { vBlockFactor } from './v-block.js';
