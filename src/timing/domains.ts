import { angleDomain, domain, lengthDomain } from '../judging/internal.js';
import { percent, ratio } from '../quantities/index.js';

/** A rim that marks are made on: a pulley of a model engine to the flywheel of a small ship's. */
export const rimDiameter = /* @__PURE__ */ lengthDomain({
  least: 0.01,
  most: 5,
  example: 'inch(10)',
});

/** A distance between two marks on a rim. */
export const rimMark = /* @__PURE__ */ lengthDomain({
  least: 0,
  most: 8,
  example: 'inch(1.5)',
});

/** How far the crank is from a dead centre, up to half a turn. */
export const turnFromCentre = /* @__PURE__ */ angleDomain(0, 180, 'degree(20)');

/** How far a piston is below top dead centre. */
export const pistonDepth = /* @__PURE__ */ lengthDomain({
  least: 0,
  most: 2,
  example: 'inch(0.1)',
});

/** What a degree wheel reads at its pointer, marked around or both ways from 0. */
export const wheelReading = /* @__PURE__ */ angleDomain(-360, 360, 'degree(348)');

/** How far a reading of an angle may be off. */
export const angleWithin = /* @__PURE__ */ angleDomain(0, 15, 'degree(1)');

/** How far before top dead centre the spark comes; negative is after it. */
export const sparkAdvance = /* @__PURE__ */ angleDomain(-30, 60, 'degree(20)');

/** How far an impulse coupling or a lever holds the spark back. */
export const sparkLag = /* @__PURE__ */ angleDomain(0, 90, 'degree(15)');

/** Turns of a magneto, a timer or a breaker cam for one turn of the crank. */
export const breakerSpeedRatio = /* @__PURE__ */ domain(ratio, {
  least: 0.25,
  most: 4,
  example: 'ratio(0.5)',
});

/** The turn of a breaker cam for which its points stay closed. */
export const pointsAngle = /* @__PURE__ */ angleDomain(1, 355, 'degree(45)');

/** The share of the time for which points stay closed. */
export const pointsShare = /* @__PURE__ */ domain(percent, {
  least: 0.01,
  most: 0.99,
  example: 'percent(60)',
});

/** The armature or magnet that turns between the pole shoes of a magneto. */
export const magnetoRotor = /* @__PURE__ */ lengthDomain({
  least: 0.005,
  most: 0.5,
  example: 'mm(45)',
});

/** How far the trailing edge of such a rotor is past the pole shoe, straight across. */
export const rotorEdge = /* @__PURE__ */ lengthDomain({
  least: 0,
  most: 0.1,
  example: 'mm(3)',
});

/** Gap of the points, wide open. */
export const pointsGap = /* @__PURE__ */ lengthDomain({
  least: 5e-5,
  most: 0.002,
  example: 'thou(15)',
});

/** Gap of a spark plug. */
export const plugGap = /* @__PURE__ */ lengthDomain({
  least: 1e-4,
  most: 0.003,
  example: 'thou(25)',
});
