import { type Angle, type Ratio, RebuildInputError } from '../../quantities/index.js';
import { eccentricityRatio, filmLengthToDiameter } from './domains.js';

/** Length of a bearing over its diameter; `'infinite'` for one that loses nothing at its ends [-]. */
export type LengthToDiameter = Ratio | 'infinite';

/** Where a journal runs in its bearing, and how long the bearing is. */
export interface FilmPlace {
  /** Distance of the two centres over the radial clearance, from 0.01 to 0.998 [-]. */
  readonly eccentricity: Ratio;
  /** Length over diameter, from 0.1 up, or `'infinite'` [-]. */
  readonly lengthToDiameter: LengthToDiameter;
}

/**
 * A steady oil film in plain ratios, which hold for every bearing of its shape. r is the journal's radius,
 * c the radial clearance, L the length, N the revolutions in a second, P the load over L times the diameter.
 */
export interface FilmNumbers {
  /** Distance of the two centres over the radial clearance [-]. */
  readonly eccentricity: Ratio;
  /** Length over diameter, or `'infinite'` [-]. */
  readonly lengthToDiameter: LengthToDiameter;
  /** Sommerfeld number (r/c)² µN/P [-]. */
  readonly sommerfeld: Ratio;
  /** Least film over the radial clearance [-]. */
  readonly leastFilm: Ratio;
  /** Attitude angle: from the load line on, the way the journal turns, to the least film [rad]. */
  readonly attitude: Angle;
  /** Friction (r/c) f on the journal, oil taken to fill the whole gap [-]. */
  readonly friction: Ratio;
  /** Flow Q/(rcNL) through the widest gap, net of what flows back there [-]. */
  readonly flow: Ratio;
  /** Share Qs/Q of that flow that leaves at the two ends [-]. */
  readonly sideFlow: Ratio;
  /** Mean pressure over the greatest, P/pmax [-]. */
  readonly pressureRatio: Ratio;
  /** From the load line on to the greatest pressure [rad]. */
  readonly peakAngle: Angle;
  /** From the load line on to where the film breaks, midway along the bearing [rad]. */
  readonly ruptureAngle: Angle;
}

/** Refuses a bearing shorter than a tenth of its diameter. */
export function guardLengthToDiameter(
  parameter: string,
  value: LengthToDiameter,
): LengthToDiameter {
  if (value === 'infinite') return value;
  const { least, most } = filmLengthToDiameter;
  if (typeof value === 'number' && value >= least && value <= most) return value;
  throw new RebuildInputError({
    parameter,
    value,
    expected: `a ratio of ${least} or more, or 'infinite'`,
    hint: 'Divide the length of the bearing by the journal diameter; both are lengths in metres.',
  });
}

/** Refuses a place that no film is computed for. Its fields are for the caller to guard. */
export function guardPlace(place: FilmPlace): FilmPlace {
  return {
    eccentricity: eccentricityRatio('eccentricity', place.eccentricity),
    lengthToDiameter: guardLengthToDiameter('lengthToDiameter', place.lengthToDiameter),
  };
}

/** What a solution of the Reynolds equation gives, before it is put into the trade's numbers. */
export interface RawFilm {
  /** Load towards the narrowest gap, in units of 6 µω(r/c)² times journal diameter and length. */
  readonly along: number;
  /** Load across the line of centres, in the same unit. */
  readonly across: number;
  /** Inflow at the widest gap, in units of πrcNL. */
  readonly inflow: number;
  /** Flow out of both ends, in the same unit. */
  readonly outflow: number;
  /** Greatest pressure, in units of 6 µω(r/c)². */
  readonly peak: number;
  /** Where it is, from the widest gap on [rad]. */
  readonly peakAt: number;
  /** Where the film breaks midway along the bearing, from the widest gap on [rad]. */
  readonly ruptureAt: number;
}

/** The trade's numbers from those of a solution. */
export function filmNumbers(place: FilmPlace, raw: RawFilm): FilmNumbers {
  const { eccentricity, lengthToDiameter } = place;
  const mean = Math.hypot(raw.along, raw.across);
  const attitude = Math.atan2(raw.across, raw.along);
  const sommerfeld = 1 / (12 * Math.PI * mean);
  const loadLine = Math.PI - attitude;
  return {
    eccentricity,
    lengthToDiameter,
    sommerfeld: sommerfeld as Ratio,
    leastFilm: (1 - eccentricity) as Ratio,
    attitude: attitude as Angle,
    friction: journalFriction(eccentricity, sommerfeld, attitude),
    flow: (Math.PI * raw.inflow) as Ratio,
    sideFlow: (raw.outflow / raw.inflow) as Ratio,
    pressureRatio: (mean / raw.peak) as Ratio,
    peakAngle: (raw.peakAt - loadLine) as Angle,
    ruptureAngle: (raw.ruptureAt - loadLine) as Angle,
  };
}

/**
 * Friction (r/c) f on the journal from the balance of its forces: shear around the whole gap,
 * and the load that stands off the line of centres.
 */
export function journalFriction(eccentricity: number, sommerfeld: number, attitude: number): Ratio {
  const shear = (2 * Math.PI ** 2 * sommerfeld) / Math.sqrt(1 - eccentricity ** 2);
  return (shear + (eccentricity / 2) * Math.sin(attitude)) as Ratio;
}
