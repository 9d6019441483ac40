/**
 * From readings to size and shape: journals and bores.
 *
 * @packageDocumentation
 */
export { type BoreOptions, type BoreShape, boreShape } from './bore.js';
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
export type { InDoubt } from './standing.js';
