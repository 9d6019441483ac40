import type { BasedLimits, OwnLimits, SizeOrSpan, Span } from '../judging/index.js';
import {
  diameter,
  diametralClearance,
  guardFields,
  guardLength,
  guardSpan,
  ownLimitsOr,
  sizeStep,
} from '../judging/internal.js';
import { worstCase } from '../measuring/internal.js';
import type { Length } from '../quantities/index.js';
import { shellWall } from './domains.js';
import { guardOneBearing } from './one-bearing.js';

/** The three sizes that leave an oil clearance. */
export interface BearingSizes {
  /** Housing bore with its cap torqued and no shells [m]. */
  readonly housingBore: Length;
  /** Wall of one half shell at its crown [m]. */
  readonly shellWall: Length;
  /** Journal diameter [m]. */
  readonly journal: Length;
}

/** The three sizes, each as one size or as the span it lies in. */
export interface BearingSpans {
  /** Housing bore with its cap torqued and no shells [m]. */
  readonly housingBore: SizeOrSpan<Length>;
  /** Wall of one half shell at its crown [m]. */
  readonly shellWall: SizeOrSpan<Length>;
  /** Journal diameter [m]. */
  readonly journal: SizeOrSpan<Length>;
}

const SIZES = ['housingBore', 'shellWall', 'journal'] as const;

/**
 * Diametral oil clearance of a shell bearing: what the housing bore leaves
 * once two shell walls and the journal are in it.
 *
 *     clearance = housingBore - 2 * shellWall - journal
 *
 * @param sizes - housing bore, shell wall and journal [m]
 * @returns diametral clearance; negative is an interference [m]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, or the three were
 * never one bearing
 * @see Source: geometry; worked check in tests/published/bearings.test.ts
 * @example
 * ```ts
 * const clearance = oilClearance({
 *   housingBore: inch(2.2510), shellWall: inch(0.0620), journal: inch(2.1250),
 * });
 * format(clearance, thou); // "2.0 thou"
 * ```
 */
export function oilClearance(sizes: BearingSizes): Length {
  guardFields('sizes', sizes, SIZES);
  const housingBore = diameter('housingBore', sizes.housingBore);
  const wall = shellWall('shellWall', sizes.shellWall);
  const journal = diameter('journal', sizes.journal);
  return guardOneBearing(housingBore, wall, journal);
}

/**
 * The span of diametral oil clearance that three toleranced or measured sizes
 * can leave: tightest with the smallest bore, thickest shell and largest journal.
 *
 *     min = housingBore.min - 2 * shellWall.max - journal.max
 *     max = housingBore.max - 2 * shellWall.min - journal.min
 *
 * @param sizes - housing bore, shell wall and journal, each one size or a span [m]
 * @returns least and most diametral clearance; negative is an interference [m]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, a span is
 * reversed, or the three were never one bearing
 * @see Source: geometry; worked check in tests/published/bearings.test.ts
 * @example
 * ```ts
 * const span = oilClearanceSpan({
 *   housingBore: { min: inch(2.2507), max: inch(2.2512) },
 *   shellWall: inch(0.0620),
 *   journal: { min: inch(2.1245), max: inch(2.1250) },
 * });
 * format(span.min, thou); // "1.7 thou"
 * format(span.max, thou); // "2.7 thou"
 * ```
 */
export function oilClearanceSpan(sizes: BearingSpans): Span<Length> {
  guardFields('sizes', sizes, SIZES);
  const bore = guardSpan('housingBore', sizes.housingBore, diameter);
  const wall = guardSpan('shellWall', sizes.shellWall, shellWall);
  const journal = guardSpan('journal', sizes.journal, diameter);
  return {
    min: guardOneBearing(bore.min, wall.max, journal.max),
    max: guardOneBearing(bore.max, wall.min, journal.min),
  };
}

/** The same of sizes that were checked, and that may be of different engines. */
export function clearanceLeft(
  bore: Span<Length>,
  wall: Span<Length>,
  journal: Span<Length>,
): Span<Length> {
  return worstCase([
    [1, bore],
    [-2, wall],
    [-1, journal],
  ]);
}

const SHELL = ['standardWall', 'undersize'] as const;

/**
 * Wall of one half shell for an undersize: each half gains half of it, since
 * there is a half on either side of the journal.
 *
 *     wall = standardWall + undersize / 2
 *
 * @param shell - wall of the standard half shell and the undersize, on the diameter [m]
 * @returns wall of one half shell [m]
 * @throws {RebuildInputError} when a field is misspelt, or a value is not finite or out of range
 * @see Source: TM 5-4320-302-14, p. 6-181 (every undersize step there); geometry
 * @example
 * ```ts
 * format(shellWallFor({ standardWall: inch(0.0620), undersize: thou(20) }), inch); // "0.0720 in"
 * ```
 */
export function shellWallFor(shell: {
  /** Wall of the standard half shell at its crown [m]. */
  readonly standardWall: Length;
  /** How far the journal is ground below standard, on the diameter [m]. */
  readonly undersize: Length;
}): Length {
  guardFields('shell', shell, SHELL);
  const standardWall = shellWall('standardWall', shell.standardWall);
  const undersize = sizeStep('undersize', shell.undersize);
  return (standardWall + undersize / 2) as Length;
}

/** A recommended size with the band around it. */
export interface Recommendation extends BasedLimits<'length'> {
  /** The size to aim at [m]. */
  readonly target: Length;
}

/**
 * The rule of thumb for oil clearance where the maker's figure is lost: 0.001 in
 * for each inch of journal, from three quarters to one and a half of that.
 *
 *     target = 0.001 * journal
 *     least = 0.00075 * journal
 *     most = 0.0015 * journal
 *
 * @param journal - journal diameter [m]
 * @returns target and limits, marked as common practice [m]
 * @throws {RebuildInputError} when a value is not finite or out of range
 * @see Source: common practice, no source; the maker's figure always wins
 * @example
 * ```ts
 * const { target, limits } = recommendedOilClearance(inch(2.125));
 * format(target, inch); // "0.0021 in"
 * limits.max && format(limits.max, inch); // "0.0032 in"
 * ```
 */
export function recommendedOilClearance(journal: Length): Recommendation {
  const target = (0.001 * diameter('journal', journal)) as Length;
  return {
    target,
    limits: { min: (0.75 * target) as Length, max: (1.5 * target) as Length },
    basis: {
      kind: 'common practice',
      rule: '0.00075 to 0.0015 in of oil clearance for each inch of journal',
    },
  };
}

/** The caller's limits of the oil clearance, at most a hundredth of the journal, or the rule of thumb. */
export function oilClearanceLimits(
  parameter: string,
  own: OwnLimits<'length'>,
  journal: Length,
): BasedLimits<'length'> {
  const { limits, basis } = recommendedOilClearance(journal);
  const rule: BasedLimits<'length'> = { limits, limitsOf: 'new parts', basis };
  return ownLimitsOr(parameter, own, rule, (name, bound) =>
    guardLength(name, bound, [0, journal / 100], diametralClearance.example),
  );
}
