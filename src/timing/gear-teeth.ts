import { guardFields, guardWhole } from '../judging/internal.js';
import { type Angle, RebuildInputError } from '../quantities/index.js';
import { WHOLE } from './turns.js';

/** How far one tooth of a mesh is. */
export interface OneTooth {
  /** In turn of the crank [rad]. */
  readonly atCrank: Angle;
  /** In turn of the gear that is driven [rad]. */
  readonly atGear: Angle;
}

const GEARS = ['crankTeeth', 'gearTeeth'] as const;
/** The fewest and the most teeth of a gear. */
export const TEETH = [8, 400] as const;

/** Refuses what is no count of teeth. */
export const guardTeeth = (parameter: string, teeth: number): number =>
  guardWhole(
    parameter,
    teeth,
    TEETH,
    'Count the teeth of the gear all around, and count them twice.',
  );

/**
 * How far the timing is out if a gear is put in one tooth out of mesh.
 *
 *     atCrank = 2 * π / crankTeeth
 *     atGear = 2 * π / gearTeeth
 *
 * In a train of single gears it is the same turn of the crank wherever the tooth was missed, at the cam, at an idler or
 * at the magneto: that of the crank's own teeth. Two gears on one shaft, of different teeth, do not follow that. A
 * chain counts like gears.
 *
 * @param gears - teeth of the crank's gear, and of the one that it drives
 * @returns the angle of one tooth at the crank and at the gear
 * @throws {RebuildInputError} when a field is misspelt, or the teeth are no whole number from 8 to 400
 * @see Source: geometry; TM 5-4210-229-14&P, paragraph 6-6, prints 11 degrees of the crank for a tooth of its own
 * engine
 * @example
 * ```ts
 * const tooth = oneTooth({ crankTeeth: 24, gearTeeth: 48 });
 * format(tooth.atCrank, degree); // "15.0 deg"
 * format(tooth.atGear, degree); // "7.5 deg"
 * ```
 */
export function oneTooth(gears: {
  /** Teeth of the gear on the crankshaft. */
  readonly crankTeeth: number;
  /** Teeth of the gear on the camshaft or the magneto. */
  readonly gearTeeth: number;
}): OneTooth {
  guardFields('gears', gears, GEARS);
  const crankTeeth = guardTeeth('crankTeeth', gears.crankTeeth);
  const gearTeeth = guardTeeth('gearTeeth', gears.gearTeeth);
  return { atCrank: (WHOLE / crankTeeth) as Angle, atGear: (WHOLE / gearTeeth) as Angle };
}

/** Refuses gears that do not turn the cam at half the crank's speed. */
export function guardCamTeeth(crankTeeth: number, camTeeth: number): void {
  guardTeeth('crankTeeth', crankTeeth);
  guardTeeth('camTeeth', camTeeth);
  if (camTeeth === 2 * crankTeeth) return;
  throw new RebuildInputError({
    parameter: 'camTeeth',
    value: camTeeth,
    expected: `twice the teeth of the crank's gear, ${2 * crankTeeth}`,
    hint: 'The cam of a four-stroke turns at half the speed of the crank. Count both again.',
  });
}
