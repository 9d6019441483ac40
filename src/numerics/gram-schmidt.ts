/** How the observations of a linear model stand to its least-squares fit. */
export interface FitByLeastSquares {
  /** Observation less fit, of each. */
  readonly residuals: readonly number[];
  /** Share of each observation in its own fit: near 1 it is fitted by itself alone. */
  readonly leverages: readonly number[];
  /** How many columns of the model are independent. */
  readonly rank: number;
}

/** Columns closer to a combination of the others than this share of their length are left out. */
const DEPENDENT = 1e-9;

/**
 * Least-squares fit of a linear model by modified Gram–Schmidt, each column orthogonalised twice (Björck).
 * Columns that depend on others are left out, and so a model may say the same thing in two ways.
 *
 * @param columns - the model: a list of columns, each with a number for every observation
 * @param observed - the observations
 */
export function fitByLeastSquares(
  columns: readonly (readonly number[])[],
  observed: readonly number[],
): FitByLeastSquares {
  const basis: (readonly number[])[] = [];
  for (const column of columns) {
    const left = withoutPartsOf(basis, withoutPartsOf(basis, column));
    const length = Math.sqrt(dot(left, left));
    if (length <= DEPENDENT * Math.sqrt(dot(column, column))) continue;
    basis.push(left.map((value) => value / length));
  }
  return {
    residuals: withoutPartsOf(basis, observed),
    leverages: observed.map((_, i) =>
      basis.reduce((sum, unit) => sum + (unit[i] as number) ** 2, 0),
    ),
    rank: basis.length,
  };
}

function withoutPartsOf(basis: readonly (readonly number[])[], vector: readonly number[]) {
  return basis.reduce((left, unit) => {
    const part = dot(left, unit);
    return left.map((value, i) => value - part * (unit[i] as number));
  }, vector);
}

const dot = (a: readonly number[], b: readonly number[]): number =>
  a.reduce((sum, value, i) => sum + value * (b[i] as number), 0);
