/**
 * What a number means: SI quantities that know their dimension, and the units they are read
 * and written in.
 *
 * @packageDocumentation
 */
export { minus, plus, times } from './arithmetic.js';
export { convert } from './convert.js';
export type * from './dimensions.js';
export { coherentUnit } from './dimensions.js';
export { type InputProblem, RebuildInputError } from './error.js';
export { format } from './format.js';
export { formatFraction } from './format-fraction.js';
export { absolutePressure, gaugePressure, standardAtmosphere } from './gauge.js';
export { parse, parseLength } from './parse.js';
export { tradeUnit, type UnitSystem } from './systems.js';
export { type Unit, valueIn } from './unit.js';
export type { CompatibleName, UnitName } from './unit-names.js';
export {
  type DimensionOf,
  type SymbolOf,
  type UnitSymbol,
  unitTable,
} from './unit-table.js';
export * from './units.js';
