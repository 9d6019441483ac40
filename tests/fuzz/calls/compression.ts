import {
  celsius,
  clearanceVolumeByBurette,
  compressionRatio,
  compressionTest,
  crankingPressure,
  crownVolumeByBurette,
  degree,
  describeCompressionRatio,
  gasketForRatio,
  inch,
  kPa,
  leakDown,
  metre,
  mL,
  mm,
  psi,
  psiGauge,
  publishedCompressionRules,
  ratio,
  skimForRatio,
  squareMm,
  standardAirPressure,
} from 'crankwright';
import { calls, refused } from './calls.js';

const spaces = {
  bore: mm(80),
  stroke: mm(80),
  chamber: { min: mL(40), max: mL(41) },
  blockChamber: mL(20),
  crown: { min: mL(-4), max: mL(-3) },
  deckClearance: { min: mm(0.1), max: mm(0.3) },
};
const gasket = { thickness: mm(1.2), area: squareMm(9000) };
const cylinder = { ...spaces, gasket };
const compressed = compressionRatio(cylinder);
const toSkim = { ...cylinder, wanted: ratio(7), skimArea: squareMm(9000) };
const bothGaskets = { ...gasket, bore: mm(82) };
const reversed = { min: mL(41), max: mL(40) };

const cranked = {
  stroke: inch(3.25),
  rodLength: inch(6),
  compressionRatio: { min: ratio(5.4), max: ratio(5.6) },
  inletCloses: { min: degree(40), max: degree(55) },
  airPressure: kPa(97),
  exponent: { min: ratio(1.15), max: ratio(1.3) },
};
const readings = {
  supply: psiGauge(80),
  held: psiGauge(66),
  orifice: inch(0.04),
  bore: inch(3),
  gaugeWithin: psi(1),
  heardAt: ['exhaust', 'breather'] as const,
  temperature: celsius(15),
};
const test = {
  cylinders: [
    { name: '1', dry: psiGauge(95), wet: psiGauge(99), head: 'front' },
    { name: '2', dry: psiGauge(72), wet: psiGauge(74), head: 'front' },
    { name: '3', dry: psiGauge(70), head: 'front' },
    { name: '4' },
  ],
  rules: [
    ...publishedCompressionRules(),
    { kind: 'near a figure' as const, figure: psiGauge(95), within: psi(10) },
    { kind: 'at least' as const, least: psiGauge(75) },
    { kind: 'share of average' as const, least: ratio(0.8), most: ratio(1.2) },
  ],
  repeatsWithin: psi(2),
  gaugeWithin: psi(3),
  risesBy: ratio(0.15),
};

