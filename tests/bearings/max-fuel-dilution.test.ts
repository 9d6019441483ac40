import {
  celsius,
  dilutedOil,
  extrapolatedViscosity,
  type FilmStand,
  filmThickness,
  heatBalance,
  hour,
  kelvinDifference,
  lbf,
  maxFuelDilution,
  maxFuelDilutionSpan,
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

/** A bearing of which every number is known. */
const SURE = {
  inlet: kelvinDifference(0),
  length: percent(0),
  roughness: percent(0),
  clearance: percent(0),
  load: percent(0),
};

describe('the fuel that a film stands, as a span', () => {
  it('is one figure, but for the law, where nothing is in doubt', () => {
    const { asGiven, drivers, basis } = maxFuelDilutionSpan(hard, SURE);
    const { fraction } = standing(asGiven);
    for (const { driver, span } of drivers) {
      if (driver === 'law') expect(span.max).toBeGreaterThan(fraction);
      else expect(span).toEqual({ min: fraction, max: fraction });
    }
    expect(basis.kind).toBe('specified');
    expect(maxFuelDilutionSpan(hard).basis.kind).toBe('common practice');
  });

  it('has at its ends what the bearing stands there, each number moved alone', () => {
    const { drivers, span } = maxFuelDilutionSpan(hard);
    const at = (driver: string) => drivers.find((one) => one.driver === driver)?.span;
    const stood = (changed: object) => standing(maxFuelDilution({ ...hard, ...changed })).fraction;
    const twice = { journal: times(roughness.journal, 2), shell: times(roughness.shell, 2) };
    const ends: readonly (readonly [number | undefined, object])[] = [
      [at('inlet')?.min, { inlet: hard.inlet + 10 }],
      [at('inlet')?.max, { inlet: hard.inlet - 10 }],
      [at('load')?.min, { load: hard.load * 1.25 }],
      [at('load')?.max, { load: hard.load / 1.25 }],
      [at('length')?.min, { length: hard.length / 1.25 }],
      [at('roughness')?.min, { roughness: twice }],
      [at('law')?.max, { law: 'log-mean' }],
    ];
    for (const [end, changed] of ends) expect(end).toBeCloseTo(stood(changed), 12);
    expect(span.min).toBe(Math.min(...drivers.map((one) => one.span.min)));
    expect(span.max).toBe(Math.max(...drivers.map((one) => one.span.max)));
  });

  it('widens with every doubt, and lists first what moves it most', () => {
    const doubt = fc.integer({ min: 0, max: 100 }).map((n) => percent(n));
    const field = fc.constantFrom('length', 'roughness', 'clearance', 'load');
    fc.assert(
      fc.property(doubt, field, (more, name) => {
        const wide = maxFuelDilutionSpan(hard, { ...SURE, [name]: more });
        const narrow = maxFuelDilutionSpan(hard, SURE);
        expect(wide.span.min).toBeLessThanOrEqual(narrow.span.min);
        expect(wide.span.max).toBeGreaterThanOrEqual(narrow.span.max);
        const widths = wide.drivers.map(({ span }) => span.max - span.min);
        expect(widths).toEqual([...widths].sort((a, b) => b - a));
      }),
      { ...seed, numRuns: 10 },
    );
  });

  it('is none where an inlet in doubt leaves no oil, and none to nine tenths by what hardly carries', () => {
    const idle = { ...rough, load: lbf(0) };
    expect(maxFuelDilutionSpan(idle).span).toEqual({ min: 0.9, max: 0.9 });
    const scorched = { ...hard, load: lbf(1), inlet: celsius(225) };
    expect(maxFuelDilutionSpan(scorched, { inlet: kelvinDifference(50) }).span.min).toBe(0);
  });
});

describe('the hours that a leak may last', () => {
  const sump = { leak: mLPerHour(18), oil: quartUS(1), fuel: mL(0) };
  /** A film that fails before the limit does. */
  const weak = { ...rough, load: lbf(1500), filmRatio: ratio(4.5), inlet: celsius(85) };

  it('go to the film’s fraction where that comes first', () => {
    const { running, fraction, setBy, stand } = safeHours({ sump, bearing: weak, doubt: SURE });
    expect(setBy).toBe('film');
    expect(fraction).toBe(standing(stand.asGiven).fraction);
    const fuel = (sump.oil * fraction) / (1 - fraction);
    expect(running.reached && running.time).toBeCloseTo(fuel / sump.leak, 3);
  });

  it('go to the limit where that does, the caller’s own if there is one', () => {
    const common = safeHours({ sump, bearing: rough });
    expect(common.setBy).toBe('limit');
    expect(common.limit).toMatchObject({ fraction: 0.05, basis: { kind: 'common practice' } });
    expect(common.running.reached && valueIn(common.running.time, hour)).toBeCloseTo(2.767, 2);
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
    expect(thin).toMatchObject({ fraction: 0, setBy: 'film', running: { reached: true, time: 0 } });
    const late = safeHours({ sump: { ...sump, fuel: mL(200) }, bearing: rough });
    expect(late.running).toEqual({ reached: true, time: 0 });
  });

  it('are fewer with fuel in the sump, and without end where as much evaporates', () => {
    const hours = (more: object) => {
      const { running } = safeHours({ sump: { ...sump, ...more }, bearing: rough });
      return running.reached ? valueIn(running.time, hour) : Number.POSITIVE_INFINITY;
    };
    expect(hours({ fuel: mL(20) })).toBeLessThan(hours({}));
    expect(hours({ evaporation: perHour(0.1) })).toBeGreaterThan(hours({}));
    expect(hours({ evaporation: perHour(1) })).toBe(Number.POSITIVE_INFINITY);
    expect(hours({ leak: mLPerHour(0) })).toBe(Number.POSITIVE_INFINITY);
  });

  it('count a leak at its most, and run on while the engine stands, where nothing evaporates', () => {
    const leak = { min: mLPerHour(6), max: mLPerHour(18) };
    const found = safeHours({
      sump: { ...sump, leak, evaporation: perHour(0.1) },
      bearing: rough,
    });
    const most = safeHours({ sump, bearing: rough });
    expect(found.standing).toEqual(most.standing);
    const { running, standing: stands } = found;
    if (!running.reached || !stands.reached) throw new Error('not reached');
    expect(running.time).toBeGreaterThan(stands.time);
    const dry = { ...sump, leak: mLPerHour(0), standingLeak: leak };
    const weeping = safeHours({ sump: dry, bearing: rough });
    expect([weeping.running.reached, weeping.standing]).toEqual([false, most.standing]);
  });
});
