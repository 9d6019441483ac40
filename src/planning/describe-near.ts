import type { Wording } from '../judging/index.js';
import { sayFinding } from '../judging/internal.js';
import { type PageSection, section, task, wrap } from '../pages/index.js';
import { INSTRUMENT_WORDS } from '../reading/index.js';
import { describeAgain } from '../shed/internal.js';
import { judgedOf } from './clearances.js';
import type { NearClearance, Plan } from './plan-types.js';
import { sayCost } from './say-cost.js';

/** What to measure once more before money is spent, with what rests on it; nothing if nothing is near a limit. */
export function measureOnceMore(plan: Plan, wording: Wording): readonly PageSection[] {
  const all = describeOnceMore(plan, wording);
  if (all.length === 0) return [];
  return [
    section('MEASURE ONCE MORE', [
      ...wrap(BEFORE_MONEY, 0),
      ...all.map((each, i) => task(i + 1, each)),
    ]),
  ];
}

/** Each thing to measure once more: the clearances, then the parts. */
export const describeOnceMore = (
  { near, measureAgain }: Plan,
  wording: Wording,
): readonly string[] => [
  ...near.map((each) => describeNear(each, wording)),
  ...measureAgain.flatMap(({ name, because }) =>
    because.map((reason) => `${name}: ${describeAgain(reason, wording)}.`),
  ),
];

/** Why to measure again, and what to do with the readings. */
export const BEFORE_MONEY =
  'These are nearer a limit than they are safely known. Measure them once more before you spend money, those that most rests on first. Put the new readings in the shed file and plan again.';

/** `engine block A, rod 1: oil clearance …; holds with a chance of 0.94; 342.50 EUR at stake. Measure …`. */
function describeNear(
  { engine, of, place, finding, holds, atStake, measure, instead }: NearClearance,
  wording: Wording,
): string {
  // The place names a bearing or a cylinder, and the finding itself the guides or the end play.
  const where = place === undefined ? engine : `${engine}, ${place}`;
  const spare = instead === undefined ? '' : ` ${SPARE[of]} would do instead: ${instead}.`;
  return `${where}: ${sayFinding(finding, wording)}. It holds with a chance of ${sayChance(holds)}; ${sayCost(atStake)} at stake. ${sayMeasure(measure)}${spare}`;
}

const SPARE: Readonly<Record<NearClearance['of'], string>> = {
  rods: 'Spare shells',
  mains: 'Spare shells',
  cylinder: 'A spare set of pistons',
  guides: 'A spare set of valves',
  'end play': 'A spare washer',
};

function sayMeasure(what: readonly string[]): string {
  if (what.length === 0) {
    return 'Nothing of it can be measured yet: measure what comes before it is cut or fitted.';
  }
  const [last = '', ...others] = [...what].reverse();
  const all = others.length === 0 ? last : `${others.reverse().join(', ')} and ${last}`;
  return `Measure ${all} again.`;
}

/** A chance, never rounded up: `0.945`, `0.999`. */
export const sayChance = (chance: number): string =>
  (Math.floor(chance * 1000 + 1e-9) / 1000).toFixed(3);

/** How well the clearances of a plan are known, in sentences. */
export function sayHowKnown({ builds, allHold, holdsWith, notDescribed }: Plan): readonly string[] {
  if (builds.length === 0) return [];
  const asked =
    holdsWith === undefined
      ? []
      : [`Every clearance holds with a chance of ${holdsWith} or more, as you asked.`];
  const together =
    allHold === undefined
      ? []
      : [
          `All the clearances${notDescribed.length === 0 ? '' : ' that described instruments read'} hold together with a chance of ${sayChance(allHold)} or more, as far as the instruments are as described.`,
        ];
  return [...asked, ...together];
}

/** The instruments that nobody described, said once. */
export function sayNotDescribed({ builds, notDescribed }: Plan): readonly string[] {
  if (notDescribed.length === 0) return [];
  const some = builds.flatMap(judgedOf).some(({ finding }) => finding.uncertainty !== undefined);
  if (!some) return ['Nobody said how well the sizes were measured: margins are of sizes as read.'];
  const words = notDescribed.map((name) => INSTRUMENT_WORDS[name]).join(', ');
  return [`Nobody said how well these measure: ${words}. What they add is not counted.`];
}
