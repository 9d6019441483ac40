import type { AssemblySettings } from '../assembly/index.js';
import type { Wording } from '../judging/index.js';
import { blank, caution, type Entry, paragraph, type TaskStep, table } from '../pages/index.js';
import type { Build } from '../planning/index.js';
import { spanNumber } from '../planning/internal.js';
import type { EngineKind } from '../reading/index.js';
import { allowedBore, allowedHousing, allowedJournal } from './allowed-sizes.js';
import { fitBlocks } from './fits.js';
import { sizeCells } from './limit-cells.js';
import { lookOver } from './looking-over.js';
import { partSizeBlocks } from './part-sizes.js';

/** Every journal, housing and bore: its expected size, and the sizes it may have. */
export function measureStep(
  build: Build,
  engine: EngineKind,
  { fits }: AssemblySettings,
  wording: Wording,
): TaskStep {
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
        'Clean every oil hole and oilway with brush and solvent until nothing more comes out, and take the plugs of drilled oilways out first: dirt and grinding grit ruin new shells. Keep flames away from the solvent, and wear eye protection when you blow a hole through.',
      ),
      paragraph(
        'Measure the parts that came back from a shop and those that did not go out, all at one temperature, near 20 °C. "Should be" is the size that was ordered, or measured before. "May be" keeps to the limits of the shed file and keeps the clearance within its limits, if the mating parts are as they should be.',
      ),
      paragraph('Journals, at both ends and at 0, 60 and 120°:'),
      sizes(
        bearings.map((bearing) => [
          `${shaft}, ${bearing.journal}`,
          spanNumber(bearing.journalSize, wording),
          blank,
          ...sizeCells(allowedJournal(bearing, engine), wording),
        ]),
      ),
      caution(
        "Measure each housing without shells, its own cap on, mark to mark, and torqued to the maker's figure. Never file, lap or shim a cap or a shell: the housing is then no longer round, and the shells lose their grip.",
      ),
      paragraph('Housings, at right angles to the joint and at 45° to either side of that:'),
      sizes(
        bearings.map((bearing) => [
          `${bearing.housing.part}, ${bearing.housing.place}`,
          spanNumber(bearing.housingBore, wording),
          blank,
          ...sizeCells(allowedHousing(bearing, engine), wording),
        ]),
      ),
      paragraph(
        'Bores, at the top, the middle and the bottom of the ring travel and at 0, 60 and 120°:',
      ),
      sizes(
        cylinders.map((cylinder) => [
          cylinder.bore,
          spanNumber(cylinder.boreSize, wording),
          blank,
          ...sizeCells(allowedBore(cylinder, engine), wording),
        ]),
      ),
      ...partSizeBlocks(build, engine, wording),
      ...fitBlocks(fits, wording),
      ...lookOver(build, engine),
    ],
  };
}
