/**
 * From readings to size and shape: journals and bores.
 *
 * @packageDocumentation
 */
export { type BoreOptions, type BoreShape, boreShape } from './bore.js';
export { describeOddReading } from './describe-odd-reading.js';
export { journalShape } from './journal.js';
export { type OddReading, type OddReadingOptions, oddReadings } from './odd-readings.js';
export type { DiameterReading } from './readings.js';
export type { Repeats } from './repeats.js';
export { radiusFromSagitta } from './sagitta.js';
export type {
  Form,
  LineShape,
  Shape,
  ShapeOptions,
  StationShape,
} from './shape.js';
export type { InDoubt } from './standing.js';
