import { angleDomain, domain, lengthDomain } from '../judging/internal.js';
import { perMinute, rpm } from '../quantities/index.js';

/** The wall of a cylinder. */
export const cylinderWall = /* @__PURE__ */ lengthDomain({
  least: 0.0005,
  most: 0.05,
  example: 'inch(0.2)',
});

/** How far a bore may be worn out of its shape and still be let pass: more than a journal. */
export const toleratedBoreWear = /* @__PURE__ */ lengthDomain({
  least: 0,
  most: 0.0004,
  example: 'thou(3)',
});

/** Gap of a ring squared in its bore: from ends that touch to a worn ring's of a small ship. */
export const ringGap = /* @__PURE__ */ lengthDomain({ least: 0, most: 0.02, example: 'thou(12)' });

/** How often a hone goes down and up again. */
export const honeStrokeRate = /* @__PURE__ */ domain(perMinute, {
  least: 0.01,
  most: 50,
  example: 'perMinute(60)',
});

/** How fast a hone turns: from by hand to far beyond what is safe in a drill. */
export const honeSpeed = /* @__PURE__ */ domain(rpm, {
  least: 0.1,
  most: 400,
  example: 'rpm(200)',
});

/** The angle between the two sets of scratches that a hone leaves. */
export const includedAngle = /* @__PURE__ */ angleDomain(1, 170, 'degree(45)');

/** Roughness of a surface by any of its measures: from polished to rough turned. */
export const roughness = /* @__PURE__ */ lengthDomain({
  least: 1e-9,
  most: 1e-3,
  example: 'micrometre(0.4)',
});

/** The least clearance that is wanted of a piston in its warm bore, or gap of a warm ring: none at all or more. */
export const wantedRoom = /* @__PURE__ */ lengthDomain({
  least: 0,
  most: 0.01,
  example: 'thou(2)',
});

/** Axial width of a ring or of its groove. */
export const ringWidth = /* @__PURE__ */ lengthDomain({
  least: 0.0003,
  most: 0.03,
  example: 'inch(0.0935)',
});

/** Radial thickness of a ring, and depth of its groove. */
export const ringThickness = /* @__PURE__ */ lengthDomain({
  least: 0.0003,
  most: 0.05,
  example: 'inch(0.125)',
});

/** Room of a ring in its groove; negative, it has none. */
export const ringRoom = /* @__PURE__ */ lengthDomain({
  least: -0.005,
  most: 0.02,
  example: 'thou(2)',
});

/** Gap of a ring that is free, or spread to go over its piston. */
export const openRingGap = /* @__PURE__ */ lengthDomain({
  least: 0.0001,
  most: 0.6,
  example: 'inch(0.375)',
});

/** Diametral clearance of a land of the piston in its bore. */
export const landClearance = /* @__PURE__ */ lengthDomain({
  least: 0,
  most: 0.01,
  example: 'thou(20)',
});

/** Wall of a bushing for a piston pin; none where the pin runs in the rod itself. */
export const bushingWall = /* @__PURE__ */ lengthDomain({
  least: 0,
  most: 0.02,
  example: 'inch(0.0625)',
});
