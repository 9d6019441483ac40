import { sayLimits } from '../assembly/index.js';
import type { Wording } from '../judging/index.js';
import { noteOf } from '../judging/internal.js';
import { blank, checks, paragraph, type TaskStep, table } from '../pages/index.js';
import type { Build } from '../planning/index.js';
import { stackOf } from '../planning/internal.js';
import { tradeUnit } from '../quantities/index.js';
import { formatNumber } from '../quantities/internal.js';
import type { EngineKind } from '../reading/index.js';
import { based } from './allowed-sizes.js';
import { limitCells, NOT_STATED } from './limit-cells.js';

/** The ring gaps, set in the finished bores. */
export function ringGapStep(
  { cylinders }: Build,
  { assembly: { rings = {} } = {} }: EngineKind,
  wording: Wording,
): TaskStep {
  const [side] = based(rings.sideClearance);
  const [back] = based(rings.backClearance);
  return {
    title: 'Set the ring gaps',
    blocks: [
      paragraph(
        "Square each ring in its own bore with the piston, at the bottom of the ring travel, where the bore is least worn, and measure its gap. If the gap is too small, file its ends a little at a time: you cannot put metal back. The maker's limits win over a rule of thumb.",
      ),
      table(
        ['bore', 'gap', 'limits by', 'top ring', 'second ring', 'oil ring'],
        cylinders.map(({ bore, ringGap }) => [
          bore,
          ...limitCells(ringGap, wording),
          blank,
          blank,
          blank,
        ]),
        1,
      ),
      paragraph(
        `Side clearance of every ring in its groove, all the way round${side ? '' : ", by the maker's manual"}; a groove worn wide lets the ring flutter and break:`,
      ),
      table(
        ['bore', 'limits', 'limits by', 'top ring', 'second ring', 'oil ring'],
        cylinders.map(({ bore }) => [
          bore,
          ...(side ? limitCells(side, wording) : NOT_STATED),
          blank,
          blank,
          blank,
        ]),
        1,
      ),
      ...(back
        ? [
            checks([
              {
                write: `Every ring pushed right in lies below its land, ${sayLimits(back, 'length', wording.units)} ${noteOf(back.basis, wording)}; found`,
              },
            ]),
          ]
        : []),
      paragraph('Keep the rings of a bore together, and put no ring back into another.'),
    ],
  };
}

/** The end play, with the washers that set it. */
export function endPlayStep({ endPlay }: Build, wording: Wording): TaskStep {
  const title = 'Set the end play';
  if (!endPlay) {
    return {
      title,
      blocks: [
        paragraph('Not planned, as its limits or a thrust width are missing.'),
        checks([{ write: "End play, by the maker's manual" }]),
      ],
    };
  }
  const { washers, play, finding } = endPlay;
  const [limits, by] = limitCells(finding, wording);
  return {
    title,
    blocks: [
      checks([`Fitted: ${stackOf(washers)}`]),
      paragraph('Push the crankshaft to one end and to the other, with a dial on its face:'),
      table(
        ['', 'expected', 'measured', 'limits', 'limits by'],
        [['end play', formatNumber(play, tradeUnit('length', wording.units)), blank, limits, by]],
        1,
      ),
    ],
  };
}
