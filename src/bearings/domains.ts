import { lengthDomain } from '../judging/internal.js';

/** A half shell's wall: from foil to a heavy cast shell. */
export const shellWall = /* @__PURE__ */ lengthDomain({
  least: 0.0002,
  most: 0.02,
  example: 'inch(0.062)',
});

/** Diameter of a gauging thread before it is crushed. */
export const gaugingThread = /* @__PURE__ */ lengthDomain({
  least: 1e-5,
  most: 0.003,
  example: 'mm(0.18)',
});

/** Width of the stripe that a gauging thread is crushed to. */
export const flattenedStripe = /* @__PURE__ */ lengthDomain({
  least: 1e-5,
  most: 0.05,
  example: 'mm(0.5)',
});

/** The least distance that oil keeps two surfaces apart by: none, or up to what the widest clearance leaves. */
export const oilFilm = /* @__PURE__ */ lengthDomain({
  least: 0,
  most: 0.01,
  example: 'micrometre(5)',
});

/** Root mean square roughness of a journal or a shell: from polished to a file's. */
export const surfaceRoughness = /* @__PURE__ */ lengthDomain({
  least: 1e-9,
  most: 1e-4,
  example: 'micrometre(0.4)',
});

/** How far a half shell stands proud of the joint: nothing or more. */
export const crushHeight = /* @__PURE__ */ lengthDomain({
  least: 0,
  most: 0.0005,
  example: 'thou(1)',
});
