/** How wide the clearances of a model must be, and which of them it counts. */
export interface Levels {
  /** The least margin of any clearance [nm]. */
  readonly least: number;
  /** The margins of clearances that are settled, smallest first; by default none [nm]. */
  readonly levels?: readonly number[];
  /** What every other margin is wider than; by default no limit [nm]. */
  readonly above?: number;
  /** Other clearances with up to this margin are counted as one more level; by default none [nm]. */
  readonly upTo?: number;
}

/** Whether a clearance may have a margin. */
export const isAllowed = (
  margin: number,
  { least, levels = [], above = -Infinity }: Levels,
): boolean => margin >= least && (margin > above || levels.includes(margin));

/** The level that an allowed margin counts for; undefined if it is wider than all [nm]. */
export function levelOf(
  margin: number,
  { levels = [], upTo = -Infinity }: Levels,
): number | undefined {
  const level = levels.indexOf(margin);
  if (level >= 0) return level;
  return margin <= upTo ? levels.length : undefined;
}
