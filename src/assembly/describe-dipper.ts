import { describe, type Wording } from '../judging/index.js';
import { describeSpan } from '../judging/internal.js';
import type { DipperDip } from '../motion/index.js';

/** How the dippers run through their oil. */
export interface DipperWords {
  /** How deep they get into it, and what they leave to the floor. */
  readonly depth: string;
  /** How that stands to its limits, in sentences without full stops. */
  readonly notes: readonly string[];
}

/** Describes how the dippers run through their oil. */
export function describeDipper(
  { dip, clearance, reachesOil, strikes, dipFinding, clearanceFinding }: DipperDip,
  wording: Wording,
): DipperWords {
  const [deep, left] = [dip, clearance].map((span) => describeSpan(span, 'length', wording.units));
  return {
    depth: `by the sizes of the file ${deep}, with ${left} left to the floor of the trough`,
    notes: [
      ...(reachesOil === 'yes'
        ? []
        : [
            'they may not reach the oil: the big ends starve; raise the oil or find longer dippers',
          ]),
      ...(strikes === 'no'
        ? []
        : ['they may strike the floor: do not turn the engine before that is settled']),
      ...[dipFinding, clearanceFinding].flatMap((finding) =>
        finding ? [describe(finding, wording)] : [],
      ),
    ],
  };
}
