import { type Accuracy, anglesOf, type HowRead, howWellRead } from '../reading/index.js';
import type { BearingGroupReport } from './inspect-bearings.js';
import type { CylinderReport } from './inspect-cylinder.js';
import type { Sheet } from './sheet.js';

/** Tells how well the sizes of a sheet were read. */
export function howRead(
  { rods = [], mains = [], shells = [], cylinders = [], crankshaft, warmth }: Sheet,
  accuracy: Accuracy,
  groups: readonly BearingGroupReport[],
  reports: readonly CylinderReport[],
): HowRead {
  const bearings = [...rods, ...mains];
  const pistons = cylinders.filter(({ piston }) => piston !== undefined);
  const rings = cylinders.flatMap((each) => each.rings ?? []);
  const dials = [
    ...bearings.flatMap(({ journal }) => journal.runout ?? []),
    ...(crankshaft?.endPlay ? [crankshaft.endPlay] : []),
  ];
  const parts = [...groups.flatMap((group) => group.bearings), ...reports];
  return howWellRead(
    {
      used: [
        ['micrometer', [...bearings, ...pistons]],
        ['boreGauge', [...bearings, ...cylinders]],
        ['wallGauge', bearings.length > 0 ? shells : []],
        ['feelerGauge', rings],
        ['dialIndicator', dials],
      ],
      warm: warmth
        ? [
            ['journals', bearings],
            ['housings', bearings],
            ['bores', cylinders],
            ['pistons', pistons],
          ]
        : [],
      shapes: parts.map(({ name, shape }) => ({ place: name, angles: anglesOf(shape) })),
    },
    accuracy,
  );
}
