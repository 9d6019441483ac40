import type { Span, Wording } from '../judging/index.js';
import {
  describeSpan,
  guardLayout,
  guardObject,
  guardWord,
  guardWording,
  holds,
  noteOf,
  sayFinding,
} from '../judging/internal.js';
import {
  format,
  kgfMetre,
  lbfFoot,
  lbfInch,
  newtonMetre,
  type Torque,
  tradeUnit,
  type Unit,
} from '../quantities/index.js';
import { tighteningPlanLayout, torqueSettingLayout } from './layouts.js';
import type { TighteningPlan } from './tightening-plan.js';
import type { TorqueSetting } from './torque-setting.js';

/** What a torque wrench is marked in. */
export type WrenchScale = 'lbf·ft' | 'lbf·in' | 'N·m' | 'kgf·m';

/** How to word a sentence about torque. */
export interface TorqueWording extends Wording {
  /** What the wrench is marked in; by default lbf·ft in an inch shop and N·m in a metric one. */
  readonly wrench?: WrenchScale;
}

/**
 * Describes a torque in sentences: first that the maker's torque may overload the bolt, if it may; then what to set at the
 * fastener and in what state of the thread, what preload that may give, and how the highest of it stands against the proof
 * load.
 *
 * @param setting - what `torqueSetting` gave
 * @param wording - the units to print in, and what the wrench is marked in
 * @returns sentences without full stops
 * @throws {RebuildInputError} when a field is misspelt, the setting is not what `torqueSetting` gives, the unit system is
 * unknown, or the scale of the wrench is unknown
 * @example
 * ```ts
 * const setting = torqueSetting({
 *   thread: threadOf('3/8-24 UNF'), proofStress: psi(85_000), condition: 'oiled',
 *   makers: { min: lbfFoot(20), max: lbfFoot(23) },
 * });
 * describeTorqueSetting(setting, { units: 'inch', wrench: 'lbf·in' })[0];
 * // "tighten to 240 to 276 lbf·in at the fastener, thread and face oiled (specified)"
 * ```
 */
export function describeTorqueSetting(
  setting: TorqueSetting,
  wording: TorqueWording,
): readonly string[] {
  guardLayout('setting', setting, torqueSettingLayout, 'torqueSetting');
  const { units, say, plain } = torqueWords(wording);
  const { outcome, torque, nutFactor: factor, preload, finding, keptDown, basis } = setting;
  const { min, max } = factor.span;
  const overload = sayOverload(setting, plain);
  return [
    ...overload,
    `tighten to ${say(torque)} at the fastener, thread and face ${factor.condition} ${noteOf(basis, plain)}`,
    `the nut factor may be ${min} to ${max} ${noteOf(factor.basis, plain)}, so that the preload may be ${describeSpan(preload, 'force', units)}: torque is a poor measure of preload`,
    ...(overload.length === 0 ? [sayFinding(finding, plain)] : []),
    ...(keptDown
      ? [
          'the torque is kept down so that slippery threads do not overload the bolt; the stretch of the bolt tells the preload better',
        ]
      : []),
    outcome === "maker's"
      ? "the maker's torque holds for the state of the thread that he gives it for: dry, oiled or waxed"
      : "this is reckoned, for want of the maker's figure, and holds for a sound bolt of its grade in steel",
  ];
}

/** That the maker's torque and the strength of the bolt conflict; nothing where they do not. */
export function sayOverload(
  { preload, proofLoad, finding }: TorqueSetting,
  wording: Wording,
): readonly string[] {
  if (holds(finding)) return [];
  const overloads =
    preload.min > proofLoad
      ? 'conflicts with the strength of the bolt and overloads it even at the highest nut factor'
      : 'may overload the bolt if its thread is slippery';
  return [
    `the maker's torque ${overloads}: ${sayFinding(finding, wording)}; look up first that its grade, and what is on its thread, are those of the torque`,
  ];
}

/**
 * Describes a plan of tightening in sentences: the sequence, the rounds in the units of the wrench, and a last round.
 *
 * @param plan - what `tighteningPlan` gave
 * @param wording - the units to print in, and what the wrench is marked in
 * @returns sentences without full stops
 * @throws {RebuildInputError} when a field is misspelt, the plan is not what `tighteningPlan` gives, the unit system is
 * unknown, or the scale of the wrench is unknown
 * @example
 * ```ts
 * const plan = tighteningPlan({
 *   bolts: [
 *     { name: 'left', along: inch(0), across: inch(0) },
 *     { name: 'right', along: inch(2.5), across: inch(0) },
 *   ],
 *   torque: newtonMetre(30),
 *   rounds: 2,
 * });
 * describeTighteningPlan(plan, { units: 'metric' });
 * // [
 * //   "sequence of every round: left, right (common practice: from the middle outwards and crosswise, in two or three rounds)",
 * //   "round 1: 15.0 N·m",
 * //   "round 2: 30.0 N·m",
 * //   "once more round at 30.0 N·m, in the same sequence",
 * // ]
 * ```
 */
export function describeTighteningPlan(
  plan: TighteningPlan,
  wording: TorqueWording,
): readonly string[] {
  guardLayout('plan', plan, tighteningPlanLayout, 'tighteningPlan');
  const { say, plain } = torqueWords(wording);
  const rounds = plan.rounds.map(({ torque }) => say({ min: torque, max: torque }));
  return [
    `sequence of every round: ${plan.sequence.join(', ')} ${noteOf(plan.basis, plain)}`,
    ...rounds.map((torque, i) => `round ${i + 1}: ${torque}`),
    ...rounds.slice(-1).map((torque) => `once more round at ${torque}, in the same sequence`),
  ];
}

/** Every scale that a wrench may have. */
export const WRENCH_SCALES = [
  'lbf·ft',
  'lbf·in',
  'N·m',
  'kgf·m',
] as const satisfies readonly WrenchScale[];

const unitOf = (scale: WrenchScale): Unit<'torque'> =>
  ({ lbf·ft: lbfFoot, lbf·in: lbfInch, N·m: newtonMetre, kgf·m: kgfMetre })[scale];

/** How to print a torque, and the wording for all else. */
export function torqueWords(wording: TorqueWording) {
  guardObject('wording', wording);
  const { wrench, ...plain } = wording;
  guardWording(plain);
  if (wrench !== undefined) guardWord('wording.wrench', wrench, WRENCH_SCALES);
  const unit = wrench === undefined ? tradeUnit('torque', plain.units) : unitOf(wrench);
  // Nobody sets a wrench in inches to a tenth.
  const decimals = unit.symbol === 'lbf·in' ? 0 : unit.decimals;
  const print = (torque: Torque) => format(torque, unit, decimals);
  const say = ({ min, max }: Span<Torque>) => {
    const [low, high] = [print(min), print(max)];
    return low === high ? high : `${low.replace(/ .*/, '')} to ${high}`;
  };
  return { units: plain.units, say, plain };
}
