import { lengthDomain } from '../judging/internal.js';

/** The margin of a valve: the rim between its face and the top of its head. */
export const valveMargin = /* @__PURE__ */ lengthDomain({
  least: 0,
  most: 0.02,
  example: 'thou(31)',
});
