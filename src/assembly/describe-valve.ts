import type { Wording } from '../judging/index.js';
import { describeLimits, noteOf, say } from '../judging/internal.js';
import { sayLimits } from './say-limits.js';
import type { ValveSetting } from './valve-setting.js';

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
  const wanted = `${sayLimits(lash, 'length', units)}`;
  return {
    lash: `${wanted}, set ${set ?? 'cold or hot, which is not stated'} ${noteOf(lash.basis, wording)}`,
    notes: [
      ...(set === undefined
        ? [
            `whether the lash of the ${valve} valves is set cold or hot is not stated: look it up first`,
          ]
        : []),
      ...(cold
        ? [
            `cold, that is about ${describeLimits(cold.lash, 'length', units)} by the growth of the train: set it to ${say(cold.lash.max, 'length', units)}, since a valve without lash burns, and check it hot`,
          ]
        : []),
      ...(cold && cold.outsideRange.length > 0
        ? [
            'some of its pieces run hotter than their coefficients are known for, so take that as a guess',
          ]
        : []),
      ...(set === 'hot' ? ['a hot engine burns: set hot lash stopped, with gloves'] : []),
      ...(setBy === 'stem'
        ? [
            'nothing adjusts it: what is to come off the stem is the lash wanted less the lash found; grind off less, read it again, and creep up on it, as what is off stays off',
          ]
        : []),
    ],
  };
}
