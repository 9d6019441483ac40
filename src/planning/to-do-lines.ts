import { nameUndersize } from '../crankshaft/internal.js';
import type { Wording } from '../judging/index.js';
import { capital } from '../pages/index.js';
import { named } from '../shed/internal.js';
import { sayCannotBuild } from './describe-cannot-build.js';
import { sayLacks } from './describe-lacks.js';
import { describeOnceMore } from './describe-near.js';
import { neededNext } from './describe-next.js';
import { isNoneAsked, isPlanProven, sayEngines } from './describe-proof.js';
import { hardestFirst } from './hard-to-get.js';
import type { Build, Plan } from './plan-types.js';
import { countInDoubt, onceSettled } from './purchase-doubts.js';
import { sayCost } from './say-cost.js';
import { countParts, NOTHING, oneLine, type Topic } from './topic.js';
import { partsWithWork, workLine } from './work-lines.js';

/** How many engines there are, what they cost, and what work they wait for. */
export function countLines(plan: Plan): Topic {
  const { builds, cost, proof } = plan;
  if (isNoneAsked(plan)) return oneLine('You asked for no engine.');
  const count = capital(sayEngines(builds.length));
  const doubt = isPlanProven(proof) ? '' : ' NOT PROVEN to be the best: see HOW SURE IT IS.';
  if (builds.length === 0) {
    return oneLine(`${count} ${doubt === '' ? 'can be built' : 'was found'}.${doubt}`);
  }
  const costs = `; shop work and purchases cost ${sayCost(cost)}.${doubt}`;
  const work = partsWithWork(builds);
  const after = work.length === 0 ? '' : ` after work on ${countParts(work.length)}`;
  return {
    lines: [[`${count} can be built${costs}`, `${count} can be built.${doubt}`], workLine(work)],
    summed: [
      `${count} can be built${after}${costs}`,
      `${count} can be built${after}.${doubt}`,
      `${count} can be built${after}.${doubt === '' ? '' : ' NOT PROVEN: see HOW SURE IT IS.'}`,
    ],
  };
}

/** Which blocks that were asked for are not built, and why. */
export function unbuiltLines(plan: Plan, wording: Wording): Topic {
  const count = plan.cannotBuild.length;
  return {
    lines: sayCannotBuild(plan, wording).map((said, i) => [
      said,
      `You asked for ${plan.cannotBuild[i]?.name}, but it is not built: see HOW SURE IT IS.`,
      'A block that you asked for is not built: see HOW SURE IT IS.',
    ]),
    summed: [`${count} blocks that you asked for are not built: see HOW SURE IT IS.`],
  };
}

/** What to test for cracks before anything else. */
export function testLines({ builds }: Plan): Topic {
  const tests = builds.flatMap(({ tests: its }) => its.filter(({ when }) => when === 'first'));
  const names = [...new Set(tests.map(({ part }) => part))];
  if (names.length === 0) return NOTHING;
  return oneLine(
    `Before anything else, have crack-tested: ${names.join(', ')}.`,
    `Before anything else, have ${countParts(names.length)} crack-tested: see TEST FIRST.`,
  );
}

/** What to measure once more. */
export function measureLines(plan: Plan, wording: Wording): Topic {
  const { length: count } = describeOnceMore(plan, wording);
  if (count === 0) return NOTHING;
  const places = plan.near.map(({ engine, of, place = of }) => `${engine}, ${place}`);
  const again = plan.measureAgain.map(({ name }) => name);
  return oneLine(
    `Measure once more before you spend money: ${[...places, ...again].join('; ')}.`,
    `Measure ${count === 1 ? '1 thing' : `${count} things`} once more before you spend money: see MEASURE ONCE MORE.`,
  );
}

/** What to have made, once it can be. */
export function makeLines({ toMake, cost: { currency } }: Plan): Topic {
  if (toMake.length === 0) return NOTHING;
  const amount = toMake.reduce((sum, { cost }) => sum + cost.amount, 0);
  const cost = sayCost({ amount, ...(currency !== undefined && { currency }) });
  const names = [...new Set(toMake.map(({ name }) => name))].map((name) =>
    named(name, toMake.filter((each) => each.name === name).length),
  );
  return oneLine(
    `Have made for ${cost}, once what they go with is finished and measured: ${names.join('; ')}.`,
    `Have made for ${cost}: ${names.join('; ')}.`,
    `Have ${countParts(toMake.length)} made for ${cost}: see TO MAKE.`,
  );
}

