import { guardFields, showLength } from '../judging/internal.js';
import { type Area, type Length, RebuildInputError, type Volume } from '../quantities/index.js';
import { levelRise, oilSurface, sumpVolume } from './domains.js';
import { guardDiluted, type SumpFuel } from './sump-state.js';

const SUMP = ['rise', 'surface', 'oil'] as const;

/**
 * The fuel that has raised the level in a sump.
 *
 *     fuel = rise * surface
 *     fraction = rise * surface / (oil + rise * surface)
 *
 * Read the level on level ground, the engine standing and as warm as it was before. The answer is
 * the least there is: fuel that has taken the place of burnt oil raises nothing, and a level that
 * has not moved does not clear the oil. Measure its viscosity to know.
 *
 * @param sump - how far the level has risen, the free surface of the oil at that height, and the clean oil
 * @returns fuel, level and fraction by volume
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, the level has
 * fallen or the rise leaves hardly any oil
 * @see Source: geometry
 * @example
 * ```ts
 * const sump = fuelFromLevelRise({
 *   rise: mm(3), surface: squareMm(15000), oil: quartUS(1),
 * });
 * format(sump.fuel, mL); // "45.0 mL"
 * format(sump.fraction, percentByVolume); // "4.5 vol%"
 * ```
 */
export function fuelFromLevelRise(sump: {
  /** How far the level stands above that of the clean oil, measured upright [m]. */
  readonly rise: Length;
  /** Free surface of the oil where the level stands: length by width of the pan, less what stands in it [m²]. */
  readonly surface: Area;
  /** Clean oil in the sump [m³]. */
  readonly oil: Volume;
}): SumpFuel {
  guardFields('sump', sump, SUMP);
  const rise = guardRise(sump.rise);
  const surface = oilSurface('surface', sump.surface);
  const oil = sumpVolume('oil', sump.oil);
  return guardDiluted(
    {
      parameter: 'rise',
      value: rise,
      shown: showLength(rise),
      hint: 'Is it in its unit, e.g. mm(3)?',
    },
    oil,
    (rise * surface) as Volume,
  );
}

function guardRise(rise: Length): Length {
  levelRise('rise', rise);
  if (rise >= 0) return rise;
  throw new RebuildInputError({
    parameter: 'rise',
    value: rise,
    shown: showLength(rise),
    expected: 'a rise',
    problem: 'is a fall: oil has been lost',
    hint: 'A level that has fallen says nothing of fuel, which may have replaced more of the oil: measure the viscosity.',
  });
}
