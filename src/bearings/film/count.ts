import { RebuildInputError } from '../../quantities/error.js';

/** Refuses what is not a whole number within bounds, a multiple of some other. */
export function guardCount(
  parameter: string,
  value: number,
  [least, most]: readonly [least: number, most: number],
  multipleOf = 1,
): number {
  const sound = typeof value === 'number' && value >= least && value <= most;
  if (sound && Number.isInteger(value / multipleOf)) return value;
  throw new RebuildInputError({
    parameter,
    value,
    expected: `a multiple of ${multipleOf} from ${least} to ${most}`,
    hint: 'More of them take longer and tell little more.',
  });
}
