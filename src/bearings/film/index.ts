export type { FilmNumbers, FilmPlace, LengthToDiameter } from './film-numbers.js';
export {
  type FilmFinding,
  filmRegime,
  type Regime,
  type RegimeThresholds,
  type Roughness,
} from './film-regime.js';
export { type Film, type FloatingFilm, filmThickness } from './film-thickness.js';
export { finiteBearing, finiteBearingAt, type LoadedPlace } from './finite-bearing.js';
export { type FedBearing, heatBalance, type WarmFilm } from './heat-balance.js';
export type { JournalBearing, LoadedBearing, OiledBearing } from './journal-bearing.js';
export {
  type DilutedBearing,
  type FilmStand,
  maxFuelDilution,
} from './max-fuel-dilution.js';
export {
  type DilutionDriver,
  type FilmDoubt,
  type MaxDilutionSpan,
  maxFuelDilutionSpan,
} from './max-fuel-dilution-span.js';
export { type Drag, petroff, type TurningBearing } from './petroff.js';
export { type KnownSump, type SafeHours, safeHours } from './safe-hours.js';
export { type ShortFilm, shortBearing } from './short-bearing.js';
export { solveReynolds } from './solve-reynolds.js';
export { sommerfeldNumber } from './sommerfeld.js';
export { commonSpecificHeat, temperatureRise, type WarmedOil } from './temperature-rise.js';
