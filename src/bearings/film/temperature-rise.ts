import { guardBetween, guardFields } from '../../judging/internal.js';
import { liquidDensity } from '../../oil/internal.js';
import {
  type Density,
  type Flow,
  mLPerMinute,
  type Power,
  type Ratio,
  type SpecificHeat,
  type TemperatureDifference,
} from '../../quantities/index.js';
import { drawnOil, frictionPower, heatShare, oilSpecificHeat } from './domains.js';

/** Specific heat of warm mineral oil, taken as 2000 J/(kg·K). Common practice: 1900 to 2100 [J/(kg·K)]. */
export const commonSpecificHeat = 2000 as SpecificHeat;

/** What warms the oil of a bearing. */
export interface WarmedOil {
  /** Power that friction takes [W]. */
  readonly power: Power;
  /** Oil that the journal draws through the widest gap in a time [m³/s]. */
  readonly flow: Flow;
  /** What of it leaves at the two ends in a time [m³/s]. */
  readonly sideFlow: Flow;
  /** Density of the oil [kg/m³]. */
  readonly density: Density;
  /** Specific heat of the oil; by default 2000 J/(kg·K), a rule of thumb [J/(kg·K)]. */
  readonly specificHeat?: SpecificHeat;
  /**
   * Share of the heat that the oil carries away, the rest goes through shell and shaft; by default
   * all of it, which errs to the warm side [-].
   */
  readonly carried?: Ratio;
}

const WARMED = ['power', 'flow', 'sideFlow', 'density', 'specificHeat', 'carried'] as const;

/**
 * How far friction warms the oil on its way through a bearing. What leaves at the ends has gained half
 * of that on average, what goes all the way round the whole.
 *
 *     rise = carried * power / (density * specificHeat * (flow - sideFlow / 2))
 *
 * @param oil - power, flows, density and specific heat of the oil
 * @returns rise from the way in to the way out [K]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, or more leaves
 * at the ends than flows in
 * @see Source: Raimondi and Boyd, Trans. ASLE 1 (1958)
 * @example
 * ```ts
 * const rise = temperatureRise({
 *   power: watt(56), flow: cubicMetrePerSecond(3.55e-6), sideFlow: cubicMetrePerSecond(2.33e-6),
 *   density: kilogramPerCubicMetre(860), specificHeat: joulePerKilogramKelvin(1760),
 * });
 * format(rise, celsiusDifference); // "15.5 Δ°C"
 * ```
 */
export function temperatureRise(oil: WarmedOil): TemperatureDifference {
  guardFields('oil', oil, WARMED);
  const power = frictionPower('power', oil.power);
  const flow = drawnOil('flow', oil.flow);
  const sideFlow = guardBetween('sideFlow', oil.sideFlow, mLPerMinute, [0, flow], drawnOil.example);
  const density = liquidDensity('density', oil.density);
  const { specificHeat = commonSpecificHeat, carried = 1 as Ratio } = oil;
  return riseOf({
    power,
    flow,
    sideFlow,
    density,
    specificHeat: oilSpecificHeat('specificHeat', specificHeat),
    carried: heatShare('carried', carried),
  });
}

/** The rise of oil that was checked. */
export function riseOf(oil: Required<WarmedOil>): TemperatureDifference {
  const { power, flow, sideFlow, density, specificHeat, carried } = oil;
  const heated = density * specificHeat * (flow - sideFlow / 2);
  return ((carried * power) / heated) as TemperatureDifference;
}
