/**
 * One engine: read its inspection sheet, inspect it, list what to do and print the report.
 *
 * @packageDocumentation
 */

export type { HiddenOval, HowRead } from '../reading/index.js';
export {
  type Bench,
  FileError,
  type FileProblem,
  type Happening,
  type InstrumentName,
  type InstrumentOfBench,
  type InstrumentsOfBench,
  type JournalKind,
  type JsonSchema,
  type ReadWarmPart,
  type ShellPairs,
  type StarterFile,
  type StatedLimits,
  type WarmthOfBench,
} from '../reading/index.js';
export type { Action, WrongShells } from './action-types.js';
export { actionsFrom } from './actions.js';
export { describeAction } from './describe-action.js';
export type { FilmSizes } from './film-sizes.js';
export { type Inspection, inspect } from './inspect.js';
export type { BearingGroupReport, BearingReport } from './inspect-bearings.js';
export type { CylinderReport, RingReport } from './inspect-cylinder.js';
export type { FilmReport, HotOil } from './inspect-film.js';
export type { FittedShells } from './inspect-fitted.js';
export type { LeakReport, LeftUntil, TimeLeft } from './inspect-leak.js';
export type { OilReport } from './inspect-oil.js';
export type { SampleReport } from './inspect-sample.js';
export { sheetSchema } from './json-schema.js';
export { type NewSheet, newSheet } from './new-sheet.js';
export type { BigEndSheet, FilmSheet, LeakAround, LeakSheet, OilSheet } from './oil-sheet.js';
export { readSheet } from './read-sheet.js';
export { report } from './report.js';
export type {
  BearingSheet,
  BoresSheet,
  CrankshaftSheet,
  CylinderLimits,
  CylinderSheet,
  EndPlaySheet,
  Sheet,
} from './sheet.js';
export type { Unsettled } from './unsettled.js';
