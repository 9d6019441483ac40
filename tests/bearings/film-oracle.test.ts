import {
  degree,
  type FilmNumbers,
  finiteBearing,
  ratio,
  solveReynolds,
  valueIn,
} from 'crankwright';
import { describe, expect, it } from 'vitest';
import { endlessFilm, type PlainFilm, relaxedFilm } from './relaxed-film.js';

/** Length over diameter, and eccentricities there. */
const FINITE: readonly (readonly [number, readonly number[]])[] = [
  [0.1, [0.01, 0.3, 0.8, 0.95]],
  [0.25, [0.1, 0.6, 0.9]],
  [0.5, [0.05, 0.5, 0.95]],
  [1, [0.01, 0.1, 0.4, 0.7, 0.95]],
  // Between the lengths that a map is likely to hold.
  [0.17, [0.33]],
  [0.7, [0.65]],
  [1.4, [0.85]],
  [2, [0.2, 0.6, 0.9]],
  [3.3, [0.47]],
  [5, [0.3, 0.75, 0.95]],
];
const ENDLESS = [0.01, 0.05, 0.1, 0.3, 0.5, 0.7, 0.9, 0.95, 0.98];

const DEGREES = ['attitude', 'peakAngle', 'ruptureAngle'] as const;

/** The library's numbers, angles in degrees. */
const plain = (film: FilmNumbers): PlainFilm => ({
  sommerfeld: film.sommerfeld,
  friction: film.friction,
  flow: film.flow,
  sideFlow: film.sideFlow,
  pressureRatio: film.pressureRatio,
  ...(Object.fromEntries(DEGREES.map((key) => [key, valueIn(film[key], degree)])) as Pick<
    PlainFilm,
    (typeof DEGREES)[number]
  >),
});

/**
 * Half a per cent, of the whole flow for what leaves at the ends; half a degree for where pressure is greatest,
 * 3° for where the film breaks.
 */
const SHARE = 0.005;
const off = (got: PlainFilm, want: PlainFilm): readonly string[] =>
  (Object.keys(want) as (keyof PlainFilm)[]).flatMap((key) => {
    const fixed: { readonly [name: string]: number } = {
      peakAngle: 0.5,
      ruptureAngle: 3,
      sideFlow: SHARE,
    };
    const allowed = fixed[key] ?? SHARE * Math.abs(want[key]);
    const near = Math.abs(got[key] - want[key]) <= allowed;
    return near ? [] : [`${key}: ${got[key]} is not ${want[key]} ± ${allowed}`];
  });

const cases = FINITE.flatMap(([slenderness, all]) => all.map((e) => [e, slenderness] as const));

describe('a film relaxed on an even grid is the same film', () => {
  it.each(cases)('eccentricity %d, length over diameter %d', (e, slenderness) => {
    const want = relaxedFilm(e, slenderness);
    const place = { eccentricity: ratio(e), lengthToDiameter: ratio(slenderness) };
    expect(off(plain(solveReynolds(place)), want)).toEqual([]);
    expect(off(plain(finiteBearing(place)), want)).toEqual([]);
  });
});

describe('an endless film summed from its closed form is the same film', () => {
  it.each(ENDLESS)('eccentricity %d', (e) => {
    const want = endlessFilm(e);
    const place = { eccentricity: ratio(e), lengthToDiameter: 'infinite' as const };
    expect(off(plain(solveReynolds(place)), want)).toEqual([]);
    expect(off(plain(finiteBearing(place)), want)).toEqual([]);
  });
});
