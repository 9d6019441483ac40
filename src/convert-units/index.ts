/**
 * For tools that convert with the library convert-units, version 3: its measures, with the exact
 * factors of this library and the units of the trade. Nothing of that library is loaded here.
 *
 * @packageDocumentation
 */
export { exactMeasures } from './exact-measures.js';
export type {
  ExactMeasure,
  ExactMeasures,
  ExactUnit,
  SameAnchor,
  SymbolIn,
  SystemOf,
} from './measure-types.js';
export type { MeasureSystem } from './unit-words.js';
