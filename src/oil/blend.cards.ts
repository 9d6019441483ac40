import { card } from '../judging/internal.js';
import {
  centistokes,
  type MassFraction,
  percentByMass,
  percentByVolume,
  type VolumeFraction,
} from '../quantities/index.js';
import { type BlendPart, blendViscosity, fuelFraction } from './blend.js';
import { D7152, LOG_MEAN, NOT_THINNED, R, REFUTAS, S, THINNED, V, W, Y } from './card-letters.js';
import { fuelByMass, fuelShare, liquidViscosity } from './domains.js';
import type { BlendingLaw } from './laws.js';

const blend = {
  symbol: 'nu',
  meaning: 'kinematic viscosity of the blend',
  dimension: 'kinematicViscosity',
} as const;
const byVolume = { symbol: 'x', meaning: 'fuel by volume', dimension: 'volumeFraction' } as const;

const PARTS = {
  nu_f: {
    field: 'parts[0].viscosity',
    meaning: 'kinematic viscosity of the fuel',
    domain: liquidViscosity,
    usual: [4e-7, 8e-7],
  },
  nu_o: {
    field: 'parts[1].viscosity',
    meaning: 'kinematic viscosity of the oil',
    domain: liquidViscosity,
    usual: [6.5e-5, 2e-4],
  },
} as const;
const X = {
  field: 'parts[0].fraction',
  meaning: 'fuel by volume',
  domain: fuelShare,
  usual: [0, 0.3],
} as const;

const partsOf = <F extends VolumeFraction | MassFraction>(v: {
  readonly nu_f: BlendPart<BlendingLaw>['viscosity'];
  readonly nu_o: BlendPart<BlendingLaw>['viscosity'];
  readonly x: F;
}) => [
  { viscosity: v.nu_f, fraction: v.x },
  { viscosity: v.nu_o, fraction: (1 - v.x) as F },
];
/** As the oil, the fuel and the sample are written where their logarithms are taken. */
const [O, F, SAMPLE] = ['nu_o / (1 mm^2/s)', 'nu_f / (1 mm^2/s)', 'nu_s / (1 mm^2/s)'];

/** Formulas of blends. */
export const blendCards = {
  blendByVolume: card({
    of: blendViscosity,
    name: 'viscosity of a blend, by volume',
    gives: blend,
    letters: { ...PARTS, x: X },
    call: (v) => [{ law: 'ASTM D7152' as const, parts: partsOf(v) }],
    where: [W, Y, V],
    expression: `V(Y(x * W(${F}) + (1 - x) * W(${O})))`,
    example: { nu_f: centistokes(0.6), nu_o: centistokes(100), x: percentByVolume(5) },
    source: D7152,
  }),
  blendByMass: card({
    of: blendViscosity,
    name: 'viscosity of a blend, by mass',
    gives: blend,
    letters: { ...PARTS, x: { ...X, meaning: 'fuel by mass', domain: fuelByMass } },
    call: (v) => [{ law: 'Refutas' as const, parts: partsOf(v) }],
    where: [R, S],
    expression: `S(x * R(${F}) + (1 - x) * R(${O}))`,
    example: { nu_f: centistokes(0.6), nu_o: centistokes(100), x: percentByMass(5) },
    source: REFUTAS,
  }),
  blendLogMean: card({
    of: blendViscosity,
    name: 'viscosity of a blend, by the log-mean',
    gives: blend,
    letters: { ...PARTS, x: X },
    call: (v) => [{ law: 'log-mean' as const, parts: partsOf(v) }],
    expression: `exp(x * log(${F}) + (1 - x) * log(${O})) * 1 mm^2/s`,
    example: { nu_f: centistokes(0.6), nu_o: centistokes(100), x: percentByVolume(5) },
    source: LOG_MEAN,
  }),
  fuelByVolume: card({
    of: fuelFraction,
    name: 'fuel in oil from its viscosity, by volume',
    gives: byVolume,
    letters: THINNED,
    call: ({ nu_o, nu_f, nu_s }) => [
      { law: 'ASTM D7152' as const, oil: nu_o, fuel: nu_f, sample: nu_s },
    ],
    where: [W],
    expression: `(W(${O}) - W(${SAMPLE})) / (W(${O}) - W(${F}))`,
    refuses: NOT_THINNED,
    example: { nu_o: centistokes(100), nu_f: centistokes(0.6), nu_s: centistokes(60) },
    source: D7152,
  }),
  fuelByMass: card({
    of: fuelFraction,
    name: 'fuel in oil from its viscosity, by mass',
    gives: { symbol: 'x', meaning: 'fuel by mass', dimension: 'massFraction' },
    letters: THINNED,
    call: ({ nu_o, nu_f, nu_s }) => [
      { law: 'Refutas' as const, oil: nu_o, fuel: nu_f, sample: nu_s },
    ],
    where: [R],
    expression: `(R(${O}) - R(${SAMPLE})) / (R(${O}) - R(${F}))`,
    refuses: NOT_THINNED,
    example: { nu_o: centistokes(100), nu_f: centistokes(0.6), nu_s: centistokes(60) },
    source: REFUTAS,
  }),
  fuelLogMean: card({
    of: fuelFraction,
    name: 'fuel in oil from its viscosity, by the log-mean',
    gives: byVolume,
    letters: THINNED,
    call: ({ nu_o, nu_f, nu_s }) => [
      { law: 'log-mean' as const, oil: nu_o, fuel: nu_f, sample: nu_s },
    ],
    expression: 'log(nu_o / nu_s) / log(nu_o / nu_f)',
    refuses: NOT_THINNED,
    example: { nu_o: centistokes(100), nu_f: centistokes(0.6), nu_s: centistokes(60) },
    source: LOG_MEAN,
  }),
};
