import {
  describeGrindPlan,
  endPlay,
  type GrindRequest,
  grindPlan,
  inch,
  mm,
  pickShims,
  thou,
  undersizeSteps,
  type WashersToFit,
  washersForEndPlay,
} from 'crankwright';
import { calls, refused } from './calls.js';

const worn = {
  name: 'rod 1',
  smallest: inch(2.1189),
  largest: inch(2.1202),
  outOfRound: inch(0.0013),
  taper: inch(0.0004),
  runout: thou(0.5),
};
const request: GrindRequest = {
  journals: [worn, { ...worn, name: 'rod 2', smallest: inch(2.1191), outOfRound: thou(1.1) }],
  standard: { min: inch(2.1245), max: inch(2.125) },
  steps: undersizeSteps('inch'),
  shellsAtHand: [thou(20), thou(30)],
  minimum: inch(2.09),
  cleanUpAllowance: thou(1),
  wear: 'all round',
  shape: { limits: { max: thou(0.5) }, basis: { kind: 'specified', by: 'the manual' } },
};
const good: GrindRequest = {
  journals: [
    {
      name: 'main 1',
      smallest: inch(2.4995),
      largest: inch(2.4998),
      outOfRound: thou(0.2),
      taper: thou(0.1),
    },
  ],
  standard: { min: inch(2.4995), max: inch(2.5) },
  steps: undersizeSteps('inch'),
};
const hopeless: GrindRequest = { ...request, steps: [thou(0)] };
const plan = grindPlan(request);
const readings = [
  { pushed: thou(0), pulled: thou(7) },
  { pushed: thou(1), pulled: thou(-7) },
];

const washers: WashersToFit = {
  measured: { min: thou(13), max: thou(14) },
  fitted: [{ name: 'front', thickness: thou(92) }],
  shelf: [
    { name: 'A', thickness: thou(95) },
    { name: 'B', thickness: thou(98) },
  ],
  limits: { min: thou(4), max: thou(10) },
  basis: { kind: 'specified', by: 'the manual' },
};

export const crankshaftCalls = {
  washersForEndPlay: calls(washersForEndPlay, {
    sound: [
      [washers],
      [{ measured: thou(8), fitted: washers.fitted, shelf: washers.shelf.slice(0, 1) }],
    ],
    provoked: {
      'a span is reversed': refused('measured', {
        ...washers,
        measured: { min: thou(14), max: thou(13) },
      }),
      'no washer was in': refused('fitted', { ...washers, fitted: [] }),
      'the shelf has fewer washers than were in': refused('shelf', { ...washers, shelf: [] }),
      'the shelf is too long': refused('shelf', {
        ...washers,
        shelf: Array.from({ length: 41 }, () => ({ name: 'A', thickness: thou(95) })),
      }),
      'the limits lack a bound': refused('bearing.limits.min', {
        ...washers,
        limits: { max: thou(10) },
      }),
    },
  }),
  pickShims: calls(pickShims, {
    sound: [
      [
        [
          { name: 'a', thickness: thou(5) },
          { name: 'b', thickness: thou(7) },
        ],
        { min: thou(11), max: thou(13) },
      ],
      [[], { min: thou(0), max: thou(1) }],
    ],
    provoked: {
      'a value is not finite': refused('wanted.max', [], { min: thou(2), max: Infinity }),
      'out of range': refused('shelf[0].thickness', [{ name: 'a', thickness: 5 }], {
        min: 0,
        max: 0.001,
      }),
      'the span is reversed': refused('wanted', [], { min: thou(2), max: thou(1) }),
      'the shelf is too long': refused(
        'shelf',
        Array.from({ length: 41 }, () => ({ name: 'a', thickness: thou(5) })),
        { min: thou(0), max: thou(1) },
      ),
    },
  }),
  undersizeSteps: calls(undersizeSteps, {
    sound: [['inch'], ['metric', mm(1)]],
    provoked: {
      'the system is unknown': refused('system', 'imperial'),
      'a value is not finite': refused('largest', 'inch', Number.NaN),
      'out of range': refused('largest', 'inch', 0.02),
    },
  }),
  grindPlan: calls(grindPlan, {
    sound: [[request], [good], [hopeless]],
    provoked: {
      'a smallest is above its largest': refused('journals[0]', {
        ...request,
        journals: [{ ...worn, smallest: inch(2.1203) }],
      }),
      'a shape contradicts its sizes': refused('journals[0].outOfRound', {
        ...request,
        journals: [{ ...worn, outOfRound: thou(1.4) }],
      }),
      'a list is empty': refused('journals', { ...request, journals: [] }),
      'there is no step': refused('steps', { ...request, steps: [] }),
      'the minimum is above standard': refused('minimum', { ...request, minimum: inch(2.2) }),
      'the standard is the wrong way round': refused('standard', {
        ...request,
        standard: { min: inch(2.125), max: inch(2.1245) },
      }),
      'the wear is unknown': refused('wear', { ...request, wear: 'some' }),
      'a journal has no name': refused('journals[0].name', {
        ...request,
        journals: [{ ...worn, name: '' }],
      }),
    },
  }),
  describeGrindPlan: calls(describeGrindPlan, {
    madeBy: 'grindPlan',
    sound: [
      [plan, { units: 'inch' }],
      [grindPlan(good), { units: 'metric' }],
      [grindPlan(hopeless), { units: 'inch' }],
    ],
    provoked: {
      'the plan is not what `grindPlan` gives': refused('plan.outcome', {}, { units: 'inch' }),
      'there is no plan': refused('plan', null, { units: 'inch' }),
      'the unit system is unknown': refused('wording.units', plan, { units: 'imperial' }),
      'there is no wording': refused('wording', plan),
    },
  }),
  endPlay: calls(endPlay, {
    sound: [
      [readings],
      [readings, { limits: { min: thou(4), max: thou(12) }, basis: { kind: 'specified' } }],
    ],
    provoked: {
      'there is no reading': refused('readings', []),
      'the limits have no bound': refused('options.limits', readings, { limits: {} }),
      'the options are none': refused('options', readings, 'specified'),
    },
  }),
};
