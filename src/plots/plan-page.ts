import type { Wording } from '../judging/index.js';
import { guardLayout, guardWording, type Names, namedFrom } from '../judging/internal.js';
import { asHtml } from '../pages/index.js';
import type { Build, EngineChances, Plan } from '../planning/index.js';
import { chancesSection, planSections } from '../planning/internal.js';
import { engineChancesLayout, planLayout } from '../planning/layouts.js';
import type { ShownClearance } from './clearance-row.js';
import { clearancesPicture } from './clearances-picture.js';
import { measureFirstPicture } from './measure-first-picture.js';
import { twice } from './page-pictures.js';
import { planPicture } from './plan-picture.js';

/**
 * Prints a plan as a web page with its pictures: which parts go into which engine, what to measure first, and the
 * clearances of every engine against their limits. The page is one file without script, and can be printed.
 *
 * @param plan - what `planBuilds` gave
 * @param wording - the units to print in, by default those of the shed, and whether to tell why
 * @param chances - what `engineChances` gave for the same shed, to stand at the end of the page; by default there are none
 * @returns HTML
 * @throws {RebuildInputError} when the plan is not what `planBuilds` gives, the chances are not what `engineChances` gives,
 * or the unit system is unknown
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
 * planPage(plan).includes('<h1>Plan: the shed</h1>'); // true
 * ```
 */
export function planPage(
  plan: Plan,
  wording: Wording = { units: plan?.units },
  chances?: EngineChances,
): string {
  guardLayout('plan', plan, planLayout, 'planBuilds');
  guardWording(wording);
  if (chances !== undefined) guardLayout('chances', chances, engineChancesLayout, 'engineChances');
  const { units } = wording;
  const sections = [
    ...planSections(plan, wording),
    ...(chances === undefined ? [] : [chancesSection(chances, wording)]),
  ];
  return asHtml(sections, [
    {
      after: 'WHAT TO DO',
      pictures: [
        ...(plan.builds.length > 0
          ? [twice((size) => planPicture(plan, { units, ...size }), 'plan')]
          : []),
        ...(plan.measureFirst.length > 0
          ? [twice((size) => measureFirstPicture(plan, { units, ...size }), 'measure-first')]
          : []),
      ],
    },
    ...plan.builds.map((build, i) => ({
      after: `ENGINE ${i + 1}: ${build.name}`,
      pictures: [
        twice(
          (size) =>
            namedFrom(
              () => namesIn(build, i),
              () => clearancesPicture(clearancesIn(build), { units, ...size }),
            ),
          `clearances-${i + 1}`,
        ),
      ],
    })),
  ]);
}

/** Where in the plan each clearance of an engine is from. */
const namesIn = ({ bearings, cylinders }: Build, engine: number): Names =>
  Object.fromEntries(
    [
      ...bearings.map((_, i) => `bearings[${i}]`),
      ...cylinders.map((_, i) => `cylinders[${i}]`),
      'endPlay',
      'guides',
    ].map((from, i) => [`clearances[${i}].span`, `plan.builds[${engine}].${from}.clearance`]),
  );

/** The clearances of an engine of a plan; those that are not judged are among them. */
function clearancesIn({ bearings, cylinders, endPlay, guides }: Build): readonly ShownClearance[] {
  return [
    ...bearings.map(({ journal, clearance, finding }) => ({
      name: `${journal}: oil clearance`,
      finding,
      span: clearance,
    })),
    ...cylinders.map(({ bore, clearance, finding }) => ({
      name: `${bore}: piston clearance`,
      span: clearance,
      ...(finding && { finding }),
    })),
    endPlay ? { name: 'end play', finding: endPlay.finding } : { name: 'end play' },
    ...(guides
      ? [
          {
            name: 'guide clearance',
            span: guides.clearance,
            ...(guides.finding && { finding: guides.finding }),
          },
        ]
      : [{ name: 'guide clearance' }]),
  ];
}
