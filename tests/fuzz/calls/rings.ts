import {
  celsius,
  coldPistonClearance,
  hotPistonClearance,
  leastColdRingGap,
  MPa,
  meanExpansion,
  mm,
  type PinInBore,
  pinFit,
  pinReamSize,
  ringBackClearance,
  ringGapHot,
  ringLeakArea,
  ringSideClearance,
  ringTension,
} from 'crankwright';
import { calls, refused } from './calls.js';

const iron = meanExpansion('grey iron');
const alloy = meanExpansion('cast piston alloy');
const between = (min: number, max: number) => ({ min: celsius(min), max: celsius(max) });
const reversed = { min: celsius(180), max: celsius(140) };
const reversedMean = { ...iron, from: celsius(100), to: celsius(20) };

const warmBore = { expansion: iron, temperature: between(60, 120) };
const warmPiston = { expansion: alloy, temperature: between(140, 180) };
const warmRing = { expansion: iron, temperature: celsius(180) };

const toFit = { bore: mm(80), hotClearance: mm(0.03), warmBore, warmPiston };
const toWarm = {
  bore: { min: mm(80), max: mm(80.02) },
  piston: mm(79.7),
  warmBore,
  warmPiston,
  limits: { min: mm(0.02) },
};
const hotRing = { gap: mm(0.4), measuredIn: mm(80), warmBore, warmRing, limits: { max: mm(0.5) } };
const toGap = { bore: mm(80), hotGap: mm(0.05), warmBore, warmRing };

const side = { grooveWidths: [mm(2.05), mm(2.09)], ringWidths: [mm(1.99)], limits: { max: mm(1) } };
const back = {
  bore: mm(80),
  radialThickness: { min: mm(3.2), max: mm(3.3) },
  land: mm(79.5),
  depth: mm(3.6),
  pistonClearance: mm(0.1),
  limits: { min: mm(0.3) },
};
const springing = {
  bore: mm(80),
  freeGap: mm(10.3),
  closedGap: mm(0.3),
  radialThickness: mm(3.3),
  width: mm(2),
  elasticity: { min: MPa(80_000), max: MPa(110_000) },
  spreadGap: mm(28),
};
const leaking = { gap: mm(0.3), landClearance: { min: mm(0.3), max: mm(0.5) } };

const pin: PinInBore = {
  joint: 'floating',
  pin: { min: mm(19.995), max: mm(20) },
  bore: mm(20.002),
  measuredAt: celsius(18),
  warmPin: { expansion: meanExpansion('steel'), temperature: celsius(120) },
  warmBore: warmPiston,
  limits: { max: mm(0.01) },
  warmLimits: { limits: { min: mm(0.005) } },
};
const toReam = { pin: mm(20), clearance: { min: mm(0.005), max: mm(0.015) }, bore: mm(19.9) };
const backwards = { min: mm(20.01), max: mm(20) };

export const ringCalls = {
  coldPistonClearance: calls(coldPistonClearance, {
    sound: [[toFit]],
    provoked: {
      'a span is reversed': refused('warmPiston.temperature', {
        ...toFit,
        warmPiston: { expansion: alloy, temperature: reversed },
      }),
      'the range of a mean is reversed': refused('warmBore.expansion', {
        ...toFit,
        warmBore: { ...warmBore, expansion: reversedMean },
      }),
    },
  }),
  hotPistonClearance: calls(hotPistonClearance, {
    sound: [[toWarm]],
    provoked: {
      'a span is reversed': refused('bore', {
        ...toWarm,
        bore: { min: mm(80.02), max: mm(80) },
      }),
      'the range of a mean is reversed': refused('warmBore.expansion', {
        ...toWarm,
        warmBore: { ...warmBore, expansion: reversedMean },
      }),
      'limits have no bound': refused('fit.limits', { ...toWarm, limits: {} }),
    },
  }),
  ringGapHot: calls(ringGapHot, {
    sound: [[hotRing]],
    provoked: {
      'a span is reversed': refused('warmRing.temperature', {
        ...hotRing,
        warmRing: { expansion: iron, temperature: reversed },
      }),
      'the range of a mean is reversed': refused('warmRing.expansion', {
        ...hotRing,
        warmRing: { ...warmRing, expansion: reversedMean },
      }),
      'limits have no bound': refused('ring.limits', { ...hotRing, limits: {} }),
    },
  }),
  leastColdRingGap: calls(leastColdRingGap, {
    sound: [[toGap]],
    provoked: {
      'a span is reversed': refused('warmBore.temperature', {
        ...toGap,
        warmBore: { expansion: iron, temperature: reversed },
      }),
      'the range of a mean is reversed': refused('warmRing.expansion', {
        ...toGap,
        warmRing: { ...warmRing, expansion: reversedMean },
      }),
    },
  }),
  ringSideClearance: calls(ringSideClearance, {
    sound: [[side]],
    provoked: {
      'a list is empty': refused('grooveWidths', { ...side, grooveWidths: [] }),
      'limits have no bound': refused('ring.limits', { ...side, limits: {} }),
    },
  }),
  ringBackClearance: calls(ringBackClearance, {
    sound: [[back]],
    provoked: {
      'a span is reversed': refused('radialThickness', {
        ...back,
        radialThickness: { min: mm(3.3), max: mm(3.2) },
      }),
      'limits have no bound': refused('ring.limits', { ...back, limits: {} }),
      'the root is given twice': refused('root', { ...back, root: mm(72) }),
      'not at all': refused('root', { bore: mm(80), radialThickness: mm(3.3) }),
    },
  }),
  ringTension: calls(ringTension, {
    sound: [[springing]],
    provoked: {
      'a span is reversed': refused('elasticity', {
        ...springing,
        elasticity: { min: MPa(110_000), max: MPa(80_000) },
      }),
    },
  }),
  ringLeakArea: calls(ringLeakArea, {
    sound: [[{ rings: [leaking, leaking] }]],
    provoked: {
      'a span is reversed': refused('rings[0].gap', {
        rings: [{ ...leaking, gap: { min: mm(0.4), max: mm(0.3) } }],
      }),
      'there is no ring': refused('rings', { rings: [] }),
    },
  }),
  pinFit: calls(pinFit, {
    sound: [
      [pin],
      [{ joint: 'press', bore: mm(20) }],
      [{ ...pin, joint: 'bushing', bushingWall: mm(2), warmBushing: warmRing }],
    ],
    provoked: {
      'a span is reversed': refused('pin', { ...pin, pin: backwards }),
      'the range of a mean is reversed': refused('warmBore.expansion', {
        ...pin,
        warmBore: { ...warmBore, expansion: reversedMean },
      }),
      'limits have no bound': refused('warmLimits.limits', { ...pin, warmLimits: { limits: {} } }),
      'the joint is unknown': refused('joint', { ...pin, joint: 'clamped' }),
    },
  }),
  pinReamSize: calls(pinReamSize, {
    sound: [[toReam]],
    provoked: {
      'a span is reversed': refused('pin', { ...toReam, pin: backwards }),
      'the bore was never of the pin': refused('bore', { ...toReam, bore: mm(30) }),
    },
  }),
};
