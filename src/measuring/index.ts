/**
 * From readings to size and shape: journals and bores, roundness, runout and bend.
 *
 * @packageDocumentation
 */
export { type BoreOptions, type BoreShape, boreShape } from './bore.js';
export {
  type Harmonics,
  type HarmonicsOptions,
  harmonics,
  type Lobes,
} from './harmonics.js';
export { journalShape } from './journal.js';
export {
  type LeastSquaresCircle,
  type MinimumZone,
  type Roundness,
  type RoundnessOptions,
  roundness,
} from './roundness.js';
export { type Runout, runout } from './runout.js';
export { radiusFromSagitta } from './sagitta.js';
export {
  type Bend,
  type BendDoubt,
  type BendStation,
  type BendVerdict,
  bend,
  type StationRunout,
} from './shaft-bend.js';
export type {
  DiameterReading,
  Form,
  LineShape,
  Shape,
  ShapeOptions,
  StationShape,
} from './shape.js';
export type { InDoubt } from './standing.js';
export { type DialReading, type PlanePoint, pointsFromDial } from './trace.js';
export { shareOfOvalSeen, twoPointOutOfRound } from './two-point.js';
export { vBlockFactor } from './v-block.js';
