import type { Limits, Wording } from '../judging/index.js';
import { describeInward, say } from '../judging/internal.js';
import { type Block, blank, paragraph, type TaskStep, table } from '../pages/index.js';
import type { Build, BuildBearing } from '../planning/index.js';
import { type Length, tradeUnit } from '../quantities/index.js';
import { formatNumber } from '../quantities/internal.js';
import { limitCells } from './limit-cells.js';
import { isMadeToSuit } from './machined.js';
import { wallLimits } from './size-limits.js';

/** Shells and washers that are made to suit: the order to make them is given once what they go with is measured. */
export function haveMadeStep(build: Build, wording: Wording): readonly TaskStep[] {
  const blocks = [...shellsMade(build, wording), ...washersMade(build, wording)];
  if (blocks.length === 0) return [];
  return [
    {
      title: 'Have the parts made that are made to suit',
      blocks: [
        paragraph(
          'Only now: what they go with is finished and measured. Work each size out from what you measured, write it down, and give that to their maker, not the size that was planned.',
        ),
        ...blocks,
      ],
    },
  ];
}

function shellsMade({ bearings }: Build, wording: Wording): readonly Block[] {
  const made = bearings.filter(isMadeToSuit);
  if (made.length === 0) return [];
  const middles = made.map(({ finding: { limits } }) => middleOf(limits, wording));
  return [
    paragraph(
      `Wall of each half = (housing − journal − clearance) / 2, with housing and journal at the middle of what they measure and the clearance ${[...new Set(middles)].join(' or ')}. "May be" holds if housing and journal are as planned.`,
    ),
    table(
      ['shells', 'for', 'planned wall', 'wall to make', 'measured', 'may be', 'limits by'],
      made.map((bearing) => [
        bearing.shells,
        bearing.journal,
        formatNumber(bearing.madeTo ?? bearing.wall.min, tradeUnit('length', wording.units)),
        blank,
        blank,
        ...wallCells(bearing, wording),
      ]),
      2,
    ),
  ];
}

function middleOf({ min, max }: Limits<Length>, { units }: Wording): string {
  if (min === undefined || max === undefined) return 'within its limits';
  return `at the middle of its limits, ${say(((min + max) / 2) as Length, 'length', units)}`;
}

/** What the wall may be, held inwards: at either end as printed the clearance is within its limits. */
function wallCells(bearing: BuildBearing, wording: Wording): readonly [string, string] {
  const limits = wallLimits(bearing);
  const [mayBe, by] = limitCells({ ...bearing.finding, limits }, wording);
  const { min, max } = limits;
  if (min === undefined || max === undefined || min > max) return [mayBe, by];
  return [describeInward({ min, max }, wording.units).replace(/ \S+$/, ''), by];
}

function washersMade({ endPlay }: Build, wording: Wording): readonly Block[] {
  if (endPlay?.madeTo === undefined) return [];
  return [
    paragraph(
      'Thickness of the thrust washer = distance between the thrust faces of the crankshaft − width over those of the block − any other washer − end play.',
    ),
    table(
      ['washer', 'planned thickness', 'thickness to make', 'measured'],
      [
        [
          endPlay.washers.at(-1) ?? '',
          formatNumber(endPlay.madeTo, tradeUnit('length', wording.units)),
          blank,
          blank,
        ],
      ],
      1,
    ),
  ];
}
