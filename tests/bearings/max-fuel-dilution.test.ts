import {
  celsius,
  dilutedOil,
  extrapolatedViscosity,
  type FilmStand,
  filmThickness,
  heatBalance,
  hour,
  lbf,
  maxFuelDilution,
  micrometre,
  mL,
  mLPerHour,
  percent,
  percentByVolume,
  perHour,
  quartUS,
  radianPerSecond,
  ratio,
  rpm,
  safeHours,
  times,
  valueIn,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rough } from './pump-set.js';

const standing = (stand: FilmStand) => {
  if (stand.outcome !== 'stands') throw new Error(stand.outcome);
  return stand;
};
const { roughness, ...fed } = rough;
/** A bearing that is loaded harder, so that fuel brings it down sooner. */
const hard = { ...rough, load: lbf(1500) };
const seed = { seed: 7152, numRuns: 30 };

describe('the fuel that a film stands', () => {
  it('is where the film is just the multiple of the roughness', () => {
    const multiple = fc.double({ min: 1, max: 5, noNaN: true });
    const load = fc.double({ min: 500, max: 3000, noNaN: true });
    fc.assert(
      fc.property(multiple, load, (filmRatio, pounds) => {
        const bearing = { ...rough, load: lbf(pounds), filmRatio: ratio(filmRatio) };
        const stand = maxFuelDilution(bearing);
        fc.pre(stand.outcome === 'stands');
        const { fraction, needed, clean, diluted } = standing(stand);
        expect(needed).toBeCloseTo(filmRatio * Math.hypot(roughness.journal, roughness.shell), 12);
        expect(diluted.film.film / needed).toBeCloseTo(1, 6);
        expect(clean.film.film).toBeGreaterThanOrEqual(needed);
        // The same bearing, put together from its parts.
        const oil = dilutedOil({ oil: fed.oil, fraction });
        expect(heatBalance({ ...fed, load: lbf(pounds), oil })).toEqual(diluted);
      }),
      seed,
    );
  });

  it('agrees with an answer found by walking up the fractions at one temperature', () => {
    // Without heat carried the film stays at the inlet's temperature, and no search is needed.
    const held = { ...hard, carried: percent(0) };
    const { fraction, needed } = standing(maxFuelDilution(held));
    const { journal, length, clearance, speed, load } = hard;
    const filmAt = (percentOfFuel: number) => {
      const oil = dilutedOil({ oil: hard.oil, fraction: percentByVolume(percentOfFuel) });
      const { viscosity } = extrapolatedViscosity(oil.line, hard.inlet);
      // Density at 70 °C, 55 K warmer, to a thousandth: it moves the answer by far less than a step.
      const density = oil.density * (1 - 0.00075 * 55);
      const dynamic = (viscosity * density) as never;
      return filmThickness({ journal, length, clearance, speed, load, viscosity: dynamic }).film;
    };
    let walked = 0;
    while (filmAt(walked) > needed) walked += 0.05;
    expect(Math.abs(valueIn(fraction, percentByVolume) - walked)).toBeLessThan(0.2);
  });

  it('falls with the film: more fuel, thinner film, all the way', () => {
    let last = Number.POSITIVE_INFINITY;
    for (let share = 0; share <= 60; share += 2) {
      const oil = dilutedOil({ oil: fed.oil, fraction: percentByVolume(share) });
      const { film } = heatBalance({ ...fed, load: lbf(1500), oil }).film;
      expect(film).toBeLessThan(last);
      last = film;
    }
  });

  it('is less with more load, rougher surfaces, a warmer inlet, less speed', () => {
    const { fraction } = standing(maxFuelDilution(hard));
    const less = [
      { ...hard, load: lbf(1800) },
      { ...hard, roughness: { journal: times(roughness.journal, 2), shell: roughness.shell } },
      { ...hard, inlet: celsius(80) },
      { ...hard, speed: rpm(1500) },
      { ...hard, filmRatio: ratio(4) },
    ];
    for (const bearing of less) {
      expect(standing(maxFuelDilution(bearing)).fraction).toBeLessThan(fraction);
    }
  });

  it('differs between the blending laws, and says less by ASTM D7152 than by the log-mean', () => {
    const by = (law: 'ASTM D7152' | 'Refutas' | 'log-mean') =>
      standing(maxFuelDilution({ ...hard, law })).fraction;
    expect(by('ASTM D7152')).toBeLessThan(by('log-mean'));
    expect(Math.abs(by('Refutas') / by('ASTM D7152') - 1)).toBeLessThan(0.3);
    expect(by('Refutas')).not.toBe(by('ASTM D7152'));
  });

  it('is none where clean oil is too thin, or the journal stands still', () => {
    const thin = maxFuelDilution({ ...rough, filmRatio: ratio(100) });
    expect(thin.outcome).toBe('too thin when clean');
    const still = maxFuelDilution({ ...rough, speed: rpm(0) });
    expect(still.outcome).toBe('too thin when clean');
    expect(still.clean.film).toMatchObject({ because: 'it stands still' });
  });

  it('is found at a hot inlet, too, where oil with much fuel is no oil any more', () => {
    const stand = maxFuelDilution({ ...hard, load: lbf(200), inlet: celsius(215) });
    expect(standing(stand).fraction).toBeGreaterThan(0);
    expect(standing(stand).fraction).toBeLessThan(0.3);
  });

  it('says why clean oil is too thin, where it only runs too hot', () => {
    const tight = { ...rough, clearance: micrometre(10), speed: radianPerSecond(2000) };
    const stand = maxFuelDilution({
      ...tight,
      roughness: { journal: micrometre(0.05), shell: micrometre(0.05) },
    });
    expect(stand.outcome).toBe('too thin when clean');
    expect(stand.clean.film).toMatchObject({ because: 'it runs too hot' });
  });

  it('is anything where there is hardly a load', () => {
    expect(maxFuelDilution({ ...rough, load: lbf(0) }).outcome).toBe('stands anything');
  });
});

