import { guardFields, guardLayout, guardWord } from '../judging/internal.js';
import {
  asMarkdown,
  asPlainText,
  type Block,
  caution,
  checks,
  heading,
  paragraph,
} from '../pages/index.js';
import type { Plan } from '../planning/index.js';
import {
  BEFORE_MONEY,
  besidePurchase,
  describeOnceMore,
  describeToMake,
  isCountProven,
  isNoneAsked,
  isPlanProven,
  neededNext,
  sayCost,
  sayFreeReadings,
} from '../planning/internal.js';
import { planLayout } from '../planning/layouts.js';
import type { UnitSystem } from '../quantities/index.js';
import { guardSystem } from '../quantities/internal.js';
import { named, partWord } from '../shed/internal.js';
import { enginePages } from './engine.js';
import { firstTests } from './test-first.js';

/** How to print a build sheet. */
export interface BuildSheetOptions {
  /** The units to print in; by default those of the shed. */
  readonly units?: UnitSystem;
  /** Markdown, with tables; or plain text, with a form feed before every engine. By default Markdown. */
  readonly format?: 'markdown' | 'text';
}

/**
 * Prints the build sheet of a plan, to work from at the bench. Every engine has pages of its own, in the
 * order of the work: the parts to lay out, the work to send out with its sizes, the sizes to measure,
 * the clearances to check, the ring gaps and end play to set, and the checks at the first start. There
 * are boxes to tick and room to write. Other programs can read the plan itself, which is plain data:
 * `JSON.stringify(plan)`.
 *
 * If the shed gives no limits for the ring gap, the sheet prints the rule of thumb and marks it as one.
 *
 * @param plan - what `planBuilds` gave
 * @param options - units and format
 * @returns Markdown with the tables and boxes of the GitHub flavour, or text in lines of at most 96 characters
 * @throws {RebuildInputError} when the plan is not what `planBuilds` gives, an option is unknown, the unit system is
 * unknown, or the format is unknown
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
 * buildSheet(plan).split('\n')[0]; // "# Build sheet: the shed"
 * ```
 */
export function buildSheet(plan: Plan, options: BuildSheetOptions = {}): string {
  guardLayout('plan', plan, planLayout, 'planBuilds');
  guardFields('options', options, ['units', 'format']);
  const { units = plan.units, format = 'markdown' } = options;
  guardSystem('options.units', units);
  guardWord('options.format', format, ['markdown', 'text']);
  const blocks = buildSheetBlocks(plan, units);
  return format === 'markdown' ? asMarkdown(blocks) : asPlainText(blocks);
}

/** The build sheet of a plan, to be printed. */
export const buildSheetBlocks = (plan: Plan, units: UnitSystem): readonly Block[] => [
  ...cover(plan, units),
  ...engines(plan, units),
];

function cover(plan: Plan, units: UnitSystem): readonly Block[] {
  const { builds, engine, shed, shopping, cost, proof } = plan;
  return [
    heading(1, `Build sheet: ${shed}`),
    ...(builds.length === 0
      ? [paragraph(noEngine(plan))]
      : [
          paragraph(
            `${builds.length} × ${engine.name}. Shop work and purchases cost ${sayCost(cost)}.`,
          ),
          checks(builds.map(({ name }, i) => `engine ${i + 1}: ${name}`)),
          caution(
            'The maker\'s manual always wins over this sheet. A limit marked "common practice" is a rule of thumb.',
          ),
        ]),
    ...(isPlanProven(proof) ? [] : [caution('This plan is not proven to be the best.')]),
    ...readAgainFirst(plan, units),
    ...testsBefore(builds),
    ...measureOnceMore(plan, units),
    ...(shopping.length === 0
      ? []
      : [
          heading(2, 'Buy'),
          paragraph(
            `${builds.some((build) => firstTests(build).length > 0) ? 'Buy them only once the tests above are passed. ' : ''}Measure pistons and shells before anything is cut to them.`,
          ),
          checks(
            shopping.map((each) => {
              const { section, kind, name, count, cost: price } = each;
              const what = `${named(name, count)} (${partWord(section, count, kind)})`;
              return `${what}: ${sayCost(price)}${besidePurchase(each)}`;
            }),
          ),
        ]),
    ...toMakeBlocks(plan, units),
    ...(builds.length === 0
      ? neededNext(plan, { units })
          .slice(0, 1)
          .map(({ when, said, instead }) =>
            paragraph([`For now: ${when}${said}.`, ...instead].join(' ')),
          )
      : []),
  ];
}

/** Readings to take again before anything is tested, bought or cut: they cost nothing, and may change all of it. */
function readAgainFirst(plan: Plan, units: UnitSystem): readonly Block[] {
  const readings = sayFreeReadings(plan, { units });
  return readings.length === 0
    ? []
    : [
        heading(2, 'Read again first'),
        paragraph(
          'It costs nothing, and may change what is tested, bought and cut. Then plan again.',
        ),
        checks(readings),
      ];
}

/** The parts of every engine to test; the reasons are on the pages of the engine. */
function testsBefore(builds: Plan['builds']): readonly Block[] {
  const parts = builds.flatMap((build, i) =>
    firstTests(build).map(({ part }) => `${part}, of engine ${i + 1}`),
  );
  const once = [...new Set(parts)];
  return once.length === 0 ? [] : [heading(2, 'Test first'), checks(once)];
}

/** What to measure once more before anything is bought. */
function measureOnceMore(plan: Plan, units: UnitSystem): readonly Block[] {
  const all = describeOnceMore(plan, { units });
  if (all.length === 0) return [];
  return [heading(2, 'Measure once more'), paragraph(BEFORE_MONEY), checks(all)];
}

function noEngine(plan: Plan): string {
  const {
    engine: { name },
    proof,
  } = plan;
  if (isNoneAsked(plan)) return `You asked for no ${name}.`;
  return isCountProven(proof)
    ? `No complete ${name} can be built from this shed.`
    : `No complete ${name} was found for this shed.`;
}

function engines({ builds, engine }: Plan, units: UnitSystem): readonly Block[] {
  return builds.flatMap((build, i) => [
    { kind: 'page break' as const },
    ...enginePages(build, engine, `Engine ${i + 1} of ${builds.length}: ${build.name}`, units),
  ]);
}

/** What to have made, and what to mind. */
function toMakeBlocks({ toMake }: Plan, units: UnitSystem): readonly Block[] {
  const { parts, cautions } = describeToMake(toMake, { units });
  return parts.length === 0
    ? []
    : [heading(2, 'Have made'), ...cautions.map((each) => caution(`${each}.`)), checks(parts)];
}
