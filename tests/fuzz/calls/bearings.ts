import {
  type BearingToWarm,
  type ClearanceQuestion,
  celsius,
  describeClearance,
  type EngineMaterial,
  explainClearance,
  hotOilClearance,
  housingRoundness,
  inch,
  matchShells,
  meanExpansion,
  oilClearanceSpan,
  ppmPerKelvin,
  type ShellSearch,
  shellWallToSuit,
  thou,
} from 'crankwright';
import { calls, refused } from './calls.js';

const sizes = { housingBore: inch(2.251), shellWall: inch(0.062), journal: inch(2.125) };
const question: ClearanceQuestion = {
  clearance: thou(22),
  journal: inch(2.105),
  limits: { min: thou(1), max: thou(3) },
  basis: { kind: 'published', source: 'the manual' },
  steps: [thou(10), thou(20)],
};
const tight: ClearanceQuestion = { clearance: thou(-18), journal: inch(2.125) };
const odd: ClearanceQuestion = { clearance: thou(6.5), journal: inch(2.125) };
const fine: ClearanceQuestion = { clearance: thou(2), journal: inch(2.125) };
const why = explainClearance(question);
const search: ShellSearch = {
  journal: { min: inch(2.1045), max: inch(2.105) },
  housingBore: inch(2.251),
  shells: [
    { name: 'standard', undersize: thou(0), wall: inch(0.062) },
    { name: '20 under', undersize: thou(20), wall: { min: inch(0.0719), max: inch(0.072) } },
  ],
  limits: { min: thou(1), max: thou(3) },
  basis: { kind: 'specified' },
};
const [shell] = search.shells;

const warm = (material: EngineMaterial, degrees: number) => ({
  expansion: meanExpansion(material),
  temperature: celsius(degrees),
});
const rod: BearingToWarm = {
  clearance: thou(1.5),
  journal: inch(1.125),
  shaft: warm('steel', 90),
  bore: { kind: 'free ring', ring: warm('aluminium alloy', 120) },
};
const bushed: BearingToWarm = {
  ...rod,
  measuredAt: celsius(15),
  bore: {
    kind: 'held bush',
    wall: inch(0.1),
    bush: warm('bronze', 90),
    housing: warm('grey iron', 90),
  },
};
const { expansion } = rod.shaft;
const housing = { crown: inch(1.7512), left: inch(1.7505), right: inch(1.7507) };

export const bearingCalls = {
  meanExpansion: calls(meanExpansion, {
    sound: [['steel'], ['bronze']],
    provoked: { 'the material is not in the table': refused('material', 'tin') },
  }),
  hotOilClearance: calls(hotOilClearance, {
    sound: [[rod], [bushed]],
    provoked: {
      'a span is reversed': refused('shaft.expansion.coefficient', {
        ...rod,
        shaft: {
          ...rod.shaft,
          expansion: {
            ...expansion,
            coefficient: { min: ppmPerKelvin(12), max: ppmPerKelvin(11) },
          },
        },
      }),
      'the range of a mean is reversed': refused('shaft.expansion', {
        ...rod,
        shaft: { ...rod.shaft, expansion: { ...expansion, from: celsius(250) } },
      }),
      'the kind of bore is unknown': refused('bore.kind', { ...rod, bore: { kind: 'a hole' } }),
    },
  }),
  housingRoundness: calls(housingRoundness, {
    sound: [[housing], [{ ...housing, limits: { max: thou(0.5) } }]],
    provoked: {},
  }),
  shellWallToSuit: calls(shellWallToSuit, {
    sound: [
      [{ housingBore: inch(1.7506), journal: inch(1.6049) }],
      [
        {
          housingBore: { min: inch(1.75), max: inch(1.76) },
          journal: inch(1.6049),
          limits: { min: thou(1), max: thou(3) },
          basis: { kind: 'specified' },
        },
      ],
    ],
    provoked: {
      'a span is reversed': refused('housingBore', {
        housingBore: { min: inch(1.7508), max: inch(1.7506) },
        journal: inch(1.6049),
      }),
    },
  }),
  oilClearanceSpan: calls(oilClearanceSpan, {
    sound: [[sizes]],
    provoked: {
      'a span is reversed': refused('journal', {
        ...sizes,
        journal: { min: inch(2.125), max: inch(2.1245) },
      }),
    },
  }),
  explainClearance: calls(explainClearance, {
    sound: [[question], [tight], [odd], [fine]],
    provoked: {
      'the limits lack one bound': refused('limits', { ...question, limits: { max: thou(3) } }),
    },
  }),
  describeClearance: calls(describeClearance, {
    madeBy: 'explainClearance',
    sound: [
      [why, { units: 'inch' }],
      [explainClearance(tight), { units: 'metric' }],
      [explainClearance(odd), { units: 'inch' }],
      [explainClearance(fine), { units: 'metric' }],
    ],
    provoked: {
      'the explanation is not what `explainClearance` gives': refused(
        'explanation.outcome',
        {},
        { units: 'inch' },
      ),
      'there is no explanation': refused('explanation', undefined, { units: 'inch' }),
      'the unit system is unknown': refused('wording.units', why, { units: 'imperial' }),
      'there is no wording': refused('wording', why),
    },
  }),
  matchShells: calls(matchShells, {
    sound: [[search], [{ journal: inch(2.105), housingBore: inch(2.251), shells: search.shells }]],
    provoked: {
      'a value is not finite': refused('housingBore', { ...search, housingBore: Number.NaN }),
      'out of range': refused('shells[0].undersize', {
        ...search,
        shells: [{ ...shell, undersize: thou(-1) }],
      }),
      'a span is reversed': refused('journal', {
        ...search,
        journal: { min: inch(2.105), max: inch(2.1045) },
      }),
      'a shell has no name': refused('shells[0].name', {
        ...search,
        shells: [{ ...shell, name: '' }],
      }),
      'a shell was never one bearing with the two': refused('journal', {
        ...search,
        housingBore: inch(2.625),
      }),
      'the shelf is empty': refused('shells', { ...search, shells: [] }),
    },
  }),
};
