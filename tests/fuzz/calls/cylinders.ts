import {
  type BoreRequest,
  borePlan,
  describeBorePlan,
  inch,
  mm,
  oversizeSteps,
  pistonClearance,
  pistonClearanceSpan,
  recommendedRingGap,
  ringFilingNeeded,
  ringGapAlongBore,
  ringGapIn,
  thou,
} from 'crankwright';
import { calls, refused } from './calls.js';

const ring = { gap: thou(12), measuredIn: inch(3) };
const stations = [
  { station: inch(0.5), mean: inch(3.008) },
  { station: inch(3), mean: inch(3) },
];
const own = { limits: { min: thou(9), max: thou(12) }, basis: { kind: 'specified' as const } };
const spans = {
  bore: { min: mm(87.2), max: mm(87.25) },
  piston: { min: mm(87.165), max: mm(87.215) },
};

const block: BoreRequest = {
  cylinders: [
    {
      name: 'cylinder 1',
      smallest: inch(3.0002),
      largest: inch(3.0012),
      outOfRound: thou(0.4),
      taper: thou(0.8),
      wall: inch(0.2),
    },
    {
      name: 'cylinder 2',
      smallest: inch(3.0009),
      largest: inch(3.0081),
      outOfRound: thou(1.9),
      taper: thou(6.9),
    },
  ],
  standard: { min: inch(3), max: inch(3.0005) },
  steps: oversizeSteps('inch'),
  pistonsAtHand: [thou(20), thou(30)],
  honingAllowance: thou(3),
  leastWall: inch(0.15),
  sizeAllowance: thou(1),
  wear: 'one side',
  shape: { limits: { max: thou(1) }, basis: { kind: 'specified', by: 'the manual' } },
};
const bored = borePlan(block);

export const cylinderCalls = {
  oversizeSteps: calls(oversizeSteps, {
    sound: [['inch'], ['metric', mm(1)]],
    provoked: {
      'unknown system': refused('system', 'imperial'),
      'largest not from 0 to 3 mm': refused('largest', 'inch', 30),
    },
  }),
  borePlan: calls(borePlan, {
    sound: [[block]],
    provoked: {
      'a size that cannot be a bore': refused('standard.min', {
        ...block,
        standard: { min: 3, max: 3.0005 },
      }),
      'an empty list': refused('cylinders', { ...block, cylinders: [] }),
      'smaller than standard': refused('cylinders[0].smallest', {
        ...block,
        standard: { min: inch(3.02), max: inch(3.021) },
      }),
      'a wall without the least one': refused('leastWall', { ...block, leastWall: undefined }),
    },
  }),
  describeBorePlan: calls(describeBorePlan, {
    madeBy: 'borePlan',
    sound: [
      [bored, { units: 'inch' }],
      [borePlan({ ...block, steps: [thou(0)], pistonsAtHand: [] }), { units: 'metric' }],
    ],
    provoked: {
      'the plan is not one': refused('plan.outcome', {}, { units: 'inch' }),
      'the unit system is unknown': refused('wording.units', bored, { units: 'imperial' }),
    },
  }),
  pistonClearance: calls(pistonClearance, {
    sound: [[{ bore: inch(3.0005), piston: inch(2.997) }]],
    provoked: {
      'not of an engine': refused('bore', { bore: 3.0005, piston: inch(2.997) }),
      'no piston': refused('piston', { bore: inch(3) }),
      'no sizes': refused('sizes'),
    },
  }),
  pistonClearanceSpan: calls(pistonClearanceSpan, {
    sound: [[spans], [{ bore: mm(87.2), piston: mm(87.1) }]],
    provoked: {
      'not of an engine': refused('bore', { ...spans, bore: 87.2 }),
      reversed: refused('piston', { ...spans, piston: { min: mm(87.2), max: mm(87.1) } }),
      'no sizes': refused('sizes'),
    },
  }),
  recommendedRingGap: calls(recommendedRingGap, {
    sound: [[inch(3)]],
    provoked: { 'not a bore': refused('bore', 3) },
  }),
  ringGapIn: calls(ringGapIn, {
    sound: [[{ ...ring, bore: inch(3.001) }], [{ ...ring, bore: inch(2.99) }]],
    provoked: {
      'not a gap': refused('gap', { ...ring, gap: 12, bore: inch(3) }),
      'not a bore': refused('bore', { ...ring, bore: 3.001 }),
      'no ring': refused('ring'),
    },
  }),
  ringGapAlongBore: calls(ringGapAlongBore, {
    sound: [[{ ...ring, stations }]],
    provoked: {
      'not a gap': refused('gap', { ...ring, gap: thou(-1), stations }),
      'not a bore': refused('stations[0].mean', {
        ...ring,
        stations: [{ station: inch(1), mean: 3 }],
      }),
      'no station': refused('stations', { ...ring, stations: [] }),
      'no ring': refused('ring'),
    },
  }),
  ringFilingNeeded: calls(ringFilingNeeded, {
    sound: [
      [{ gap: thou(5), measuredIn: inch(3) }],
      [{ ...ring, ...own, smallestBore: inch(2.999) }],
      [{ ...ring, limits: { max: thou(10) } }],
      [{ ...ring, ...own, smallestBore: inch(2.999), largestBore: inch(3.002) }],
    ],
    provoked: {
      'not a gap': refused('gap', { ...ring, gap: 12 }),
      'not a bore': refused('smallestBore', { ...ring, smallestBore: 3 }),
      'bores too far apart': refused('largestBore', { ...ring, largestBore: inch(3.2) }),
      'the largest bore below the smallest': refused('largestBore', {
        ...ring,
        largestBore: inch(2.99),
      }),
      'limits without a bound': refused('ring.limits', { ...ring, limits: {} }),
      'no ring': refused('ring'),
    },
  }),
};
