import type { Wording } from '../judging/index.js';
import { describeSpan, sayFinding } from '../judging/internal.js';
import type { DipperDip } from '../motion/index.js';

/** How the dippers run through their oil. */
export interface DipperWords {
  /** How deep they get into it, and what they leave to the floor. */
  readonly depth: string;
  /** What wrecks the engine, in whole sentences. */
  readonly dangers: readonly string[];
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
    dangers: [...STRIKES[strikes], ...REACHES[reachesOil]],
    notes: [
      ...[dipFinding, clearanceFinding].flatMap((finding) =>
        finding ? [sayFinding(finding, wording)] : [],
      ),
    ],
  };
}

const STRIKES: Readonly<Record<DipperDip['strikes'], readonly string[]>> = {
  no: [],
  maybe: [
    'A dipper may strike the floor of its trough: measure again before you turn the crankshaft with the pan on.',
  ],
  yes: [
    'By these sizes a dipper strikes the floor of its trough: measure again, and do not turn the crankshaft with the pan on before that.',
  ],
};

const REACHES: Readonly<Record<DipperDip['reachesOil'], readonly string[]>> = {
  yes: [],
  maybe: ['A dipper may miss the oil where it stands lowest: the big end would run dry.'],
  no: ['By these sizes no dipper reaches the oil: the big end would run dry.'],
};
