export {
  type BlendingFractions,
  type BlendingLaw,
  type BlendPart,
  blendViscosity,
  type DilutedOil,
  fuelFraction,
  petrolAt20C,
} from './blend.js';
export {
  type DilutionFinding,
  type DilutionStage,
  type DilutionThresholds,
  dilutionFinding,
} from './dilution.js';
export {
  commonDrop,
  dripFlow,
  fuelInSump,
  type SumpFuel,
  type SumpLeak,
  type TimeToDilution,
  timeToDilution,
} from './sump.js';
export { type ViscosityLine, type ViscosityPoint, viscosityAt } from './viscosity.js';
