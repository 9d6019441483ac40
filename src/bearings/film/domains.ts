import { domain } from '../../judging/internal.js';
import {
  centipoise,
  joulePerKilogramKelvin,
  kelvinDifference,
  mLPerMinute,
  percent,
  ratio,
  watt,
} from '../../quantities/index.js';

/**
 * Oil in a film, down to a tenth of water: below that it is a kinematic viscosity that was taken for a dynamic
 * one. Above it no engine turns, and most often it is a number of centipoise without its unit.
 */
export const filmViscosity = /* @__PURE__ */ domain(centipoise, {
  least: 1e-4,
  most: 20,
  example: 'centipoise(12)',
});

/** Power that the friction of a bearing takes: none, or up to ten megawatts. */
export const frictionPower = /* @__PURE__ */ domain(watt, {
  least: 0,
  most: 1e7,
  example: 'watt(50)',
});

/** Oil that a journal draws through its widest gap. */
export const drawnOil = /* @__PURE__ */ domain(mLPerMinute, {
  least: 1e-12,
  most: 10,
  example: 'mLPerMinute(200)',
});

/** Specific heat of oils and fuels. */
export const oilSpecificHeat = /* @__PURE__ */ domain(joulePerKilogramKelvin, {
  least: 500,
  most: 10_000,
  example: 'joulePerKilogramKelvin(2000)',
});

/** The share of the heat that the oil carries away. */
export const heatShare = /* @__PURE__ */ domain(percent, {
  least: 0,
  most: 1,
  example: 'percent(80)',
});

/** Eccentricities for which the film is computed. */
export const eccentricityRatio = /* @__PURE__ */ domain(ratio, {
  least: 0.01,
  most: 0.998,
  example: 'ratio(0.6)',
});

/** Length over diameter of a bearing for which the film is computed; longer ones are as good as infinite. */
export const filmLengthToDiameter = /* @__PURE__ */ domain(ratio, {
  least: 0.1,
  most: 1e6,
  example: 'ratio(0.5)',
});

/** Length over diameter of a bearing that is reckoned as a short one, to far beyond what is short. */
export const shortLengthToDiameter = /* @__PURE__ */ domain(ratio, {
  least: 0.01,
  most: 100,
  example: 'ratio(0.5)',
});

/** Sommerfeld numbers, far past both ends of the film map. */
export const sommerfeldRatio = /* @__PURE__ */ domain(ratio, {
  least: 1e-9,
  most: 1e9,
  example: 'ratio(0.1)',
});

/** How far an inlet temperature is in doubt, either way. */
export const inletDoubt = /* @__PURE__ */ domain(kelvinDifference, {
  least: 0,
  most: 50,
  example: 'kelvinDifference(10)',
});

/** By what share a size of a bearing or its load is in doubt. */
export const shareInDoubt = /* @__PURE__ */ domain(percent, {
  least: 0,
  most: 2,
  example: 'percent(20)',
});

/** A film over the combined roughness of its surfaces. */
export const filmToRoughness = /* @__PURE__ */ domain(ratio, {
  least: 0.1,
  most: 1000,
  example: 'ratio(3)',
});
