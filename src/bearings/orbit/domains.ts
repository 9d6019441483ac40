import { domain } from '../../judging/internal.js';
import { ratio } from '../../quantities/index.js';

/** Where a journal stands in its bearing along one direction, in clearance circles. */
export const eccentricityAlong = /* @__PURE__ */ domain(ratio, {
  least: -1,
  most: 1,
  example: 'ratio(0.6)',
});

/** Length over diameter of a big end, as far as its mobility is known. */
export const orbitLengthToDiameter = /* @__PURE__ */ domain(ratio, {
  least: 0.02,
  most: 2,
  example: 'ratio(0.5)',
});

/** How exact the film of an orbit is to be, as a share of it. */
export const orbitTolerance = /* @__PURE__ */ domain(ratio, {
  least: 1e-6,
  most: 1e-2,
  example: 'ratio(0.0001)',
});
