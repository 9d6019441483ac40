import {
  compressionRatio,
  compressionTest,
  crankingPressure,
  cubicInch,
  degree,
  format,
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
  standardAirPressure,
  standardAtmosphere,
  sweptVolume,
  valueIn,
} from 'crankwright';
import { describe } from 'vitest';
import { check } from './check.js';

describe('volumes', () => {
  check({
    basis: 'common practice',
    name: 'a worked example in print: 7.7 cm bore, 8.04 cm stroke, 374.394 cm³ with π as 3.1416',
    given: { bore: mm(77), stroke: mm(80.4) },
    expected: mL(374.394),
    tolerance: { relative: 5e-6 },
    got: sweptVolume,
  });
  check({
    basis: 'common practice',
    // Printed with 43.731 in³ swept, 0.305 in the piston, 0.62832 at the deck, 0.251328 in the gasket, 4.272 in the head.
    name: 'a trade magazine works out 9.01 from five volumes of a 4 in bore',
    given: {
      bore: inch(4),
      stroke: inch(3.48),
      chamber: cubicInch(4.272),
      crown: cubicInch(-0.305),
      deckClearance: inch(0.05),
      gasket: { thickness: inch(0.02), bore: inch(4) },
    },
    expected: [43.731, 0.251328, 9.01],
    tolerance: { relative: 6e-4 },
    got: (cylinder) => {
      const { ratio: found, sweptVolume: swept, gasketVolume } = compressionRatio(cylinder);
      return [valueIn(swept, cubicInch), valueIn(gasketVolume, cubicInch), found.min];
    },
  });
});

describe('air', () => {
  check({
    basis: 'from memory',
    name: 'ISO 2533: 898.746, 794.952 and 701.085 hPa at 1000, 2000 and 3000 m',
    given: [1000, 2000, 3000].map(metre),
    expected: [89_874.6, 79_495.2, 70_108.5],
    tolerance: { absolute: 0.05 },
    got: (heights) => heights.map(standardAirPressure),
  });
  check({
    basis: 'from memory',
    name: 'ISO 2533: 0.8320 of the pressure at 5000 ft',
    given: metre(1524),
    expected: 0.832,
    tolerance: { absolute: 5e-5 },
    got: (height) => standardAirPressure(height) / standardAtmosphere,
  });
});

describe('cranking', () => {
  const squeezed = (air: number) =>
    valueIn(
      crankingPressure({
        stroke: inch(5),
        rodLength: inch(10),
        compressionRatio: ratio(4.5),
        inletCloses: degree(0),
        airPressure: psi(air),
        exponent: ratio(1.3),
      }).gauge.max,
      psiGauge,
    );
  check({
    source: 'Pagé, Aviation Engines (1917), on compression and altitude',
    // He rounds 103.87 up to 104 and 79.49 down to 79.4 before he takes the air off.
    name: '14.7 psi times 4.5^1.3 is 104 psi absolute, 89.3 above the air; at 7000 ft, 11.25 psi, 68.15',
    given: [14.7, 11.25],
    expected: [89.3, 68.15],
    tolerance: { absolute: 0.15 },
    got: (airs) => airs.map(squeezed),
  });
});

describe('leakage test', () => {
  const tester = { supply: psiGauge(80), orifice: inch(0.04), bore: inch(3) };
  check({
    source: 'AC 43.13-1B, 8-14',
    name: 'a loss of more than 25 % of 80 psi: 60 psi is the last that is let pass',
    given: [60, 59.9],
    expected: ['within', 'above'],
    got: (held) =>
      held.map((one) => String(leakDown({ ...tester, held: psiGauge(one) }).finding?.verdict)),
  });
  check({
    source: 'AC 43.13-1B, 8-14',
    name: '0.060 in for bores from 5.00 in on, 0.040 in below',
    given: [
      [4.99, 0.04],
      [4.99, 0.06],
      [5, 0.04],
      [5, 0.06],
    ],
    expected: [true, false, false, true],
    got: (testers) =>
      testers.map(([bore, orifice]) => {
        const of = { ...tester, bore: inch(bore ?? 0), orifice: inch(orifice ?? 0) };
        return leakDown({ ...of, held: psiGauge(70) }).finding !== undefined;
      }),
  });
  check({
    basis: 'common practice',
    name: "an orifice maker's tutorial: fed with 80 psi, the flow is limited below 35.30 psi behind the orifice",
    given: [35.25, 20, 35.35],
    expected: [true, true, false],
    got: (held) => {
      const flow = (one: number) => leakDown({ ...tester, held: psiGauge(one) }).airFlow?.max;
      return held.map((one) => flow(one) === flow(1));
    },
  });
  check({
    basis: 'from memory',
    name: 'air at the speed of sound: 0.0404 kg/s for each m² and Pa, over the root of the kelvins',
    given: { ...tester, held: psiGauge(0), discharge: ratio(1) },
    expected: 0.0404,
    tolerance: { absolute: 5e-5 },
    got: (readings) => {
      const { airFlow } = leakDown(readings);
      const density = standardAtmosphere / (287.05 * 293.15);
      const before = readings.supply + standardAtmosphere;
      const area = (Math.PI / 4) * readings.orifice ** 2;
      return ((airFlow?.max ?? 0) * density * Math.sqrt(293.15)) / (area * before);
    },
  });
});

describe('compression tests', () => {
  check({
    basis: 'common practice',
    name: 'a shop manual works out 70 % of 150 psi as the lowest allowed: 105 psi',
    given: [105, 104.9],
    expected: ['kept', 'broken'],
    got: (lowest) =>
      lowest.map((one) => {
        const cylinders = [
          { name: '1', dry: psiGauge(150) },
          { name: '2', dry: psiGauge(one) },
        ];
        const rules = [{ kind: 'share of highest', least: ratio(0.7) }] as const;
        return compressionTest({ cylinders, rules }).outcome;
      }),
  });
  check({
    source: 'TM 5-3895-359-14&P, TM 5-4210-230-14&P-1, TM 1-1500-204-23-1 and TM 10-3930-618-20',
    name: '25 psi, 75 % of the highest, 20 % below the average, 10 psi',
    given: publishedCompressionRules(),
    expected: ['25 psi', '0.75', '0.8', '10 psi'],
    got: (rules) =>
      rules.map((rule) => {
        if (rule.kind === 'spread') return format(rule.most, psi, 0);
        return 'least' in rule ? String(rule.least) : '';
      }),
  });
});

describe('what the tester of the circular is', () => {
  check({
    source: 'AC 43.13-1B, 8-14',
    name: '80 psi: another pressure is another tester',
    given: [78.1, 81.9, 77.9, 82.1],
    expected: [true, true, false, false],
    got: (fed) =>
      fed.map((supply) => {
        const of = { supply: psiGauge(supply), held: psiGauge(60), orifice: inch(0.04) };
        return leakDown({ ...of, airPressure: kPa(100) }).finding !== undefined;
      }),
  });
});
