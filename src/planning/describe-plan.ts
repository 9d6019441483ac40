import type { Wording } from '../judging/index.js';
import { describeMargin, guardLayout, guardWording, sayDistance } from '../judging/internal.js';
import {
  asText,
  numberedNotes,
  type PageLine,
  type PageSection,
  section,
  whoSetTheLimits,
  wrap,
} from '../pages/index.js';
import { howWell } from '../reading/index.js';
import {
  describeJob,
  doing,
  named,
  nothingFits,
  partWord,
  sayTroubles,
  testFirst,
} from '../shed/internal.js';
import { judgedOf } from './clearances.js';
import { sayComplete } from './complete.js';
import { describeBuild } from './describe-build.js';
import { sayCannotBuild } from './describe-cannot-build.js';
import { describeMeasureFirst } from './describe-measure-first.js';
import { measureOnceMore, sayHowKnown, sayNotDescribed } from './describe-near.js';
import { sayNextEngine } from './describe-next.js';
import { describeProof, isNoneAsked } from './describe-proof.js';
import { describeToMake } from './describe-to-make.js';
import { besideOrder } from './job-doubts.js';
import type { BuildJob, ShopOrder } from './job-types.js';
import { planLayout } from './layouts.js';
import type { LeftOver } from './left-over-types.js';
import type { Purchase } from './order-types.js';
import type { Build, Plan } from './plan-types.js';
import { besidePurchase } from './purchase-doubts.js';
import { sayCost } from './say-cost.js';
import { sayUnjudged } from './unjudged.js';
import { whatToDo } from './what-to-do.js';

/**
 * Prints a plan as plain text. It begins with what to do, in ten lines at the most: how many engines
 * there are, what they cost and what work they wait for, what to test and to measure first, what to buy, what goes to which
 * shop, which parts go together, and what one more engine needs. Then come what is proven, and the
 * details of all this.
 *
 * @param plan - what `planBuilds` gave
 * @param wording - the units to print in, by default those of the shed, and whether to tell why
 * @returns lines of at most 96 characters; the last one ends with a line break
 * @throws {RebuildInputError} when the plan is not what `planBuilds` gives, or the unit system is unknown
 * @example
 * ```ts
 * const plan = await planBuilds(readShed({
 *   version: 1, shed: 'the shed', units: 'inch',
 *   engine: {
 *     name: 'pump set', cylinders: 2, mains: 0,
 *     rodJournals: { standard: { min: '1.6245 in', max: '1.6250 in' } },
 *     bores: { standard: { min: '3.0000 in', max: '3.0005 in' } },
 *   },
 * }));
 * planReport(plan).includes('No complete engine can be built.'); // true
 * ```
 */
export function planReport(plan: Plan, wording: Wording = { units: plan?.units }): string {
  guardLayout('plan', plan, planLayout, 'planBuilds');
  guardWording(wording);
  return asText(planSections(plan, wording));
}

/** The sections of the report on a plan, to be printed. */
export function planSections(plan: Plan, wording: Wording): readonly PageSection[] {
  const { units } = wording;
  const notes = numberedNotes(wording);
  const noted = notes.wording;
  const { builds } = plan;
  return [
    section(
      `PLAN: ${plan.shed}`,
      sentences([
        `Engine: ${plan.engine.name}. Sizes are diameters in ${units === 'inch' ? 'inches' : 'millimetres'}, clearances on the diameter.`,
      ]),
    ),
    whatToDo(plan, noted),
    ...(isNoneAsked(plan) ? [] : [section('HOW SURE IT IS', sentences(howSure(plan, noted)))]),
    ...testsBefore(builds, noted),
    ...describeMeasureFirst(plan, noted),
    ...measureOnceMore(plan, noted),
    ...howWell(plan.howRead, noted),
    ...builds.map((build, i) => describeBuild(build, i + 1, noted)),
    ...part('TO BUY', toBuyLines(plan)),
    ...part('TO MAKE', toMakeLines(plan, noted)),
    ...part(
      'MACHINING ORDERS',
      plan.orders.flatMap((order) => orderLines(order, noted)),
    ),
    ...part('LEFT OVER', leftOverLines(plan.leftOver)),
    ...part('THE NEXT ENGINE', sentences(sayNextEngine(plan, noted))),
    ...whoSetTheLimits(notes),
    section('BEFORE YOU ACT', sentences(BEFORE_YOU_ACT)),
  ];
}

const BEFORE_YOU_ACT = [
  'A limit marked "common practice" is a rule of thumb; the maker\'s manual always wins. Ask the shops before you buy: the prices here come from the shed file.',
  'The plan uses the sizes you measured and those it orders; what was not measured was not judged. Measure everything again when it comes back; the build sheet has a line for each size.',
];

/** How tight the plan is, and what is proven of it. */
function howSure(plan: Plan, wording: Wording): readonly string[] {
  const { smallestMargin } = plan;
  const afterBand = plan.holdsWith === undefined ? '' : ' after the guard band';
  return [
    ...(smallestMargin === undefined
      ? []
      : [
          `The clearance nearest a limit ${describeMargin(smallestMargin, wording.units)}${afterBand}${knownTo(plan, wording)}.`,
        ]),
    ...sayHowKnown(plan),
    describeProof(plan, wording),
    ...sayUnjudged(plan),
    ...sayComplete(plan.complete),
    ...sayNotDescribed(plan),
    ...sayCannotBuild(plan, wording),
  ];
}

