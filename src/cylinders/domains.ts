import { lengthDomain } from '../judging/internal.js';

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
