import type { TorqueWording, WrenchScale } from '../fasteners/index.js';
import { describeTighteningPlan } from '../fasteners/index.js';
import { torqueWords } from '../fasteners/internal.js';
import { describe, type Wording } from '../judging/index.js';
import { holds as isWithin, noteOf } from '../judging/internal.js';
import type { FastenersData } from '../reading/index.js';
import type { FastenerSetting } from './fastener-setting.js';

/** What each kind of fastener is called. */
export const FASTENER_NAMES: Readonly<Record<keyof FastenersData, string>> = {
  mainCaps: 'Main bearing caps',
  rodCaps: 'Rod caps',
  head: 'Cylinder head',
  flywheel: 'Flywheel',
};

/** What to tighten bolts to, and what to mind with them. */
export interface FastenerWords {
  /** The torque and in what state of the thread; absent if none is known. */
  readonly torque?: string;
  /** Sentences without full stops. */
  readonly notes: readonly string[];
}

/** Describes what the bolts of one part are tightened to, in the units of the wrench. */
export function describeFastener(
  setting: FastenerSetting,
  wording: Wording,
  wrench: WrenchScale | undefined,
): FastenerWords {
  const { torque, basis, wrench: onWrench, plan, missing } = setting;
  const torqueWording: TorqueWording = { ...wording, ...(wrench && { wrench }) };
  const { say } = torqueWords(torqueWording);
  if (torque === undefined || basis === undefined) {
    return { notes: [`no torque is stated, and none is reckoned without its ${either(missing)}`] };
  }
  const { setting: known } = setting;
  const isReckoned = known?.outcome === 'reckoned';
  const condition = known && `, thread and face ${known.nutFactor.condition}`;
  return {
    torque: `${say(torque)} at the fastener${condition ?? ''} ${noteOf(basis, wording)}`,
    notes: [
      ...(isReckoned
        ? [
            "that torque is reckoned for want of the maker's figure: it holds for a sound bolt of its grade in steel; find the maker's figure before you trust a rod to it",
          ]
        : []),
      ...(missing.includes('condition')
        ? [
            'the file does not say whether thread and face are dry or oiled: look it up first, as the same torque pulls an oiled bolt much harder',
          ]
        : []),
      ...(known && !isWithin(known.finding)
        ? [
            `a thread as slippery as it may be is overloaded: ${describe(known.finding, wording)}; use new bolts of that grade, in the state that the manual names`,
          ]
        : []),
      ...(onWrench ? [`set the wrench to ${say(onWrench)} for that`] : []),
      ...(setting.locking === 'pins' ? [`find the slot: ${slotIn(torque, say)}`] : []),
      ...(plan ? describeTighteningPlan(plan, torqueWording) : []),
    ],
  };
}

function slotIn(
  { min, max }: NonNullable<FastenerSetting['torque']>,
  say: ReturnType<typeof torqueWords>['say'],
): string {
  const [least, most] = [say({ min, max: min }), say({ min: max, max })];
  const fallback = 'take another nut or washer, and never slacken it to a slot';
  return least === most
    ? `if no slot meets its hole at ${most}, ${fallback}`
    : `tighten to ${least}, then on to the next slot, at most to ${most}; if none comes by then, ${fallback}`;
}

const either = (words: readonly string[]): string => new Intl.ListFormat('en').format(words);
