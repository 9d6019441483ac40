import { type PlaceInBearing, ratio, shortBearingMobility } from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { shortMobility } from '../../src/bearings/orbit/mobility.js';
import { notNumbers, refusal } from '../quantities/refusal.js';

/**
 * The half film of a short bearing, straight from Reynolds' equation: moved with a unit speed, oil is squeezed
 * where the gap closes, (v·n) / h³ of pressure at each place around, and what opens carries nothing. With
 * the load summed up along and across, the mobility is the speed over the load, seen from the load.
 *
 *     ∂/∂z(h³ ∂p/∂z) = 12 µ ∂h/∂t    load = µ L³ R / c² ∫ (v·n) n / h³ dθ    (L/D)² M = 1 / (2 |∫|)
 */
function halfFilm(eccentricity: number, heading: number) {
  const places = 20_000;
  let [x, y] = [0, 0];
  for (let i = 0; i < places; i++) {
    const angle = (2 * Math.PI * (i + 0.5)) / places;
    const closing = Math.cos(angle - heading);
    if (closing <= 0) continue;
    const push = (closing / (1 - eccentricity * Math.cos(angle)) ** 3) * ((2 * Math.PI) / places);
    x += push * Math.cos(angle);
    y += push * Math.sin(angle);
  }
  const size = 1 / (2 * Math.hypot(x, y));
  const load = Math.atan2(y, x);
  return {
    place: { along: eccentricity * Math.cos(load), across: -eccentricity * Math.sin(load) },
    along: size * Math.cos(heading - load),
    across: size * Math.sin(heading - load),
    size,
  };
}

const mobilityAt = (along: number, across: number, lengthToDiameter = 1) =>
  shortBearingMobility({
    along: ratio(along),
    across: ratio(across),
    lengthToDiameter: ratio(lengthToDiameter),
  });

const inside = fc
  .record({
    eccentricity: fc.double({ min: 0, max: 0.999, noNaN: true }),
    angle: fc.double({ min: -Math.PI, max: Math.PI, noNaN: true }),
  })
  .map(({ eccentricity, angle }) => ({
    along: eccentricity * Math.cos(angle),
    across: eccentricity * Math.sin(angle),
  }));

describe('shortBearingMobility', () => {
  it.each([
    [0, 1e-7],
    [0.4, 0.025],
    [0.6, 0.035],
    [0.8, 0.06],
    [0.9, 0.08],
    [0.99, 0.11],
  ])(
    'is the half film of a short bearing: at eccentricity %d within %d',
    (eccentricity, within) => {
      for (let degrees = 0; degrees <= 180; degrees += 15) {
        const { place, along, across, size } = halfFilm(eccentricity, (degrees * Math.PI) / 180);
        const fit = mobilityAt(place.along, place.across);
        expect(Math.hypot(fit.along - along, fit.across - across) / size).toBeLessThan(within);
      }
    },
  );

  it('goes with the square of diameter over length', () => {
    fc.assert(
      fc.property(inside, fc.double({ min: 0.02, max: 0.5, noNaN: true }), (place, slender) => {
        const whole = mobilityAt(place.along, place.across);
        const short = mobilityAt(place.along, place.across, slender);
        expect(short.along * slender ** 2).toBeCloseTo(whole.along, 12);
        expect(short.across * slender ** 2).toBeCloseTo(whole.across, 12);
      }),
    );
  });

  it('is the same on either side of the load', () => {
    fc.assert(
      fc.property(inside, ({ along, across }) => {
        const [one, other] = [mobilityAt(along, across), mobilityAt(along, -across)];
        expect(other.along).toBe(one.along);
        expect(other.across + one.across).toBe(0);
      }),
    );
  });

  it('never leads out of the clearance', () => {
    fc.assert(
      fc.property(fc.double({ min: -Math.PI, max: Math.PI, noNaN: true }), (angle) => {
        const [x, y] = [0.999999 * Math.cos(angle), 0.999999 * Math.sin(angle)];
        const { along, across } = mobilityAt(x, y);
        // Straight ahead it comes to rest at the shell; everywhere else it leads inwards.
        expect(along * x + across * y).toBeLessThan(1e-14);
      }),
    );
  });

  it('is what the inner loop uses', () => {
    const inner = shortMobility(0.5);
    inner.set(0.6, -0.2);
    const { along, across } = mobilityAt(0.6, -0.2, 0.5);
    expect([inner.along, inner.across]).toEqual([along, across]);
    inner.set(1.1, 0);
    expect(inner.along).toBeNaN();
  });
});

describe('shortBearingMobility refuses', () => {
  const place = { along: ratio(0.6), across: ratio(-0.2), lengthToDiameter: ratio(0.5) };

  it.each(notNumbers.map((value) => [value]))('the number %s', (value) => {
    for (const field of ['along', 'across', 'lengthToDiameter']) {
      const wrong = { ...place, [field]: value } as PlaceInBearing;
      expect(refusal(() => shortBearingMobility(wrong)).parameter).toBe(field);
    }
  });

  it('a journal that touches', () => {
    expect(refusal(() => mobilityAt(0.6, 0.8)).message).toContain('leaves no film');
    expect(() => mobilityAt(0.6, 0.79999)).not.toThrow();
  });
});
