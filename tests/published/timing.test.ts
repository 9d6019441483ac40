import {
  type Angle,
  angleAtTravel,
  degree,
  mm,
  oneTooth,
  pistonTravel,
  pointsDwell,
  ratio,
  rimAngle,
  rimDistance,
  rotorEdgeAngle,
  sparkLaterByDwell,
  sparkSetting,
  teethOff,
  topDeadCentre,
  valueIn,
  valveTiming,
} from 'crankwright';
import { describe } from 'vitest';
import { check } from './check.js';

const inDegrees = (angle: Angle | undefined) =>
  angle === undefined ? Number.NaN : Math.round(valueIn(angle, degree) * 1e6) / 1e6;

describe('marks on a rim', () => {
  check({
    source:
      'TM 5-3895-382-24, table 13: circumference times degrees over 360; the number worked by hand',
    name: '2.5 degrees on a pulley of 203 mm',
    given: { diameter: mm(203), angle: degree(2.5) },
    // 637.743 mm * 2.5 / 360.
    expected: mm(4.42877),
    tolerance: { relative: 1e-5 },
    got: (turn) => rimDistance(turn).arc,
  });
  check({
    source:
      'TM 5-3895-382-24: one tooth of the camshaft gear is 23 mm on a pulley of 203 mm, 35 mm on 310 mm, 37 mm on 327 mm',
    name: 'three rims tell the same tooth, within the half millimetre that they are printed to',
    given: [
      [mm(203), mm(23)],
      [mm(310), mm(35)],
      [mm(327), mm(37)],
    ] as const,
    expected: [13, 13, 13],
    // Half a millimetre on the smallest is 0.28 degrees.
    tolerance: { absolute: 0.28 },
    got: (rims) => rims.map(([diameter, arc]) => inDegrees(rimAngle({ diameter, arc }))),
  });
});

describe('travel of the piston', () => {
  check({
    source: 'law of cosines, worked by hand: crank 40, rod 120 mm, a right angle at the main',
    name: 'the crank at 90 degrees',
    given: { stroke: mm(80), rodLength: mm(120), angle: degree(90) },
    // 40 + 120 - sqrt(120² - 40²) = 160 - 113.1371.
    expected: mm(46.8629),
    tolerance: { relative: 1e-6 },
    got: pistonTravel,
  });
  check({
    source: 'law of cosines, worked by hand: crank 3, rod 5, and the pin 4 above the main: a 3-4-5',
    name: 'the angle back from the travel',
    given: { stroke: mm(60), rodLength: mm(50), travel: mm(40) },
    // cos = (3² + 4² - 5²) / (2 * 3 * 4) = 0; the travel is 3 + 5 - 4.
    expected: 90,
    got: (crank) => inDegrees(angleAtTravel(crank)),
  });
});

describe('top dead centre', () => {
  check({
    source: 'a motorcycle workshop page on finding top dead centre: 21 and 15 degrees, reset to 18',
    name: 'the stop is half of the sum from the top when the wheel is right',
    given: { first: degree(21), second: degree(-15) },
    expected: [3, 18],
    got: (stops) => {
      const { off, fromStop } = topDeadCentre(stops);
      return [inDegrees(off), inDegrees(fromStop)];
    },
  });
  check({
    source: "a cam maker's page on degree wheels: 36.75 one way, 35.25 the other, 36 on average",
    name: 'the stop is the mean of both readings from the top',
    given: { first: degree(36.75), second: degree(360 - 35.25) },
    expected: 36,
    got: (stops) => inDegrees(topDeadCentre(stops).fromStop),
  });
});

