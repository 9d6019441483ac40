import { angleDomain, domain, lengthDomain } from '../../judging/internal.js';
import { celsius, mL, psi, psiGauge, ratio, squareMm } from '../../quantities/index.js';

/** A space above a piston that a burette fills: a chamber, or a part of one. */
export const chamberVolume = /* @__PURE__ */ domain(mL, {
  least: 1e-8,
  most: 0.05,
  orNone: true,
  example: 'mL(62.5)',
});

/** What a piston's crown fills above its flat edge: a dome; a dish is negative. */
export const crownVolume = /* @__PURE__ */ domain(mL, {
  least: -0.02,
  most: 0.02,
  example: 'mL(-4)',
});

/** A small space that is poured with a chamber and is no part of it, or how far a burette may be off. */
export const pouringError = /* @__PURE__ */ domain(mL, {
  least: 0,
  most: 5e-4,
  example: 'mL(0.4)',
});

/** A gasket as thick as it is pressed. */
export const gasketThickness = /* @__PURE__ */ lengthDomain({
  least: 5e-5,
  most: 0.02,
  example: 'inch(0.047)',
});

/** How deep a piston is set below the deck to measure its crown. */
export const depthInBore = /* @__PURE__ */ lengthDomain({
  least: 1e-4,
  most: 0.5,
  example: 'inch(0.5)',
});

/** An opening in a gasket, or the mouth of a chamber where it meets the joint. */
export const chamberMouth = /* @__PURE__ */ domain(squareMm, {
  least: 1e-5,
  most: 1,
  example: 'squareMm(9000)',
});

/** What a face may lose, or is to lose. */
export const skimmedOff = /* @__PURE__ */ lengthDomain({
  least: 0,
  most: 0.02,
  example: 'thou(30)',
});

/** How far past bottom dead centre the inlet valve closes, or the last port of a two-stroke. */
export const inletClosing = /* @__PURE__ */ angleDomain(0, 150, 'degree(45)');

/** Height of the workshop above the sea, as people live. */
export const altitudeAboveSea = /* @__PURE__ */ lengthDomain({
  least: -500,
  most: 6000,
  example: 'foot(5000)',
});

/** What a gauge shows in a compression test. */
export const compressionReading = /* @__PURE__ */ domain(psiGauge, {
  least: 0,
  most: 1e7,
  example: 'psiGauge(95)',
});

/** How far two such readings are apart, or may be, or how far one may be off. */
export const readingsApart = /* @__PURE__ */ domain(psi, {
  least: 0,
  most: 1e7,
  example: 'psi(10)',
});

/** The share of one reading in another, as a rule may ask for it. */
export const shareOfReading = /* @__PURE__ */ domain(ratio, {
  least: 0.1,
  most: 3,
  example: 'ratio(0.75)',
});

/** By what share oil has to raise a reading to say something. */
export const riseWithOil = /* @__PURE__ */ domain(ratio, {
  least: 0.01,
  most: 2,
  example: 'ratio(0.1)',
});

/** Air that a leakage tester is fed with. */
export const testAir = /* @__PURE__ */ domain(psiGauge, {
  least: 1e4,
  most: 1.5e6,
  example: 'psiGauge(80)',
});

/** What a cylinder holds of it: nothing, or what a gauge can show. */
export const heldAir = /* @__PURE__ */ domain(psiGauge, {
  least: 100,
  most: 1.5e6,
  orNone: true,
  example: 'psiGauge(70)',
});

/** Bore of a tester's orifice. */
export const orificeBore = /* @__PURE__ */ lengthDomain({
  least: 1e-4,
  most: 0.01,
  example: 'inch(0.04)',
});

/** The share of the flow through an ideal nozzle that passes an orifice. */
export const dischargeCoefficient = /* @__PURE__ */ domain(ratio, {
  least: 0.3,
  most: 1,
  example: 'ratio(0.9)',
});

/** Air in a workshop, -40 to 60 °C. */
export const workshopAir = /* @__PURE__ */ domain(celsius, {
  least: 233.15,
  most: 333.15,
  example: 'celsius(20)',
});

/** A limit on the share of the air that a cylinder loses. */
export const toleratedLeakage = /* @__PURE__ */ domain(ratio, {
  least: 0,
  most: 1,
  example: 'ratio(0.25)',
});
