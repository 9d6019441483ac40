import type { Span } from '../judging/index.js';
import type {
  Density,
  KinematicViscosity,
  Temperature,
  ThermalExpansion,
} from '../quantities/index.js';
import type { Oil } from './oil.js';
import type { ViscosityLine } from './viscosity.js';

/**
 * Petrol at 20 °C, taken as 0.55 mm²/s. Common practice, from memory: grades run
 * from 0.5 to 0.6, and it thins as it warms [m²/s].
 */
export const petrolAt20C = 0.55e-6 as KinematicViscosity;

/**
 * Petrol at 20 °C, from fresh to weathered: 0.5 to 1.0 mm²/s. What stays in an oil is the heavy end of
 * the petrol, and more of a thicker fuel thins an oil as much. Fresh petrol is common practice, from memory. Weathered: in Zhu et al.,
 * Experimental analysis of the evaporation process for gasoline (2012), the viscosity rose from 0.86 to 1.51 mPa·s while 86 % of the
 * petrol evaporated, 1.76 times, and 1.76 times 0.55 mm²/s is 0.97 [m²/s].
 */
export const petrolSpanAt20C: Span<KinematicViscosity> = {
  min: 0.5e-6 as KinematicViscosity,
  max: 1e-6 as KinematicViscosity,
};

/**
 * Petrol at 15 °C, taken as 745 kg/m³. Common practice: about the middle of the 720 to
 * 775 kg/m³ that EN 228 allows, from memory [kg/m³].
 */
export const petrolDensity = 745 as Density;

/**
 * The viscosity line of petrol, taken as 0.55 mm²/s at 20 °C and 0.28 mm²/s at 100 °C. Common
 * practice: no standard sets it. It lies between n-pentane and n-heptane, and is as steep as
 * toluene. The light ends of petrol boil off well below 100 °C, and what stays in the oil is
 * thicker than this line: it errs to the safe side.
 */
export const petrolLine: ViscosityLine = [
  { temperature: 293.15 as Temperature, viscosity: petrolAt20C },
  { temperature: 373.15 as Temperature, viscosity: 0.28e-6 as KinematicViscosity },
];

/**
 * Petrol as a liquid: its viscosity line, its density and how it expands. They are `petrolLine`, `petrolDensity` and
 * 1.21e-3 1/K, which is (346.4228 + 0.4388 * 745) / 745² by table 54B of ASTM D1250 for gasolines, from memory.
 */
export const petrol: Required<Oil> = {
  line: petrolLine,
  density: petrolDensity,
  expansion: 1.21e-3 as ThermalExpansion,
};
