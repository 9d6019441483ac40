import { guardFields, showIn } from '../judging/internal.js';
import {
  type Flow,
  mLPerHour,
  RebuildInputError,
  type Time,
  type Volume,
} from '../quantities/index.js';
import { clearanceSpace, leakFlow } from './domains.js';

const CYLINDER = ['clearanceVolume', 'leak'] as const;

/**
 * How long a standing engine takes to flood a cylinder that a leak runs into: until the fuel fills the space that
 * is left above the piston at top dead centre. With more than that in it the piston cannot pass: the rod bends,
 * or the head lifts, when the engine is cranked.
 *
 *     time = clearanceVolume / leak
 *
 * It takes all the fuel to run into one cylinder and none to get past the rings: the safe assumption.
 * Close the fuel cock at every stop. Before you crank a flooded engine take the plugs out, earth the
 * leads away from the openings, and turn it by hand: what sprays out is fuel, so let no spark near it.
 *
 * @param cylinder - the space above the piston at top dead centre, and the leak at its most
 * @returns time until that space is full [s]
 * @throws {RebuildInputError} when a field is misspelt, a value is not finite or out of range, or nothing leaks
 * @see Source: volume balance
 * @example
 * ```ts
 * const { max: leak } = dripFlow({ drops: 6, time: minute(1) });
 * format(hydraulicLockHours({ clearanceVolume: mL(60), leak }), hour); // "3.3 h"
 * ```
 */
export function hydraulicLockHours(cylinder: {
  /** Space above the piston at top dead centre, head and gasket included: swept volume / (compression ratio - 1) [m³]. */
  readonly clearanceVolume: Volume;
  /** Fuel that runs in while the engine stands, at its most [m³/s]. */
  readonly leak: Flow;
}): Time {
  guardFields('cylinder', cylinder, CYLINDER);
  const clearanceVolume = clearanceSpace('clearanceVolume', cylinder.clearanceVolume);
  const leak = leakFlow('leak', cylinder.leak);
  if (leak > 0) return (clearanceVolume / leak) as Time;
  throw new RebuildInputError({
    parameter: 'leak',
    value: leak,
    shown: showIn(leak, mLPerHour),
    expected: 'a leak',
    hint: 'Where nothing leaks, nothing floods a cylinder.',
  });
}
