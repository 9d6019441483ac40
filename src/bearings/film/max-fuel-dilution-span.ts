import type { Basis, Span } from '../../judging/index.js';
import { guardFields } from '../../judging/internal.js';
import type { BlendingLaw } from '../../oil/index.js';
import { LAWS } from '../../oil/internal.js';
import type {
  Length,
  Ratio,
  TemperatureDifference,
  VolumeFraction,
} from '../../quantities/index.js';
import { largestOf, smallestOf } from '../../quantities/internal.js';
import { inletDoubt, shareInDoubt } from './domains.js';
import { type CheckedBearing, guardFedBearing, warmestOf } from './heat-balance.js';
import {
  type DilutedBearing,
  type FilmStand,
  filmNeeded,
  MOST,
  maxFuelDilution,
  standOf,
} from './max-fuel-dilution.js';

/** How far what is put in for a bearing is in doubt. A share d multiplies and divides by 1 + d. */
export interface FilmDoubt {
  /** Inlet temperature, either way; by default 10 K [K]. */
  readonly inlet?: TemperatureDifference;
  /** Effective length, downwards only: chamfers, fillet, oil hole, edges worn round; by default 25 %, so down to 80 % [-]. */
  readonly length?: Ratio;
  /** Roughness of both surfaces: guessed by eye it is good to a factor of two; by default 100 % [-]. */
  readonly roughness?: Ratio;
  /** Oil clearance; by default 20 % [-]. */
  readonly clearance?: Ratio;
  /** Load; by default 25 % [-]. */
  readonly load?: Ratio;
}

/** What the most fuel hangs on, and how far it moves with that alone. */
export interface DilutionDriver {
  /** What is in doubt. */
  readonly driver: 'inlet' | 'length' | 'roughness' | 'clearance' | 'load' | 'law';
  /** The most fuel at both ends of the doubt; none where clean oil is too thin already [-]. */
  readonly span: Span<VolumeFraction>;
}

/** The most fuel that a film stands, as a span. */
export interface MaxDilutionSpan {
  /**
   * From the least to the most that any one doubt makes of it; two at once move it further. Go by the least: a film
   * that fails wrecks the bearing [-].
   */
  readonly span: Span<VolumeFraction>;
  /** With every number as it was given: no figure to run by. */
  readonly asGiven: FilmStand;
  /** What it hangs on, the one that moves it most first. */
  readonly drivers: readonly DilutionDriver[];
  /** Who says how far the numbers are in doubt. */
  readonly basis: Basis;
}

const DOUBTS = ['inlet', 'length', 'roughness', 'clearance', 'load'] as const;
const COMMON: Required<FilmDoubt> = {
  inlet: 10 as TemperatureDifference,
  length: 0.25 as Ratio,
  roughness: 1 as Ratio,
  clearance: 0.2 as Ratio,
  load: 0.25 as Ratio,
};
const RULE: Basis = {
  kind: 'common practice',
  rule: 'in a home shop an inlet is known to 10 K, an effective length to 25 % (down to 80 %), a clearance to 20 %, a load to 25 % and a roughness to a factor of two',
};

/**
 * The fuel fraction that the film of this bearing stands, and how far it moves with what is hardly known: the
 * inlet temperature, the effective length, the roughness, the clearance, the load and the blending law. Each is moved
 * alone through its doubt. A film that is near what it needs in clean oil can go from a tenth of fuel to none.
 *
 * Go by `span.min`, the least. Two doubts at once move it further, and what wears or runs dry is in none of them.
 *
 * @param bearing - the bearing with its oil and what cools it, roughness and fuel
 * @param doubt - how far the numbers are in doubt; what you leave out is taken by a rule of thumb
 * @returns the span, the fraction as given, and what it hangs on
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, the bearing is
 * too short for its journal, the clearance leaves no room to turn, the oil is not one, the fuel is not one, or it
 * is no thinner than the oil
 * @see Source: as `maxFuelDilution`; the doubts by default are common practice
 * @example
 * ```ts
 * const { span, drivers } = maxFuelDilutionSpan({
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
 * format(span.min, percentByVolume); // "23.7 vol%"
 * drivers[0]?.driver; // "roughness"
 * ```
 */
