import {
  type BearingToAccept,
  bearingAcceptance,
  bearingPressure,
  bigEndLoads,
  celsius,
  centistokes,
  fahrenheit,
  gasTrace,
  inch,
  kilogram,
  kilogramPerCubicMetre,
  lbf,
  MPa,
  micrometre,
  mLPerMinute,
  newton,
  type Pressure,
  percent,
  type Ratio,
  type Roughness,
  ratio,
  rpm,
  supplyFinding,
  thou,
  trumplerFilm,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const oil = {
  line: [
    { temperature: celsius(40), viscosity: centistokes(100) },
    { temperature: celsius(100), viscosity: centistokes(11.1) },
  ],
  density: kilogramPerCubicMetre(885),
} as const;
/** Everything known, and all of it good. */
const good: BearingToAccept = {
  journal: inch(1.625),
  length: inch(1),
  clearance: thou(1.6),
  speed: rpm(1800),
  load: lbf(400),
  inlet: celsius(70),
  oil,
  material: 'tin babbitt',
  roughness: { journal: micrometre(0.3), shell: micrometre(0.5) },
  largestParticle: micrometre(5),
  supply: { by: 'pump', measured: mLPerMinute(400) },
};
const crank = { stroke: inch(3.25), rodLength: inch(6) };
const loads = bigEndLoads({
  ...crank,
  bore: inch(3),
  speed: rpm(1800),
  pistonMass: kilogram(0.45),
  smallEndMass: kilogram(0.18),
  bigEndMass: kilogram(0.42),
  gas: gasTrace({ ...crank, compressionRatio: ratio(6) }).readings,
});
const verdict = (changes: Partial<BearingToAccept>) => {
  const { outcome, because } = bearingAcceptance({ ...good, ...changes });
  return [outcome, ...because.map(({ check }) => check)];
};

describe('bearingAcceptance', () => {
  it('accepts only where every check holds, and lists them all', () => {
    expect(verdict({})).toEqual([
      'accepted',
      'mean pressure',
      'peak pressure',
      'film temperature',
      'film over roughness',
      'film over particles',
      'oil supply',
    ]);
  });

  it('does not accept what fails one check, and names it', () => {
    // 165.6 °C comes in, and babbitt stands 150 °C.
    expect(verdict({ inlet: fahrenheit(330) })).toContain('film temperature');
    // 8000 lbf on 1.625 in² are 33.9 MPa, more than twice what the thinnest lining carries at a peak.
    const crushed = verdict({ load: lbf(8000) });
    expect(crushed).toEqual(expect.arrayContaining(['mean pressure', 'peak pressure']));
    expect(crushed[0]).toBe('not accepted');
    expect(verdict({ largestParticle: micrometre(40) })).toEqual([
      'not accepted',
      'film over particles',
    ]);
    expect(verdict({ supply: { by: 'splash', measured: mLPerMinute(5) } })).toEqual([
      'not accepted',
      'oil supply',
    ]);
    const rough = { journal: micrometre(3), shell: micrometre(3) };
    expect(verdict({ roughness: rough })).toEqual(['not accepted', 'film over roughness']);
  });

  it('does not accept a shell whose metal nobody knows', () => {
    expect(verdict({ material: undefined } as never)).toEqual(['not accepted', 'material']);
  });

  it('stays undecided where something was not given, and says what to give', () => {
    const bare = (field: keyof BearingToAccept) => {
      const { [field]: _, ...rest } = good;
      const { outcome, because } = bearingAcceptance(rest as BearingToAccept);
      return [outcome, ...because.map((check) => check.outcome === 'unknown' && check.give)];
    };
    expect(bare('roughness')).toEqual(['undecided', 'the roughness Rq of journal and shell']);
    expect(bare('largestParticle')[1]).toContain('or that there is no filter');
    expect(bare('supply')[1]).toContain('measured to reach this bearing');
    expect(verdict({ supply: { by: 'splash' } })).toEqual(['undecided', 'oil supply']);
  });

  it('leaves a pressure between two alloys of a metal to the maker', () => {
    // 1500 lbf on 1.625 in² are 6.4 MPa: more than the softest babbitt carries, less than the best.
    const heavier = { load: lbf(1500), largestParticle: micrometre(1) };
    expect(verdict(heavier)).toEqual(['undecided', 'mean pressure']);
    const own = { name: 'as the maker says', meanPressure: MPa(8), temperature: celsius(140) };
    expect(verdict({ ...heavier, material: own })[0]).toBe('accepted');
    // Aluminium carries at least 30 MPa; how much more is not printed.
    const { checks } = bearingAcceptance({ ...good, load: lbf(8000), material: 'aluminium' });
    expect(checks[0]?.outcome).toBe('unknown');
  });

  it('asks for the duty only where the sources differ about the film', () => {
    const { films } = bearingAcceptance(good);
    const [low, high] = [3.5, 6].map((times) => {
      const each = micrometre((((films.film ?? 0) * 1e6) / times) * Math.SQRT1_2);
      return { journal: each, shell: each };
    }) as [Roughness, Roughness];
    expect(verdict({ roughness: low })).toEqual(['undecided', 'film over roughness']);
    expect(verdict({ roughness: low, duty: 'general' })[0]).toBe('accepted');
    expect(verdict({ roughness: low, duty: 'closely fitted' })[0]).toBe('not accepted');
    expect(verdict({ roughness: low, filmRatio: ratio(3.4) })[0]).toBe('accepted');
    expect(verdict({ roughness: high })[0]).toBe('accepted');
  });

  it('goes by the orbit where the loads of the cycle are known, and shows the steady films beside it', () => {
    const { load, films } = bearingAcceptance({ ...good, loads });
    expect(load.of).toBe('cycle');
    expect(load.peak).toBeGreaterThan(load.mean);
    expect(films.orbit?.outcome).toBe('settled');
    expect(films.film).toBe(films.orbit?.outcome === 'settled' && films.orbit.film);
    expect(films.mean.film.film).toBeGreaterThan(films.peak.film.film);
    // A peak that stayed would press the film thinner than one that passes.
    expect(films.film).toBeGreaterThan(films.peak.film.film);
  });

  it('counts a steady load that is more than the cycle has as its peak', () => {
    expect(bearingAcceptance({ ...good, loads, load: lbf(9000) }).load.peak).toBe(lbf(9000));
  });

  it('finds no film on a shaft that stands still', () => {
    const still = { ...loads, speed: rpm(0) };
    const { films, outcome } = bearingAcceptance({ ...good, speed: rpm(0), loads: still });
    expect([outcome, films.orbit?.outcome, films.film]).toEqual(['not accepted', 'no film', 0]);
  });

  it('judges both ends of a clearance, each check at the worse', () => {
    const both = bearingAcceptance({ ...good, clearance: { min: thou(1), max: thou(3) } });
    const ends = [thou(1), thou(3)].map((clearance) => bearingAcceptance({ ...good, clearance }));
    expect(both.films.film).toBe(Math.min(...ends.map(({ films }) => films.film ?? 0)));
    const hottest = (of: typeof both) =>
      of.checks.find(({ check }) => check === 'film temperature')?.finding?.value ?? 0;
    expect(hottest(both)).toBe(Math.max(...ends.map(hottest)));
  });

  it("holds a bearing to Trumpler's criteria only where asked", () => {
    const strict = verdict({ rule: 'Trumpler', startUpLoad: lbf(100) });
    expect(strict).toEqual(['not accepted', 'least film by Trumpler']);
    expect(verdict({ rule: 'Trumpler', load: lbf(20), startUpLoad: lbf(20) })[0]).toBe('accepted');
    const heavy = verdict({ rule: 'Trumpler', load: lbf(20), startUpLoad: lbf(600) });
    expect(heavy).toEqual(['not accepted', 'start-up pressure by Trumpler']);
    expect(verdict({ rule: 'Trumpler', load: lbf(20) })[0]).toBe('undecided');
  });

  it('does not let a check hold that fails if the load is more by as much as it is in doubt', () => {
    // 7 MPa carry 1000 lbf on 1.625 in² (4.2 MPa) and 1250 lbf (5.3 MPa), but 5 MPa carry only the first.
    const at = (meanPressure: Pressure, loadDoubt?: Ratio) =>
      bearingAcceptance({
        ...{ ...good, load: lbf(1000), largestParticle: micrometre(1) },
        material: { name: 'own', meanPressure, temperature: celsius(150) },
        roughness: { journal: micrometre(0.1), shell: micrometre(0.1) },
        ...(loadDoubt !== undefined && { loadDoubt }),
      });
    expect(at(MPa(5)).outcome).toBe('accepted');
    expect(at(MPa(7), percent(25)).outcome).toBe('accepted');
    const near = at(MPa(5), percent(25));
    expect(near.outcome).toBe('undecided');
    expect(near.because.map(({ check }) => check)).toEqual(['mean pressure', 'peak pressure']);
    const [first] = near.because;
    const [given, more] =
      first?.outcome === 'unknown' ? [first.finding?.value, first.tooNear?.finding?.value] : [];
    // 1000 lbf = 4448.22 N on 1.625 in² = 1.048385e-3 m².
    expect(given).toBeCloseTo(4448.221615 / 1.048385e-3, -1);
    expect(more).toBeCloseTo((1.25 * 4448.221615) / 1.048385e-3, -1);
  });

  it('lets no doubt excuse what fails under the load as it was given', () => {
    const crushed = { ...good, load: lbf(8000) };
    const failing = (loadDoubt: Ratio) =>
      bearingAcceptance({ ...crushed, loadDoubt }).because.map(({ check }) => check);
    expect(failing(percent(100))).toEqual(failing(percent(0)));
    expect(failing(percent(100))).toContain('mean pressure');
  });

  it('moves every load of a cycle with the doubt', () => {
    const { films, load } = bearingAcceptance({ ...good, loads });
    const least = (films.film ?? 0) / micrometre(1);
    // Between the film under these loads and the thinner one under a quarter more.
    const rough = { journal: micrometre(least / 3.02), shell: micrometre(1e-2) };
    const orbit = { ...good, loads, roughness: rough, duty: 'general' as const };
    expect(verdict(orbit)).not.toContain('film over roughness: too near');
    const near = bearingAcceptance({ ...orbit, loadDoubt: percent(25) });
    const check = near.checks.find((each) => each.check === 'film over roughness');
    expect(check?.outcome === 'unknown' && check.tooNear?.finding?.verdict).toBe('below');
    expect(near.load).toEqual(load);
  });

  it('takes an engine without a filter with a caution that alone withholds nothing', () => {
    const unfiltered = bearingAcceptance({ ...good, largestParticle: 'no filter' });
    expect(unfiltered.outcome).toBe('accepted');
    const dirt = unfiltered.checks.find(({ check }) => check === 'film over particles');
    expect(dirt?.outcome).toBe('caution');
    // Bronze and the like hardly embed dirt: it scores the journal.
    expect(verdict({ largestParticle: 'no filter', material: 'tin bronze' })).toEqual([
      'undecided',
      'film over particles',
    ]);
  });

  it('judges the hottest of the films that it computes', () => {
    const { checks, films } = bearingAcceptance({ ...good, loads });
    const judged = checks.find(({ check }) => check === 'film temperature')?.finding?.value ?? 0;
    const out = [films.mean, films.peak].map(({ temperature, rise }) => temperature + rise / 2);
    expect(judged).toBeCloseTo(Math.max(...out), 9);
  });

  it('never takes a bearing for better because less is known of it', () => {
    const rank = { 'not accepted': 0, undecided: 1, accepted: 2 };
    const optional = ['material', 'roughness', 'largestParticle', 'supply'] as const;
    fc.assert(
      fc.property(
        fc.double({ min: 50, max: 9000, noNaN: true }),
        fc.subarray([...optional], { minLength: 1 }),
        (load, left) => {
          const whole = { ...good, load: lbf(load) };
          const { outcome } = bearingAcceptance(whole);
          const rest = Object.fromEntries(
            Object.entries(whole).filter(([field]) => !left.includes(field as never)),
          );
          const less = bearingAcceptance(rest as unknown as BearingToAccept).outcome;
          expect(less).not.toBe('accepted');
          if (outcome === 'accepted') expect(rank[less]).toBeLessThan(rank[outcome]);
        },
      ),
      { numRuns: 25 },
    );
  });

  it.each([
    ['material', { material: 'butter' }],
    ['material.temperature', { material: { name: 'x', meanPressure: 7e6, temperature: 150 } }],
    ['material.meanPressure', { material: { name: 'x', meanPressure: 7, temperature: 420 } }],
    ['duty', { duty: 'light' }],
    ['rule', { rule: 'thumb' }],
    ['largestParticle', { largestParticle: 15 }],
    ['loadDoubt', { loadDoubt: 25 }],
    ['supply.by', { supply: { by: 'luck' } }],
    ['supply.measured', { supply: { by: 'pump', measured: 60 } }],
    ['loads.speed', { loads: { ...loads, speed: rpm(1500) } }],
    ['clearance.min', { clearance: { min: 0, max: thou(2) } }],
    ['clearance', { clearance: { min: thou(3), max: thou(2) } }],
    ['startUpLoad', { startUpLoad: -1 }],
    ['bearing.metal', { metal: 'tin babbitt' }],
  ])('refuses %s by name', (parameter, changes) => {
    expect(() => bearingAcceptance({ ...good, ...changes } as never)).toThrow(
      expect.objectContaining({ parameter }),
    );
  });
});

describe('supplyFinding', () => {
  it('knows nothing of a splash that nobody measured', () => {
    const need = mLPerMinute(120);
    expect(supplyFinding({ need })).toEqual({ outcome: 'unknown', need });
    expect(supplyFinding({ need, supply: { by: 'splash' } })).toEqual({
      outcome: 'unknown',
      need,
      by: 'splash',
    });
    const measured = (flow: number) =>
      supplyFinding({ need, supply: { by: 'splash', measured: mLPerMinute(flow) } }).outcome;
    expect([measured(119), measured(120), measured(121)]).toEqual([
      'too little',
      'enough',
      'enough',
    ]);
  });
});

describe('pressure and least film', () => {
  const size = fc.double({ min: 0.02, max: 0.1, noNaN: true });
  it('share a load over the area, whichever way it grows', () => {
    fc.assert(
      fc.property(size, fc.double({ min: 1, max: 1e5, noNaN: true }), (journal, load) => {
        const at = (times: number) =>
          bearingPressure({
            load: newton(times * load),
            journal: journal as never,
            length: journal as never,
          });
        expect(at(2)).toBeCloseTo(2 * at(1), 3);
      }),
    );
  });
  it('ask for more film on a larger journal, and never for less than 0.0002 in', () => {
    fc.assert(
      fc.property(size, size, (a, b) => {
        const [small, large] = [Math.min(a, b), Math.max(a, b)];
        expect(trumplerFilm(small as never)).toBeLessThanOrEqual(trumplerFilm(large as never));
        expect(trumplerFilm(small as never)).toBeGreaterThan(inch(0.0002));
      }),
    );
  });
});
