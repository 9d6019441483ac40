import {
  afterFacing,
  celsius,
  cubicInch,
  degree,
  format,
  guideClearance,
  inch,
  type Length,
  lashGrowth,
  lbf,
  lbfPerInch,
  MPa,
  meanExpansion,
  mm,
  newton,
  ppmPerKelvin,
  psi,
  ratio,
  seatFindings,
  springAtHeight,
  springTest,
  squareMm,
  stemToGrind,
  thou,
  valveArea,
  valveLift,
  valveSpring,
} from 'crankwright';
import { describe } from 'vitest';
import { check } from './check.js';

describe('lash', () => {
  check({
    source: 'TM 5-4240-501-14&P, p. 152: inlet lash 0.007 to 0.009 in, cold; 3 thou were found',
    name: 'what to grind off the stem: lash wanted less lash found',
    given: { lash: thou(3), wanted: { min: thou(7), max: thou(9) } },
    expected: { outcome: 'grind the stem', by: [thou(4), thou(6)] },
    got: (stem) => {
      const work = stemToGrind(stem);
      const by = work.outcome === 'grind the stem' ? [work.by.min, work.by.max] : [];
      return { outcome: work.outcome as string, by: by as Length[] };
    },
  });
  check({
    source: 'data sheets of valve steels: 21-4N 18.4 ppm/K (20 to 760 °C); the rest worked by hand',
    name: 'an exhaust valve of 100 mm at 420 °C takes its lash, an iron block gives some back',
    given: { valve: ppmPerKelvin(18.4), block: ppmPerKelvin(11) },
    // 100 * 11e-6 * 80 - 100 * 18.4e-6 * 400 = 0.088 - 0.736 mm.
    expected: mm(-0.648),
    tolerance: { absolute: 1e-12 },
    got: ({ valve, block }) => {
      const piece = (coefficient: typeof valve, degrees: number) => ({
        length: mm(100),
        expansion: { coefficient, from: celsius(20), to: celsius(760), source: 'a data sheet' },
        temperature: celsius(degrees),
      });
      const train = { carrier: [piece(block, 100)], train: [piece(valve, 420)] };
      return lashGrowth(train).growth.min;
    },
  });
  check({
    source:
      'data sheets of X45CrSi9-3 (12.0 ppm/K, 20 to 400 °C) and of 21-4N (18.4, 20 to 760 °C)',
    name: 'the expansion of valve steels',
    given: ['martensitic valve steel', 'austenitic valve steel'] as const,
    expected: [ppmPerKelvin(12), ppmPerKelvin(18.4)],
    got: ([martensitic, austenitic]) => {
      const end = (of: typeof martensitic | typeof austenitic, which: 'min' | 'max') => {
        const { coefficient } = meanExpansion(of);
        return typeof coefficient === 'object' ? coefficient[which] : coefficient;
      };
      return [end(martensitic, 'min'), end(austenitic, 'max')];
    },
  });
  check({
    basis: 'common practice',
    name: 'a cam lift of 0.310 in gives 0.496 in with a rocker of 1.6 and no lash',
    given: { baseCircle: inch(1.13), acrossNose: inch(1.44), rockerRatio: ratio(1.6) },
    expected: ['0.310 in', '0.496 in'],
    got: (lobe) => {
      const lift = valveLift(lobe);
      return [format(lift.cam, inch, 3), format(lift.valve, inch, 3)];
    },
  });
  check({
    basis: 'common practice',
    // 5 / cos 45° = 7.0711, 5 / cos 30° = 5.7735.
    name: 'a face ground by 5 thou lets the valve down by 7.07 at 45° and by 5.77 at 30°',
    given: [degree(45), degree(30)],
    expected: [thou(7.071068), thou(5.773503)],
    tolerance: { relative: 1e-6 },
    got: (angles) =>
      angles.map((seatAngle) => afterFacing({ seatAngle, faceGround: thou(5) }).sink),
  });
});

