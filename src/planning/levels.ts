/** How wide the clearances of a model must be, and which of them it tells apart. */
export interface Levels {
  /** The least margin of any clearance [nm]. */
  readonly least: number;
  /** The margins that clearances are counted up to, smallest first; by default none [nm]. */
  readonly levels?: readonly number[];
}

/** The first of the levels that a margin is within; undefined if it is above them all [nm]. */
export function levelOf(
  margin: number,
  { levels = [] }: Pick<Levels, 'levels'>,
): number | undefined {
  const level = levels.findIndex((each) => margin <= each);
  return level < 0 ? undefined : level;
}