/** How well the clearance nearest a limit is known, if it is known at all. */
function knownTo({ builds, near, measureAgain }: Plan, { units }: Wording): string {
  const [nearest] = builds
    .flatMap(judgedOf)
    .filter(({ of }) => of !== 'end play')
    .sort((a, b) => a.finding.margin - b.finding.margin);
  const { uncertainty } = nearest?.finding ?? {};
  if (uncertainty === undefined) return '';
  const more = near.length + measureAgain.length > 0 ? ': see MEASURE ONCE MORE' : '';
  return `, and is known to ±${sayDistance(uncertainty, 'length', units)}${more}`;
}

/** The parts of all engines to test for cracks, with the shop that does it. */
function testsBefore(builds: readonly Build[], wording: Wording): readonly PageSection[] {
  const tests = builds.flatMap(({ tests: its, jobs }) =>
    its.map((test) => {
      const job = jobs.find(({ part: of, work }) => of === test.part && work === test.test);
      const more = job ? `; by ${job.shop}, ${sayCost(job.cost)}` : '';
      return { section: test.section, name: test.part, test, more, isOffered: job !== undefined };
    }),
  );
  const isPriced = tests.every(({ test, isOffered }) => test.when !== 'first' || isOffered);
  return testFirst(
    tests,
    `plan again.${isPriced ? '' : ' No shop on the list offers the test for all of them, so its cost is not counted.'}`,
    wording,
  );
}

/** The order of a shop. What is done alike to several parts for the same price takes one line. */
function orderLines({ shop, jobs, cost }: ShopOrder, wording: Wording): readonly PageLine[] {
  const alike = new Map<string, readonly BuildJob[]>();
  for (const job of jobs) {
    const order = describeOrder(job, wording);
    alike.set(order, [...(alike.get(order) ?? []), job]);
  }
  const lines = [...alike.values()].flatMap((its) => {
    const parts = its.map((job) => job.part).join(', ');
    return its.slice(0, 1).map((job) => `  ${parts}: ${describeOrder(job, wording, its.length)}`);
  });
  return [...wrap(`${shop}: ${sayCost(cost)}`, 4), ...lines.flatMap((line) => wrap(line, 4))];
}

/** `grind rod journals …; 60.00 EUR each; IN DOUBT: …`. */
const describeOrder = (job: BuildJob, wording: Wording, count = 1): string =>
  `${describeJob(job, wording)}; ${sayCost(job.cost)}${count > 1 ? ' each' : ''}${besideOrder(job, wording)}`;

/** What to buy, and when: after the tests for cracks, before anything is cut. */
function toBuyLines({ shopping }: Plan): readonly PageLine[] {
  if (shopping.length === 0) return [];
  return [
    ...shopping.flatMap(purchaseLines),
    ...sentences(['Buy and measure pistons and shells before anything is cut to them.']),
  ];
}

function toMakeLines({ toMake }: Plan, wording: Wording): readonly PageLine[] {
  const { parts, cautions } = describeToMake(toMake, wording);
  return [
    ...parts.flatMap((line) => wrap(line, 4)),
    ...cautions.flatMap((caution) => wrap(`${caution}.`, 0)),
  ];
}

function purchaseLines(purchase: Purchase): readonly PageLine[] {
  const { section: each, kind, name, count, cost } = purchase;
  const what = `${named(name, count)} (${partWord(each, count, kind)})`;
  return wrap(`${what}: ${sayCost(cost)}${besidePurchase(purchase)}`, 4);
}

const WHY_LEFT = [
  ['reserved', 'Kept back'],
  ['spare', 'Spare'],
  ['it is measured', 'Undecided until measured'],
  ['the odd reading is taken again', 'Undecided until the odd reading is taken again'],
  ['it is measured better', 'Undecided until it is measured better'],
  ['it is straightened and measured', 'Undecided until straightened and measured'],
  ['it is looked over', 'Undecided until it is looked over'],
  ['it is known which bearing seized', 'Undecided until it is known which bearing seized'],
  ['not as it is', 'Kept aside, as no shop on the list does the work that puts it right'],
  ['scrap', 'Scrap, to keep until the engines run'],
] as const;

function leftOverLines(leftOver: readonly LeftOver[]): readonly PageLine[] {
  return WHY_LEFT.flatMap(([why, heading]) => {
    const names = leftOver.filter((part) => (part.until ?? part.why) === why).map(describeLeft);
    return names.length === 0 ? [] : wrap(`${heading}: ${names.join('; ')}`, 4);
  });
}

/** What a plan does not try, though it may save a crankshaft. */
const NOT_TRIED =
  'shells made to suit its journals as they are were not considered, and may save it';

/** `block C (block; frost-cracked; not crack-tested)`. */
function describeLeft({
  section: each,
  kind,
  name,
  count,
  onlyWith,
  faults = [],
  accidents = [],
  untested,
  madeShellsNotTried,
  fitsNothing,
  noShopFor = [],
  why,
}: LeftOver): string {
  const doubts = [
    ...(onlyWith ? [`fits only with ${onlyWith.join(' or ')}`] : []),
    ...faults,
    ...(fitsNothing ? [nothingFits(each, fitsNothing)] : []),
    ...(noShopFor.length > 0 ? [`needs ${noShopFor.map(doing).join(' and ')}`] : []),
    ...(accidents.length > 0 && why !== 'scrap' ? [sayTroubles(accidents, name)] : []),
    ...(untested && why !== 'scrap' ? ['not crack-tested'] : []),
    ...(madeShellsNotTried ? [NOT_TRIED] : []),
  ];
  return `${named(name, count)} (${[partWord(each, count, kind), ...doubts].join('; ')})`;
}

/** A section, left out if it is empty. */
const part = (heading: string, lines: readonly PageLine[]): readonly PageSection[] =>
  lines.length === 0 ? [] : [section(heading, lines)];

const sentences = (texts: readonly string[]): readonly PageLine[] =>
  texts.flatMap((text) => wrap(text, 0));
