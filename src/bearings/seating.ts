import { type BasedLimits, type Finding, judge, type OwnLimits } from '../judging/index.js';
import {
  diameter,
  guardFields,
  guardLength,
  outOfTrue,
  ownLimitsOr,
  type WithTarget,
} from '../judging/internal.js';
import { elasticModulus } from '../measuring/internal.js';
import { type Length, MPa, type Pressure, type Ratio } from '../quantities/index.js';
import { crushHeight, shellWall } from './domains.js';

/** Half a shell in its half of a housing. */
export interface ShellInHousing {
  /** Housing bore with its cap torqued and no shells [m]. */
  readonly housingBore: Length;
  /** How far one end of a half stands proud of the joint, the other end flush and the half bedded [m]. */
  readonly crush: Length;
  /** Thickness of the steel back, without the soft lining [m]. */
  readonly back: Length;
  /** Modulus of elasticity of the back; by default 207 GPa, that of steel [Pa]. */
  readonly elasticity?: Pressure;
}

/** How hard a shell is held once its cap is down. */
export interface ShellNip {
  /** How much shorter its back becomes around the housing, as a share of its length [-]. */
  readonly hoopStrain: Ratio;
  /** Stress along its back; pressed, not pulled [Pa]. */
  readonly hoopStress: Pressure;
  /** Pressure of its back on the housing [Pa]. */
  readonly seatingPressure: Pressure;
}

const SHELL = ['housingBore', 'crush', 'back', 'elasticity'] as const;

/**
 * What the crush of a half shell does when its cap is pulled down: the half is longer than half of its
 * housing around, is pressed to that length, and so bears on the housing.
 *
 *     hoopStrain = 2 * crush / (π * housingBore)
 *     hoopStress = 2 * elasticity * crush / (π * housingBore)
 *     seatingPressure = 4 * elasticity * crush * back / (π * housingBore²)
 *
 * The shell is taken as a thin ring, pressed evenly all round, in a housing that does not give. A housing
 * gives, rods most of all, and friction keeps part of the crush near the joint, so that strain, stress and
 * pressure are the most there can be. What pressure is enough depends on housing and
 * load: about 8 MPa (1200 psi) for a road engine is a rule of thumb, no limit, and no verdict is given
 * here. A filed cap or shell has lost this and cannot be judged by it.
 *
 * @param shell - housing bore, crush and back of one half
 * @returns hoop strain, hoop stress and seating pressure, each at its most
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, or the back is not thin
 * beside the housing
 * @see Source: thin ring under outside pressure; what crush is for: TM 5-3805-255-14, WP 0094
 * @example
 * ```ts
 * const nip = shellNip({ housingBore: inch(1.7505), crush: thou(1), back: inch(0.05) });
 * // Hand-computed: 2 * 0.001 / (π * 1.7505) = 0.000364; times 207 GPa 75.3 MPa.
 * format(nip.hoopStress, MPa); // "75.28 MPa"
 * format(nip.seatingPressure, MPa); // "4.30 MPa"
 * ```
 */
export function shellNip(shell: ShellInHousing): ShellNip {
  guardFields('shell', shell, SHELL);
  const bore = diameter('housingBore', shell.housingBore);
  const crush = crushHeight('crush', shell.crush);
  const back = shellWall('back', shell.back);
  guardLength('back', back, [shellWall.least, bore / 10], shellWall.example);
  const { elasticity: modulus = MPa(207_000) } = shell;
  const elasticity = elasticModulus('elasticity', modulus);
  const strain = (2 * crush) / (Math.PI * bore);
  return {
    hoopStrain: strain as Ratio,
    hoopStress: (elasticity * strain) as Pressure,
    seatingPressure: ((2 * elasticity * strain * back) / bore) as Pressure,
  };
}

const SPREAD = ['acrossEnds', 'housingBore'] as const;

