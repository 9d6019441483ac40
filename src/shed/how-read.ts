import { type HowRead, howWellRead, type WasRead } from '../reading/index.js';
import { accuracyOfShed } from './accuracy-of-shed.js';
import type { Part } from './part.js';
import type { Shed } from './shed.js';

/** Tells how well the sizes of the parts of a shed were read; of `only` these, where they are named. */
export function howShedWasRead(shed: Shed, only?: ReadonlySet<string>): HowRead {
  const its = <P extends Part>(parts: readonly P[] = []) =>
    parts.filter(({ name }) => only?.has(name) ?? true);
  const [blocks, shafts, rods] = [its(shed.blocks), its(shed.crankshafts), its(shed.rods)];
  const every = shafts.flatMap(({ name, rodJournals = [], mainJournals = [] }) =>
    [...mainJournals, ...rodJournals].map((place) => ({ ...place, part: name })),
  );
  const journals = every.filter(isRead);
  const bores = blocks
    .flatMap(({ name, bores = [] }) => bores.map((place) => ({ ...place, part: name })))
    .filter(isRead);
  const housings = [...rods.flatMap((each) => each.rods ?? []), ...blocks.flatMap(mainsOf)].filter(
    ({ housingBore }) => housingBore !== undefined,
  );
  const pistons = its(shed.pistonSets)
    .flatMap((each) => each.pistons ?? [])
    .filter(({ diameter }) => diameter !== undefined);
  const shells = its(shed.shells).filter(({ wall }) => wall !== undefined);
  const washers = its(shed.thrustWashers).filter(({ thickness }) => thickness !== undefined);
  const dials = every.filter(({ runout }) => runout !== undefined);
  const widths = [...blocks, ...shafts].filter(({ thrustWidth }) => thrustWidth !== undefined);
  const used: WasRead['used'] = [
    ['micrometer', [...journals, ...pistons, ...washers]],
    ['boreGauge', [...bores, ...housings]],
    ['wallGauge', shells],
    ['dialIndicator', dials],
    ['depthGauge', widths],
  ];
  const warm: WasRead['warm'] = [
    ['journals', journals],
    ['housings', housings],
    ['bores', bores],
    ['pistons', pistons],
  ];
  return howWellRead(
    {
      used,
      warm: shed.warmth ? warm : [],
      shapes: [...journals, ...bores].map(({ part, name, readings = [] }) => ({
        part,
        place: name,
        angles: readings.map(({ angle }) => angle),
      })),
    },
    accuracyOfShed(shed),
  );
}

const isRead = ({ readings = [] }: { readonly readings?: readonly unknown[] }): boolean =>
  readings.length > 0;

const mainsOf = ({ mainHousings = [] }: NonNullable<Shed['blocks']>[number]) => mainHousings;