describe('guides and seats', () => {
  check({
    source:
      'TM 9-4310-397-14, p. 6-28: stem 9.445 ± 0.015 mm, guide 9.51 to 9.53 mm: 0.05 to 0.10 mm',
    name: 'the clearance of new parts in millimetres, to the hundredth that is printed',
    given: { guide: { min: mm(9.51), max: mm(9.53) }, stem: { min: mm(9.43), max: mm(9.46) } },
    expected: ['0.05 mm', '0.10 mm'],
    got: (pair) => {
      const { min, max } = guideClearance(pair).clearance;
      return [format(min, mm, 2), format(max, mm, 2)];
    },
  });
  check({
    source:
      'TM 9-4310-397-14, p. 6-28: stem 0.3715 in, guide 0.374 to 0.375 in: 0.002 to 0.004 in. Its tolerance of the stem, printed 0.005, is 0.0005 by the millimetres beside it',
    name: 'the clearance of new parts in inches',
    given: {
      guide: { min: inch(0.374), max: inch(0.375) },
      stem: { min: inch(0.371), max: inch(0.372) },
    },
    expected: { min: thou(2), max: thou(4) },
    tolerance: { absolute: 1e-12 },
    got: (pair) => guideClearance(pair).clearance,
  });
  check({
    source:
      'TM 55-1905-220-14-6, p. 3-2323: exhaust stem 0.3100 to 0.3105, guide 0.3125 to 0.3135 in: 0.0020 to 0.0089 cm. The 0.0036 in beside the latter is a misprint of 0.0035',
    name: 'the clearance of exhaust stems',
    given: {
      guide: { min: inch(0.3125), max: inch(0.3135) },
      stem: { min: inch(0.31), max: inch(0.3105) },
    },
    expected: ['0.0020 in', '0.0035 in', '0.0089 cm'],
    got: (pair) => {
      const { min, max } = guideClearance(pair).clearance;
      return [format(min, inch), format(max, inch), `${(max * 100).toFixed(4)} cm`];
    },
  });
  check({
    source: 'TM 9-2815-256-24, p. 3-148: inlet recess 0.024 to 0.044 in, at most 0.064 in',
    name: 'how deep a valve may lie in its own engine',
    given: [thou(34), thou(55), thou(70)],
    expected: ['as new', 'serviceable', 'worn out'],
    got: (recessions) =>
      recessions.map((recession) => {
        const limits = { min: thou(24), max: thou(44) };
        const own = { limits, service: { limits: { max: thou(64) } } };
        return String(seatFindings({ recession }, { recession: own }).recession?.grade);
      }),
  });
  check({
    source: 'TM 5-4240-501-14&P, p. 278: seat 3/64 to 1/16 in new, usable to 5/64 in',
    name: 'a seat of another engine, which condemns none of this one',
    given: [3.5, 4.5, 5.5].map((n) => inch(n / 64)),
    expected: ['as new', 'serviceable', 'undecided'],
    got: (widths) =>
      widths.map((seatWidth) => String(seatFindings({ seatWidth }).seatWidth?.grade)),
  });
});

describe('what a valve opens', () => {
  check({
    basis: 'common practice',
    name: 'the curtain meets a port as wide as the valve at a quarter of its diameter, less for the stem',
    given: { valveDiameter: mm(40), portDiameter: mm(40), stemDiameter: mm(8) },
    // (40² - 8²) / (4 * 40) = 9.6 mm.
    expected: mm(9.6),
    got: (sizes) =>
      valveArea({ ...sizes, seatWidth: mm(1), seatAngle: degree(45), lift: mm(1) })
        .curtainMeetsPort,
  });
  check({
    basis: 'from memory',
    // Heywood's formulas, worked by hand: D_v 40, w 2 (across), β 45°, D_p 35, D_s 8.
    name: 'the three places of Heywood',
    given: [2, 6, 12].map(mm),
    expected: [
      // π 2 cos 45° (40 - 4 + 1) = π * 2 * 0.7071068 * 37
      ['seat', '164.39 mm²'],
      // π 38 √((6 - 2)² + 2²) = π * 38 * 4.472136
      ['rim', '533.89 mm²'],
      // π/4 (35² - 8²)
      ['port', '911.85 mm²'],
    ],
    got: (lifts) =>
      lifts.map((lift) => {
        const { least, narrowest } = valveArea({
          valveDiameter: mm(40),
          seatWidth: mm(2 * Math.SQRT2),
          seatAngle: degree(45),
          portDiameter: mm(35),
          stemDiameter: mm(8),
          lift,
        });
        return [narrowest as string, format(least, squareMm)];
      }),
  });
});

