import { lengthDomain } from '../judging/internal.js';

/** Strokes, from a model engine's to a small ship's. */
export const pistonStroke = /* @__PURE__ */ lengthDomain({
  least: 0.005,
  most: 2,
  example: 'inch(3.25)',
});

/** A rod from the centre of one eye to that of the other. */
export const rodCentres = /* @__PURE__ */ lengthDomain({
  least: 0.005,
  most: 10,
  example: 'inch(6)',
});
