import { lengthDomain } from '../judging/internal.js';

/** What end play may be limited to. */
export const endPlayLimit = /* @__PURE__ */ lengthDomain({
  least: 0,
  most: 0.003,
  example: 'thou(10)',
});

/** One shim or thrust washer. */
export const shimThickness = /* @__PURE__ */ lengthDomain({
  least: 1e-5,
  most: 0.02,
  example: 'thou(94)',
});

/** What shims are together: nothing, or up to a tall pack. */
export const shimPack = /* @__PURE__ */ lengthDomain({ least: 0, most: 0.1, example: 'thou(8)' });

/** Width between the two faces that take the thrust of a crankshaft. */
export const thrustFaceWidth = /* @__PURE__ */ lengthDomain({
  least: 0.003,
  most: 1,
  example: 'inch(1.25)',
});

/** End play as it was measured, from none to a washer that is gone. */
export const measuredEndPlay = /* @__PURE__ */ lengthDomain({
  least: 0,
  most: 0.01,
  example: 'thou(8)',
});
