import type { Wording } from '../judging/index.js';
import { type Block, blank, type Entry, paragraph, type TaskStep, table } from '../pages/index.js';
import type { Build, BuildBearing, BuildCylinder } from '../planning/index.js';
import { spanNumber } from '../planning/internal.js';
import { limitCells, NOT_JUDGED } from './limit-cells.js';
import { groundBy, isBored, isMadeToSuit } from './machined.js';
import { pistonLimits, wallLimits } from './size-limits.js';

/** Pistons and shells that something is machined to fit, or that are bought: none may be left unmeasured. */
export function measureFirstStep(build: Build, wording: Wording): readonly TaskStep[] {
  const [pistons, shells] = [pistonsFirst(build), shellsFirst(build)];
  if (pistons.length === 0 && shells.length === 0) return [];
  return [
    {
      title: 'Measure pistons and shells before anything is cut',
      blocks: [
        paragraph(
          'What is bought is not always what the box says, and metal that is cut cannot be put back. "May be" is the range that keeps the clearance within its limits if the bore, or housing and journal, come out as planned. If a size lies outside, do not send the other part out: plan again with the size you measured.',
        ),
        ...block(
          "Pistons, across the thrust faces at the height that the maker's manual names:",
          'piston',
          pistons.map((cylinder) => pistonRow(build, cylinder, wording)),
        ),
        ...block(
          'Shells, one wall at its crown, with a ball-ended micrometer; write down the thickest and the thinnest of the pair:',
          'shells',
          shells.map((bearing) => shellRow(bearing, wording)),
        ),
      ],
    },
  ];
}

function block(
  what: string,
  column: string,
  rows: readonly (readonly Entry[])[],
): readonly Block[] {
  if (rows.length === 0) return [];
  const columns = [column, 'for', 'should be', 'measured', 'may be', 'limits by'];
  return [paragraph(what), table(columns, rows, 2)];
}

function pistonsFirst({ cylinders, jobs, parts }: Build): readonly BuildCylinder[] {
  const bought = parts.some(({ section, bought }) => section === 'pistonSets' && bought);
  const bored = jobs.filter(isBored).flatMap(({ places }) => places);
  return cylinders.filter(({ bore }) => bought || bored.includes(bore));
}

function shellsFirst(build: Build): readonly BuildBearing[] {
  const { bearings, jobs, parts } = build;
  const bought = parts.filter(({ section, bought }) => section === 'shells' && bought);
  const ground = jobs.flatMap((job) => groundBy(job, build));
  return bearings.filter(
    (bearing) =>
      !isMadeToSuit(bearing) &&
      (bought.some(({ name }) => name === bearing.shells) || ground.includes(bearing)),
  );
}

function pistonRow(
  { parts }: Build,
  { bore, boreSize, piston, pistonSize, finding }: BuildCylinder,
  wording: Wording,
): readonly Entry[] {
  const set = parts.find(({ section }) => section === 'pistonSets')?.name;
  return [
    set === undefined ? piston : `${piston} of ${set}`,
    bore,
    spanNumber(pistonSize, wording),
    blank,
    ...(finding
      ? limitCells({ ...finding, limits: pistonLimits(boreSize, finding.limits) }, wording)
      : NOT_JUDGED),
  ];
}

function shellRow(bearing: BuildBearing, wording: Wording): readonly Entry[] {
  const { journal, shells, wall, finding } = bearing;
  return [
    shells,
    journal,
    spanNumber(wall, wording),
    blank,
    ...limitCells({ ...finding, limits: wallLimits(bearing) }, wording),
  ];
}
