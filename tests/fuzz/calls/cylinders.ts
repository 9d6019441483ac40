import {
  type BoreRequest,
  borePlan,
  convertRoughness,
  describeBorePlan,
  inch,
  micrometre,
  mm,
  oversizeSteps,
  pistonClearanceSpan,
  ringFilingNeeded,
  ringGapAlongBore,
  thou,
} from 'crankwright';
import { calls, refused } from './calls.js';

const ring = { gap: thou(12), measuredIn: inch(3) };
const stations = [
  { station: inch(0.5), mean: inch(3.008) },
  { station: inch(3), mean: inch(3) },
];
const own = { limits: { min: thou(9), max: thou(12) }, basis: { kind: 'specified' as const } };

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
const [cylinder] = block.cylinders as readonly [BoreRequest['cylinders'][number]];
const bored = borePlan(block);

const read = { value: micrometre(0.4), from: 'Ra', to: 'Rz' } as const;

export const cylinderCalls = {
  convertRoughness: calls(convertRoughness, {
    sound: [[read], [{ ...read, to: 'Ra' }]],
    provoked: {
      'a value is not finite': refused('value', { ...read, value: Number.NaN }),
      'out of range': refused('value', { ...read, value: 0.4 }),
      'a measure is unknown': refused('to', { ...read, to: 'Rt' }),
    },
  }),
  oversizeSteps: calls(oversizeSteps, {
    sound: [['inch'], ['metric', mm(1)]],
    provoked: {
      'the system is unknown': refused('system', 'imperial'),
      'a value is not finite': refused('largest', 'inch', Infinity),
      'out of range': refused('largest', 'inch', 30),
    },
  }),
  borePlan: calls(borePlan, {
    sound: [[block]],
    provoked: {
      'a list is empty': refused('cylinders', { ...block, cylinders: [] }),
      'a span is reversed': refused('standard', {
        ...block,
        standard: { min: inch(3.0005), max: inch(3) },
      }),
      'a smallest is above its largest': refused('cylinders[0]', {
        ...block,
        cylinders: [{ ...cylinder, smallest: inch(3.0013) }],
      }),
      'a shape contradicts its sizes': refused('cylinders[0].outOfRound', {
        ...block,
        cylinders: [{ ...cylinder, outOfRound: thou(1.1) }],
      }),
      'a wall is given without the least one': refused('leastWall', {
        ...block,
        leastWall: undefined,
      }),
    },
  }),
  describeBorePlan: calls(describeBorePlan, {
    madeBy: 'borePlan',
    sound: [
      [bored, { units: 'inch' }],
      [borePlan({ ...block, steps: [thou(0)], pistonsAtHand: [] }), { units: 'metric' }],
    ],
    provoked: {
      'the plan is not what `borePlan` gives': refused('plan.outcome', {}, { units: 'inch' }),
      'the unit system is unknown': refused('wording.units', bored, { units: 'imperial' }),
    },
  }),
  pistonClearanceSpan: calls(pistonClearanceSpan, {
    sound: [[{ bore: mm(87.2), piston: mm(87.1) }]],
    provoked: {
      'a span is reversed': refused('piston', {
        bore: mm(87.2),
        piston: { min: mm(87.12), max: mm(87.1) },
      }),
    },
  }),
  ringGapAlongBore: calls(ringGapAlongBore, {
    sound: [[{ ...ring, stations }]],
    provoked: { 'there is no station': refused('stations', { ...ring, stations: [] }) },
  }),
  ringFilingNeeded: calls(ringFilingNeeded, {
    sound: [
      [{ gap: thou(5), measuredIn: inch(3) }],
      [{ ...ring, ...own, smallestBore: inch(2.999) }],
      [{ ...ring, limits: { max: thou(10) } }],
      [{ ...ring, ...own, smallestBore: inch(2.999), largestBore: inch(3.002) }],
    ],
    provoked: {
      'the largest bore is not of the cylinder': refused('largestBore', {
        ...ring,
        largestBore: inch(3.2),
      }),
      'the largest is below the smallest': refused('largestBore', {
        ...ring,
        largestBore: inch(2.99),
      }),
      'the limits have no bound': refused('ring.limits', { ...ring, limits: {} }),
    },
  }),
};
