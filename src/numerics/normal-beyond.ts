/**
 * The share of a normal distribution that lies more than so many standard deviations above its mean. Near the middle by
 * the series of Marsaglia (2004), in the tail by the continued fraction of Laplace, so that no tail is lost in
 * a difference.
 */
export function normalBeyond(deviations: number): number {
  const x = Math.abs(deviations);
  const density = Math.exp(-0.5 * x * x) / Math.sqrt(2 * Math.PI);
  const above = x < 3 ? 0.5 - density * seriesOf(x) : density / fractionOf(x);
  return deviations < 0 ? 1 - above : above;
}

/** x + x³/3 + x⁵/(3·5) + … */
function seriesOf(x: number): number {
  let [term, sum] = [x, x];
  for (let k = 3; term > 1e-17 * sum; k += 2) {
    term *= (x * x) / k;
    sum += term;
  }
  return sum;
}

/** x + 1/(x + 2/(x + 3/(x + …))), from 3 on exact to the last digits with so many terms. */
function fractionOf(x: number): number {
  let fraction = x;
  for (let k = 100; k > 0; k--) fraction = x + k / fraction;
  return fraction;
}
