/** How far a reading is from what the others say, and what that is worth. */
export interface Deviation {
  /** Reading less what a fit without it expects [m]. */
  readonly off: number;
  /** Standard deviation of that for a standard deviation of 1 of every reading. */
  readonly spread: number;
  /** Standard deviation of the other readings about their fit [m]. */
  readonly scatter: number;
}

/** The deviations of all readings from a fit. */
export interface Deviations {
  /** Of each; undefined where the others do not tell what it should be. */
  readonly all: readonly (Deviation | undefined)[];
  /** Degrees of freedom of their scatter. */
  readonly degrees: number;
}

/** Other readings that must be left over by a fit before their scatter tells anything. */
export const ENOUGH_LEFT = 3;

/** Every reading against a fit without it, from the fit to all of them. */
export function deletedResiduals(fit: {
  readonly residuals: readonly number[];
  readonly leverages: readonly number[];
  readonly rank: number;
}): Deviations {
  const { residuals, leverages, rank } = fit;
  const squares = residuals.reduce((sum, residual) => sum + residual * residual, 0);
  const degrees = residuals.length - rank - 1;
  const all = residuals.map((residual, i) => {
    const free = 1 - (leverages[i] as number);
    if (free < 1e-9) return undefined;
    const others = Math.max(0, squares - (residual * residual) / free);
    return {
      off: residual / free,
      spread: Math.sqrt(1 / free),
      scatter: degrees > 0 ? Math.sqrt(others / degrees) : 0,
    };
  });
  return { all, degrees };
}
