/**
 * Coefficients of the columns whose sum comes nearest to the values, by least squares (Householder's
 * reflections). The columns must not depend on each other, and must not outnumber the values.
 *
 * @param columns - one list for each coefficient, each as long as the values; overwritten
 * @param values - what is to be reached; overwritten
 */
export function leastSquares(columns: readonly Float64Array[], values: Float64Array): number[] {
  const diagonal = columns.map((column, k) => {
    let square = 0;
    for (let i = k; i < column.length; i++) square += (column[i] as number) ** 2;
    const head = column[k] as number;
    const turned = head > 0 ? -Math.sqrt(square) : Math.sqrt(square);
    column[k] = head - turned;
    for (const other of columns.slice(k + 1)) reflect(other, column, k, turned);
    reflect(values, column, k, turned);
    return turned;
  });
  const found: number[] = columns.map(() => 0);
  for (let k = columns.length - 1; k >= 0; k--) {
    let rest = values[k] as number;
    for (let j = k + 1; j < columns.length; j++) {
      rest -= ((columns[j] as Float64Array)[k] as number) * (found[j] as number);
    }
    found[k] = rest / (diagonal[k] as number);
  }
  return found;
}

/** Reflects a list in the plane that stands square to the mirror, whose entries before `from` do not count. */
function reflect(list: Float64Array, mirror: Float64Array, from: number, turned: number): void {
  let along = 0;
  for (let i = from; i < list.length; i++) along += (mirror[i] as number) * (list[i] as number);
  // Half the square of the mirror's length is turned by minus its head.
  const share = along / (turned * (mirror[from] as number));
  for (let i = from; i < list.length; i++) {
    list[i] = (list[i] as number) + share * (mirror[i] as number);
  }
}
