import {
  type ClearanceExplanation,
  explainClearance,
  oilClearanceSpan,
} from '../bearings/index.js';
import type { Finding, SizeOrSpan, Span } from '../judging/index.js';
import { holds, NANOMETRE, spanOf } from '../judging/internal.js';
import type { Shape } from '../measuring/index.js';
import type { Length } from '../quantities/index.js';
import { type own, type ShellPairs, sameStep } from '../reading/index.js';

/** The shells found in a bearing, the clearance they leave and what explains it. */
export interface FittedShells {
  /** Name of the shells. */
  readonly shells: string;
  /** The undersize they are made for [m]. */
  readonly undersize: Length;
  /** Diametral clearance as found [m]. */
  readonly clearance: Span<Length>;
  /** What explains the clearance, at its worse end. */
  readonly explanation: ClearanceExplanation;
  /** Whether that agrees with the stamp on the shells and the size of the journal. */
  readonly agrees: boolean;
  /** How far the housing reads out of round, if a round one would bring the clearance within its limits [m]. */
  readonly housingToBlame?: Length;
}

/** What the shells found in a bearing leave, and what explains it. */
export function fittedAs(
  shell: ShellPairs,
  housingBore: SizeOrSpan<Length>,
  shape: Shape,
  steps: readonly Length[],
  limits: ReturnType<typeof own<'length'>>,
  undersize: Length | undefined,
): FittedShells {
  const journal = { min: shape.smallest, max: shape.largest };
  const clearance = oilClearanceSpan({ housingBore, shellWall: shell.wall, journal });
  const [loose, tight] = [clearance.max, clearance.min].map((end) =>
    explainClearance({ clearance: end, journal: shape.largest, steps, ...limits }),
  ) as [ClearanceExplanation, ClearanceExplanation];
  const explanation = tight.finding.margin < loose.finding.margin ? tight : loose;
  const agrees =
    undefined === undersize ||
    sameStep(undersize, (shell.undersize + mismatchOf(explanation)) as Length);
  const housingToBlame = blamedOn(housingBore, clearance, explanation.finding);
  return {
    shells: shell.name,
    undersize: shell.undersize,
    clearance,
    explanation,
    agrees,
    ...(housingToBlame !== undefined && { housingToBlame }),
  };
}

/**
 * How far a housing reads out of round, if that is what takes a clearance outside its limits: without it the
 * loose end would come down, or the tight end up, to where nothing is wrong.
 */
function blamedOn(
  housingBore: SizeOrSpan<Length>,
  clearance: Span<Length>,
  { verdict, limits, grade }: Finding<'length'>,
): Length | undefined {
  const { min, max } = spanOf(housingBore);
  const outOfRound = (max - min) as Length;
  if (outOfRound <= NANOMETRE || holds({ verdict, ...(grade && { grade }) })) return undefined;
  const most = (limits.max ?? Infinity) + NANOMETRE;
  const least = (limits.min ?? -Infinity) - NANOMETRE;
  const isCured =
    verdict === 'above' ? clearance.max - outOfRound <= most : clearance.min + outOfRound >= least;
  return isCured ? outOfRound : undefined;
}

/** No undersize explains why it cannot turn: a reading, a cap or a housing is wrong. */
export const isInterference = ({ explanation }: FittedShells): boolean =>
  explanation.finding.value < 0 && !('mismatch' in explanation);

/** How much smaller the journal is than the size its shells are made for; negative if it is larger. */
export function mismatchOf(explanation: ClearanceExplanation): number {
  if (!('mismatch' in explanation)) return 0;
  const { outcome, mismatch } = explanation;
  return outcome === 'journal ground, shells not' ? mismatch : -mismatch;
}

/** The clearance that shells of a step leave, at its worse end, if the shells found in the bearing show it. */
export function clearanceAt(
  { undersize, explanation }: FittedShells,
  step: Length,
): Finding<'length'> | undefined {
  if (sameStep(undersize, step)) return explanation.finding;
  return 'matched' in explanation ? explanation.matched : undefined;
}
