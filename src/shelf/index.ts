/**
 * One engine's inspection sheet: read it, inspect the engine, print the report.
 *
 * @packageDocumentation
 */
export { type Action, actionsFrom, type WrongShells } from './actions.js';
export { describeAction } from './describe-action.js';
export { type Inspection, inspect } from './inspect.js';
export type { BearingGroupReport, BearingReport } from './inspect-bearings.js';
export type { CylinderReport, RingReport } from './inspect-cylinder.js';
export type { OilReport } from './inspect-oil.js';
export { readSheet } from './read-sheet.js';
export { report } from './report.js';
export type {
  BearingSheet,
  CrankshaftSheet,
  CylinderLimits,
  CylinderSheet,
  EndPlaySheet,
  JournalSheet,
  OilSheet,
  Sheet,
  ShellSheet,
  StatedLimits,
} from './sheet.js';
export { SheetError, type SheetProblem } from './sheet-error.js';
