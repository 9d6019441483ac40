import { describeFit, describeNewParts, type FitSetting, PRESSING } from '../assembly/index.js';
import type { Wording } from '../judging/index.js';
import { holds } from '../judging/internal.js';
import {
  type Block,
  blank,
  bulletList,
  caution,
  type Entry,
  paragraph,
  table,
} from '../pages/index.js';
import { spanNumber } from '../planning/internal.js';
import { limitCells, NOT_STATED } from './limit-cells.js';

/** What runs or presses in what: it is measured before anything is pressed or assembled. */
export function fitBlocks(fits: readonly FitSetting[], wording: Wording): readonly Block[] {
  if (fits.length === 0) return [];
  const made = fits.flatMap(({ name, newParts }) =>
    newParts ? [`${name}, new parts: ${describeNewParts(newParts, wording)}`] : [],
  );
  const wrong = fits.filter(({ finding }) => finding && !holds(finding));
  return [
    paragraph('Fits, hole less shaft, before any of them is assembled:'),
    table(
      ['clearance', 'measured before', 'measured', 'limits', 'limits by'],
      fits.map((fit) => fitRow(fit, wording)),
      1,
    ),
    ...(made.length === 0 ? [] : [bulletList(made)]),
    ...wrong.map((fit) =>
      caution(
        `Do not assemble or press ${fit.name} before it is settled: ${describeFit(fit, wording)[0]?.trim() ?? ''}.`,
      ),
    ),
    ...(fits.some(({ mayBePressed }) => mayBePressed) ? [caution(PRESSING)] : []),
  ];
}

/** What two parts leave between them, measured or not. */
function fitRow({ name, clearance, wanted }: FitSetting, wording: Wording): readonly Entry[] {
  return [
    name,
    clearance ? spanNumber(clearance, wording) : 'not measured',
    blank,
    ...(wanted ? limitCells(wanted, wording) : NOT_STATED),
  ];
}