describe('the hours that a leak may last', () => {
  const sump = { leak: mLPerHour(18), oil: quartUS(1) };
  /** A film that fails before the limit does. */
  const weak = { ...rough, load: lbf(1500), filmRatio: ratio(4.5), inlet: celsius(85) };

  it('go to the film’s fraction where that comes first', () => {
    const { until, fraction, setBy, stand } = safeHours({ sump, bearing: weak });
    expect(setBy).toBe('film');
    expect(fraction).toBe(standing(stand).fraction);
    const fuel = (sump.oil * fraction) / (1 - fraction);
    expect(until.reached && until.time).toBeCloseTo(fuel / sump.leak, 3);
  });

  it('go to the limit where that does, the caller’s own if there is one', () => {
    const common = safeHours({ sump, bearing: rough });
    expect(common.setBy).toBe('limit');
    expect(common.limit).toMatchObject({ fraction: 0.05, basis: { kind: 'common practice' } });
    expect(common.until.reached && valueIn(common.until.time, hour)).toBeCloseTo(2.767, 2);
    const own = safeHours({ sump, bearing: rough, limit: percentByVolume(2) });
    expect(own).toMatchObject({ setBy: 'limit', fraction: 0.02 });
    expect(own.limit.basis).toEqual({ kind: 'specified' });
  });

  it('refuse a field that the sump does not have', () => {
    const wrong = { ...sump, fraction: percentByVolume(1) };
    expect(() => safeHours({ sump: wrong, bearing: rough })).toThrow(
      /sump.fraction.*not a known field/,
    );
  });

  it('are none for a film that is too thin when clean, or a sump past the fraction', () => {
    const thin = safeHours({ sump, bearing: { ...rough, filmRatio: ratio(100) } });
    expect(thin).toMatchObject({ fraction: 0, setBy: 'film', until: { reached: true, time: 0 } });
    const late = safeHours({ sump: { ...sump, fuel: mL(200) }, bearing: rough });
    expect(late.until).toEqual({ reached: true, time: 0 });
  });

  it('are fewer with fuel in the sump, and without end where as much evaporates', () => {
    const hours = (more: object) => {
      const { until } = safeHours({ sump: { ...sump, ...more }, bearing: rough });
      return until.reached ? valueIn(until.time, hour) : Number.POSITIVE_INFINITY;
    };
    expect(hours({ fuel: mL(20) })).toBeLessThan(hours({}));
    expect(hours({ evaporation: perHour(0.1) })).toBeGreaterThan(hours({}));
    expect(hours({ evaporation: perHour(1) })).toBe(Number.POSITIVE_INFINITY);
    expect(hours({ leak: mLPerHour(0) })).toBe(Number.POSITIVE_INFINITY);
  });
});
