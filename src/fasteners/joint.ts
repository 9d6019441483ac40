import { type Finding, judge, type SizeOrSpan, type Span } from '../judging/index.js';
import { guardFields, guardSpan } from '../judging/internal.js';
import type { Force, Ratio, Stiffness } from '../quantities/index.js';
import { boltLoad, clampStiffness, externalPull } from './domains.js';

/** A bolted joint and what pulls at it. */
export interface LoadedJoint {
  /** Preload of a bolt, or the span that it lies in [N]. */
  readonly preload: SizeOrSpan<Force>;
  /** What pulls the parts asunder, for each bolt [N]. */
  readonly pull: Force;
  /** Stiffness of the bolt, as `boltStretch` gives it [N/m]. */
  readonly boltStiffness: Stiffness;
  /** Stiffness of what it clamps, as `memberStiffness` gives it [N/m]. */
  readonly memberStiffness: Stiffness;
  /** Proof load of the bolt, to judge its load by [N]. */
  readonly proofLoad?: Force;
}

/** How a joint stands under its load. */
export interface JointLoad {
  /** Closed whatever the preload is, open whatever it is, or open where it is at the low end. */
  readonly outcome: 'stays closed' | 'may open' | 'opens';
  /** How much of the pull the bolt feels while the joint is closed [-]. */
  readonly share: Ratio;
  /** Load on the bolt [N]. */
  readonly boltLoad: Span<Force>;
  /** What still holds the parts together; none once they are apart [N]. */
  readonly clampLeft: Span<Force>;
  /** The pull that opens the joint [N]. */
  readonly opensAt: Span<Force>;
  /** The highest load on the bolt against its proof load, if that was given. */
  readonly finding?: Finding<'force'>;
}

const JOINT = ['preload', 'pull', 'boltStiffness', 'memberStiffness', 'proofLoad'] as const;

/**
 * What a bolt feels of a load that pulls its joint asunder. While the joint is closed, bolt and parts share it by their
 * stiffness; once it is open, the bolt carries all of it.
 *
 *     share = boltStiffness / (boltStiffness + memberStiffness)
 *     boltLoad = preload + share * pull   while it is closed
 *     clampLeft = preload - (1 - share) * pull
 *     opensAt = preload / (1 - share)
 *
 * With a span of preloads the joint is judged at its bad ends: open at the lowest, overloaded at the highest. A bolt that
 * opens at every turn breaks by fatigue, at a load far below its proof load; whether it does is not worked out here, nor
 * is bending.
 *
 * @param joint - preload, pull, both stiffnesses, and the proof load if it is known
 * @returns share, load on the bolt, clamping force left, and the pull that opens the joint
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, or a span is reversed
 * @see Source: Shigley's Mechanical Engineering Design, 9th ed., Eq. 8-24 to 8-30 and Example 8-3
 * @example
 * ```ts
 * const joint = jointUnderLoad({
 *   preload: lbf(25_000), pull: lbf(6000),
 *   boltStiffness: lbfPerInch(6.5e6), memberStiffness: lbfPerInch(13.8e6),
 * });
 * joint.outcome; // "stays closed"
 * format(joint.boltLoad.max, lbf, 0); // "26921 lbf"
 * ```
 */
export function jointUnderLoad(joint: LoadedJoint): JointLoad {
  guardFields('joint', joint, JOINT);
  const preload = guardSpan('preload', joint.preload, boltLoad, 'force');
  const pull = externalPull('pull', joint.pull);
  const bolt = clampStiffness('boltStiffness', joint.boltStiffness);
  const members = clampStiffness('memberStiffness', joint.memberStiffness);
  const most = joint.proofLoad === undefined ? undefined : boltLoad('proofLoad', joint.proofLoad);
  const share = bolt / (bolt + members);
  const onBolt = (force: Force) => Math.max(force + share * pull, pull) as Force;
  const left = (force: Force) => Math.max(force - (1 - share) * pull, 0) as Force;
  const load = { min: onBolt(preload.min), max: onBolt(preload.max) };
  const clampLeft = { min: left(preload.min), max: left(preload.max) };
  const closedBy = (force: Force) => force > (1 - share) * pull;
  const stands = {
    outcome: closedBy(preload.min)
      ? ('stays closed' as const)
      : closedBy(preload.max)
        ? ('may open' as const)
        : ('opens' as const),
    share: share as Ratio,
    boltLoad: load,
    clampLeft,
    opensAt: {
      min: (preload.min / (1 - share)) as Force,
      max: (preload.max / (1 - share)) as Force,
    },
  };
  if (most === undefined) return stands;
  return { ...stands, finding: againstProof('load on the bolt', load.max, most) };
}

/** A load on a bolt against its proof load. */
export const againstProof = (feature: string, value: Force, proof: Force): Finding<'force'> =>
  judge({
    feature,
    dimension: 'force',
    value,
    limits: { max: proof },
    basis: { kind: 'computed', how: 'proof load: the area that carries it times the proof stress' },
  });
