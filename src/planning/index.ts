/**
 * Which parts make the most engines, at the least cost, with the widest margins.
 *
 * @packageDocumentation
 */
export type { Price } from '../reading/index.js';
export type { CannotBuild, WhyNotBuilt } from './cannot-build-types.js';
export type { EngineChance, EngineChances, LeftOutOfChances, OddsOfPart } from './chance-types.js';
export { chancesReport } from './chances-report.js';
export type { Cost } from './cost.js';
export { planReport } from './describe-plan.js';
export {
  describePlanDifference,
  diffPlans,
  type EngineDifference,
  type PartTaken,
  type PlanDifference,
} from './diff-plans.js';
export { type ChanceOptions, engineChances } from './engine-chances.js';
export type { BuildJob, BuildTest, ShopOrder } from './job-types.js';
export type { LackingPart, LeftOver, NextEngine } from './left-over-types.js';
export { SolverNotLoaded } from './load-solver.js';
export type {
  MayBe,
  MayBring,
  MeasureFirst,
  Measurement,
  PartToMeasure,
  ReadAgain,
} from './measure-types.js';
export type { Complete, PartToMake, Purchase, SoundJournals } from './order-types.js';
export { planBuilds } from './plan-builds.js';
export type { PlanOptions, PlanProgress } from './plan-options.js';
export type {
  Build,
  BuildBearing,
  BuildCylinder,
  BuildPart,
  MeasureAgain,
  NearClearance,
  Plan,
} from './plan-types.js';
export type { Preference } from './preferences.js';
export type { PlanStage, Proof, Unproven } from './proof-types.js';
