import { angleDomain, domain, lengthDomain } from '../judging/internal.js';
import {
  kilonewton,
  MPa,
  newton,
  newtonMetre,
  newtonPerMm,
  ratio,
  squareMm,
} from '../quantities/index.js';

/** Diameter of a bolt, a stud or its thread: from an instrument screw to a holding-down bolt. */
export const threadDiameter = /* @__PURE__ */ lengthDomain({
  least: 0.001,
  most: 0.1,
  example: 'inch(0.375)',
});

/** From one crest of a thread to the next. */
export const threadPitch = /* @__PURE__ */ lengthDomain({
  least: 0.0002,
  most: 0.008,
  example: 'mm(1.5)',
});

/** Length of a part of a bolt, and thickness of what it clamps. */
export const gripLength = /* @__PURE__ */ lengthDomain({
  least: 0.0001,
  most: 1,
  example: 'inch(1.5)',
});

/** Diameter of the face that a nut, a bolt head or a washer bears with. */
export const bearingFace = /* @__PURE__ */ lengthDomain({
  least: 0.001,
  most: 0.25,
  example: 'inch(0.5625)',
});

/** Diameter of the hole that a bolt goes through. */
export const boltHole = /* @__PURE__ */ lengthDomain({
  least: 0.001,
  most: 0.11,
  example: 'inch(0.390)',
});

/** Area of a bolt that carries its load. */
export const boltArea = /* @__PURE__ */ domain(squareMm, {
  least: 3e-7,
  most: 0.008,
  example: 'squareInch(0.0878)',
});

/** Proof stress of a bolt, from wrought iron's to past the strongest grade's. */
export const boltProofStress = /* @__PURE__ */ domain(MPa, {
  least: 5e7,
  most: 2e9,
  example: 'psi(85000)',
});

/** Force in a bolt, up to that of the strongest. */
export const boltLoad = /* @__PURE__ */ domain(kilonewton, {
  least: 1,
  most: 5e6,
  example: 'lbf(5000)',
});

/** What pulls at a joint from outside, for each bolt; nothing, or up to what would break it. */
export const externalPull = /* @__PURE__ */ domain(newton, {
  least: 0,
  most: 5e6,
  example: 'lbf(1000)',
});

/** Load at which the parts of a joint just lie tight; nothing where they do so by themselves. */
export const snugLoad = /* @__PURE__ */ domain(newton, {
  least: 0,
  most: 5e6,
  example: 'lbf(300)',
});

/** Torque on a fastener, from an instrument screw's to a flywheel nut's. */
export const fastenerTorque = /* @__PURE__ */ domain(newtonMetre, {
  least: 0.01,
  most: 5000,
  example: 'lbfFoot(30)',
});

/** Torque that turns a locking nut before it meets its seat; none for a plain one. */
export const runningTorque = /* @__PURE__ */ domain(newtonMetre, {
  least: 0,
  most: 500,
  example: 'lbfInch(15)',
});

/** How much of its proof load a bolt is preloaded to; past the proof load it stays stretched. */
export const proofShare = /* @__PURE__ */ domain(ratio, {
  least: 0.05,
  most: 1,
  example: 'ratio(0.75)',
});

/** Nut factor: torque over preload and diameter, from the slipperiest coating to galling threads. */
export const nutFactorBounds = /* @__PURE__ */ domain(ratio, {
  least: 0.03,
  most: 0.8,
  example: 'ratio(0.2)',
});

/** Coefficient of friction in a thread or under a nut. */
export const screwFriction = /* @__PURE__ */ domain(ratio, {
  least: 0.01,
  most: 0.6,
  example: 'ratio(0.15)',
});

/** Stiffness of a bolt or of what it clamps. */
export const clampStiffness = /* @__PURE__ */ domain(newtonPerMm, {
  least: 1e5,
  most: 1e12,
  example: 'newtonPerMm(300000)',
});

/** From the middle of the grip to the middle of the square of a torque wrench. */
export const wrenchLength = /* @__PURE__ */ lengthDomain({
  least: 0.03,
  most: 3,
  example: 'inch(18)',
});

/** From the middle of the square to the middle of the fastener. */
export const adapterLength = /* @__PURE__ */ lengthDomain({
  least: 0,
  most: 1,
  example: 'inch(6)',
});

/** Between an adapter and the wrench drawn out beyond its square: straight on is 0, sideways 90°, back along it 180°. */
export const adapterAngle = /* @__PURE__ */ angleDomain(0, 180, 'degree(45)');

/** How far a nut is turned to its next slot. */
export const slotTurn = /* @__PURE__ */ angleDomain(0, 180, 'degree(20)');

/** Brinell hardness, from soft iron to what no ball takes. */
export const brinellNumber = /* @__PURE__ */ domain(ratio, {
  least: 40,
  most: 700,
  example: 'ratio(240)',
});

/** How much longer a bolt has become for good; a little shorter only by the error of reading. */
export const lastingStretch = /* @__PURE__ */ lengthDomain({
  least: -0.001,
  most: 0.02,
  example: 'thou(0.5)',
});
