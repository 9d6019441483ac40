import { finiteBearing, type Ratio, ratio } from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { overShort } from '../../scripts/compute-mobility-map.js';
import { squeezeFilm } from '../../src/bearings/film/squeeze-film.js';
import { finiteMobility } from '../../src/bearings/orbit/finite-mobility.js';
import { shortMobility } from '../../src/bearings/orbit/mobility.js';

const at = (lengthToDiameter: number, x: number, y: number) => {
  const mobility = finiteMobility(lengthToDiameter);
  mobility.set(x, y);
  return { along: mobility.along, across: mobility.across };
};

describe('a film that is squeezed', () => {
  it('carries what the turning journal’s does, seen from halfway between journal and shell', () => {
    // A steady journal stands still; seen from there it moves around at half the speed, against the turning.
    for (const [e, length] of [
      [0.5, 0.25],
      [0.6, 0.5],
      [0.8, 1],
      [0.9, 0.5],
      [0.95, 2],
    ] as const) {
      const { towards, across } = squeezeFilm(e, length, -Math.PI / 2, 96);
      const steady = finiteBearing({
        eccentricity: ratio(e),
        lengthToDiameter: ratio(length),
      });
      // Load over 6 µ(r/c)² DL (e ω/2), with N = ω/2π: S = 1 / (6 π e load). Only the steady film is held to no
      // pressure at the widest gap, which tells at small eccentricities.
      const sommerfeld = 1 / (6 * Math.PI * e * Math.hypot(towards, across));
      expect(Math.abs(sommerfeld / steady.sommerfeld - 1)).toBeLessThan(0.005);
      expect(Math.abs(Math.atan2(-across, towards) - steady.attitude)).toBeLessThan(0.02);
    }
  });

  it('is the same to either side', () => {
    const [one, other] = [0.7, -0.7].map((way) => squeezeFilm(0.6, 0.5, way, 48));
    expect(one?.towards).toBeCloseTo(other?.towards ?? 0, 3);
    expect(one?.across).toBeCloseTo(-(other?.across ?? 0), 3);
  });
});

describe('the mobility of a finite bearing', () => {
  it('is what the squeezed films say, within 2 % where the pin mostly runs', () => {
    const eccentricity = fc.double({ min: 0.05, max: 0.97, noNaN: true });
    const angle = fc.double({ min: 0.05, max: 3.05, noNaN: true });
    const length = fc.double({ min: -1, max: 0.3, noNaN: true }).map((power) => 10 ** power);
    fc.assert(
      fc.property(eccentricity, angle, length, (e, way, lengthToDiameter) => {
        const [x, y] = [e * Math.cos(way), -e * Math.sin(way)];
        const mapped = at(lengthToDiameter, x, y);
        const short = shortMobility(lengthToDiameter);
        short.set(x, y);
        const solved = overShort(x, y, lengthToDiameter, 48);
        const along = short.along * Math.exp(solved.along);
        const across = short.across * Math.exp(solved.across);
        const off = Math.hypot(mapped.along - along, mapped.across - across);
        expect(off / Math.hypot(along, across)).toBeLessThan(0.02);
      }),
      { seed: 2808, numRuns: 25 },
    );
  });

  it('is the short bearing’s where the bearing is short, to the 12 % of that fit', () => {
    for (const [x, y] of [
      [0, -0.3],
      [0.5, -0.2],
      [0.8, 0.1],
      [-0.6, 0.4],
    ] as const) {
      const short = shortMobility(0.1);
      short.set(x, y);
      const { along, across } = at(0.1, x, y);
      expect(Math.abs(along / short.along - 1)).toBeLessThan(0.12);
      expect(Math.abs(across / short.across - 1)).toBeLessThan(0.12);
    }
  });

  it('gives way more than the short bearing says, the more so the longer it is', () => {
    const over = [0.2, 0.4, 0.6, 0.8, 1].map((length) => {
      const short = shortMobility(length);
      short.set(0.85, -0.1);
      return at(length, 0.85, -0.1).along / short.along;
    });
    expect(over).toEqual([...over].sort((a, b) => a - b));
    expect(over[0]).toBeGreaterThan(1);
    expect(over[4]).toBeGreaterThan(3);
  });

  it('mirrors: what lies on the other side goes the other way', () => {
    const [left, right] = [at(0.6, 0.3, 0.5), at(0.6, 0.3, -0.5)];
    expect(left.along).toBe(right.along);
    expect(left.across).toBe(-right.across);
  });

  it('holds on to a film at the edge of its map and beyond', () => {
    const near = [0.99, 0.999, 0.9999].map((x) => at(0.6, x, 0).along);
    expect(near).toEqual([...near].sort((a, b) => b - a));
    expect(near.every((value) => value > 0)).toBe(true);
    expect(at(0.6, -0.9999 as Ratio, 0).along).toBeGreaterThan(0);
  });
});
