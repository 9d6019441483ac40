import { angleDomain, lengthDomain } from './domain.js';

/** Journals, bores and pistons: anything from a model engine to a small ship's. */
export const diameter = /* @__PURE__ */ lengthDomain({
  least: 0.003,
  most: 1,
  example: 'inch(2.1248)',
});

/** The clearance of two parts of which one goes into the other; an interference is negative. */
export const diametralClearance = /* @__PURE__ */ lengthDomain({
  least: -0.01,
  most: 0.01,
  example: 'thou(2)',
});

/** How far a part is from round, straight, flat or true, as it was measured: nothing or more. */
export const outOfTrue = /* @__PURE__ */ lengthDomain({
  least: 0,
  most: 0.01,
  example: 'thou(0.5)',
});

/** How far a journal is ground below standard, or a bore bored above it, to far beyond what is made. */
export const sizeStep = /* @__PURE__ */ lengthDomain({
  least: 0,
  most: 0.003,
  example: 'thou(20)',
});

/** Stock left to machine. */
export const machiningStock = /* @__PURE__ */ lengthDomain({
  least: 0,
  most: 0.0005,
  example: 'thou(1)',
});

/** How far a part may be from its size or its shape and still be let pass. */
export const toleratedWear = /* @__PURE__ */ lengthDomain({
  least: 0,
  most: 0.0002,
  example: 'thou(0.5)',
});

/** Strokes, from a model engine's to a small ship's. */
export const pistonStroke = /* @__PURE__ */ lengthDomain({
  least: 0.005,
  most: 2,
  example: 'inch(3.25)',
});

/** A place along a part, from a datum of the caller's own. */
export const stationAlong = /* @__PURE__ */ lengthDomain({
  least: -2,
  most: 2,
  example: 'inch(1.5)',
});

/** A place around a part or a turn of the crank, up to two turns either way. */
export const angleAround = /* @__PURE__ */ angleDomain(-720, 720, 'degree(90)');
