import type { Wording } from '../judging/index.js';
import { capital } from '../pages/index.js';
import { named } from '../shed/internal.js';
import { describeNextEngine, sayLacks } from './describe-lacks.js';
import type { LackingPart } from './left-over-types.js';
import type { Plan } from './plan-types.js';

/** What one more engine needs, in one case. */
export interface Needed {
  /** The case, as the start of a sentence; empty if there is only one. */
  readonly when: string;
  readonly lacks: readonly LackingPart[];
  /** What it needs, as the rest of the sentence. */
  readonly said: string;
}

/** What one more engine needs: if what is to be measured first turns out good, and if it does not. None if no more are wanted. */
export function neededNext(
  { nextEngine, measureFirst }: Pick<Plan, 'nextEngine' | 'measureFirst'>,
  wording: Wording,
): readonly Needed[] {
  if (nextEngine === undefined) return [];
  const kinds = measureFirst.map(({ mayBring }) => mayBring);
  const ifGood = kinds.flatMap((each) =>
    each.kind === 'what to buy'
      ? [
          {
            when: 'if what you measure first turns out good, ',
            lacks: each.lacks,
            said: `one more engine needs: ${sayLacks(each.lacks, wording)}`,
          },
        ]
      : [],
  );
  const isOpen = ifGood.length > 0 || kinds.some(({ kind }) => kind === 'one more engine');
  const when = isOpen ? 'if what you measure first turns out no good, ' : '';
  const said = describeNextEngine(nextEngine, wording);
  return [...ifGood, { when, lacks: nextEngine.lacks, said }];
}

/** A paragraph on what one more engine needs; none if no more are wanted. */
export function sayNextEngine(plan: Plan, wording: Wording): readonly string[] {
  const needed = neededNext(plan, wording);
  if (needed.length === 0) return [];
  const said = needed.map(({ when, said: its }) => `${capital(`${when}${its}`)}.`);
  const more = needed.at(-1)?.lacks.length === 0 ? [] : [LEFT_OVER];
  return [[...said, ...whyNotThese(plan, needed), ...more].join(' ')];
}

/** Of each spare of a kind that is lacking, that it fits only with certain parts, if it does. */
function whyNotThese({ leftOver }: Plan, needed: readonly Needed[]): readonly string[] {
  const lacks = needed.flatMap((each) => each.lacks);
  return leftOver.flatMap(({ why, section, kind, name, count, onlyWith }) => {
    const isLacking = lacks.some((part) => part.section === section && part.kind === kind);
    if (why !== 'spare' || !isLacking || !onlyWith) return [];
    return [
      `Of what is left over, ${named(name, count)} will not do: it fits only with ${onlyWith.join(' or ')}.`,
    ];
  });
}

const LEFT_OVER = 'The parts for it that are left over may need work and tests first.';
