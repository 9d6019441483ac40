import {
  celsius,
  centistokes,
  type FedBearing,
  filmThickness,
  heatBalance,
  joulePerKilogramKelvin,
  lbf,
  micrometre,
  mm,
  percent,
  radianPerSecond,
  rpm,
  temperatureRise,
  thou,
  times,
  type WarmFilm,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fed } from './pump-set.js';

const seed = { seed: 129, numRuns: 60 };

/** How far a result is from balancing heat made and heat carried. */
function unbalanced(bearing: FedBearing, { film, temperature, rise }: WarmFilm): number {
  if (film.outcome !== 'floats') throw new Error(film.outcome);
  const { power, flow, sideFlow } = film;
  // Density at the temperature of the film, of the default expansion, to a thousandth.
  const density = (bearing.oil.density * (1 - 0.0007 * (temperature - celsius(15)))) as never;
  const { specificHeat = joulePerKilogramKelvin(2000), carried = percent(100) } = bearing;
  const expected = temperatureRise({ power, flow, sideFlow, density, specificHeat, carried });
  expect(temperature).toBeCloseTo(bearing.inlet + rise / 2, 6);
  return Math.abs(rise / expected - 1);
}

describe('the temperature that a bearing comes to', () => {
  it('carries away as much heat as friction makes', () => {
    const load = fc.double({ min: 0.2, max: 5, noNaN: true });
    const speed = fc.double({ min: 0.2, max: 3, noNaN: true });
    fc.assert(
      fc.property(load, speed, (k, n) => {
        const bearing = { ...fed, load: times(fed.load, k), speed: times(fed.speed, n) };
        expect(unbalanced(bearing, heatBalance(bearing))).toBeLessThan(0.003);
      }),
      seed,
    );
  });

  it('is that of the film at its own viscosity', () => {
    const { film, viscosity } = heatBalance(fed);
    const { journal, length, clearance, speed, load } = fed;
    expect(film).toEqual(filmThickness({ journal, length, clearance, speed, load, viscosity }));
  });

  it('is the inlet’s where the oil carries no heat', () => {
    const cold = heatBalance({ ...fed, carried: percent(0) });
    expect(cold.temperature).toBe(fed.inlet);
    expect(cold.rise).toBe(0);
  });

  it('is higher with more speed, load, and a warmer inlet; lower with a looser bearing', () => {
    const { temperature } = heatBalance(fed);
    expect(heatBalance({ ...fed, speed: rpm(2400) }).temperature).toBeGreaterThan(temperature);
    expect(heatBalance({ ...fed, load: lbf(800) }).temperature).toBeGreaterThan(temperature);
    expect(heatBalance({ ...fed, inlet: celsius(80) }).temperature).toBeGreaterThan(temperature);
    expect(heatBalance({ ...fed, clearance: thou(3) }).temperature).toBeLessThan(temperature);
  });

  it('says where it left the range of the viscosity line', () => {
    expect(heatBalance(fed).range).toBe('within');
    const hot = { ...fed, inlet: celsius(145), speed: rpm(6000), load: lbf(40) };
    expect(heatBalance(hot).range).toBe('above');
    expect(
      heatBalance({ ...fed, inlet: celsius(-42), speed: rpm(1), carried: percent(0) }).range,
    ).toBe('below');
  });

  it('says that it runs too hot, whatever the load', () => {
    const tight = { ...fed, clearance: micrometre(10), speed: radianPerSecond(2000) };
    for (const load of [lbf(0), lbf(400)]) {
      expect(heatBalance({ ...tight, load }).film).toMatchObject({ because: 'it runs too hot' });
    }
  });

  it('refuses an inlet at which the oil is no oil any more, by its name', () => {
    expect(() => heatBalance({ ...fed, inlet: celsius(-65) })).toThrow(/^inlet: .* for this oil/);
    const thin = {
      line: [
        { temperature: celsius(40), viscosity: centistokes(0.6) },
        { temperature: celsius(100), viscosity: centistokes(0.3) },
      ],
      density: fed.oil.density,
    } as const;
    expect(() => heatBalance({ ...fed, oil: thin, inlet: celsius(220) })).toThrow(/^inlet: /);
    // Cold and hardly loaded, at a viscosity that no film is given.
    const cold = { ...fed, load: lbf(0.2), inlet: celsius(-40) };
    expect(heatBalance(cold).film.outcome).toBe('hardly loaded');
  });

  it('takes a bearing of a tenth of its journal, however that was rounded', () => {
    for (const size of [50, 45, 35, 33]) {
      const short = {
        ...fed,
        journal: mm(size),
        length: mm(size / 10),
        clearance: mm(size / 1000),
      };
      expect(heatBalance({ ...short, load: lbf(0) }).film.outcome).toBe('hardly loaded');
      expect(heatBalance({ ...short, load: lbf(2) }).film.outcome).toBe('floats');
    }
  });

  it('gives a film’s verdicts as they are', () => {
    const still = heatBalance({ ...fed, speed: rpm(0) });
    expect(still.film).toMatchObject({ outcome: 'no film', because: 'it stands still' });
    expect(still.temperature).toBe(fed.inlet);
    expect(heatBalance({ ...fed, load: lbf(0) }).film.outcome).toBe('hardly loaded');
    expect(heatBalance({ ...fed, load: lbf(0) }).temperature).toBeGreaterThan(fed.inlet);
    expect(heatBalance({ ...fed, speed: rpm(20), load: lbf(90_000) }).film).toMatchObject({
      outcome: 'no film',
      because: 'the load is too great',
    });
  });
});
