import {
  centipoise,
  type Film,
  type FloatingFilm,
  filmThickness,
  inch,
  lbf,
  petroff,
  ratio,
  rpm,
  thou,
  times,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bigEnd } from './pump-set.js';

const oiled = { ...bigEnd, viscosity: centipoise(15) };
const floating = (film: Film): FloatingFilm => {
  if (film.outcome !== 'floats') throw new Error(film.outcome);
  return film;
};
const seed = { seed: 12, numRuns: 200 };
const factor = fc.double({ min: 0.3, max: 3, noNaN: true });

describe('the film of a loaded bearing', () => {
  it('has its parts agree with each other', () => {
    fc.assert(
      fc.property(factor, factor, (load, speed) => {
        const bearing = {
          ...oiled,
          load: times(oiled.load, load),
          speed: times(oiled.speed, speed),
        };
        const film = floating(filmThickness(bearing));
        expect(film.film).toBeCloseTo((bearing.clearance / 2) * (1 - film.eccentricity), 12);
        expect(film.torque).toBeCloseTo((film.friction * bearing.load * bearing.journal) / 2, 9);
        expect(film.power).toBeCloseTo(film.torque * bearing.speed, 6);
        expect(film.sideFlow).toBeLessThan(film.flow);
        expect(film.peakPressure).toBeGreaterThan(film.meanPressure);
        expect(film.meanPressure * bearing.journal * bearing.length).toBeCloseTo(bearing.load, 6);
      }),
      seed,
    );
  });

  it('is thicker with less load, more speed and thicker oil', () => {
    const { film } = filmThickness(oiled);
    expect(filmThickness({ ...oiled, load: lbf(300) }).film).toBeGreaterThan(film);
    expect(filmThickness({ ...oiled, speed: rpm(2400) }).film).toBeGreaterThan(film);
    expect(filmThickness({ ...oiled, viscosity: centipoise(20) }).film).toBeGreaterThan(film);
  });

  it('only sees viscosity times speed over load', () => {
    fc.assert(
      fc.property(factor, (k) => {
        const other = { ...oiled, speed: times(oiled.speed, k), load: times(oiled.load, k) };
        expect(filmThickness(other).film).toBeCloseTo(filmThickness(oiled).film, 12);
      }),
      seed,
    );
  });

  it('is none where the journal stands still: a verdict', () => {
    const still = { outcome: 'no film', because: 'it stands still', film: 0 };
    expect(filmThickness({ ...oiled, speed: rpm(0) })).toEqual(still);
    expect(filmThickness({ ...oiled, speed: rpm(0), load: lbf(0) })).toEqual(still);
  });

  it('is none where the load is too great for the map', () => {
    const { outcome, ...rest } = filmThickness({ ...oiled, speed: rpm(20), load: lbf(10_000) });
    expect(outcome).toBe('no film');
    expect(rest).toEqual({ because: 'the load is too great', film: 0 });
  });

  it('is nearly the whole gap where there is hardly a load, with Petroff’s drag', () => {
    const light = filmThickness({ ...oiled, load: lbf(0) });
    const { journal, length, clearance, viscosity, speed } = oiled;
    expect(light).toEqual({
      outcome: 'hardly loaded',
      film: 0.495 * clearance,
      ...petroff({ journal, length, clearance, viscosity, speed }),
    });
  });

  it('goes over into both ends of the map without a step', () => {
    // A little less load each time, or more, until it leaves the map: the last film on it is next to its edge.
    const films = (by: number, bearing = oiled) => {
      const seen: Film[] = [];
      for (let load = lbf(400); ; load = times(load, by)) {
        const film = filmThickness({ ...bearing, load });
        if (film.outcome !== 'floats') return { film, last: seen.at(-1) };
        seen.push(film);
      }
    };
    const light = films(0.98);
    expect(light.film.outcome).toBe('hardly loaded');
    expect(light.last?.film).toBeLessThan(light.film.film * 1.0001);
    expect(light.last?.film).toBeGreaterThan(light.film.film * 0.999);
    const last = floating(light.last as Film);
    const { speed, journal, length, clearance, viscosity } = oiled;
    const centred = petroff({ speed, journal, length, clearance, viscosity });
    expect(centred.torque / last.torque).toBeCloseTo(1, 2);
    const heavy = films(1.02, { ...oiled, speed: rpm(20) });
    expect(heavy.film.outcome).toBe('no film');
    expect(heavy.last?.film).toBeLessThan((oiled.clearance / 2) * 0.0022);
  });

  it('can be thicker in a loose bearing, which takes far more oil and rubs no less for its load', () => {
    const tight = floating(filmThickness({ ...oiled, clearance: thou(0.8) }));
    const loose = floating(filmThickness({ ...oiled, clearance: thou(1.6) }));
    expect(loose.film).toBeGreaterThan(tight.film);
    expect(loose.sideFlow).toBeGreaterThan(2 * tight.sideFlow);
  });

  it('refuses a bearing that cannot turn', () => {
    for (const clearance of [thou(-1), thou(0)]) {
      expect(() => filmThickness({ ...oiled, clearance })).toThrow('this bearing cannot turn');
    }
    expect(() => filmThickness({ ...oiled, length: inch(0.1) })).toThrow('length');
    expect(() => filmThickness({ ...oiled, clearence: ratio(1) } as never)).toThrow(
      'not a known field',
    );
  });
});
