import { angleDomain, domain, lengthDomain } from '../judging/internal.js';
import { ratio } from '../quantities/index.js';

/** What a dial shows, either side of the zero it was set to. */
export const dialReading = /* @__PURE__ */ lengthDomain({
  least: -0.01,
  most: 0.01,
  example: 'thou(6)',
});

/** A coordinate of a point of a part, from a datum that may lie far away. */
export const coordinate = /* @__PURE__ */ lengthDomain({
  least: -10_000,
  most: 10_000,
  example: 'mm(25)',
});

/** Radius of a round part. */
export const partRadius = /* @__PURE__ */ lengthDomain({
  least: 0.0015,
  most: 0.5,
  example: 'inch(1.0624)',
});

/** How many undulations go round a part. */
export const lobeCount = /* @__PURE__ */ domain(ratio, {
  least: 1,
  most: 500,
  example: 'ratio(3)',
});

/** Angle between the two faces of a V-block; at 180° they are one flat plate. */
export const vBlockAngle = /* @__PURE__ */ angleDomain(10, 180, 'degree(90)');
