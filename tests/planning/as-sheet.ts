import { degree, mm } from 'crankwright';
import type { Build, BuildBearing } from 'crankwright/planning';
import type { Sheet } from 'crankwright/sheet';
import type { BlockPart, Shed } from './full.js';

type Size = BuildBearing['journalSize'];
type Bearing = NonNullable<Sheet['rods']>[number];
type Readings = Bearing['journal']['readings'];

/**
 * The inspection sheet that an engine of a plan would have once everything is
 * done: what is machined measures the middle of its target, what is used as it
 * is keeps its own readings.
 */
export function asSheet(shed: Shed, build: Build): Sheet {
  const { engine, units } = shed;
  const part = <S extends 'blocks' | 'crankshafts'>(section: S) => {
    const name = build.parts.find((each) => each.section === section)?.name;
    const all = [...(shed[section] ?? []), ...(shed.toBuy?.[section] ?? [])];
    const found = all.find((each) => each.name === name);
    if (found === undefined) throw new Error(`no ${section} in ${build.name}`);
    return found as NonNullable<Shed[S]>[number];
  };
  const [block, crankshaft] = [part('blocks'), part('crankshafts')];
  const machined = (name: string, place: string) =>
    build.jobs.find(
      ({ part, step, places }) => part === name && step !== undefined && places.includes(place),
    );
  const bearings = (kind: 'rods' | 'mains') =>
    build.bearings
      .filter((bearing) => bearing.kind === kind)
      .map(({ journal, journalSize, housingBore }, i): Bearing => {
        const places = kind === 'rods' ? crankshaft.rodJournals : (crankshaft.mainJournals ?? []);
        const work = kind === 'rods' ? 'grind rod journals' : 'grind main journals';
        const ground = build.jobs.some(
          (job) =>
            job.work === work && job.part === crankshaft.name && job.places.includes(journal),
        );
        const own = places.find(({ name }) => name === journal)?.readings ?? [];
        const readings = ground ? evenly(journalSize) : own;
        return { name: `${kind} ${i + 1}`, journal: { readings }, housingBore };
      });
  const [rods, mains] = [bearings('rods'), bearings('mains')];
  const used = build.bearings.map(({ shells }) => shells);
  const shells = [...(shed.shells ?? []), ...(shed.toBuy?.shells ?? [])]
    .filter(({ name }) => used.includes(name))
    .map(({ name, fits, undersize, wall }) => ({
      name,
      fits,
      undersize,
      wall,
      pairs: used.filter((each) => each === name).length,
    }));
  const { rodJournals, mainJournals } = engine;
  return {
    version: 1,
    engine: build.name,
    units,
    crankshaft: { rodJournals, ...(mainJournals && { mainJournals }) },
    rods,
    ...(mains.length > 0 && { mains }),
    shells,
    ...(engine.bores.pistonClearance && {
      cylinderLimits: { pistonClearance: engine.bores.pistonClearance },
    }),
    cylinders: build.cylinders.map(({ bore, boreSize, pistonSize }) => ({
      name: bore,
      bore: machined(block.name, bore)
        ? { readings: evenly(boreSize) }
        : boreOf(block.bores.find(({ name }) => name === bore)),
      piston: pistonSize,
    })),
  };
}

function boreOf(place: BlockPart['bores'][number] | undefined) {
  if (place === undefined) throw new Error('no such bore');
  const { readings, ringTravel } = place;
  return { readings, ...(ringTravel && { ringTravel }) };
}

/** Readings of a part that came back round and straight, in the middle of what was asked. */
function evenly({ min, max }: Size): Readings {
  const diameter = ((min + max) / 2) as Size['min'];
  return [10, 40].flatMap((station) =>
    [0, 90].map((angle) => ({ station: mm(station), angle: degree(angle), diameter })),
  );
}
