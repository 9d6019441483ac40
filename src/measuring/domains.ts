import { angleDomain, domain, lengthDomain } from '../judging/internal.js';
import { celsius, celsiusDifference, MPa, ppmPerKelvin, ratio } from '../quantities/index.js';

/** Mean linear expansion of a solid: from invar's to past that of any metal that engines are made of. */
export const linearExpansion = /* @__PURE__ */ domain(ppmPerKelvin, {
  least: 0,
  most: 4e-5,
  example: 'ppmPerKelvin(11.5)',
});

/** Modulus of elasticity of what engines are made of, from white metal's to past steel's. */
export const elasticModulus = /* @__PURE__ */ domain(MPa, {
  least: 1e10,
  most: 4e11,
  example: 'MPa(207000)',
});

/** A part of an engine or an instrument, -50 to 300 °C. */
export const partTemperature = /* @__PURE__ */ domain(celsius, {
  least: 223.15,
  most: 573.15,
  example: 'celsius(80)',
});

/** An end of the temperatures that a coefficient is the mean over, as far as those of valve steels go. */
export const meanOver = /* @__PURE__ */ domain(celsius, {
  least: 223.15,
  most: 1273.15,
  example: 'celsius(100)',
});

/** The division of a scale, or the last digit of a display. */
export const scaleDivision = /* @__PURE__ */ lengthDomain({
  least: 1e-8,
  most: 0.001,
  example: 'inch(0.0001)',
});

/** How far an instrument may be off, or a blade from its mark: nothing or more. */
export const instrumentError = /* @__PURE__ */ lengthDomain({
  least: 0,
  most: 0.001,
  example: 'inch(0.0001)',
});

/** The uncertainty that a person states of readings. None is without one. */
export const statedUncertainty = /* @__PURE__ */ lengthDomain({
  least: 1e-8,
  most: 0.001,
  example: 'inch(0.0001)',
});

/** What an instrument shows: a size, a gap, or a dial to either side of its zero. */
export const shownLength = /* @__PURE__ */ lengthDomain({
  least: -0.01,
  most: 1,
  example: 'inch(2.1248)',
});

/** How far two temperatures are apart in a workshop. */
export const temperaturesApart = /* @__PURE__ */ domain(celsiusDifference, {
  least: 0,
  most: 60,
  example: 'celsiusDifference(2)',
});

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
