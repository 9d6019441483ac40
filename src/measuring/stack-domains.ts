import { domain, lengthDomain } from '../judging/internal.js';
import { ratio } from '../quantities/index.js';

/** A size in a stack, or a place that it reaches, on either side of a datum. */
export const stackedSize = /* @__PURE__ */ lengthDomain({
  least: -10,
  most: 10,
  example: 'inch(1.5)',
});

/** How far a size may be off, either way. */
export const sizeTolerance = /* @__PURE__ */ lengthDomain({
  least: 0,
  most: 1,
  example: 'thou(0.5)',
});

/** By how much a stack grows for one of its sizes: 1 or -1 for most, -2 for the walls of two shells. */
export const stackSensitivity = /* @__PURE__ */ domain(ratio, {
  least: -1000,
  most: 1000,
  example: 'ratio(-2)',
});

/** How many standard deviations lie between the middle of a span and its ends. */
export const sigmaCoverage = /* @__PURE__ */ domain(ratio, {
  least: 0.5,
  most: 20,
  example: 'ratio(3)',
});

/** The share of all that lies below a quantile. */
export const shareBelow = /* @__PURE__ */ domain(ratio, {
  least: 0,
  most: 1,
  example: 'ratio(0.95)',
});

/** What a place leaves for a part, or what the part takes of it: from a thin shell to a large bore. */
export const fittedSize = /* @__PURE__ */ lengthDomain({
  least: 0.0001,
  most: 1,
  example: 'inch(3.0015)',
});
