/** The median of several measurements, and the middle half of them. */
export interface Spread {
  readonly median: number;
  readonly lowerQuartile: number;
  readonly upperQuartile: number;
}

/** Sorts the measurements and picks the quarter, half and three-quarter places. */
export function spreadOf(measurements: readonly number[]): Spread {
  const sorted = measurements.toSorted((a, b) => a - b);
  const at = (share: number) => sorted[Math.round(share * (sorted.length - 1))] ?? Number.NaN;
  return { median: at(0.5), lowerQuartile: at(0.25), upperQuartile: at(0.75) };
}

/** The spread of one series over another, each measurement over its partner of the same round. */
export function ratioOf(over: readonly number[], under: readonly number[]): Spread {
  return spreadOf(over.map((value, round) => value / (under[round] ?? Number.NaN)));
}
