import { lengthDomain } from '../judging/internal.js';

/** The wall of a cylinder. */
export const cylinderWall = /* @__PURE__ */ lengthDomain({
  least: 0.0005,
  most: 0.05,
  example: 'inch(0.2)',
});

/** Gap of a ring squared in its bore: from ends that touch to a worn ring's of a small ship. */
export const ringGap = /* @__PURE__ */ lengthDomain({ least: 0, most: 0.02, example: 'thou(12)' });
