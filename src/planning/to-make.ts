import type { Length } from '../quantities/index.js';
import type { Assembly } from './assembly.js';
import type { Cost } from './cost.js';
import { costOf } from './money.js';
import type { PartToMake } from './order-types.js';
import type { Build } from './plan-types.js';

/** The parts to make for one engine, each with its size. */
export function toMakeFor(
  assembly: Assembly,
  build: Build,
  currency: string | undefined,
): readonly PartToMake[] {
  const engine = build.name;
  const price = (thousandths: number | undefined): Cost => costOf(thousandths ?? 0, currency);
  const all = [...assembly.mains, ...assembly.rods.map(({ shells }) => shells)];
  const shells = build.bearings.flatMap((bearing, i): readonly PartToMake[] => {
    const { madeTo, kind, journal, finding } = bearing;
    const taken = all[i];
    if (madeTo === undefined || taken === undefined) return [];
    return [
      {
        section: 'shells',
        name: taken.member.name,
        ...materialOf(taken.member),
        engine,
        fits: kind,
        place: journal,
        size: { min: madeTo, max: madeTo },
        // A wall that is off by something changes the clearance by twice as much.
        tolerance: (Math.max(0, finding.margin) / 2) as Length,
        cost: price(taken.member.price),
      },
    ];
  });
  const washers = (assembly.washers ?? []).flatMap(({ kind, member }): readonly PartToMake[] => {
    const size = kind.made && build.endPlay?.madeTo;
    if (size === undefined || !build.endPlay) return [];
    const tolerance = Math.max(0, build.endPlay.finding.margin) as Length;
    return [
      {
        section: 'thrustWashers',
        name: member.name,
        ...materialOf(member),
        engine,
        size: { min: size, max: size },
        tolerance,
        cost: price(member.price),
      },
    ];
  });
  const { sleeves, jobs, sizes } = assembly.boreWay;
  const places = assembly.block.kind.ready.places;
  const sleeved = jobs.find(({ work }) => work === 'sleeve')?.places ?? [];
  const bored = sleeves
    ? sleeved.map((place): PartToMake => {
        const finished = sizes[places.indexOf(place)];
        return {
          section: 'sleeves',
          name: sleeves.name,
          ...materialOf(sleeves),
          engine,
          place,
          size: sleeves.wall,
          ...(finished && { finishedTo: finished }),
          cost: price(sleeves.price),
        };
      })
    : [];
  return [...shells, ...washers, ...bored];
}

const materialOf = ({ material }: { readonly material?: string }) =>
  material === undefined ? {} : { material };
