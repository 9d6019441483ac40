import {
  type FilmNumbers,
  finiteBearing,
  finiteBearingAt,
  type LengthToDiameter,
  type Ratio,
  ratio,
  shortBearing,
  solveReynolds,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { computeFilmMap } from '../../scripts/compute-film-map.js';
import { filmMapData } from '../../src/bearings/film/film-map-data.js';

const place = (eccentricity: number, lengthToDiameter: LengthToDiameter) => ({
  eccentricity: eccentricity as Ratio,
  lengthToDiameter,
});
const seed = { seed: 341, numRuns: 300 };
const eccentricity = fc.double({ min: 0.01, max: 0.998, noNaN: true });
/** Lengths over diameter from 0.1 to 10, short ones as often as long ones. */
const slender = fc.double({ min: -1, max: 1, noNaN: true }).map((power) => ratio(10 ** power));

const off = (got: number, expected: number) => Math.abs(got / expected - 1);

describe('the map of films', () => {
  it('is what its script makes of the solver', () => {
    // On half as fine a grid as the script takes, so that it is not only that nobody has edited it.
    const made = computeFilmMap(96);
    const quantities = Object.keys(filmMapData) as (keyof typeof filmMapData)[];
    expect(Object.keys(made)).toEqual(quantities);
    for (const quantity of quantities) {
      const [kept, computed] = [filmMapData[quantity].flat(2), made[quantity].flat()];
      expect(kept.length).toBeGreaterThan(40);
      // The largest coefficients, which come first.
      const apart = made[quantity]
        .slice(0, 5)
        .flatMap((row, i) =>
          row.slice(0, 5).map((value, j) => Math.abs(value - (filmMapData[quantity][i]?.[j] ?? 0))),
        );
      expect(Math.max(...apart)).toBeLessThan(quantity === 'ruptureAt' ? 0.01 : 0.004);
      expect(computed.length).toBeGreaterThan(40);
    }
  });

  it('agrees with the solver within 0.5 % at random places', () => {
    fc.assert(
      fc.property(eccentricity, slender, (e, length) => {
        const at = place(e, length);
        const [mapped, solved] = [finiteBearing(at), solveReynolds({ ...at, placesAround: 96 })];
        for (const key of ['sommerfeld', 'friction', 'flow', 'pressureRatio'] as const) {
          expect(off(mapped[key], solved[key])).toBeLessThan(0.005);
        }
        expect(off(mapped.attitude, solved.attitude)).toBeLessThan(0.005);
        expect(Math.abs(mapped.sideFlow - solved.sideFlow)).toBeLessThan(0.005);
        expect(Math.abs(mapped.peakAngle - solved.peakAngle)).toBeLessThan(0.02);
        expect(Math.abs(mapped.ruptureAngle - solved.ruptureAngle)).toBeLessThan(0.06);
      }),
      seed,
    );
  });

  it('runs on into the infinitely long bearing', () => {
    for (const e of [0.01, 0.1, 0.3, 0.5, 0.7, 0.9, 0.98]) {
      const [mapped, exact] = [finiteBearing, solveReynolds].map((of) => of(place(e, 'infinite')));
      const [long, endless] = [mapped, exact] as [FilmNumbers, FilmNumbers];
      for (const key of ['sommerfeld', 'attitude', 'friction', 'flow', 'pressureRatio'] as const) {
        expect(off(long[key], endless[key])).toBeLessThan(0.005);
      }
      expect(long.sideFlow).toBe(0);
      const nearly = finiteBearing(place(e, ratio(1e6)));
      expect(off(nearly.sommerfeld, long.sommerfeld)).toBeLessThan(1e-4);
    }
  });
});

describe('the solver', () => {
  it('comes to the same on a finer grid: the Sommerfeld number to 0.5 %', () => {
    fc.assert(
      fc.property(eccentricity, slender, (e, length) => {
        const at = place(e, length);
        const [usual, fine] = [solveReynolds(at), solveReynolds({ ...at, placesAround: 192 })];
        expect(off(usual.sommerfeld, fine.sommerfeld)).toBeLessThan(0.005);
        expect(off(usual.flow, fine.flow)).toBeLessThan(0.005);
        expect(Math.abs(usual.ruptureAngle - fine.ruptureAngle)).toBeLessThan(0.09);
      }),
      { ...seed, numRuns: 40 },
    );
  });

  it('loses no oil: what flows in leaves at the ends or where the film breaks', () => {
    fc.assert(
      fc.property(eccentricity, slender, (e, length) => {
        const { flow, sideFlow } = solveReynolds(place(e, length));
        // The film breaks beyond the narrowest gap, where the gap is not yet the widest.
        const left = (flow * (1 - sideFlow)) / Math.PI;
        expect(left).toBeGreaterThan((1 - e) * 0.99);
        expect(left).toBeLessThan(1 + e);
      }),
      seed,
    );
  });
});

describe('a finite bearing', () => {
  it('is found again from its load', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.0101, max: 0.9979, noNaN: true }), slender, (e, length) => {
        const film = finiteBearing(place(e, length));
        const again = finiteBearingAt({ sommerfeld: film.sommerfeld, lengthToDiameter: length });
        expect(again.eccentricity).toBeCloseTo(e, 9);
      }),
      seed,
    );
  });

  it('carries more the nearer the journal is to the shell, and the longer it is', () => {
    fc.assert(
      fc.property(eccentricity, eccentricity, slender, slender, (e, f, length, longer) => {
        const less = finiteBearing(place(Math.min(e, f), length)).sommerfeld;
        const more = finiteBearing(place(Math.max(e, f), length)).sommerfeld;
        expect(more).toBeLessThanOrEqual(less);
        const [short, long] = [Math.min(length, longer), Math.max(length, longer)];
        const atShort = finiteBearing(place(e, ratio(short))).sommerfeld;
        expect(finiteBearing(place(e, ratio(long))).sommerfeld).toBeLessThanOrEqual(atShort);
      }),
      seed,
    );
  });

  it('is Ocvirk’s short one where it is short, and carries less where it is not', () => {
    fc.assert(
      fc.property(eccentricity, slender, (e, length) => {
        const at = { eccentricity: e as Ratio, lengthToDiameter: length };
        const [short, finite] = [shortBearing(at), finiteBearing(at)];
        const promised = short.sommerfeld / finite.sommerfeld;
        expect(promised).toBeLessThan(1.001);
        if (short.range === 'within') expect(promised).toBeGreaterThan(0.9);
      }),
      seed,
    );
    // Flow and pressure, too, where it is short.
    for (const e of [0.1, 0.3, 0.5, 0.7, 0.9]) {
      const at = { eccentricity: e as Ratio, lengthToDiameter: ratio(0.1) };
      const [short, finite] = [shortBearing(at), finiteBearing(at)];
      expect(off(short.flow, finite.flow)).toBeLessThan(0.001);
      expect(off(short.flow * short.sideFlow, finite.flow * finite.sideFlow)).toBeLessThan(0.003);
      expect(off(short.pressureRatio, finite.pressureRatio)).toBeLessThan(0.08);
      expect(Math.abs(short.peakAngle - finite.peakAngle)).toBeLessThan(0.01);
    }
    const far = { eccentricity: ratio(0.9), lengthToDiameter: ratio(0.5) };
    const low = 1 - shortBearing(far).sommerfeld / finiteBearing(far).sommerfeld;
    expect(low).toBeGreaterThan(0.57);
    expect(low).toBeLessThan(0.59);
    expect(shortBearing(far).range).toBe('too long');
  });
});