describe('springs', () => {
  const shigley = {
    wire: inch(0.037),
    outside: inch(7 / 16),
    coils: ratio(12.5),
    ends: 'squared',
    shearModulus: psi(11.85e6),
  } as const;
  check({
    basis: 'from memory',
    // Shigley, Example 10-1. The book rounds the mean diameter to 0.400 in before it cubes it.
    name: 'Shigley, Example 10-1: rate 4.13 lbf/in',
    given: shigley,
    expected: lbfPerInch(4.13),
    tolerance: { relative: 5e-3 },
    got: (spring) => valveSpring(spring).rate,
  });
  check({
    basis: 'from memory',
    name: 'Shigley, Example 10-1: solid length 0.500 in, which 0.037 * 13.5 rounds to',
    given: shigley,
    expected: '0.500 in',
    got: (spring) => format(valveSpring(spring).solidHeight, inch, 3),
  });
  check({
    source:
      'Khurmi and Gupta, Machine Design, p. 1208: C = 6 gives K = 1.2525, and 420 N/mm² at 176 N on 2.83 mm',
    name: "Wahl's factor and the stress of a valve spring, to the digits of its wire",
    given: { wire: mm(2.83), outside: mm(7 * 2.83), coils: ratio(10) },
    expected: 420,
    // The wire is printed to three digits and stands squared: half a digit is 0.35 % of the stress.
    tolerance: { relative: 3.6e-3 },
    got: (spring) => {
      const free = { ...spring, ends: 'squared and ground', freeHeight: mm(60) } as const;
      const { rate } = valveSpring({ ...spring, ends: 'squared and ground' });
      const height = mm(60 - (176 / rate) * 1000);
      return springAtHeight({ ...free, height }).shearStress / MPa(1);
    },
  });
  check({
    source:
      'Bhandari, Design of Machine Elements, example 10.4: 150 N at 35 mm, 300 N at 30 mm, wire 4 mm, coils 24 mm, G 81 370 N/mm²: 6.2785 coils',
    name: 'the coils that give the rate of a valve spring',
    given: {
      closed: { height: mm(35), force: newton(150) },
      open: { height: mm(30), force: newton(300) },
    },
    expected: 6.278549,
    tolerance: { absolute: 5e-7 },
    got: (tested) => {
      const one = valveSpring({
        wire: mm(4),
        outside: mm(28),
        coils: ratio(3),
        deadCoils: ratio(2),
        ends: 'squared and ground',
        shearModulus: MPa(81_370),
      });
      return one.rate / springTest(tested).rate;
    },
  });
  check({
    source: 'TM 10-3930-621-34, p. 3-8: free length 2.250 in, 36 lb at 1.938 in; worked by hand',
    name: 'the rate of that spring: 36 / 0.312 = 115.4 lbf/in, and its free length again',
    given: { height: inch(1.938), force: lbf(36) },
    expected: ['115.4 lbf/in', '2.250 in'],
    got: (closed) => {
      // The same line further down: 36 + 0.2 * 115.3846 = 59.07692 lb at 1.738 in.
      const test = springTest({ closed, open: { height: inch(1.738), force: lbf(59.07692) } });
      return [format(test.rate, lbfPerInch, 1), format(test.freeHeight, inch, 3)];
    },
  });
  check({
    basis: 'from memory',
    // A uniform bar held at both ends: half a wave on it at the speed length * √(rate / mass).
    name: 'surge as of Shigley, section 10-8: √(k g / W) / 2, in inches and pounds',
    given: { wire: inch(0.12), outside: inch(0.97), coils: ratio(7.5), density: 0.282 },
    // k = 11.5e6 * 0.12⁴ / (8 * 0.85³ * 5.5) = 88.24973; W = π² 0.12² 0.85 * 5.5 * 0.282 / 4 = 0.04684173 lb;
    // √(88.24973 * 386.0886 / 0.04684173) / 2.
    expected: 426.4358,
    tolerance: { relative: 1e-6 },
    got: ({ density, ...spring }) =>
      valveSpring({
        ...spring,
        ends: 'squared and ground',
        shearModulus: psi(11.5e6),
        density: ((density * 0.45359237) / cubicInch(1)) as never,
      }).surgeFrequency,
  });
});
