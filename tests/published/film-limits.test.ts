import {
  degree,
  filmRegime,
  micrometre,
  millipascalSecond,
  mm,
  newton,
  petroff,
  ratio,
  rpm,
  shortBearing,
  sommerfeldNumber,
  valueIn,
} from 'crankwright';
import { describe } from 'vitest';
import { check } from './check.js';

/** Eccentricity, S (L/D)², attitude in degrees. */
const OCVIRK: readonly (readonly [number, number, number])[] = [
  [0.05, 2.01474, 86.3528],
  [0.1, 0.989979, 82.7078],
  [0.2, 0.461194, 75.4312],
  [0.4, 0.170461, 60.9396],
  [0.5, 0.106049, 53.6802],
  [0.6, 0.0625299, 46.3207],
  [0.8, 0.0138846, 30.5002],
  [0.9, 0.00331488, 20.8261],
];

describe('shortBearing', () => {
  // Integrated over the half film sin θ / (1 + e cos θ)³ by quadrature, not from the closed form.
  for (const [e, group, attitude] of OCVIRK) {
    check({
      source: 'Ocvirk, NACA TN 2808 (1952), half film, integrated',
      name: `S (L/D)² and attitude at eccentricity ${e}, whatever the length`,
      given: [0.05, 0.25, 0.5].map(ratio),
      expected: [0, 1, 2].map(() => ({ group, attitude })),
      tolerance: { relative: 1e-4 },
      got: (lengths) =>
        lengths.map((lengthToDiameter) => {
          const film = shortBearing({ eccentricity: ratio(e), lengthToDiameter });
          return {
            group: film.sommerfeld * lengthToDiameter ** 2,
            attitude: valueIn(film.attitude, degree),
          };
        }),
    });
  }
  check({
    source: 'Friswell, Penny, Garvey and Lees, Dynamics of Rotating Machines (2010), Example 5.5.1',
    name: '100 by 30 mm, c 0.1 mm, 0.1 Pa·s, 1500 rpm: eccentricity 0.2663 carries 525 N',
    given: { eccentricity: ratio(0.2663), lengthToDiameter: ratio(0.3) },
    expected: 525,
    tolerance: { relative: 0.001 },
    got: (place) => {
      const one = {
        journal: mm(100),
        length: mm(30),
        clearance: mm(0.2),
        viscosity: millipascalSecond(100),
        speed: rpm(1500),
        load: newton(1),
      };
      return sommerfeldNumber(one) / shortBearing(place).sommerfeld;
    },
  });
});

describe('petroff', () => {
  check({
    basis: 'from memory',
    name: '100 by 80 mm, diametral clearance 0.1 mm, 50 mPa·s, 600 rpm: 3.95 N·m, 248 W',
    given: {
      journal: mm(100),
      length: mm(80),
      clearance: mm(0.1),
      viscosity: millipascalSecond(50),
      speed: rpm(600),
    },
    expected: { torque: 3.95, power: 248 },
    tolerance: { relative: 0.002 },
    got: (bearing) => {
      const { torque, power } = petroff(bearing);
      return { torque: Number(torque), power: Number(power) };
    },
  });
  // The book has a housing of 0.03 m², 15.3 W/(m²K), 47.29 K above the air give the heat off.
  check({
    source: 'Jindal, Machine Design, ex. 17-1, heat from the balance printed',
    name: '50 by 50 mm, c 0.025 mm, 7 mPa·s, 1200 rpm: 21.71 W',
    given: {
      journal: mm(50),
      length: mm(50),
      clearance: mm(0.05),
      viscosity: millipascalSecond(7),
      speed: rpm(1200),
    },
    expected: 0.03 * 15.3 * 47.29,
    tolerance: { relative: 0.0005 },
    got: (bearing): number => petroff(bearing).power,
  });
});

describe('filmRegime', () => {
  check({
    source: 'Norton, Machine Design, 4th ed.: below 1 the surfaces touch, above 3 they hardly do',
    name: 'boundary, mixed and full film',
    given: [0.9, 1.1, 2.9, 3.1],
    expected: ['boundary', 'mixed', 'mixed', 'full'],
    got: (films) =>
      films.map(
        (film) =>
          filmRegime(micrometre(film / 2), { journal: micrometre(0.3), shell: micrometre(0.4) })
            .regime as string,
      ),
  });
  check({
    basis: 'common practice',
    name: '0.35 µm over Rq of 0.10 and 0.15 µm is a film ratio of 1.94: mixed',
    given: micrometre(0.35),
    expected: { ratio: 1.94, regime: 'mixed' },
    tolerance: { absolute: 0.005 },
    got: (film) => {
      const found = filmRegime(film, { journal: micrometre(0.1), shell: micrometre(0.15) });
      return { ratio: Number(found.finding.value), regime: found.regime as string };
    },
  });
});
