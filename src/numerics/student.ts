import { halfLine } from './double-exponential.js';
import { newtonFromBeyond } from './roots.js';

/**
 * The chance that Student's t lies above a value. With x = √ν · sinh(y / √ν) the density of t becomes
 * that of y, cosh(y / √ν)^-ν but for a factor, which falls off smoothly for every ν, and is the
 * normal one where ν is infinite. The tail keeps its digits, however small it is.
 *
 * @param t - the value
 * @param degrees - degrees of freedom ν, 1 or more; infinite for the normal distribution
 */
export function studentTail(t: number, degrees: number): number {
  if (t < 0) return 1 - studentTail(-t, degrees);
  if (t === Infinity) return 0;
  const y = stretched(t, degrees);
  return Math.exp(logTail(y, degrees));
}

/** The chance that Student's t lies at a value or below it. */
export const studentDistribution = (t: number, degrees: number): number => studentTail(-t, degrees);

/**
 * The value that Student's t lies above with a chance of `tail`, which is more than 0 and less than 1.
 * The logarithm of the tail falls ever faster as y grows, so that Newton's method cannot miss.
 */
export function studentQuantileOfTail(tail: number, degrees: number): number {
  if (tail > 0.5) return 0 - studentQuantileOfTail(1 - tail, degrees);
  const wanted = Math.log(tail);
  const step = (y: number) => (wanted - logTail(y, degrees)) * areaBeyond(y, degrees);
  const beyond = 0 - step(0);
  const y = newtonFromBeyond(step, beyond, 1e-9);
  return degrees === Infinity ? y : Math.sqrt(degrees) * Math.sinh(y / Math.sqrt(degrees));
}

/** The chance that a standard normal value lies above x. */
export const normalTail = (x: number): number => studentTail(x, Infinity);

/** The chance that a standard normal value lies at x or below it. */
export const normalDistribution = (x: number): number => normalTail(-x);

/** The value that a standard normal one lies above with a chance of `tail`. */
export const normalQuantileOfTail = (tail: number): number => studentQuantileOfTail(tail, Infinity);

function stretched(t: number, degrees: number): number {
  return degrees === Infinity ? t : Math.sqrt(degrees) * Math.asinh(t / Math.sqrt(degrees));
}

/** Logarithm of the chance above y, which is not negative. */
function logTail(y: number, degrees: number): number {
  const whole = degrees === Infinity ? Math.sqrt(2 * Math.PI) : 2 * areaBeyond(0, degrees);
  return logFall(0, y, degrees) + Math.log(areaBeyond(y, degrees) / whole);
}

/** The area under the density above y, over the density at y. */
function areaBeyond(y: number, degrees: number): number {
  const slope = degrees === Infinity ? y : Math.sqrt(degrees) * Math.tanh(y / Math.sqrt(degrees));
  return halfLine((v) => Math.exp(logFall(y, v, degrees)), 1 / (1 + slope));
}

/** Logarithm of the density at y + v over that at y: cosh (a + b) is cosh a · cosh b · (1 + tanh a · tanh b). */
function logFall(y: number, v: number, degrees: number): number {
  if (degrees === Infinity) return -v * (y + v / 2);
  const root = Math.sqrt(degrees);
  return -degrees * (logCosh(v / root) + Math.log1p(Math.tanh(y / root) * Math.tanh(v / root)));
}

/** Without overflow where x is large, and without losing digits where it is small. */
function logCosh(x: number): number {
  return x > 1 ? x - Math.LN2 + Math.log1p(Math.exp(-2 * x)) : Math.log1p(Math.sinh(x) ** 2) / 2;
}
