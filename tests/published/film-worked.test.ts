import {
  cubicMetrePerSecond,
  degree,
  filmThickness,
  finiteBearingAt,
  inch,
  joulePerKilogramKelvin,
  kilogramPerCubicMetre,
  lbf,
  lbfInch,
  litrePerMinute,
  millipascalSecond,
  mm,
  newton,
  psiGauge,
  ratio,
  reyn,
  rpm,
  sommerfeldNumber,
  temperatureRise,
  valueIn,
  watt,
} from 'crankwright';
import { describe } from 'vitest';
import { check } from './check.js';

describe('worked bearings', () => {
  // µ 4 µreyn, 30 rev/s, 500 lbf, r 0.75 in, c 0.0015 in, l 1.5 in. Charts: to 3 %.
  const shigley = {
    journal: inch(1.5),
    length: inch(1.5),
    clearance: inch(0.003),
    viscosity: reyn(4e-6),
    speed: rpm(1800),
    load: lbf(500),
  };
  const floating = (bearing: Parameters<typeof filmThickness>[0]) => {
    const film = filmThickness(bearing);
    if (film.outcome !== 'floats') throw new Error(film.outcome);
    return film;
  };
  const cubicInch = 0.0254 ** 3;
  check({
    source: "Shigley's Mechanical Engineering Design, 9th ed., Examples 12-1 to 12-4, from memory",
    name: 'film, attitude, friction, torque, flow, side flow and peak pressure',
    given: shigley,
    expected: {
      sommerfeld: 0.135,
      film: 0.00063,
      eccentricity: 0.58,
      attitude: 53,
      friction: 0.007,
      torque: 2.62,
      flow: 0.217,
      sideFlow: 0.142,
      peak: 529,
    },
    tolerance: { relative: 0.03 },
    got: (bearing) => {
      const film = floating(bearing);
      return {
        sommerfeld: Number(sommerfeldNumber(bearing)),
        film: valueIn(film.film, inch),
        eccentricity: Number(film.eccentricity),
        attitude: valueIn(film.attitude, degree),
        friction: Number(film.friction),
        torque: valueIn(film.torque, lbfInch),
        flow: film.flow / cubicInch,
        sideFlow: film.sideFlow / cubicInch,
        peak: valueIn(film.peakPressure, psiGauge),
      };
    },
  });
  check({
    source: "Shigley's Mechanical Engineering Design, 9th ed., Example 12-4, from memory",
    name: 'pressure is greatest 18.5° past the load line, and the film ends 75° past it',
    given: shigley,
    expected: [18.5, 75],
    tolerance: { absolute: 3 },
    got: (bearing) => {
      const { peakAngle, ruptureAngle } = floating(bearing).numbers;
      return [valueIn(peakAngle, degree), valueIn(ruptureAngle, degree)];
    },
  });
  check({
    basis: 'from memory',
    name: 'a bearing of 25 by 12.5 mm, 55 mPa·s, 1100 rpm, 1.2 kN (a textbook problem, charts)',
    given: {
      journal: mm(25),
      length: mm(12.5),
      clearance: mm(0.03),
      viscosity: millipascalSecond(55),
      speed: rpm(1100),
      load: newton(1200),
    },
    expected: { film: 0.0045, friction: 0.00648, power: 11.2, flow: 219, sideFlow: 177 },
    tolerance: { relative: 0.03 },
    got: (bearing) => {
      const { film, friction, power, flow, sideFlow } = floating(bearing);
      return {
        film: valueIn(film, mm),
        friction: Number(friction),
        power: Number(power),
        flow: flow * 1e9,
        sideFlow: sideFlow * 1e9,
      };
    },
  });
  check({
    basis: 'from memory',
    name: 'a bearing of 2 by 1 in, 4.2 µreyn, 3000 rpm, 1000 lbf (a textbook sample, charts)',
    given: {
      journal: inch(2),
      length: inch(1),
      clearance: inch(0.003),
      viscosity: reyn(4.2e-6),
      speed: rpm(3000),
      load: lbf(1000),
    },
    expected: { film: 0.00045, attitude: 40, friction: 0.008, flow: 0.39, side: 0.81, peak: 1562 },
    tolerance: { relative: 0.03 },
    got: (bearing) => {
      const { film, attitude, friction, flow, peakPressure, numbers } = floating(bearing);
      return {
        film: valueIn(film, inch),
        attitude: valueIn(attitude, degree),
        friction: Number(friction),
        flow: flow / cubicInch,
        side: Number(numbers.sideFlow),
        peak: valueIn(peakPressure, psiGauge),
      };
    },
  });
  // The book interpolates in a straight line between eccentricities 0.4 and 0.6.
  check({
    source: 'Jindal, Machine Design, ex. 17-4',
    name: '60 by 60 mm, c 0.06 mm, 30 mPa·s, 1440 rpm, 3000 N',
    given: {
      journal: mm(60),
      length: mm(60),
      clearance: mm(0.12),
      viscosity: millipascalSecond(30),
      speed: rpm(1440),
      load: newton(3000),
    },
    expected: { film: 0.032, friction: 0.00985, flow: 0.638, power: 133.7 },
    tolerance: { relative: 0.035 },
    got: (bearing) => {
      const { film, friction, flow, power } = floating(bearing);
      return {
        film: valueIn(film, mm),
        friction: Number(friction),
        flow: valueIn(flow, litrePerMinute),
        power: Number(power),
      };
    },
  });
  check({
    source: 'Jindal, Machine Design, ex. 17-2',
    name: '60 by 60 mm, c 0.04 mm, 1260 rpm, 6000 N: 6.293 mPa·s for a film of 0.008 mm',
    given: {
      journal: mm(60),
      length: mm(60),
      clearance: mm(0.08),
      viscosity: millipascalSecond(6.293),
      speed: rpm(1260),
      load: newton(6000),
    },
    expected: 0.008,
    tolerance: { relative: 0.02 },
    got: (bearing) => valueIn(floating(bearing).film, mm),
  });
  check({
    source: 'Jindal, Machine Design, ex. 17-3',
    name: '60 by 60 mm, c 0.024 mm, 1440 rpm, 10.5 kN, 3.469 mPa·s: film 0.0048 mm, 0.2874 L/min',
    given: {
      journal: mm(60),
      length: mm(60),
      clearance: mm(0.048),
      viscosity: millipascalSecond(3.469),
      speed: rpm(1440),
      load: newton(10_500),
    },
    expected: [0.0048, 0.2874],
    tolerance: { relative: 0.02 },
    got: (bearing) => {
      const { film, flow } = floating(bearing);
      return [valueIn(film, mm), valueIn(flow, litrePerMinute)];
    },
  });
  // Chart of 9.70 ΔT/P (°F, psi) against S, fitted in the book; it is friction over the heat carried off.
  check({
    source:
      "Shigley's Mechanical Engineering Design, 9th ed., Fig. 12-24, fitted curve, from memory",
    name: 'what friction warms the oil at l/d 1: 0.349109 + 6.00940 S + 0.047467 S²',
    given: [0.631, 0.264, 0.121, 0.0446],
    expected: [4.15996, 1.93889, 1.07694, 0.61722],
    tolerance: { relative: 0.06 },
    got: (all) =>
      all.map((sommerfeld) => {
        const film = finiteBearingAt({ sommerfeld: ratio(sommerfeld), lengthToDiameter: ratio(1) });
        return film.friction / (film.flow * (1 - film.sideFlow / 2));
      }),
  });
  // 8.30 P (r/c)f / ((1 - Qs/2Q) Q/(rcNl)) with the chart readings 3.50, 4.28 and 0.655 and 222.2 psi, for
  // 861 kg/m³ and 1760 J/(kg·K), worked by hand.
  check({
    source: "Shigley's Mechanical Engineering Design, 9th ed., Eq. 12-15 in SI, from memory",
    name: 'the bearing of Examples 12-1 to 12-4 warms its oil by 15.5 °C',
    given: {
      power: watt(55.8),
      flow: cubicMetrePerSecond(0.2167 * cubicInch),
      sideFlow: cubicMetrePerSecond(0.142 * cubicInch),
      density: kilogramPerCubicMetre(861),
      specificHeat: joulePerKilogramKelvin(1760),
    },
    expected: 15.46,
    tolerance: { relative: 0.01 },
    got: (oil) => Number(temperatureRise(oil)),
  });
});
