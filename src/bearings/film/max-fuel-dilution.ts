import { guardFields } from '../../judging/internal.js';
import { rootOfFalling } from '../../numerics/index.js';
import { type BlendingLaw, dilutedOil, type Oil } from '../../oil/index.js';
import type { Length, Ratio, VolumeFraction } from '../../quantities/index.js';
import { filmToRoughness } from './domains.js';
import { combinedRoughness, type Roughness } from './film-regime.js';
import {
  type CheckedBearing,
  type FedBearing,
  guardFedBearing,
  type WarmFilm,
  warmestOf,
  warmFilmOf,
} from './heat-balance.js';

/** A bearing whose oil is thinned by fuel, and the film that it needs. */
export interface DilutedBearing extends FedBearing {
  /** Root mean square roughness of journal and shell [m]. */
  readonly roughness: Roughness;
  /** Least film over combined roughness; by default 3, from where on oil keeps the surfaces apart [-]. */
  readonly filmRatio?: Ratio;
  /** The fuel; by default petrol, a rule of thumb. */
  readonly fuel?: Oil;
  /** The law to blend by; by default that of ASTM D7152. */
  readonly law?: BlendingLaw;
}

/** How much fuel a film stands. */
export type FilmStand =
  | {
      /** Up to a fraction the film is thick enough. */
      readonly outcome: 'stands';
      /** Fuel by volume at which it is just thick enough, or where the film breaks down at once [-]. */
      readonly fraction: VolumeFraction;
      /** The film that is needed [m]. */
      readonly needed: Length;
      /** The bearing in clean oil. */
      readonly clean: WarmFilm;
      /** The bearing at that fraction. */
      readonly diluted: WarmFilm;
    }
  | {
      /** The film is too thin with clean oil: look at clearance, load, temperature and grade. */
      readonly outcome: 'too thin when clean';
      /** The film that is needed [m]. */
      readonly needed: Length;
      /** The bearing in clean oil. */
      readonly clean: WarmFilm;
    }
  | {
      /** Even oil that is nine tenths fuel is thick enough: so little load that nothing is told by it. */
      readonly outcome: 'stands anything';
      /** The film that is needed [m]. */
      readonly needed: Length;
      /** The bearing in clean oil. */
      readonly clean: WarmFilm;
    };

const DILUTED = [
  'journal',
  'length',
  'clearance',
  'speed',
  'load',
  'oil',
  'inlet',
  'specificHeat',
  'carried',
  'roughness',
  'filmRatio',
  'fuel',
  'law',
] as const;

/** The most fuel that a film is tried with. */
export const MOST = 0.9;

/**
 * The fuel fraction that the film of this bearing stands: where fuel has thinned the oil until the
 * least film is a multiple of the roughness. At every fraction the bearing comes to a temperature of its own
 * (`heatBalance`; `carried` of 0 holds the film at the inlet's). The film falls as fuel comes in, so there is
 * one answer, and it is bracketed. Only oil that runs too hot when clean gains by being thinned: it counts as
 * too thin when clean, and `clean` says why.
 *
 * The answer is exact for the numbers that are put in, and no more: {@link maxFuelDilutionSpan} tells how far it moves
 * with what is hardly known of a real bearing.
 *
 * It tells nothing of cylinders, valve gear or vapour: fuel in a crankcase can ignite long before a bearing
 * fails.
 *
 * @param bearing - the bearing with its oil and what cools it, roughness and fuel
 * @returns the fraction [-] with the film there, or why there is none
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, the bearing is
 * too short for its journal, the clearance leaves no room to turn, the oil is not one, the fuel is not one, or it
 * is no thinner than the oil
 * @see Source: as `heatBalance`, `dilutedOil` and `filmRegime`
 * @example
 * ```ts
 * const stand = maxFuelDilution({
 *   journal: inch(1.625), length: inch(1), clearance: thou(1.6), speed: rpm(1800), load: lbf(400),
 *   inlet: celsius(70),
 *   oil: {
 *     line: [
 *       { temperature: celsius(40), viscosity: centistokes(100) },
 *       { temperature: celsius(100), viscosity: centistokes(11.1) },
 *     ],
 *     density: kilogramPerCubicMetre(885),
 *   },
 *   roughness: { journal: micrometre(0.3), shell: micrometre(0.5) },
 * });
 * stand.outcome; // "stands"
 * stand.outcome === 'stands' && format(stand.fraction, percentByVolume); // "45.3 vol%"
 * ```
 */
export function maxFuelDilution(bearing: DilutedBearing): FilmStand {
  guardFields('bearing', bearing, DILUTED);
  return standOf(bearing, guardFedBearing(bearing), filmNeeded(bearing));
}

/** The least film that this bearing needs; refuses a multiple or a roughness that cannot be. */
export function filmNeeded({ filmRatio = 3 as Ratio, roughness }: DilutedBearing): Length {
  return (filmToRoughness('filmRatio', filmRatio) * combinedRoughness(roughness)) as Length;
}

/** What fuel and law a film is thinned by. */
type Thinner = Pick<DilutedBearing, 'fuel' | 'law'>;

/** The fuel that a checked bearing stands before its film is thinner than it needs. */
export function standOf(thinner: Thinner, checked: CheckedBearing, needed: Length): FilmStand {
  const at = (fraction: number) => withFuel(thinner, checked, fraction as VolumeFraction);
  const spare = (fraction: number) => {
    const diluted = at(fraction);
    return diluted ? diluted.film.film / needed - 1 : -1;
  };
  const clean = warmFilmOf(checked);
  if (clean.film.film < needed) return { outcome: 'too thin when clean', needed, clean };
  if (spare(MOST) >= 0) return { outcome: 'stands anything', needed, clean };
  const fraction = rootOfFalling(spare, 0, MOST) as VolumeFraction;
  return { outcome: 'stands', fraction, needed, clean, diluted: at(fraction) ?? clean };
}

/** A checked bearing at the temperature it comes to in oil with so much fuel; none if that is thinner than any oil. */
function withFuel(
  { fuel, law }: Thinner,
  bearing: CheckedBearing,
  fraction: VolumeFraction,
): WarmFilm | undefined {
  const oil = dilutedOil({
    oil: bearing.oil,
    fraction,
    ...(fuel !== undefined && { fuel }),
    ...(law !== undefined && { law }),
  });
  return bearing.inlet < warmestOf(oil) ? warmFilmOf({ ...bearing, oil }) : undefined;
}
