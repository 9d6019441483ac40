/**
 * One engine's inspection sheet: read it, inspect the engine, print the report. And a
 * shelf of parts: read it, sort it, and plan the builds that it makes.
 *
 * @packageDocumentation
 */
export { type Action, actionsFrom, type WrongShells } from './actions.js';
export { describeAction } from './describe-action.js';
export type { BoreKind, EngineKind } from './engine-kind.js';
export type { Consequence, Fault } from './faults.js';
export { type Inspection, inspect } from './inspect.js';
export type { BearingGroupReport, BearingReport } from './inspect-bearings.js';
export type { CylinderReport, RingReport } from './inspect-cylinder.js';
export type { FilmReport, HotOil } from './inspect-film.js';
export type { OilReport } from './inspect-oil.js';
export type { JsonSchema } from './json-schema.js';
export { type BuildSheetOptions, buildSheet } from './plan/build-sheet.js';
export { planReport } from './plan/describe-plan.js';
export { SolverNotLoaded } from './plan/load-solver.js';
export { planBuilds } from './plan/plan-builds.js';
export type {
  Build,
  BuildBearing,
  BuildCylinder,
  BuildJob,
  BuildPart,
  Cost,
  LackingPart,
  LeftOver,
  NextEngine,
  Plan,
  PlanOptions,
  PlanProgress,
  PlanStage,
  Proof,
  Purchase,
  ShopOrder,
  Unproven,
} from './plan/plan-types.js';
export type { Price } from './price.js';
export { readSheet } from './read-sheet.js';
export { readShelf } from './read-shelf.js';
export { report } from './report.js';
export type {
  BearingSheet,
  CrankshaftSheet,
  CylinderLimits,
  CylinderSheet,
  EndPlaySheet,
  FilmSheet,
  JournalSheet,
  OilSheet,
  Sheet,
  ShellSheet,
  StatedLimits,
} from './sheet.js';
export { SheetError, type SheetProblem } from './sheet-error.js';
export { sheetSchema } from './sheet-json-schema.js';
export type {
  BlockPart,
  BorePlace,
  Counted,
  CrankshaftPart,
  HeadPart,
  HousingPlace,
  JournalPlace,
  MachiningOffer,
  Offered,
  Offers,
  Part,
  Parts,
  PistonSetPart,
  RingSetPart,
  RodsPart,
  Section,
  Shelf,
  ShellPart,
  ThrustWasherPart,
  ValveSetPart,
  Work,
} from './shelf.js';
export { shelfSchema } from './shelf-json-schema.js';
export { describePart, triageReport } from './triage/describe-triage.js';
export { triage } from './triage/triage.js';
export type {
  Disposition,
  Job,
  Triage,
  TriagedPart,
  TriageReason,
} from './triage/triage-types.js';
