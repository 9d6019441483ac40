import { angleDomain, domain, lengthDomain } from '../judging/internal.js';
import {
  celsius,
  kilogramPerCubicMetre,
  MPa,
  newton,
  percent,
  perSecond,
  ratio,
  rpm,
} from '../quantities/index.js';

/** A piece of a valve train, or of what carries it: from a lash cap to the block of a small ship's engine. */
export const trainLength = /* @__PURE__ */ lengthDomain({
  least: 0.001,
  most: 2,
  example: 'inch(4.5)',
});

/** A piece of a valve train, as warm as an exhaust valve's head gets, -50 to 1000 °C. */
export const trainTemperature = /* @__PURE__ */ domain(celsius, {
  least: 223.15,
  most: 1273.15,
  example: 'celsius(350)',
});

/** Lash of a valve; negative is how far the train holds the valve off its seat. */
export const valveLash = /* @__PURE__ */ lengthDomain({
  least: -0.005,
  most: 0.005,
  example: 'thou(8)',
});

/** Lash that a running engine is to have. */
export const wantedLash = /* @__PURE__ */ lengthDomain({
  least: 0,
  most: 0.003,
  example: 'thou(8)',
});

/** Arm of a rocker on the valve's side over the arm on the other. */
export const rockerArmRatio = /* @__PURE__ */ domain(ratio, {
  least: 0.3,
  most: 4,
  example: 'ratio(1.2)',
});

/** Angle of a seat or a face, from the plane across the stem. */
export const valveSeatAngle = /* @__PURE__ */ angleDomain(10, 60, 'degree(45)');

/** What is ground off a seat or a face. */
export const facingStock = /* @__PURE__ */ lengthDomain({
  least: 0,
  most: 0.003,
  example: 'thou(5)',
});

/** The margin of a valve: the rim between its face and the top of its head. */
export const valveMargin = /* @__PURE__ */ lengthDomain({
  least: 0,
  most: 0.02,
  example: 'thou(31)',
});

/** A seat's width along its slope. */
export const valveSeatWidth = /* @__PURE__ */ lengthDomain({
  least: 0.0001,
  most: 0.01,
  example: 'inch(0.0625)',
});

/** How far a valve's head lies below the deck; negative is how far it stands out. */
export const valveRecession = /* @__PURE__ */ lengthDomain({
  least: -0.02,
  most: 0.02,
  example: 'thou(20)',
});

/** How far a valve is off its seat. */
export const openLift = /* @__PURE__ */ lengthDomain({
  least: 0,
  most: 0.1,
  example: 'inch(0.25)',
});

/** A valve's stem, and the guide that it runs in. */
export const stemDiameter = /* @__PURE__ */ lengthDomain({
  least: 0.001,
  most: 0.05,
  example: 'inch(0.3105)',
});

/** How long a guide is, or how far past it a valve is read. */
export const guideReach = /* @__PURE__ */ lengthDomain({
  least: 0.003,
  most: 0.5,
  example: 'inch(1.75)',
});

/** How far a valve rocks at its head, from side to side. */
export const valveRock = /* @__PURE__ */ lengthDomain({
  least: 0,
  most: 0.02,
  example: 'thou(12)',
});

/** Wire of a coil spring. */
export const springWire = /* @__PURE__ */ lengthDomain({
  least: 0.0002,
  most: 0.02,
  example: 'inch(0.12)',
});

/** Diameter over the coils of a spring. */
export const coilDiameter = /* @__PURE__ */ lengthDomain({
  least: 0.001,
  most: 0.5,
  example: 'inch(1)',
});

/** How many coils a spring has. */
export const coilCount = /* @__PURE__ */ domain(ratio, {
  least: 1,
  most: 50,
  example: 'ratio(8)',
});

/** How many coils of a spring lie dead at its ends. */
export const deadCoilCount = /* @__PURE__ */ domain(ratio, {
  least: 0,
  most: 4,
  example: 'ratio(2)',
});

/** Height of a spring, free or pressed. */
export const springHeight = /* @__PURE__ */ lengthDomain({
  least: 0.002,
  most: 1,
  example: 'inch(1.75)',
});

/** Room that a spring has before its coils touch. */
export const coilBindRoom = /* @__PURE__ */ lengthDomain({
  least: 0,
  most: 0.1,
  example: 'inch(0.06)',
});

/** Force of a valve spring. */
export const springForce = /* @__PURE__ */ domain(newton, {
  least: 0.01,
  most: 50_000,
  example: 'lbf(42)',
});

/** How far a spring tester may be off. */
export const forceError = /* @__PURE__ */ domain(newton, {
  least: 0,
  most: 5000,
  example: 'lbf(1)',
});

/** Shear modulus of spring wire, from bronze's to past steel's. */
export const shearStiffness = /* @__PURE__ */ domain(MPa, {
  least: 3e10,
  most: 1.2e11,
  example: 'MPa(79300)',
});

/** Density of spring wire. */
export const wireDensity = /* @__PURE__ */ domain(kilogramPerCubicMetre, {
  least: 4000,
  most: 10_000,
  example: 'kilogramPerCubicMetre(7850)',
});

/** Lowest natural frequency of a valve spring. */
export const surgeRate = /* @__PURE__ */ domain(perSecond, {
  least: 1,
  most: 20_000,
  example: 'perSecond(350)',
});

/** Speed of a camshaft. */
export const camshaftSpeed = /* @__PURE__ */ domain(rpm, {
  least: 0.1,
  most: 2000,
  example: 'rpm(900)',
});

/** How many cycles a spring swings through in a turn of the cam. */
export const swingsInATurn = /* @__PURE__ */ domain(ratio, {
  least: 1,
  most: 1000,
  example: 'ratio(20)',
});

/** The share of its force that a spring may have lost. */
export const toleratedLoss = /* @__PURE__ */ domain(percent, {
  least: -0.5,
  most: 0.9,
  example: 'percent(10)',
});
