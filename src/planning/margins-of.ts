import type { Assembly } from './assembly.js';
import type { Brief } from './brief.js';
import { stemMargin } from './formulate-top.js';

/** The margins of all clearances of some engines that are judged, tightest first [nm]. */
export function marginsOf(brief: Brief, engines: readonly Assembly[]): readonly number[] {
  return engines
    .flatMap((engine) => marginsIn(brief, engine))
    .filter((margin) => margin < Infinity)
    .sort((a, b) => a - b);
}

function marginsIn(
  brief: Brief,
  { block, boreWay, mainWay, rodWay, mains, rods, pistons, head, valves }: Assembly,
): readonly number[] {
  const { fits } = brief;
  const { housings } = block.kind.ready;
  const all = [
    ...mains.map(({ kind }, i) =>
      fits.margin('mains', mainWay.step, mainWay.sizes[i], housings[i], kind),
    ),
    ...rods.map(({ rods: set, rod, journal, shells }) =>
      fits.margin(
        'rods',
        rodWay.step,
        rodWay.sizes[journal],
        set.kind.ready.housings[rod],
        shells.kind,
      ),
    ),
    ...(fits.pistons(boreWay.sizes, pistons.kind.ready.sizes)?.margins ?? []),
    ...(head && valves ? [stemMargin(brief, head.kind.ready.guide, valves.kind.ready.stem)] : []),
  ];
  return all.flatMap((margin) => margin ?? []);
}
