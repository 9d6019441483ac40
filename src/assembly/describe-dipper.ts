import { describe, type Span, type Wording } from '../judging/index.js';
import { describeSpan } from '../judging/internal.js';
import type { DipperDip } from '../motion/index.js';
import type { Length } from '../quantities/index.js';

/** Describes how the dippers run through their oil, in sentences without full stops. The first can be measured. */
export function describeDipper(
  { dip, clearance, reachesOil, strikes, dipFinding, clearanceFinding }: DipperDip,
  wording: Wording,
): readonly string[] {
  const said = (span: Span<Length>) => describeSpan(span, 'length', wording.units);
  return [
    `the dippers enter the oil by ${said(dip)}, with ${said(clearance)} left to the floor of the trough, by the sizes of the file`,
    ...(reachesOil === 'yes'
      ? []
      : ['they may not reach the oil: the big ends starve; raise the oil or find longer dippers']),
    ...(strikes === 'no'
      ? []
      : ['they may strike the floor: do not turn the engine before that is settled']),
    ...[dipFinding, clearanceFinding].flatMap((finding) =>
      finding ? [describe(finding, wording)] : [],
    ),
  ];
}
