import type { Wording } from '../judging/index.js';
import { describeSpan, noteOf, say } from '../judging/internal.js';
import { sayLimits } from './say-limits.js';
import type { ColdLash, ValveSetting } from './valve-setting.js';

/** What to set the lash of one kind of valve to, and what to mind with it. */
export interface ValveWords {
  /** The lash and whether it is set cold or hot; absent if none is known. */
  readonly lash?: string;
  /** Sentences without full stops. */
  readonly notes: readonly string[];
}

/** Describes what valves of one kind are set to. */
export function describeValve(setting: ValveSetting, wording: Wording): ValveWords {
  const { valve, lash, set, cold, setBy } = setting;
  const { units } = wording;
  if (lash === undefined) return { notes: [] };
  const state = set === undefined ? 'cold or hot not stated' : `set ${set}`;
  return {
    lash: `${sayLimits(lash, 'length', units)}, ${state} ${noteOf(lash.basis, wording)}`,
    notes: [
      ...(set === undefined
        ? [
            `whether the lash of the ${valve} valves is set cold or hot is not stated: look it up first`,
          ]
        : []),
      ...(cold ? [coldNote(cold, wording)] : []),
      ...(set === 'hot' && !cold
        ? [
            'no lash to set cold is known, and the engine needs one for its first start: find it, or give the train and how warm it runs; a valve without lash burns',
          ]
        : []),
      ...(cold && cold.outsideRange.length > 0
        ? [
            'some of its pieces run at temperatures that their coefficients are not known for, so take that as a guess',
          ]
        : []),
      ...(set === 'hot' ? ['a hot engine burns: set hot lash stopped, with gloves'] : []),
      ...(setBy === 'stem'
        ? [
            'nothing adjusts it, so its stem is ground: off comes the lash wanted less the lash found; grind off less at first, read it again and creep up on it, as what is off stays off',
          ]
        : []),
    ],
  };
}

/** What a hot lash is cold. One without lash would hold its valve open. */
function coldNote({ lash }: ColdLash, { units }: Wording): string {
  if (lash.max <= 0)
    return 'by the growth of its train it would have no lash cold: set it hot only, and look at the lengths and temperatures again';
  return `${describeSpan(lash, 'length', units)} cold would leave that hot, by the growth of the train: set it to ${say(lash.max, 'length', units)}, the safe end, since a valve without lash burns, and check it hot`;
}