export const compressionCalls = {
  clearanceVolumeByBurette: calls(clearanceVolumeByBurette, {
    sound: [[{ poured: [mL(62), mL(63)], besides: mL(0.4), within: mL(0.1) }]],
    provoked: { 'there is no pouring': refused('poured', { poured: [] }) },
  }),
  crownVolumeByBurette: calls(crownVolumeByBurette, {
    sound: [[{ bore: mm(80), depth: mm(12), poured: [mL(54)] }]],
    provoked: {
      'there is no pouring': refused('poured', { bore: mm(80), depth: mm(12), poured: [] }),
    },
  }),
  compressionRatio: calls(compressionRatio, {
    sound: [[cylinder], [{ ...cylinder, gasket: 'none' }]],
    provoked: {
      'a span is reversed': refused('chamber', { ...cylinder, chamber: reversed }),
      'a gasket has both a bore and an area': refused('gasket.bore', {
        ...cylinder,
        gasket: bothGaskets,
      }),
    },
  }),
  describeCompressionRatio: calls(describeCompressionRatio, {
    madeBy: 'compressionRatio',
    sound: [
      [compressed, { units: 'inch' }],
      [compressionRatio({ ...cylinder, deckClearance: mm(-1.5) }), { units: 'metric' }],
    ],
    provoked: {
      'the compression is not what `compressionRatio` gives': refused(
        'compression.ratio',
        {},
        { units: 'inch' },
      ),
      'the unit system is unknown': refused('wording.units', compressed, { units: 'imperial' }),
    },
  }),
  skimForRatio: calls(skimForRatio, {
    sound: [
      [{ ...toSkim, mayComeOff: mm(1) }],
      [{ ...toSkim, wanted: ratio(4) }],
      [{ ...toSkim, wanted: ratio(9), mayComeOff: mm(0.1) }],
      [{ ...toSkim, wanted: ratio(6.4) }],
    ],
    provoked: {
      'a span is reversed': refused('chamber', { ...toSkim, chamber: reversed }),
      'a gasket has both a bore and an area': refused('gasket.bore', {
        ...toSkim,
        gasket: bothGaskets,
      }),
      'a ratio of one': refused('wanted', { ...toSkim, wanted: ratio(1) }),
    },
  }),
  gasketForRatio: calls(gasketForRatio, {
    sound: [
      [{ ...spaces, gasket: { bore: mm(82) }, wanted: ratio(5) }],
      [{ ...spaces, gasket: { bore: mm(82) }, wanted: ratio(12) }],
    ],
    provoked: {
      'a span is reversed': refused('crown', {
        ...spaces,
        crown: reversed,
        gasket: { bore: mm(82) },
        wanted: ratio(5),
      }),
      'a gasket has both a bore and an area': refused('gasket.bore', {
        ...spaces,
        gasket: { bore: mm(82), area: squareMm(9000) },
        wanted: ratio(5),
      }),
    },
  }),
  crankingPressure: calls(crankingPressure, {
    sound: [[cranked]],
    provoked: {
      'a span is reversed': refused('exponent', {
        ...cranked,
        exponent: { min: ratio(1.3), max: ratio(1.2) },
      }),
      'a ratio of one': refused('compressionRatio', { ...cranked, compressionRatio: ratio(1) }),
    },
  }),
  standardAirPressure: calls(standardAirPressure, {
    sound: [[metre(-400)]],
    provoked: {
      'the altitude is not finite': refused('altitude', Number.NaN),
    },
  }),
  leakDown: calls(leakDown, {
    sound: [
      [readings],
      [{ supply: psiGauge(40), held: psiGauge(0), orifice: inch(0.04), heardAt: [] }],
      [{ supply: psiGauge(40), held: psiGauge(30), limits: { max: ratio(0.3) } }],
    ],
    provoked: {
      'a span is reversed': refused('discharge', {
        ...readings,
        discharge: { min: ratio(1), max: ratio(0.8) },
      }),
      'the limits have no bound': refused('readings.limits', { ...readings, limits: {} }),
      'a place where air is heard is unknown': refused('heardAt[0]', {
        ...readings,
        heardAt: ['ears'],
      }),
    },
  }),
  publishedCompressionRules: calls(publishedCompressionRules, { sound: [[]], provoked: {} }),
  compressionTest: calls(compressionTest, {
    sound: [[test]],
    provoked: {
      'a value is not finite': refused('cylinders[0].dry', {
        ...test,
        cylinders: [{ name: '1', dry: Number.NaN }],
      }),
      'out of range': refused('gaugeWithin', { ...test, gaugeWithin: -1 }),
      'no rule': refused('rules', { ...test, rules: [] }),
      'there is no cylinder': refused('cylinders', { ...test, cylinders: [] }),
      'two cylinders have one name': refused('cylinders[1].name', {
        ...test,
        cylinders: [test.cylinders[0], test.cylinders[0]],
      }),
      'a rule is unknown': refused('rules[0].kind', { ...test, rules: [{ kind: 'luck' }] }),
      'no cylinder was read': refused('cylinders', { ...test, cylinders: [{ name: '1' }] }),
    },
  }),
};
