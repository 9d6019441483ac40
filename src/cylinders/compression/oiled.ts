import { ROUNDING } from '../../judging/internal.js';
import type { Pressure } from '../../quantities/index.js';
import type { CompressionReadings, OiledCylinder } from './test-types.js';

/** What oil did to each cylinder that was read both ways. */
export function oiledCylinders(
  cylinders: readonly CompressionReadings[],
  low: ReadonlySet<string>,
  risesBy: number,
  repeats: number,
): readonly OiledCylinder[] {
  return cylinders.flatMap(({ name, dry, wet }) => {
    if (dry === undefined || wet === undefined) return [];
    const past = wet - dry - risesBy * dry;
    const off = Math.SQRT2 * repeats;
    return [
      {
        cylinder: name,
        rise: (wet - dry) as Pressure,
        suggests: suggestionOf(past + ROUNDING * dry, off, low.has(name)),
      },
    ];
  });
}

function suggestionOf(past: number, off: number, isLow: boolean): OiledCylinder['suggests'] {
  if (Math.abs(past) < off) return 'undecided';
  if (past >= off) return 'rings or bore';
  return isLow ? 'valves or gasket' : 'nothing';
}
