import { type Length, tradeUnit, type UnitSystem } from '../quantities/index.js';
import { formatNumber } from '../quantities/internal.js';

/** A size of a table, in bare numbers. */
export const numberIn = (units: UnitSystem) => (length: Length) =>
  formatNumber(length, tradeUnit('length', units));
