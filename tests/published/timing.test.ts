import {
  type Angle,
  angleAtTravel,
  degree,
  mm,
  pistonTravel,
  rimAngle,
  rimDistance,
  valueIn,
} from 'crankwright';
import { describe } from 'vitest';
import { check } from './check.js';

const inDegrees = (angle: Angle) => valueIn(angle, degree);

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
