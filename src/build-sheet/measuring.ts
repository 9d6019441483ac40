import { nameUndersize } from '../crankshaft/internal.js';
import { nameOversize } from '../cylinders/internal.js';
import type { BasedLimits, Limits, Wording } from '../judging/index.js';
import { noteOf } from '../judging/internal.js';
import {
  type Block,
  blank,
  caution,
  checks,
  type Entry,
  paragraph,
  type TaskStep,
  table,
} from '../pages/index.js';
import type { Build, BuildCylinder } from '../planning/index.js';
import { limitsNumber, spanNumber } from '../planning/internal.js';
import type { Length } from '../quantities/index.js';
import { boreLimits, housingLimits, journalLimits } from './size-limits.js';

/** Every journal, housing and bore: its expected size, and the sizes that keep its clearance within limits. */
export function measureStep(build: Build, wording: Wording): TaskStep {
  const { bearings, cylinders, parts } = build;
  const shaft = parts.find(({ section }) => section === 'crankshafts')?.name ?? 'crankshaft';
  const rows = (all: readonly (readonly Entry[])[]): readonly (readonly Entry[])[] =>
    // Two rods on one journal ask for the same row; it is printed once.
    [...new Map(all.map((row) => [JSON.stringify(row), row])).values()];
  const sizes = (all: readonly (readonly Entry[])[]) =>
    table(['place', 'should be', 'measured', 'may be', 'limits by'], rows(all), 1);
  return {
    title: 'Clean and measure every part',
    blocks: [
      caution(
        'Take out the plugs of every oilway and clean it with brush and solvent until nothing more comes out: grit from the wheel ruins new shells. Wear eye protection when you blow an oilway through.',
      ),
      paragraph(
        'Measure the parts that came back from a shop and those that did not go out. "Should be" is the size that was ordered, or measured before. "May be" is the range that keeps the clearance within its limits, if the mating parts are as they should be; every part must also be within the maker\'s own limits.',
      ),
      paragraph('Journals, at both ends and on two axes:'),
      sizes(
        bearings.map(({ journal, journalSize, finding, ...bearing }) => [
          `${shaft}, ${journal}`,
          spanNumber(journalSize, wording),
          blank,
          ...allowed(finding, journalLimits(bearing, finding.limits), wording),
        ]),
      ),
      caution(
        "Measure housings with their caps on and torqued to the maker's figure, without shells. Never file a cap.",
      ),
      sizes(
        bearings.map(({ housing, housingBore, finding, ...bearing }) => [
          `${housing.part}, ${housing.place}`,
          spanNumber(housingBore, wording),
          blank,
          ...allowed(finding, housingLimits(bearing, finding.limits), wording),
        ]),
      ),
      paragraph('Bores, at the top, the middle and the bottom of the ring travel and on two axes:'),
      sizes(
        cylinders.map(({ bore, boreSize, pistonSize, finding }) => [
          bore,
          spanNumber(boreSize, wording),
          blank,
          ...(finding
            ? allowed(finding, boreLimits(pistonSize, finding.limits), wording)
            : NOT_JUDGED),
        ]),
      ),
      ...afterRepairs(build),
    ],
  };
}

/** Measurements to repeat after repairs. */
function afterRepairs({ jobs, parts }: Build): readonly Block[] {
  const items = jobs.flatMap(({ work, part }): Entry[] => {
    const isShaft = parts.some(({ section, name }) => section === 'crankshafts' && name === part);
    if (work === 'skim head') return [{ write: `${part}, largest gap under a straight edge` }];
    if (work !== 'straighten') return [];
    return [{ write: `${part}, ${isShaft ? 'runout at the middle' : 'bend and twist'}` }];
  });
  return items.length === 0
    ? []
    : [paragraph("After repair, against the maker's manual:"), checks(items)];
}

/** Which shells and pistons go where. */
export function fitStep({ bearings, cylinders, parts }: Build, wording: Wording): TaskStep {
  const pistons = parts.find(({ section }) => section === 'pistonSets')?.name ?? 'the pistons';
  return {
    title: 'Assemble dry',
    blocks: [
      checks([
        ...bearings.map(
          ({ journal, housing, shells, undersize }) =>
            `${journal}: ${housing.part}, ${housing.place}, with ${shells} (${nameUndersize(undersize, wording)})`,
        ),
        ...cylinders.map(
          ({ bore, piston, oversize }) =>
            `${bore}: ${piston} of ${pistons} (${nameOversize(oversize, wording)})`,
        ),
      ]),
    ],
  };
}

/** Every clearance that the plan relies on. */
export function clearanceStep(build: Build, wording: Wording): TaskStep {
  const { bearings, cylinders, guides } = build;
  const row = (
    place: string,
    { clearance, finding }: Pick<BuildCylinder, 'clearance' | 'finding'>,
  ): readonly Entry[] => [
    place,
    spanNumber(clearance, wording),
    blank,
    ...(finding ? allowed(finding, finding.limits, wording) : NOT_JUDGED),
  ];
  return {
    title: 'Check the clearances',
    blocks: [
      paragraph(
        'Work each clearance out from your measurements, or use gauging thread: torque the caps, and do not turn the crankshaft while the thread is in place.',
      ),
      table(
        ['clearance', 'expected', 'measured', 'limits', 'limits by'],
        [
          ...bearings.map((bearing) => row(`oil, ${bearing.journal}`, bearing)),
          ...cylinders.map((cylinder) => row(`piston, ${cylinder.bore}`, cylinder)),
          ...(guides ? [row('valve guides', guides)] : []),
        ],
        1,
      ),
    ],
  };
}

const NOT_JUDGED = ['not judged', 'no limits known'];

/** The limits of a size and who set them, as two cells. */
export function allowed(
  { basis }: Pick<BasedLimits<'length'>, 'basis'>,
  limits: Limits<Length>,
  wording: Wording,
): readonly [limits: string, by: string] {
  return [limitsNumber(limits, wording), `${basis.kind} ${noteOf(basis, wording)}`];
}
