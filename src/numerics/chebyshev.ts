/** Chebyshev polynomials at x, from degree 0 on. */
export function polynomials(x: number, count: number): readonly number[] {
  const values = [1, x];
  let before = 1;
  let here = x;
  while (values.length < count) {
    const next = 2 * x * here - before;
    values.push(next);
    before = here;
    here = next;
  }
  return values;
}

/** A function of two coordinates: the sum of products of their polynomials, each by its coefficient. */
export function chebyshevSum(
  rows: readonly (readonly number[])[],
  along: readonly number[],
  across: readonly number[],
): number {
  let sum = 0;
  for (let i = 0; i < rows.length; i++) {
    const row = rows[i] as readonly number[];
    // Even and odd degrees apart: two sums that need not wait for each other.
    let even = 0;
    let odd = 0;
    for (let j = 0; j < row.length; j += 2) {
      even += (row[j] as number) * (across[j] as number);
      if (j + 1 < row.length) odd += (row[j + 1] as number) * (across[j + 1] as number);
    }
    sum += (even + odd) * (along[i] as number);
  }
  return sum;
}