describe('valve timing', () => {
  const figures = ([opens, closes, exhaustOpens, exhaustCloses]: readonly [
    number,
    number,
    number,
    number,
  ]) => {
    const timing = valveTiming({
      inletOpens: { angle: degree(opens), before: 'top' },
      inletCloses: { angle: degree(closes), after: 'bottom' },
      exhaustOpens: { angle: degree(exhaustOpens), before: 'bottom' },
      exhaustCloses: { angle: degree(exhaustCloses), after: 'top' },
    });
    return {
      durations: [inDegrees(timing.inlet?.duration), inDegrees(timing.exhaust?.duration)],
      centrelines: [inDegrees(timing.inlet?.centreline), inDegrees(timing.exhaust?.centreline)],
      overlap: inDegrees(timing.overlap),
      separation: inDegrees(timing.lobeSeparation),
      advance: inDegrees(timing.camAdvance),
    };
  };
  check({
    source:
      "a camshaft maker's definitions: 10, 30, 40, 20 give 220 and 240 degrees of duration. It prints an overlap of 10 + 30 = 40, with the inlet's closing in the place of the exhaust's; by its own definition it is 10 + 20, which we trust",
    name: 'duration and overlap',
    given: [10, 30, 40, 20] as const,
    expected: [220, 240, 30],
    got: (places) => {
      const { durations, overlap } = figures(places);
      return [...durations, overlap];
    },
  });
  check({
    source: "a club's page on valve timing diagrams: 20-60, 60-20 is 260 degrees both",
    name: 'an even cam; centrelines and separation worked by hand, (180 + 60 - 20) / 2',
    given: [20, 60, 60, 20] as const,
    expected: {
      durations: [260, 260],
      centrelines: [110, 110],
      overlap: 40,
      separation: 110,
      advance: 0,
    },
    got: figures,
  });
  check({
    source: 'the same page: advanced by 5 crank degrees it reads 25-55, 65-15',
    name: 'the same cam advanced',
    given: [25, 55, 65, 15] as const,
    expected: {
      durations: [260, 260],
      centrelines: [105, 115],
      overlap: 40,
      separation: 110,
      advance: 5,
    },
    got: figures,
  });
  check({
    source:
      "a cam maker's example: opens 10 after top, closes 39 after bottom, 209 degrees. It prints a lobe centre of 114.5",
    name: 'a valve that opens after top',
    given: { opens: degree(10), closes: degree(39) },
    expected: [209, 114.5],
    got: ({ opens, closes }) => {
      const { inlet } = valveTiming({
        inletOpens: { angle: opens, after: 'top' },
        inletCloses: { angle: closes, after: 'bottom' },
      });
      return [inDegrees(inlet?.duration), inDegrees(inlet?.centreline)];
    },
  });
  check({
    source:
      'TM 9-8000, figure 2-55: inlet opens 28 before top, exhaust closes 45 after: 73 degrees',
    name: 'overlap',
    given: { opens: degree(28), closes: degree(45) },
    expected: 73,
    got: ({ opens, closes }) =>
      inDegrees(
        valveTiming({
          inletOpens: { angle: opens, before: 'top' },
          exhaustCloses: { angle: closes, after: 'top' },
        }).overlap,
      ),
  });
});

describe('timing gears', () => {
  check({
    source:
      'TM 5-4210-229-14&P, paragraph 6-6: about 11 degrees of the damper for a tooth; inlet opens 24 ± 3 degrees before top at a lash that is set',
    name: 'a reading 11 degrees late is a tooth, one 3 degrees late is none (33 teeth are supposed)',
    given: { crankTeeth: 33, camTeeth: 66 },
    expected: [10.909091, 'teeth off', 'in mesh'],
    got: (gears) => {
      const opens = (degrees: number) => ({
        inletOpens: { angle: degree(degrees), before: 'top' } as const,
      });
      const found = (degrees: number): string =>
        teethOff({
          ...gears,
          found: opens(degrees),
          wanted: opens(24),
          within: degree(1),
          wantedWithin: degree(3),
          lashSet: true,
        }).outcome;
      const { atCrank } = oneTooth({ crankTeeth: 33, gearTeeth: 66 });
      return [inDegrees(atCrank), found(13), found(21)];
    },
  });
});

describe('spark', () => {
  check({
    source:
      "a tractor restorer's note: a lag of 14 degrees at half speed is an advance of 28 with the coupling snapping at the top",
    name: 'the lag counts twice at the crank',
    given: { advance: degree(28), speedRatio: ratio(0.5), lag: degree(14) },
    expected: [28, 0],
    got: (spark) => {
      const { heldBack, starting } = sparkSetting(spark);
      return [inDegrees(heldBack), inDegrees(starting)];
    },
  });
  check({
    source: 'an encyclopedia on dwell: of 90 degrees, 45 are 50 % and 50 are 56 %',
    name: 'dwell of a cam with four lobes',
    given: [degree(45), degree(50)] as const,
    expected: [0.5, 0.56],
    tolerance: { absolute: 0.005 },
    got: (dwells) => dwells.map((dwell): number => pointsDwell({ lobes: 4, dwell }).share),
  });
  check({
    source: 'a page on dwell: 35 degrees closed and 25 open of the 60 of a six, 58 %',
    name: 'dwell of a cam with six lobes',
    given: { lobes: 6, dwell: degree(35) },
    expected: [25, 0.58],
    tolerance: { absolute: 0.005 },
    got: (points) => {
      const { open, share } = pointsDwell(points);
      return [inDegrees(open), share as number];
    },
  });
  check({
    basis: 'common practice',
    name: 'a degree more of dwell is a degree later at the crank, on a cam at half speed',
    given: { from: degree(50), to: degree(51), speedRatio: ratio(0.5) },
    expected: 1,
    got: (change) => inDegrees(sparkLaterByDwell(change)),
  });
  check({
    source: 'an equilateral triangle: a chord as long as the radius is 60 degrees',
    name: 'edge distance as an angle',
    given: { rotorDiameter: mm(50), edgeDistance: mm(25), speedRatio: ratio(1.5) },
    expected: [60, 40],
    got: (edge) => {
      const { atMagneto, atCrank } = rotorEdgeAngle(edge);
      return [inDegrees(atMagneto), inDegrees(atCrank)];
    },
  });
});
