import {
  type Accuracy,
  anglesOf,
  type HowRead,
  howWellRead,
  type InstrumentName,
} from '../reading/index.js';
import type { BearingGroupReport } from './inspect-bearings.js';
import type { CylinderReport } from './inspect-cylinder.js';
import type { Sheet } from './sheet.js';

/** Tells how well the sizes of a sheet were read. */
export function howRead(
  sheet: Sheet,
  accuracy: Accuracy,
  groups: readonly BearingGroupReport[],
  cylinders: readonly CylinderReport[],
): HowRead {
  const parts = [...groups.flatMap(({ bearings }) => bearings), ...cylinders];
  return howWellRead(
    {
      used: instrumentsOf(sheet),
      warm: sheet.warmth ? warmPartsOf(sheet) : [],
      shapes: parts.map(({ name, shape }) => ({ name, angles: anglesOf(shape) })),
    },
    accuracy,
  );
}

/** The instruments that the sizes of a sheet were read with. */
function instrumentsOf({
  rods = [],
  mains = [],
  shells = [],
  cylinders = [],
  crankshaft,
}: Sheet): readonly InstrumentName[] {
  const bearings = [...rods, ...mains];
  const pistons = cylinders.filter(({ piston }) => piston !== undefined);
  const rings = cylinders.flatMap((each) => each.rings ?? []);
  const dials = [
    ...bearings.flatMap(({ journal }) => journal.runout ?? []),
    ...(crankshaft?.endPlay ? [crankshaft.endPlay] : []),
  ];
  const used: readonly (readonly [InstrumentName, readonly unknown[]])[] = [
    ['micrometer', [...bearings, ...pistons]],
    ['boreGauge', [...bearings, ...cylinders]],
    ['wallGauge', bearings.length > 0 ? shells : []],
    ['feelerGauge', rings],
    ['dialIndicator', dials],
  ];
  return used.flatMap(([instrument, read]) => (read.length > 0 ? [instrument] : []));
}

function warmPartsOf({
  rods = [],
  mains = [],
  cylinders = [],
}: Sheet): readonly (keyof Accuracy['growth'])[] {
  return [
    ...(rods.length + mains.length > 0 ? (['journals', 'housings'] as const) : []),
    ...(cylinders.length > 0 ? (['bores'] as const) : []),
    ...(cylinders.some(({ piston }) => piston !== undefined) ? (['pistons'] as const) : []),
  ];
}