export function maxFuelDilutionSpan(
  bearing: DilutedBearing,
  doubt: FilmDoubt = {},
): MaxDilutionSpan {
  const asGiven = maxFuelDilution(bearing);
  const far = guardDoubt(doubt);
  const checked = guardFedBearing(bearing);
  const needed = filmNeeded(bearing);
  const stood = (changed: Partial<CheckedBearing>, by = needed, law = bearing.law) =>
    fractionWith(bearing, { ...checked, ...changed }, by, law);
  const scaled = <Q extends number>(size: Q, share: number) => (size * share) as Q;
  const { inlet, length, clearance, load } = checked;
  const byDriver = {
    inlet: [-far.inlet, far.inlet].map((kelvin) =>
      stood({ inlet: (inlet + kelvin) as typeof inlet }),
    ),
    length: [stood({ length: scaled(length, 1 / (1 + far.length)) })],
    roughness: bothWays(far.roughness).map((share) => stood({}, scaled(needed, share))),
    clearance: bothWays(far.clearance).map((share) =>
      stood({ clearance: scaled(clearance, share) }),
    ),
    load: bothWays(far.load).map((share) => stood({ load: scaled(load, share) })),
    law: LAWS.map((law) => stood({}, needed, law)),
  } satisfies Record<DilutionDriver['driver'], readonly VolumeFraction[]>;
  const given = fractionStood(asGiven);
  const drivers = Object.entries(byDriver)
    .map(([driver, found]) => ({
      driver: driver as DilutionDriver['driver'],
      span: spanOfAll([given, ...found]),
    }))
    .sort((a, b) => widthOf(b) - widthOf(a));
  const span = spanOfAll(drivers.flatMap(({ span: { min, max } }) => [min, max]));
  const own = DOUBTS.every((field) => doubt[field] !== undefined);
  return { span, asGiven, drivers, basis: own ? { kind: 'specified' } : RULE };
}

/** The fuel that a film stands: none, a fraction, or as much as it is tried with. */
export function fractionStood(stand: FilmStand): VolumeFraction {
  switch (stand.outcome) {
    case 'stands':
      return stand.fraction;
    case 'too thin when clean':
      return 0 as VolumeFraction;
    case 'stands anything':
      return MOST as VolumeFraction;
  }
}

/** The same for a bearing with something moved; none where the oil comes in too warm to be one. */
function fractionWith(
  { fuel }: DilutedBearing,
  bearing: CheckedBearing,
  needed: Length,
  law: BlendingLaw | undefined,
): VolumeFraction {
  if (bearing.inlet >= warmestOf(bearing.oil)) return 0 as VolumeFraction;
  const thinner = { ...(fuel !== undefined && { fuel }), ...(law !== undefined && { law }) };
  return fractionStood(standOf(thinner, bearing, needed));
}

/** By what share a load is in doubt, and who says so. */
export const loadInDoubt = ({
  load,
}: FilmDoubt): { readonly share: Ratio; readonly basis: Basis } =>
  load === undefined
    ? { share: COMMON.load, basis: RULE }
    : { share: load, basis: { kind: 'specified' } };

const bothWays = (share: number) => [1 + share, 1 / (1 + share)];
const widthOf = ({ span }: DilutionDriver): number => span.max - span.min;
const spanOfAll = (fractions: readonly VolumeFraction[]): Span<VolumeFraction> => ({
  min: smallestOf(fractions),
  max: largestOf(fractions),
});

/** The caller's doubts, and the rule of thumb for what is left out. */
function guardDoubt(doubt: FilmDoubt): Required<FilmDoubt> {
  guardFields('doubt', doubt, DOUBTS);
  const { inlet, length, roughness, clearance, load } = { ...COMMON, ...doubt };
  return {
    inlet: inletDoubt('doubt.inlet', inlet),
    length: shareInDoubt('doubt.length', length),
    roughness: shareInDoubt('doubt.roughness', roughness),
    clearance: shareInDoubt('doubt.clearance', clearance),
    load: shareInDoubt('doubt.load', load),
  };
}
