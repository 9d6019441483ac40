import {
  type AcceptanceCheck,
  type AcceptanceCheckName,
  type BearingAcceptance,
  bearingAcceptance,
  type FilmFinding,
  filmRegime,
  heatBalance,
  type WarmFilm,
} from '../bearings/index.js';
import { loadInDoubt } from '../bearings/internal.js';
import type { Basis } from '../judging/index.js';
import { namedFrom } from '../judging/internal.js';
import { bigEndLoads, gasTrace, type LoadDiagram } from '../motion/index.js';
import { dilutedOil, type Oil, type SaeGrades, saeGrade } from '../oil/index.js';
import { alongLine } from '../oil/internal.js';
import {
  type Density,
  type Force,
  type KinematicViscosity,
  type Length,
  type Ratio,
  RebuildInputError,
  type RotationalSpeed,
  type Temperature,
  type VolumeFraction,
} from '../quantities/index.js';
import { type FilmSizes, filmSizes, type MeasuredBearing } from './film-sizes.js';
import type { BigEndSheet, FilmSheet, OilSheet } from './oil-sheet.js';

/** An oil at 100 °C, the temperature that defines its grade. */
export interface HotOil {
  /** Kinematic viscosity at 100 °C [m²/s]. */
  readonly viscosity: KinematicViscosity;
  /** The grades it satisfies. */
  readonly grades: SaeGrades;
}

/** Findings on the film in the bearing that the sheet names. */
export interface FilmReport {
  /** Name of the bearing. */
  readonly bearing: string;
  /** The steady load it was judged under [N]. */
  readonly load: Force;
  /** The clearance it was judged at. */
  readonly sizes: FilmSizes;
  /** The end of that clearance where the steady film is thinner [m]. */
  readonly clearance: Length;
  /** The bearing under that load in the oil as it is now, or in clean oil if no sample shows its fuel. */
  readonly now: WarmFilm;
  /** Its film against the roughness of its surfaces: the orbit's, where the parts that load it are known. */
  readonly finding: FilmFinding;
  /** By what share its load may be more than was given, as it was not measured, and who says so. */
  readonly loadDoubt: {
    /** The share [-]. */
    readonly share: Ratio;
    /** Who says so. */
    readonly basis: Basis;
  };
  /** Whether the bearing is good in that oil, if its load is no more than it may be. */
  readonly acceptance: BearingAcceptance;
}

/** The density used if the sheet gives none. */
const USUAL_DENSITY = 880 as Density;

/** Who set the density of the oil. */
export const densityBasis = ({ density }: Partial<OilSheet>): Basis =>
  density === undefined
    ? { kind: 'common practice', rule: 'oil of 880 kg/m³ at 15 °C' }
    : { kind: 'specified' };

/** The clean oil. */
export const cleanOil = ({ line, density }: OilSheet): Oil => ({
  line,
  density: density ?? USUAL_DENSITY,
});

/** The oil with this much fuel in it. */
export function oilNow(oil: OilSheet, fuel: VolumeFraction): Oil {
  const clean = cleanOil(oil);
  return dilutedOil({ oil: clean, fraction: fuel, ...(oil.fuel && { fuel: oil.fuel }) });
}

/** The grades of an oil. */
export function hotOil({ line }: Oil): HotOil {
  const viscosity = alongLine(line, 373.15 as Temperature);
  return { viscosity, grades: saeGrade(viscosity) };
}

/** Inspects the film of a bearing in oil with this much fuel in it, and whether the bearing is good. */
export function inspectFilm(
  oil: OilSheet,
  bearing: FilmSheet,
  fuel: VolumeFraction,
  measured: readonly MeasuredBearing[] = [],
): FilmReport {
  if (oil.fuelViscosity !== undefined && oil.fuel === undefined) {
    throw new RebuildInputError({
      parameter: 'fuel',
      value: undefined,
      shown: 'the line of the fuel',
      expected: 'two points and a density',
      problem: 'is missing',
      hint: 'A fuel with its own viscosity is not taken as petrol, so the film needs its line.',
    });
  }
  const { name, journal, length, speed, load, inlet, roughness, filmRatio } = bearing;
  const sizes = filmSizes(bearing, measured);
  const loaded = { journal, length, speed, load, inlet };
  const now = thinner(
    [sizes.clearance.min, sizes.clearance.max].map((clearance) => ({
      clearance,
      warm: heatBalance({ ...loaded, clearance, oil: oilNow(oil, fuel) }),
    })),
  );
  const loadDoubt = loadInDoubt(oil.doubt ?? {});
  const acceptance = acceptanceOf(bearing, sizes, oilNow(oil, fuel), loadDoubt.share);
  const own = filmRatio !== undefined && {
    thresholds: { mixed: Math.min(1, filmRatio) as Ratio, full: filmRatio },
  };
  const finding = filmRegime(acceptance.films.film ?? now.warm.film.film, roughness, own || {});
  return {
    bearing: name,
    load,
    sizes,
    clearance: now.clearance,
    now: now.warm,
    finding,
    loadDoubt,
    acceptance,
  };
}

interface AtClearance {
  readonly clearance: Length;
  readonly warm: WarmFilm;
}

/** The end of a clearance where the film is thinner. */
const thinner = (ends: readonly AtClearance[]): AtClearance =>
  ends.reduce((a, b) => (b.warm.film.film < a.warm.film.film ? b : a));

function acceptanceOf(
  bearing: FilmSheet,
  sizes: FilmSizes,
  oil: Oil,
  loadDoubt: Ratio,
): BearingAcceptance {
  const { name, bigEnd, ...rest } = bearing;
  return bearingAcceptance({
    ...rest,
    clearance: sizes.clearance,
    oil,
    loadDoubt,
    ...(bigEnd && { loads: loadsOf(bigEnd, bearing.speed) }),
  });
}

/** The loads of a big end over the cycle, its gas as `gasTrace` has it. */
export function loadsOf(
  { compressionRatio, ...parts }: BigEndSheet,
  speed: RotationalSpeed,
): LoadDiagram {
  const { stroke, rodLength } = parts;
  return namedFrom(
    // A force that is too great comes of all of them.
    () => ({ '': 'bigEnd', speed: 'speed', result: 'bigEnd' }),
    () =>
      bigEndLoads({
        ...parts,
        speed,
        gas: gasTrace({ stroke, rodLength, compressionRatio }).readings,
      }),
  );
}

/** What wrecks a bearing even if its film is full. Dirt only wears it. */
const WRECKS: readonly AcceptanceCheckName[] = [
  'mean pressure',
  'peak pressure',
  'film temperature',
  'oil supply',
];

/** Whether an engine may not run on this bearing: oil does not keep its surfaces apart, or a check that wrecks it fails. */
export const filmFails = ({ finding, acceptance }: FilmReport): boolean =>
  finding.regime !== 'full' || wrecking(acceptance).length > 0;

/** The failing checks of a bearing that wreck it. */
export const wrecking = ({ checks }: BearingAcceptance): readonly AcceptanceCheck[] =>
  checks.filter(({ outcome, check }) => outcome === 'fails' && WRECKS.includes(check));
