/**
 * Solves a symmetric, positive definite system of equations whose matrix is a band, by Cholesky's
 * factorisation and then forward and back substitution. Unknowns that are not active stay zero, and
 * their equations are left out.
 *
 * @param band - the lower half of the matrix: for each row the `reach` entries before the diagonal and,
 * last, the diagonal; the factor overwrites it
 * @param reach - how many entries before the diagonal the band has
 * @param active - 1 for every unknown that is solved for, else 0
 * @param right - the right-hand side
 * @param solution - is set to the solution
 */
export function solveBanded(
  band: Float64Array,
  reach: number,
  active: Uint8Array,
  right: Float64Array,
  solution: Float64Array,
): void {
  const row = reach + 1;
  const last = active.lastIndexOf(1);
  solution.fill(0);
  for (let r = active.indexOf(1); r <= last; r++) {
    if (active[r] === 0) continue;
    const self = r * row + reach;
    let carried = right[r] as number;
    let own = band[self] as number;
    for (let c = Math.max(0, r - reach); c < r; c++) {
      const here = self - r;
      if (active[c] === 0) {
        // What couples it to an unknown that stays zero would spoil the sums below.
        band[here + c] = 0;
        continue;
      }
      const there = c * row + reach - c;
      let sum = band[here + c] as number;
      for (let k = Math.max(0, r - reach); k < c; k++) {
        sum -= (band[here + k] as number) * (band[there + k] as number);
      }
      const entry = sum / (band[there + c] as number);
      band[here + c] = entry;
      own -= entry * entry;
      carried -= entry * (solution[c] as number);
    }
    const root = Math.sqrt(own);
    band[self] = root;
    solution[r] = carried / root;
  }
  for (let r = last; r >= 0; r--) {
    if (active[r] === 0) continue;
    const self = r * row + reach;
    const solved = (solution[r] as number) / (band[self] as number);
    solution[r] = solved;
    for (let c = Math.max(0, r - reach); c < r; c++) {
      if (active[c] === 0) continue;
      solution[c] = (solution[c] as number) - (band[self - r + c] as number) * solved;
    }
  }
}
