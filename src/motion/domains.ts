import { angleDomain, domain, lengthDomain } from '../judging/internal.js';
import { kilogram, kilonewton, kPa, kPaGauge, newton, ratio, rpm } from '../quantities/index.js';

/** A rod from the centre of one eye to that of the other. */
export const rodCentres = /* @__PURE__ */ lengthDomain({
  least: 0.005,
  most: 10,
  example: 'inch(6)',
});

/** A shaft that stands still, or turns once in ten minutes to 47 000 times in one, as a model engine's may. */
export const crankSpeed = /* @__PURE__ */ domain(rpm, {
  least: 0.01,
  most: 5000,
  orNone: true,
  example: 'rpm(1800)',
});

/** A force on a bearing, whatever its direction: none, or up to a small ship's ten thousand tonnes. */
export const bearingLoad = /* @__PURE__ */ domain(newton, {
  least: 1e-6,
  most: 1e8,
  orNone: true,
  example: 'lbf(500)',
});

/** A part of such a force along one direction. */
export const pinForce = /* @__PURE__ */ domain(kilonewton, {
  least: -1e8,
  most: 1e8,
  example: 'kilonewton(12)',
});

/** Pistons and halves of rods; nothing where it is to be left out. */
export const movingMass = /* @__PURE__ */ domain(kilogram, {
  least: 0,
  most: 2000,
  example: 'kilogram(0.45)',
});

/** Absolute pressures, from a deep vacuum to more than any cylinder holds. */
export const gasPressure = /* @__PURE__ */ domain(kPa, {
  least: 1000,
  most: 5e7,
  example: 'kPa(95)',
});

/** The same above the air around. */
export const gasGauge = /* @__PURE__ */ domain(kPaGauge, {
  least: -1.1e5,
  most: 5e7,
  example: 'kPaGauge(3000)',
});

/** Pressure of the air around, from a very high mountain to the lowest shore. */
export const airPressure = /* @__PURE__ */ domain(kPa, {
  least: 10_000,
  most: 1.1e5,
  example: 'kPa(101)',
});

/** A polytropic exponent. */
export const polytropicExponent = /* @__PURE__ */ domain(ratio, {
  least: 1,
  most: 1.7,
  example: 'ratio(1.32)',
});

/** Volume at the bottom of the stroke over that at the top. */
export const geometricCompression = /* @__PURE__ */ domain(ratio, {
  least: 2,
  most: 30,
  example: 'ratio(6)',
});

/** How far before top dead centre the pressure begins to rise above compression. */
export const ignitionAdvance = /* @__PURE__ */ angleDomain(0, 60, 'degree(20)');

/** How far past top dead centre the pressure is greatest. */
export const peakPastTop = /* @__PURE__ */ angleDomain(1, 60, 'degree(15)');

/** How far past top dead centre the exhaust valve opens. */
export const exhaustOpening = /* @__PURE__ */ angleDomain(90, 175, 'degree(140)');

/** How far the crank turns while both valves stand open. */
export const overlapOfValves = /* @__PURE__ */ angleDomain(2, 180, 'degree(20)');

/** How far a rod leans from the axis of its cylinder. */
export const rodLean = /* @__PURE__ */ angleDomain(-60, 60, 'degree(15)');

/** A place in the cycle: from the firing top dead centre to just before the next, 720 degrees on. */
export const cycleAngle = /* @__PURE__ */ angleDomain(0, 719.999999999, 'degree(90)');

/** From the centre of the crankshaft to the deck, or to the floor of an oil trough. */
export const heightFromCrank = /* @__PURE__ */ lengthDomain({
  least: 0.005,
  most: 15,
  example: 'inch(9.5)',
});

/** From the centre of a piston's pin to the flat edge of its crown. */
export const pinHeight = /* @__PURE__ */ lengthDomain({
  least: 0.001,
  most: 2,
  example: 'inch(1.56)',
});

/** How far a piston stops below the deck; negative is above it. */
export const deckClearance = /* @__PURE__ */ lengthDomain({
  least: -0.05,
  most: 0.1,
  example: 'thou(15)',
});

/** From the centre of a big end to the tip of its dipper. */
export const dipperLength = /* @__PURE__ */ lengthDomain({
  least: 0.003,
  most: 1,
  example: 'inch(1.75)',
});

/** Oil in a trough, above its floor: none, or as deep as it may be. */
export const oilDepth = /* @__PURE__ */ lengthDomain({
  least: 0,
  most: 1,
  example: 'inch(0.5)',
});

/** What may lie between a dipper and the oil or the floor; negative is past it. */
export const dipperRoom = /* @__PURE__ */ lengthDomain({
  least: -2,
  most: 15,
  example: 'inch(0.125)',
});

/** How far one throw of a crankshaft is made to stand past another. */
export const phaseOfThrows = /* @__PURE__ */ angleDomain(0, 360, 'degree(180)');

/** How far a reading of a crank's angle may be off, or its throws from where they are meant to stand. */
export const phaseError = /* @__PURE__ */ angleDomain(0, 30, 'degree(0.5)');

/** How far a height that was read may be off. */
export const heightError = /* @__PURE__ */ lengthDomain({
  least: 0,
  most: 0.001,
  example: 'thou(0.5)',
});
