import {
  degree,
  type FilmNumbers,
  finiteBearing,
  finiteBearingAt,
  ratio,
  solveReynolds,
  valueIn,
} from 'crankwright';
import { describe } from 'vitest';
import { check } from './check.js';
import { RAIMONDI_BOYD, SOURCE } from './raimondi-boyd.js';

const SOLUTIONS = { finiteBearing, solveReynolds } as const;

const numbersOf = (film: FilmNumbers) => ({
  sommerfeld: Number(film.sommerfeld),
  attitude: valueIn(film.attitude, degree),
  friction: Number(film.friction),
  sideFlow: Number(film.sideFlow),
});

describe.each(['finiteBearing', 'solveReynolds'] as const)('%s', (name) => {
  const solve = SOLUTIONS[name];
  for (const [length, rows] of RAIMONDI_BOYD) {
    for (const [e, sommerfeld, attitude, friction, flow, sideFlow, pressureRatio] of rows) {
      const given = {
        eccentricity: ratio(e),
        lengthToDiameter: length === 'infinite' ? length : ratio(length),
      };
      const at = `${name} at L/D ${length}, eccentricity ${e}`;
      const outermost = e === 0.97;
      check({
        source: SOURCE,
        name: `${at}: S, attitude, friction and side flow`,
        given,
        expected: { sommerfeld, attitude, friction, sideFlow },
        tolerance: { relative: outermost ? 0.035 : 0.02 },
        got: (place) => numbersOf(solve(place)),
      });
      const known: { readonly [eccentricity: number]: number } = { 0.8: 0.03, 0.9: 0.06 };
      check({
        source: SOURCE,
        name: `${at}: flow`,
        given,
        expected: flow,
        tolerance: { relative: length === 'infinite' ? (known[e] ?? 0.02) : 0.02 },
        got: (place): number => solve(place).flow,
      });
      check({
        source: SOURCE,
        name: `${at}: pressure ratio`,
        given,
        expected: pressureRatio,
        tolerance: { relative: outermost ? 0.065 : 0.04 },
        got: (place): number => solve(place).pressureRatio,
      });
    }
  }
  check({
    source: 'Swift–Stieber film of endless length: π times the film where pressure is greatest',
    name: `${name}: the flow that the tables print as 0.760 and 0.411`,
    given: [0.8, 0.9].map(ratio),
    expected: [0.782502, 0.388847],
    tolerance: { relative: 0.005 },
    got: (all) =>
      all.map((eccentricity): number => solve({ eccentricity, lengthToDiameter: 'infinite' }).flow),
  });
});

describe('finiteBearingAt', () => {
  for (const [length, rows] of RAIMONDI_BOYD) {
    check({
      source: SOURCE,
      name: `least film from load at L/D ${length}`,
      given: rows.map(([, sommerfeld]) => ratio(sommerfeld)),
      expected: rows.map(([e]) => 1 - e),
      tolerance: { relative: 0.02 },
      got: (all) =>
        all.map(
          (sommerfeld): number =>
            finiteBearingAt({
              sommerfeld,
              lengthToDiameter: length === 'infinite' ? length : ratio(length),
            }).leastFilm,
        ),
    });
  }
  // The cubic through the charts for ∞, 1, 1/2 and 1/4 of 0.98, 0.83, 0.61 and 0.36, as printed.
  check({
    source: "Shigley's Mechanical Engineering Design, Eq. 12-16, worked at l/d 2",
    name: 'least film of 0.92 at l/d 2, where 0.83 is that at l/d 1',
    given: finiteBearing({ eccentricity: ratio(0.17), lengthToDiameter: ratio(1) }).sommerfeld,
    expected: 0.92,
    tolerance: { relative: 0.03 },
    got: (sommerfeld): number =>
      finiteBearingAt({ sommerfeld, lengthToDiameter: ratio(2) }).leastFilm,
  });
});
