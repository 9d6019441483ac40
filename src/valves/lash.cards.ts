import { card, defined, everyStep } from '../judging/internal.js';
import { linearExpansion, partTemperature } from '../measuring/internal.js';
import {
  celsius,
  type Length,
  mm,
  ppmPerKelvin,
  type Temperature,
  type ThermalExpansion,
  thou,
} from '../quantities/index.js';
import { rockerArmRatio, trainLength, trainTemperature, valveLash, wantedLash } from './domains.js';
import { lashGrowth, type WarmLength } from './lash-growth.js';
import { stemToGrind } from './stem.js';

/** A piece that grows by that much at least, or at most: the lash grows least where its carrier does and its train grows most. */
const piece = (
  end: 'min' | 'max',
  length: Length,
  coefficient: ThermalExpansion,
  temperature: Temperature,
): WarmLength => ({
  length,
  expansion: {
    coefficient: { min: ppmPerKelvin(0), max: ppmPerKelvin(40), [end]: coefficient },
    from: celsius(0),
    to: celsius(800),
    source: 'a data sheet',
  },
  temperature,
});

const lettersOf = (
  at: string,
  end: 'min' | 'max',
  written: string,
  what: string,
  hot: readonly [number, number] = [350, 400],
) =>
  [
    {
      field: `${at}.length`,
      written: `${written}Length`,
      meaning: `length of the ${what}`,
      domain: trainLength,
      usual: [0.08, 0.2],
    },
    {
      field: `${at}.expansion.coefficient.${end}`,
      written: `${written}Expansion`,
      meaning: `${end === 'min' ? 'least' : 'most'} expansion coefficient of the ${what}`,
      domain: linearExpansion,
      usual: [10e-6, 13e-6],
    },
    {
      field: `${at}.temperature`,
      written: `${written}Temperature`,
      meaning: `temperature of the ${what}`,
      domain: trainTemperature,
      usual: hot,
    },
  ] as const;

const [L_b, a_b, T_b] = lettersOf('carrier[0]', 'min', 'block', 'block');
const [L_h, a_h, T_h] = lettersOf('carrier[0]', 'min', 'head', 'head');
const [L_v, a_v, T_v] = lettersOf('train[0]', 'max', 'valve', 'valve', [450, 650]);
const [L_t, a_t, T_t] = lettersOf('rocker.carrier[0]', 'min', 'tube', 'block or tube');
const [L_r, a_r, T_r] = lettersOf('rocker.train[0]', 'max', 'rod', 'push rod');
const T_0 = {
  field: 'measuredAt',
  meaning: 'temperature when the lash was set',
  domain: partTemperature,
  usual: [288, 298],
} as const;
const l = {
  field: 'lash',
  meaning: 'lash before',
  domain: valveLash,
  usual: [0.0001, 0.0004],
} as const;
const w = {
  field: 'wanted',
  meaning: 'lash wanted',
  domain: wantedLash,
  usual: [0.0005, 0.0008],
  made: { inch: everyStep(thou, 12, 16, 1), metric: everyStep(mm, 0.3, 0.4, 0.05) },
} as const;
const expansion = 'linear expansion';
const length = (symbol: string, meaning: string) =>
  ({ symbol, meaning, dimension: 'length' }) as const;

/** Formulas of lash. */
export const lashCards = {
  lashGrowth: card({
    of: lashGrowth,
    name: 'growth of the lash of a side valve',
    gives: length('g', 'least growth of the lash'),
    letters: { L_b, a_b, T_b, L_v, a_v, T_v, T_0 },
    call: ({ L_b, a_b, T_b, L_v, a_v, T_v, T_0 }) => [
      {
        carrier: [piece('min', L_b, a_b, T_b)],
        train: [piece('max', L_v, a_v, T_v)],
        measuredAt: T_0,
      },
    ],
    read: ({ growth }) => growth.min,
    expression: 'L_b * a_b * (T_b - T_0) - L_v * a_v * (T_v - T_0)',
    example: {
      L_b: mm(140),
      a_b: ppmPerKelvin(12),
      T_b: celsius(100),
      L_v: mm(140),
      a_v: ppmPerKelvin(12),
      T_v: celsius(200),
      T_0: celsius(20),
    },
    source: expansion,
  }),
  lashGrowthWithRocker: card({
    of: lashGrowth,
    name: 'growth of the lash of a valve with a rocker',
    gives: length('g', 'least growth of the lash'),
    letters: {
      L_h,
      a_h,
      T_h,
      L_v,
      a_v,
      T_v,
      r: {
        field: 'rocker.ratio',
        meaning: 'ratio of the rocker',
        domain: rockerArmRatio,
        usual: [1, 1.6],
      },
      L_t,
      a_t,
      T_t,
      L_r,
      a_r,
      T_r,
      T_0,
    },
    call: ({ L_h, a_h, T_h, L_v, a_v, T_v, r, L_t, a_t, T_t, L_r, a_r, T_r, T_0 }) => [
      {
        carrier: [piece('min', L_h, a_h, T_h)],
        train: [piece('max', L_v, a_v, T_v)],
        rocker: {
          ratio: r,
          carrier: [piece('min', L_t, a_t, T_t)],
          train: [piece('max', L_r, a_r, T_r)],
        },
        measuredAt: T_0,
      },
    ],
    read: ({ growth }) => growth.min,
    expression:
      'L_h * a_h * (T_h - T_0) - L_v * a_v * (T_v - T_0) + r * (L_t * a_t * (T_t - T_0) - L_r * a_r * (T_r - T_0))',
    source: expansion,
  }),
  stemToGrind: card({
    of: stemToGrind,
    name: 'metal to grind off a valve stem',
    gives: length('b', 'metal to grind off the stem'),
    letters: { w: { ...w, field: 'wanted.min', written: 'wanted' }, l },
    call: ({ w, l }) => [{ lash: l, wanted: { min: w, max: 0.003 as Length } }],
    read: (work) => (work.outcome === 'grind the stem' ? work.by.min : undefined),
    expression: 'w - l',
    example: { w: mm(0.3), l: mm(0.1) },
    source: 'definition of the trade',
  }),
  coldLash: card({
    of: lashGrowth,
    name: 'lash to set cold',
    gives: length('l_c', 'least lash to set cold, enough for the worst growth'),
    letters: {
      l_h: {
        field: 'hotLash',
        meaning: 'lash wanted hot',
        domain: wantedLash,
        usual: [0.0001, 0.0004],
        made: { inch: everyStep(thou, 4, 8, 1), metric: everyStep(mm, 0.1, 0.2, 0.05) },
      },
      L_b,
      a_b,
      T_b,
      L_v,
      a_v,
      T_v,
      T_0,
    },
    where: [
      defined(
        'g = L_b * a_b * (T_b - T_0) - L_v * a_v * (T_v - T_0)',
        'growth of the lash',
        'growth',
      ),
    ],
    call: ({ l_h, L_b, a_b, T_b, L_v, a_v, T_v, T_0 }) => [
      {
        hotLash: l_h,
        carrier: [piece('min', L_b, a_b, T_b)],
        train: [piece('max', L_v, a_v, T_v)],
        measuredAt: T_0,
      },
    ],
    read: ({ coldLash }) => coldLash?.max,
    expression: 'l_h - g',
    example: {
      l_h: mm(0.1),
      L_b: mm(140),
      a_b: ppmPerKelvin(12),
      T_b: celsius(100),
      L_v: mm(140),
      a_v: ppmPerKelvin(12),
      T_v: celsius(200),
      T_0: celsius(20),
    },
    source: expansion,
  }),
};
