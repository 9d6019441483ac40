import { lengthDomain } from '../judging/internal.js';

/** How far a reading may be from the size: from a comparator's error to a folding rule's. */
export const readingError = /* @__PURE__ */ lengthDomain({
  least: 1e-8,
  most: 0.001,
  example: 'thou(0.1)',
});
