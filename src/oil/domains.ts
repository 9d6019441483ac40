import { lengthDomain } from '../judging/internal.js';

/** How far the oil in a sump has risen or fallen. */
export const levelRise = /* @__PURE__ */ lengthDomain({ least: -0.5, most: 0.5, example: 'mm(3)' });
