import type { Wording } from '../judging/index.js';
import { capital } from '../pages/index.js';
import { doing, named } from '../shed/internal.js';
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
  /** Parts at hand that may do instead, as sentences; none if there are none. */
  readonly instead: readonly string[];
}

/** What one more engine needs: if what is to be measured first turns out good, and if it does not. None if no more are wanted. */
export function neededNext(
  { nextEngine, measureFirst, leftOver }: Pick<Plan, 'nextEngine' | 'measureFirst' | 'leftOver'>,
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
            instead: askAShop(each.lacks, leftOver),
          },
        ]
      : [],
  );
  const isOpen = ifGood.length > 0 || kinds.some(({ kind }) => kind === 'one more engine');
  const when = isOpen ? 'if what you measure first turns out no good, ' : '';
  const said = describeNextEngine(nextEngine, wording);
  const instead = askAShop(nextEngine.lacks, leftOver);
  return [...ifGood, { when, lacks: nextEngine.lacks, said, instead }];
}

/** Which parts at hand may do instead of those that are lacking, if a shop did what none on the list offers. */
function askAShop(lacks: readonly LackingPart[], leftOver: Plan['leftOver']): readonly string[] {
  const told = leftOver.flatMap(({ section, kind, name, noShopFor = [] }) =>
    noShopFor.length > 0 && lacks.some((part) => part.section === section && part.kind === kind)
      ? [`${name} (${noShopFor.map(doing).join(', ')})`]
      : [],
  );
  return told.length === 0
    ? []
    : [
        `What is left over may do instead, after work that no shop on the list offers: ${told.join(', ')}. Ask a shop, and put its price under machining.`,
      ];
}

/** A paragraph on what one more engine needs; none if no more are wanted. */
export function sayNextEngine(plan: Plan, wording: Wording): readonly string[] {
  const needed = neededNext(plan, wording);
  if (needed.length === 0) return [];
  const said = needed.flatMap(({ when, said: its, instead }) => [
    `${capital(`${when}${its}`)}.`,
    ...instead,
  ]);
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
