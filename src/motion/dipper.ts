import type { Finding, OwnLimits, SizeOrSpan, Span } from '../judging/index.js';
import {
  guardFields,
  guardOwnLimits,
  guardSpan,
  guardWord,
  judgeSpan,
  NANOMETRE,
  ownLimitsOr,
} from '../judging/internal.js';
import { gapOf } from '../measuring/internal.js';
import type { Length } from '../quantities/index.js';
import { dipperLength, dipperRoom, heightFromCrank, oilDepth } from './domains.js';
import { type CrankTrain, guardCrankTrain } from './piston-motion.js';

/** A dipper on the cap of a rod, and the trough below it. */
export interface DipperInTrough extends CrankTrain {
  /** Whether the cylinder stands upright, its dipper in line with the rod, or lies level, its dipper square to the rod. */
  readonly cylinder: 'upright' | 'lying';
  /** From the centre of the big end to the tip of the dipper [m]. */
  readonly dipper: SizeOrSpan<Length>;
  /** From the centre of the crankshaft down to the floor of the trough, gasket included [m]. */
  readonly centreAboveFloor: SizeOrSpan<Length>;
  /** Oil above that floor, from the low mark to the high one [m]. */
  readonly oilDepth: SizeOrSpan<Length>;
  /** What the dip must lie between, if the maker says so. */
  readonly dipLimits?: OwnLimits<'length'>;
  /** What the clearance to the floor must lie between, if the maker says so. */
  readonly clearanceLimits?: OwnLimits<'length'>;
}

/** Whether it does, or the sizes given do not tell. */
export type YesOrNo = 'yes' | 'no' | 'maybe';

/** How a dipper runs through its oil. */
export interface DipperDip {
  /** How far below the crankshaft's centre the tip gets [m]. */
  readonly reach: Span<Length>;
  /** How deep it gets into standing oil; negative stays above it [m]. */
  readonly dip: Span<Length>;
  /** What is left to the floor; negative strikes it [m]. */
  readonly clearance: Span<Length>;
  /** Whether the tip gets into the oil at all. */
  readonly reachesOil: YesOrNo;
  /** Whether it strikes the floor, everything cold and without play: play of the bearings comes off the clearance. */
  readonly strikes: YesOrNo;
  /** The dip against the caller's limits, at its worse end; absent if there are none. */
  readonly dipFinding?: Finding<'length'>;
  /** The clearance likewise. */
  readonly clearanceFinding?: Finding<'length'>;
}

const DIPPER = [
  'stroke',
  'rodLength',
  'cylinder',
  'dipper',
  'centreAboveFloor',
  'oilDepth',
  'dipLimits',
  'clearanceLimits',
] as const;
const CYLINDERS = ['upright', 'lying'] as const;

/**
 * How deep the dipper of a splash-oiled rod gets into its trough, and what is left below it.
 *
 *     reach = stroke / 2 + dipper   upright: lowest at bottom dead centre
 *     rodAngle = asin(stroke / 2 / rodLength)
 *     reach = stroke / 2 + dipper * cos(rodAngle)   lying: lowest halfway
 *     clearance = centreAboveFloor - reach
 *     dip = oilDepth - clearance
 *
 * Too shallow a dip starves the big end, too deep a one froths, drags and drowns the plug. No common figure is known:
 * the caller's limits alone judge, and an oil level that runs lower than it stands is the rule. **Turn the engine over
 * by hand with the pan on, all the way twice, before it is started:** a dipper that touches breaks, or bends a rod. A
 * dipper turned the wrong way scoops nothing. Rebushed rods, thinner gaskets and a pan that was straightened all move
 * it.
 *
 * @param trough - crank, rod, dipper and trough, and the limits if they are known [m]
 * @returns how far the tip reaches, its dip and its clearance, with findings if limits were given [m]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, a span is reversed, the
 * rod cannot belong to the stroke, it is unknown how the cylinder stands, or limits have no bound
 * @see Source: geometry
 * @example
 * ```ts
 * const { dip, clearance } = dipperDip({
 *   stroke: inch(3.25), rodLength: inch(6), cylinder: 'upright', dipper: inch(1.75),
 *   centreAboveFloor: inch(3.5), oilDepth: { min: inch(0.375), max: inch(0.5) },
 * });
 * format(clearance.min, inch); // "0.1250 in"
 * format(dip.min, inch); // "0.2500 in"
 * ```
 */
export function dipperDip(trough: DipperInTrough): DipperDip {
  guardFields('trough', trough, DIPPER);
  guardCrankTrain(trough);
  const lying = guardWord('cylinder', trough.cylinder, CYLINDERS) === 'lying';
  const dipper = guardSpan('dipper', trough.dipper, dipperLength);
  const floor = guardSpan('centreAboveFloor', trough.centreAboveFloor, heightFromCrank);
  const oil = guardSpan('oilDepth', trough.oilDepth, oilDepth);
  const reachOf = lying ? lyingReach : uprightReach;
  const reach = { min: reachOf(trough, dipper.min), max: reachOf(trough, dipper.max) };
  const clearance = gapOf(floor, reach);
  const dip = gapOf(oil, clearance);
  const dipFinding = findingOn('dip of the dipper', 'dipLimits', dip, trough.dipLimits);
  const clearanceFinding = findingOn(
    'clearance of the dipper',
    'clearanceLimits',
    clearance,
    trough.clearanceLimits,
  );
  return {
    reach,
    dip,
    clearance,
    reachesOil: isAbove(dip),
    strikes: OPPOSITE[isAbove(clearance)],
    ...(dipFinding && { dipFinding }),
    ...(clearanceFinding && { clearanceFinding }),
  };
}

const uprightReach = ({ stroke }: CrankTrain, dipper: number): Length =>
  (stroke / 2 + dipper) as Length;

/** The rod leans most halfway, and turns its dipper up a little. A dipper about as long as the rod is lowest before. */
function lyingReach({ stroke, rodLength }: CrankTrain, dipper: number): Length {
  const sine = stroke / 2 / rodLength;
  const long = Math.hypot(rodLength, dipper);
  if (rodLength / long <= sine) return long as Length;
  return (stroke / 2 + dipper * Math.sqrt((1 - sine) * (1 + sine))) as Length;
}

/** Whether a span lies above nothing. */
function isAbove({ min, max }: Span<Length>): YesOrNo {
  if (min > NANOMETRE) return 'yes';
  return max > NANOMETRE ? 'maybe' : 'no';
}

const OPPOSITE = { yes: 'no', no: 'yes', maybe: 'maybe' } as const;

function findingOn(
  feature: string,
  parameter: string,
  value: Span<Length>,
  own: OwnLimits<'length'> | undefined,
): Finding<'length'> | undefined {
  if (own === undefined) return undefined;
  guardOwnLimits(parameter, own);
  const allowed = ownLimitsOr(parameter, own, NONE, dipperRoom);
  return judgeSpan({ feature, dimension: 'length', value, ...allowed });
}

const NONE = { limits: {}, basis: { kind: 'specified' } } as const;