/**
 * Free spread of a half shell: how much wider it is across its ends, lying free, than the housing. It
 * lets the half spring into its place and stay there while the cap goes on.
 *
 *     spread = acrossEnds - housingBore
 *
 * It must be more than nothing: a half that falls out has lost its spread. For one manual's engine it is
 * about 0.025 in; that is no limit for another. It does not grip the shell in the running engine: crush
 * does.
 *
 * @param half - width across the ends, and the housing bore [m]
 * @returns free spread; negative where the half lies loose in its housing [m]
 * @throws {RebuildInputError} when a field is misspelt, or a value is not finite or out of range
 * @see Source: TM 5-3805-255-14, WP 0094, and TM 5-3820-256-24-5, p. 13
 * @example
 * ```ts
 * const spread = freeSpread({ acrossEnds: inch(1.776), housingBore: inch(1.751) });
 * format(spread, inch); // "0.0250 in"
 * ```
 */
export function freeSpread(half: {
  /** Width across its ends, over the back, lying free [m]. */
  readonly acrossEnds: Length;
  /** Housing bore with its cap torqued and no shells [m]. */
  readonly housingBore: Length;
}): Length {
  guardFields('half', half, SPREAD);
  const across = diameter('acrossEnds', half.acrossEnds);
  const bore = diameter('housingBore', half.housingBore);
  return (across - bore) as Length;
}

/** Three readings of a housing with its cap torqued and no shells, and the limits of its roundness if they are known. */
export interface HousingReadings extends OwnLimits<'length'> {
  /** Bore at right angles to the joint [m]. */
  readonly crown: Length;
  /** Bore at 45° to the left of that [m]. */
  readonly left: Length;
  /** Bore at 45° to the right of that [m]. */
  readonly right: Length;
}

/** How round a housing is. */
export interface HousingRoundness {
  /** Largest less smallest reading [m]. */
  readonly outOfRound: Length;
  /** That against the caller's limits; absent if there are none. */
  readonly finding?: Finding<'length'>;
}

const HOUSING = [
  'crown',
  'left',
  'right',
  'limits',
  'basis',
  'service',
  'uncertainty',
  'rule',
  'target',
] as const;

/**
 * Out-of-round of a housing, from three readings: at right angles to the joint and at 45° to either
 * side. Across the joint itself housings are often relieved, so that a reading there misleads. Two-point
 * readings miss odd lobes.
 *
 *     outOfRound = max(crown, left, right) - min(crown, left, right)
 *
 * It is judged by the caller's own limits alone. For one manual's rod, bored 2.900 in, a housing is out of
 * round above 0.0015 in; that is no limit for another engine.
 *
 * @param housing - the three readings, and the limits if they are known [m]
 * @returns out-of-round, with a finding if limits were given [m]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, or the readings are
 * not of one bore
 * @see Source: TM 9-2815-255-24, inspection of the rod bore, for where to read it
 * @example
 * ```ts
 * const { outOfRound, finding } = housingRoundness({
 *   crown: inch(1.7512), left: inch(1.7505), right: inch(1.7507), limits: { max: thou(0.5) },
 * });
 * format(outOfRound, thou); // "0.7 thou"
 * finding?.verdict; // "above"
 * ```
 */
export function housingRoundness(housing: HousingReadings): HousingRoundness {
  guardFields('housing', housing as WithTarget<HousingReadings>, HOUSING);
  const crown = diameter('crown', housing.crown);
  const apart = crown / 50;
  const near = [crown - apart, crown + apart] as const;
  const left = guardLength('left', diameter('left', housing.left), near, diameter.example);
  const right = guardLength('right', diameter('right', housing.right), near, diameter.example);
  const allowed = ownLimitsOr('housing', housing, NONE, outOfTrue);
  const outOfRound = (Math.max(crown, left, right) - Math.min(crown, left, right)) as Length;
  if (allowed.limits === NONE.limits) return { outOfRound };
  const feature = 'housing out-of-round';
  const finding = judge({ feature, dimension: 'length', value: outOfRound, ...allowed });
  return { outOfRound, finding };
}

const NONE: BasedLimits<'length'> = { limits: {}, basis: { kind: 'specified' } };
