export type {
  AcceptanceCheck,
  AcceptanceCheckName,
  AcceptedOrbit,
  BearingAcceptance,
  BearingToAccept,
  FilmsSideBySide,
} from './acceptance-types.js';
export { bearingAcceptance } from './bearing-acceptance.js';
export { bearingPressure, type PressedBearing } from './bearing-pressure.js';
export { type OilSupply, type SupplyFinding, supplyFinding } from './oil-supply.js';
export {
  type OwnMetal,
  type PressureBand,
  type ShellLimits,
  type ShellMaterial,
  type ShellMetal,
  shellLimits,
} from './shell-material.js';
export { trumplerFilm } from './trumpler.js';
