import type { Basis, Finding, SizeOrSpan, Span } from '../judging/index.js';
import { guardBasis, guardFields, guardLength, guardSpan, ROUNDING } from '../judging/internal.js';
import {
  type Force,
  type Length,
  type Pressure,
  type Ratio,
  RebuildInputError,
  type Torque,
} from '../quantities/index.js';
import { boltProofStress, fastenerTorque, proofShare, threadDiameter } from './domains.js';
import { againstProof } from './joint.js';
import { type NutFactor, nutFactor, type ThreadCondition } from './nut-factor.js';
import { areasOf } from './thread-areas.js';
import type { ThreadSize } from './thread-forms.js';
import type { Thread } from './thread-series.js';

/** A bolt that is to be tightened by torque. */
export interface BoltToTorque {
  /** Its thread. */
  readonly thread: ThreadSize | Thread;
  /** Proof stress, of its grade or as `unknownBolt` gives it [Pa]. */
  readonly proofStress: Pressure;
  /** What is on the thread and under the nut. */
  readonly condition: ThreadCondition;
  /** Least diameter of its shank, if that may be less than the thread's [m]. */
  readonly leastDiameter?: Length;
  /** How much of the proof load to pull it to; by default 0.75, that of a joint which is taken apart again [-]. */
  readonly share?: Ratio;
  /** The maker's torque at the fastener, which wins [N·m]. */
  readonly makers?: SizeOrSpan<Torque>;
  /** Who says so; by default the caller. */
  readonly basis?: Basis;
}

/** The torque for a bolt, and the preload that it may give. */
export interface TorqueSetting {
  /** Whose figure it is: the maker's, or reckoned for want of one. */
  readonly outcome: "maker's" | 'reckoned';
  /** Torque at the fastener [N·m]. */
  readonly torque: Span<Torque>;
  /** What is on the thread and under the nut, and the nut factor of that. */
  readonly nutFactor: NutFactor;
  /** What the bolt bears [N]. */
  readonly proofLoad: Force;
  /** The preload aimed at; absent with the maker's torque [N]. */
  readonly aim?: Force;
  /** Whether the torque was kept below that aim, so that slippery threads do not overload the bolt; then true. */
  readonly keptDown?: boolean;
  /** What preload that torque may give [N]. */
  readonly preload: Span<Force>;
  /** The highest of it against the proof load. */
  readonly finding: Finding<'force'>;
  /** Who set the torque. */
  readonly basis: Basis;
}

const BOLT = [
  'thread',
  'proofStress',
  'condition',
  'leastDiameter',
  'share',
  'makers',
  'basis',
] as const;

/**
 * The torque for a bolt. The maker's figure wins; without it the torque is reckoned from the thread, the strength and what
 * is on the thread, with the usual nut factor, but never higher than what takes the bolt to its proof load where the
 * threads are as slippery as they may be.
 *
 *     aim = share * area * proofStress
 *     torque = min(usual * aim, least * proofLoad) * diameter   usual and least nut factor
 *     preload = torque / (nutFactor * diameter)
 *
 * The preload that it gives is a wide span, since torque is a poor measure of preload. For rod bolts read the stretch
 * (`boltStretch`) wherever both ends can be reached. The answer is no better than the grade: an unknown or used bolt is
 * weaker than a table says, and one that carries a life, in a rod, a lifting eye or a flywheel, is new and of a known
 * grade. It is for a steel bolt in steel; a thread in aluminium or grey iron strips at less.
 *
 * @param bolt - thread, proof stress, what is on the thread, and the maker's torque if it is known
 * @returns the torque at the fastener, the span of preloads it may give, and the highest of them against the proof load
 * @throws {RebuildInputError} when a field is misspelt, the form is unknown, the condition is unknown, a value is not
 * finite or out of range, the pitch is too coarse for the diameter, the shank is thicker than the thread, a span is
 * reversed, or a basis is given without the maker's torque
 * @see Source: Shigley's Mechanical Engineering Design, 9th ed., Eq. 8-27 and 8-31 and Table 8-15
 * @example
 * ```ts
 * const setting = torqueSetting({
 *   thread: threadOf('3/8-24 UNF'), proofStress: psi(85_000), condition: 'oiled',
 * });
 * format(setting.torque.max, lbfFoot); // "23.3 lbf·ft"
 * format(setting.preload.min, lbf, 0); // "2871 lbf"
 * format(setting.preload.max, lbf, 0); // "7465 lbf"
 * ```
 */
export function torqueSetting(bolt: BoltToTorque): TorqueSetting {
  guardFields('bolt', bolt, BOLT);
  const { stressArea } = areasOf(bolt.thread, 'within');
  const { diameter } = bolt.thread;
  const proofStress = boltProofStress('proofStress', bolt.proofStress);
  const factor = nutFactor(bolt.condition);
  const { leastDiameter: thinnest = diameter, share: part = 0.75 as Ratio } = bolt;
  const least = threadDiameter('leastDiameter', thinnest);
  // A shank is no thicker than its thread, by what paint and a rough forging add.
  const example = threadDiameter.example;
  guardLength('leastDiameter', least, [threadDiameter.least, 1.05 * diameter], example);
  const share = proofShare('share', part);
  const proof = (Math.min(stressArea, (Math.PI / 4) * least * least) * proofStress) as Force;
  const basis = basisOf(bolt);
  const shared = { nutFactor: factor, proofLoad: proof, basis };
  if (bolt.makers !== undefined) {
    const torque = guardSpan('makers', bolt.makers, fastenerTorque, 'torque');
    return { outcome: "maker's", torque, ...shared, ...pulled(torque, factor, diameter, proof) };
  }
  const aim = (share * proof) as Force;
  const usual = factor.usual * aim * diameter;
  const most = factor.span.min * proof * diameter;
  const set = Math.min(usual, most) as Torque;
  const torque = { min: set, max: set };
  return {
    outcome: 'reckoned',
    torque,
    ...shared,
    aim,
    ...(usual > most * (1 + ROUNDING) && { keptDown: true }),
    ...pulled(torque, factor, diameter, proof),
  };
}

/** The preloads that a torque may give, and the highest against the proof load. */
function pulled(
  torque: Span<Torque>,
  { span }: NutFactor,
  diameter: Length,
  proof: Force,
): Pick<TorqueSetting, 'preload' | 'finding'> {
  const preload = {
    min: (torque.min / (span.max * diameter)) as Force,
    max: (torque.max / (span.min * diameter)) as Force,
  };
  return { preload, finding: againstProof('highest preload', preload.max, proof) };
}

function basisOf({ makers, basis }: BoltToTorque): Basis {
  if (basis !== undefined) guardBasis('basis', basis);
  if (makers !== undefined) return basis ?? { kind: 'specified' };
  if (basis !== undefined) {
    throw new RebuildInputError({
      parameter: 'makers',
      value: undefined,
      expected: 'the torque that the basis is of',
      hint: "Give the maker's torque with a basis, or neither.",
    });
  }
  return {
    kind: 'computed',
    how: 'nut factor times preload times diameter, for a steel bolt in steel',
  };
}
