import type { Wording } from '../judging/index.js';
import { noteOf } from '../judging/internal.js';
import { degree, format } from '../quantities/index.js';
import { describeTimingCard } from '../timing/index.js';
import { sayLimits } from './say-limits.js';
import type { TimingSetting } from './timing-setting.js';

/** Where valves and spark come, and what may hurt the person at the starting handle. */
export interface TimingWords {
  /** Whole sentences. */
  readonly cautions: readonly string[];
  /** Sentences without full stops. */
  readonly notes: readonly string[];
}

/** Describes where valves and spark come. */
export function describeTiming(
  { card, tooth, pointsGap, plugGap }: TimingSetting,
  wording: Wording,
): TimingWords {
  const { units } = wording;
  // The card begins with its cautions, of which the first is a thing to do, and ends with whose its figures are.
  const [toDo = '', ...lines] = describeTimingCard(card, wording).slice(0, -1);
  const hurts = card.cautions.length - 1;
  return {
    cautions: lines.slice(0, hurts).map(asSentence),
    notes: [
      ...(tooth
        ? [
            `a timing gear one tooth out of mesh puts the valves out by ${format(tooth.atCrank, degree)} of the crank`,
          ]
        : []),
      ...(pointsGap
        ? [
            `gap of the points ${sayLimits(pointsGap, 'length', units)} ${noteOf(pointsGap.basis, wording)}: set it before the spark is timed, as it moves the spark`,
          ]
        : []),
      ...(plugGap
        ? [
            `gap of the spark plug ${sayLimits(plugGap, 'length', units)} ${noteOf(plugGap.basis, wording)}`,
          ]
        : []),
      toDo,
      ...lines.slice(hurts),
      ...(card.rows.length > 1
        ? [`spark and valves are timed by these figures ${noteOf(card.basis, wording)}`]
        : []),
    ],
  };
}

/** A caution as it stands in a box of its own. */
function asSentence(caution: string): string {
  const said = caution.replace(/^take care: /, '');
  return `${said.charAt(0).toUpperCase()}${said.slice(1)}.`;
}
