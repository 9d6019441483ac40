import type { VectorField } from '../../numerics/index.js';
import { at, type LoadTable, nowhere, seek } from './load-table.js';
import type { Mobility } from './mobility.js';

/**
 * The journal's drift in the frame of the rod. Seen by one who turns with the oil, halfway between
 * pin and shell, it goes where its mobility under the load lets it; and that frame turns. Time is the crank
 * angle, x is along the rod and y across it, in radial clearances.
 *
 *     d(x, y)/dangle = readiness * load * mobility + turning × (x, y)
 */
export function driftOf(table: LoadTable, readiness: number, mobility: Mobility): VectorField {
  const { angle: knots, along: alongAt, across: acrossAt, turning: turningAt } = table;
  const place = nowhere();
  const drift: VectorField = {
    dx: 0,
    dy: 0,
    set(angle, x, y) {
      seek(knots, angle, place);
      const along = at(alongAt, place);
      const across = at(acrossAt, place);
      const turning = at(turningAt, place);
      const load = Math.sqrt(along * along + across * across);
      // Without a load it is carried around, whichever way it points.
      const c = load > 0 ? along / load : 1;
      const s = load > 0 ? across / load : 0;
      mobility.set(x * c + y * s, y * c - x * s);
      const push = readiness * load;
      drift.dx = push * (mobility.along * c - mobility.across * s) - turning * y;
      drift.dy = push * (mobility.along * s + mobility.across * c) + turning * x;
    },
  };
  return drift;
}
