import { domain, lengthDomain } from '../judging/internal.js';
import { celsius, MPa, ratio } from '../quantities/index.js';

/** The bore through a shaft that is pressed into a hub, or through a bushing; none is a solid shaft. */
export const boreThrough = /* @__PURE__ */ lengthDomain({ least: 0, most: 1, example: 'mm(12)' });

/** By how much a shaft is larger than its hole before they are pressed together; a clearance is negative. */
export const interference = /* @__PURE__ */ lengthDomain({
  least: -0.01,
  most: 0.01,
  example: 'thou(1.5)',
});

/** How far two parts are pressed into each other along their axis. */
export const engagement = /* @__PURE__ */ lengthDomain({
  least: 0.001,
  most: 2,
  example: 'mm(25)',
});

/** The diametral gap wanted while a hot hub is put over its shaft. */
export const handlingRoom = /* @__PURE__ */ lengthDomain({
  least: 0,
  most: 0.002,
  example: 'thou(2)',
});

/** Friction of two surfaces pressed together. */
export const frictionInFit = /* @__PURE__ */ domain(ratio, {
  least: 0.005,
  most: 1,
  example: 'ratio(0.12)',
});

/** By how much a metal narrows where it is stretched. */
export const poissonRatio = /* @__PURE__ */ domain(ratio, {
  least: 0,
  most: 0.5,
  example: 'ratio(0.29)',
});

/** Stress at which a metal yields or breaks: from white metal's to past that of the hardest steel. */
export const strengthOfMetal = /* @__PURE__ */ domain(MPa, {
  least: 1e6,
  most: 4e9,
  example: 'MPa(350)',
});

/** How hot a hub or how cold a shaft is made to go together: from liquid nitrogen to a dull red. */
export const fittingTemperature = /* @__PURE__ */ domain(celsius, {
  least: 73.15,
  most: 773.15,
  example: 'celsius(150)',
});
