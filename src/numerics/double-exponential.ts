/**
 * The integral from 0 to infinity of a function that falls off as an exponential or faster, by the double
 * exponential rule of Takahasi and Mori: with x = scale · exp(s - exp(-s)) the trapezoidal rule converges faster than
 * any power of its step.
 *
 * @param f - a smooth function
 * @param scale - about how far it reaches
 */
export function halfLine(f: (x: number) => number, scale: number): number {
  let sum = 0;
  for (let s = FIRST; s <= LAST; s += STEP) {
    const inner = Math.exp(-s);
    const x = scale * Math.exp(s - inner);
    sum += f(x) * x * (1 + inner);
  }
  return sum * STEP;
}

// At the first place x is below 1e-17, at the last an exponential is below 1e-35.
const FIRST = -3.75;
const LAST = 4.75;
const STEP = 0.1;

/**
 * The integral between two places of a function that is smooth between them, by the double exponential rule: places
 * crowd towards both ends, so that a function may fall off steeply there.
 */
export function integralBetween(f: (x: number) => number, from: number, to: number): number {
  const half = (to - from) / 2;
  if (!(half > 0)) return 0;
  let sum = half * f(from + half) * (Math.PI / 2);
  for (let s = STEP; s <= LAST_BETWEEN; s += STEP) {
    const stretched = (Math.PI / 2) * Math.sinh(s);
    const cosh = Math.cosh(stretched);
    // How far from the end, in halves: 1 - tanh without loss of digits.
    const inwards = half / (Math.exp(stretched) * cosh);
    const weight = (half * (Math.PI / 2) * Math.cosh(s)) / cosh ** 2;
    sum += weight * (f(from + inwards) + f(to - inwards));
  }
  return sum * STEP;
}

// Beyond it the weights are below 1e-17.
const LAST_BETWEEN = 3.25;