/** What to buy. */
export function buyLines({ shopping, cost: { currency } }: Plan): Topic {
  if (shopping.length === 0) return NOTHING;
  const amount = shopping.reduce((sum, { cost }) => sum + cost.amount, 0);
  const cost = sayCost({ amount, ...(currency !== undefined && { currency }) });
  const names = shopping.map(({ name, count }) => named(name, count));
  const all = countParts(shopping.reduce((sum, { count }) => sum + count, 0));
  const doubted = countInDoubt(shopping);
  if (doubted > 0) {
    return oneLine(
      `Buy for ${cost}: ${names.join('; ')}; ${doubted} of these only ${onceSettled(shopping)}.`,
      `Buy ${all} for ${cost}, ${doubted} only ${onceSettled(shopping)}: see TO BUY.`,
      `Buy ${all} for ${cost}, ${doubted} of them IN DOUBT: settle it first, see TO BUY.`,
    );
  }
  return oneLine(
    `Buy for ${cost}, and measure before anything is cut: ${names.join('; ')}.`,
    `Buy for ${cost}: ${names.join('; ')}.`,
    `Buy ${all} for ${cost}: see TO BUY.`,
  );
}

/** Which block gets which crankshaft, rods and pistons. */
export function engineLines({ builds }: Plan, wording: Wording): Topic {
  const crankshafts = builds.map((build) => `${build.name} with ${namesIn(build, 'crankshafts')}`);
  return {
    lines: builds.map((build, i) => {
      const [crankshaft, rods, pistons] = (['crankshafts', 'rods', 'pistonSets'] as const).map(
        (section) => namesIn(build, section),
      );
      const others = [rods, pistons].filter((name) => name !== '').join(', ');
      const start = `Engine ${i + 1}: ${build.name} with`;
      return [
        `${start} ${crankshaft} (${sizesOf(build, wording)}), ${others}.`,
        `${start} ${crankshaft}, ${others}.`,
        `${start} ${crankshaft}: see ENGINE ${i + 1}.`,
        `Engine ${i + 1}: see ENGINE ${i + 1} for what goes together.`,
      ];
    }),
    summed: [
      `Engines: ${crankshafts.join('; ')}.`,
      `Engines: see ENGINE 1 to ENGINE ${builds.length} for what goes together.`,
    ],
  };
}

/** How many of many lacking parts are named, the hardest to get first, as far as the line goes. */
const NAMED = [3, 2, 1];

/** What the next engine lacks. */
export function nextLines(plan: Plan, wording: Wording): Topic {
  const [first] = neededNext(plan, wording);
  if (first === undefined) return NOTHING;
  const { when, said, lacks, instead } = first;
  const count = lacks.reduce((sum, each) => sum + each.count, 0);
  return oneLine(
    `${capital(`${when}${said}`)}${instead.length > 0 ? '; see THE NEXT ENGINE for what may do instead' : ''}.`,
    ...NAMED.filter((most) => most < lacks.length).map(
      (most) =>
        `${capital(`${when}one more engine needs ${countParts(count)} more`)}, above all ${sayLacks(hardestFirst(lacks).slice(0, most), wording)}: see THE NEXT ENGINE.`,
    ),
    count === 0
      ? 'No part completes one more engine: see THE NEXT ENGINE.'
      : `${capital(`${when}one more engine needs ${countParts(count)} more`)}: see THE NEXT ENGINE.`,
    when === ''
      ? 'One more engine needs more parts: see THE NEXT ENGINE.'
      : `${capital(when)}see THE NEXT ENGINE.`,
  );
}

/** `mains standard, rods 0.0200 in under`. */
function sizesOf({ bearings }: Build, wording: Wording): string {
  const sizes = (['mains', 'rods'] as const).flatMap((of) => {
    const its = bearings.filter(({ kind }) => kind === of);
    const steps = new Set(its.map(({ undersize }) => nameUndersize(undersize, wording)));
    return steps.size === 0 ? [] : [`${of} ${[...steps].join(' and ')}`];
  });
  return sizes.join(', ');
}

const namesIn = (build: Build, section: Build['parts'][number]['section']): string =>
  build.parts
    .filter((part) => part.section === section)
    .map(({ name, count }) => named(name, count))
    .join(', ');
