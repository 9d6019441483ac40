/**
 * Viscosity, grades and blends of oil, and the fuel that leaks into a sump.
 *
 * @packageDocumentation
 */
export { type BlendPart, blendViscosity, fuelFraction, type ThinnedSample } from './blend.js';
export { type BlendDensities, fractionByMass, fractionByVolume } from './blend-fractions.js';
export { apiGravity, densityAt, densityFromApiGravity, type KnownDensity } from './density.js';
export { dilutedOil } from './diluted-oil.js';
export {
  type DilutionFinding,
  type DilutionOptions,
  type DilutionStage,
  type DilutionThresholds,
  dilutionFinding,
} from './dilution.js';
export { dripFlow, dropVolume, petrolDrop } from './drip.js';
export { type FuelFractionSpan, fuelFractionSpan } from './fuel-fraction-span.js';
export {
  type IsoGrade,
  type IsoGrading,
  isoGrade,
  type SaeGrade,
  type SaeGrades,
  type SaeWinterGrade,
  saeGrade,
} from './grades.js';
export { hydraulicLockHours } from './hydraulic-lock.js';
export type { BlendingFractions, BlendingLaw } from './laws.js';
export { fuelFromLevelRise } from './level-rise.js';
export {
  dynamicViscosityAt,
  extrapolatedDynamicViscosity,
  type FilmOil,
  type Oil,
} from './oil.js';
export { petrol, petrolAt20C, petrolDensity, petrolLine, petrolSpanAt20C } from './petrol.js';
export { kinematicFromSaybolt, sayboltUniversal } from './saybolt.js';
export {
  fuelInSump,
  type SumpLeak,
  type TimeToDilution,
  timeToDilution,
} from './sump.js';
export {
  type SumpEntry,
  type SumpLog,
  type SumpState,
  type SumpStory,
  sumpLog,
} from './sump-log.js';
export type { SumpFuel } from './sump-state.js';
export {
  type ThinningFinding,
  type ThinningOptions,
  type ThinningThresholds,
  thinningFinding,
} from './thinning.js';
export {
  type ExtrapolatedViscosity,
  extrapolatedViscosity,
  type LineRange,
  type ViscosityLine,
  type ViscosityPoint,
  viscosityAt,
} from './viscosity.js';
export { type ViscosityPair, viscosityIndex } from './viscosity-index.js';
