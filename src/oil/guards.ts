import { guardBetween, noneOr } from '../judging/internal.js';
import {
  celsius,
  centistokes,
  type Density,
  type Flow,
  hour,
  type KinematicViscosity,
  kilogramPerCubicMetre,
  litre,
  type MassFraction,
  mL,
  mLPerHour,
  percentByMass,
  percentByVolume,
  perMinute,
  type Rate,
  type Temperature,
  type Time,
  type Volume,
  type VolumeFraction,
} from '../quantities/index.js';

/** From 0.21 mm²/s, where the viscosity equation begins, to 2·10⁷ mm²/s, where it ends. */
export const guardViscosity = (parameter: string, value: KinematicViscosity): KinematicViscosity =>
  guardBetween(parameter, value, centistokes, [0.21e-6, 20], 'centistokes(32)');

/** Oil and fuel temperatures, -73 to 227 °C. */
export const guardTemperature = (parameter: string, value: Temperature): Temperature =>
  guardBetween(parameter, value, celsius, [200, 500], 'celsius(40)');

/** Densities of oils and fuels, from the lightest petrol to the heaviest lubricating oil at -73 °C, 1218 kg/m³. */
export const DENSITIES = [600, 1250] as const;

/** Oils and fuels. */
export const guardDensity = (parameter: string, value: Density): Density =>
  guardBetween(parameter, value, kilogramPerCubicMetre, DENSITIES, 'kilogramPerCubicMetre(880)');

/** One drop: from a fine needle's to a millilitre. */
export const guardDrop = (parameter: string, value: Volume): Volume =>
  guardBetween(parameter, value, mL, [1e-9, 1e-6], 'mL(0.05)');

/** A sump or what is in it: up to 100 L. */
export const guardVolume = (parameter: string, value: Volume): Volume =>
  guardBetween(parameter, value, litre, [1e-6, 0.1], 'quartUS(1)');

/** What is poured in, drained or there already: none, or up to 100 L. */
export const guardPortion = (parameter: string, value: Volume): Volume =>
  guardBetween(parameter, value, litre, [0, 0.1], 'quartUS(1)');

/** Up to ten years. */
export const guardTime = (parameter: string, value: Time): Time =>
  guardBetween(parameter, value, hour, [0, 3.2e8], 'hour(8)');

/** A leak: none, or from a drop in a year to a litre a second. */
export const guardFlow = (parameter: string, value: Flow): Flow =>
  guardBetween(parameter, value, mLPerHour, [noneOr(1e-15, value), 1e-3], 'mLPerHour(30)');

/** A rate of events or of loss: none, or from once in an age to a thousand a second. */
export const guardRate = (parameter: string, value: Rate): Rate =>
  guardBetween(parameter, value, perMinute, [noneOr(1e-15, value), 1000], 'perMinute(12)');

/** Fuel in oil by volume, from none to so much. */
export const guardFraction = (
  parameter: string,
  value: VolumeFraction,
  most: number,
): VolumeFraction =>
  guardBetween(parameter, value, percentByVolume, [0, most], 'percentByVolume(5)');

/** Fuel in oil by mass, from none to all. */
export const guardMassFraction = (parameter: string, value: MassFraction): MassFraction =>
  guardBetween(parameter, value, percentByMass, [0, 1], 'percentByMass(5)');
