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
  commonDrop,
  type DilutionFinding,
  type DilutionStage,
  type DilutionThresholds,
  dilutionFinding,
  dripFlow,
  fuelInSump,
  type SumpFuel,
  type SumpLeak,
  type TimeToDilution,
  timeToDilution,
} from './dilution.js';
export { type ViscosityLine, type ViscosityPoint, viscosityAt } from './viscosity.js';
