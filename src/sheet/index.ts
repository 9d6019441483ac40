/**
 * One engine: read its inspection sheet, inspect it, list what to do and print the report.
 *
 * @packageDocumentation
 */

export type {
  AssemblySettings,
  ColdLash,
  CompressionSetting,
  FastenerSetting,
  FitSetting,
  NewParts,
  RingsSetting,
  SpringSetting,
  TimingSetting,
  ValveSetting,
} from '../assembly/index.js';
export type { HiddenOval, HowRead } from '../reading/index.js';
export {
  type AssemblyData,
  type Bench,
  type CompressionData,
  type CompressionRuleData,
  type DipperData,
  type FastenerData,
  type FastenersData,
  FileError,
  type FileProblem,
  type FitData,
  type Happening,
  type InstrumentName,
  type InstrumentOfBench,
  type InstrumentsOfBench,
  type JournalKind,
  type JsonSchema,
  type Locking,
  type PlaceData,
  type ReadWarmPart,
  type RingsData,
  type ShellPairs,
  type SparkData,
  type SpringData,
  type StarterFile,
  type StatedLimits,
  type ThreadData,
  type TimingData,
  type TrainData,
  type TrainPieceData,
  type TrainSideData,
  type ValveData,
  type ValvesData,
  type WarmthOfBench,
} from '../reading/index.js';
export type { Action } from './action-types.js';
export { actionsFrom } from './actions.js';
export type { AssemblyAction } from './assembly-actions.js';
export type { CompressionSheet, TestedCylinder } from './compression-sheet.js';
export { describeAction } from './describe-action.js';
export type { FilmSizes } from './film-sizes.js';
export { type Inspection, inspect } from './inspect.js';
export type { BearingGroupReport, BearingReport } from './inspect-bearings.js';
export type { CompressionReport } from './inspect-compression.js';
export type { CylinderReport, RingReport } from './inspect-cylinder.js';
export type { FilmReport, HotOil } from './inspect-film.js';
export type { FittedShells } from './inspect-fitted.js';
export type { LeakReport, LeftUntil, TimeLeft } from './inspect-leak.js';
export type { OilReport } from './inspect-oil.js';
export type { SampleReport } from './inspect-sample.js';
export type { ValveReport, ValveTopic } from './inspect-valve.js';
export { sheetSchema } from './json-schema.js';
export { type NewSheet, newSheet } from './new-sheet.js';
export type {
  BigEndSheet,
  FilmSheet,
  LeakAlone,
  LeakAround,
  LeakSheet,
  OilSheet,
} from './oil-sheet.js';
export { readSheet } from './read-sheet.js';
export { report } from './report.js';
export type {
  BearingSheet,
  BoresSheet,
  CrankshaftSheet,
  CylinderLimits,
  CylinderSheet,
  EndPlaySheet,
  LeftOut,
  NotFilledIn,
  Sheet,
} from './sheet.js';
export type { BareHousing, BuyShells, WhenShells, WrongShells } from './shell-action-types.js';
export type { AsItIs } from './shells-for.js';
export type { Unsettled } from './unsettled.js';
export type { ValveAction } from './valve-actions.js';
export type { SpringReading, ValveLimits, ValveSheet } from './valve-sheet.js';
export type { Wait } from './waiting.js';
