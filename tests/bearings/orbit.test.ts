import {
  type Angle,
  type BigEnd,
  type BigEndOrbit,
  bigEndLoads,
  bigEndOrbit,
  degree,
  describe as describeFinding,
  type Force,
  finiteBearing,
  inch,
  type Length,
  type LoadDiagram,
  micrometre,
  millipascalSecond,
  mm,
  newton,
  type PinLoad,
  pascalSecond,
  type RotationalSpeed,
  ratio,
  rpm,
  valueIn,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { finiteMobility } from '../../src/bearings/orbit/finite-mobility.js';
import { anyEngine, pumpSet, pumpSetLoads } from '../motion/engines.js';
import { notNumbers, refusal } from '../quantities/refusal.js';
import { plainOrbit } from './plain-orbit.js';

const healthy: BigEnd = {
  journal: inch(1.625),
  length: inch(1),
  clearance: inch(0.0017),
  viscosity: millipascalSecond(15),
  loads: pumpSetLoads,
};
const loose: BigEnd = { ...healthy, clearance: inch(0.02) };

function settled(bigEnd: BigEnd): Extract<BigEndOrbit, { outcome: 'settled' }> {
  const orbit = bigEndOrbit(bigEnd);
  if (orbit.outcome !== 'settled') throw new Error(orbit.outcome);
  return orbit;
}

/** A load that stands still on a shaft that turns in a bearing that does not. */
function steady(force: number, speed: RotationalSpeed, direction = 0): LoadDiagram {
  const loads = Array.from(
    { length: 24 },
    (_, i): PinLoad => ({
      crankAngle: degree(30 * i),
      along: (force * Math.cos(direction)) as Force,
      across: (force * Math.sin(direction)) as Force,
      rodAngle: 0 as Angle,
    }),
  );
  return { speed, loads };
}

/** Big ends of any engine, tight or loose, with thin or thick oil. */
const anyBigEnd = fc
  .record({
    engine: anyEngine,
    pin: fc.double({ min: 0.4, max: 0.7, noNaN: true }),
    slender: fc.double({ min: 0.15, max: 1, noNaN: true }),
    looseness: fc.double({ min: -3.5, max: -1.8, noNaN: true }),
    thickness: fc.double({ min: -3, max: -0.5, noNaN: true }),
  })
  .map(({ engine, pin, slender, looseness, thickness }): BigEnd => {
    const journal = engine.bore * pin;
    return {
      journal: journal as Length,
      length: (journal * slender) as Length,
      clearance: (journal * 10 ** looseness) as Length,
      viscosity: pascalSecond(10 ** thickness),
      loads: bigEndLoads(engine),
    };
  });

describe('bigEndOrbit against the same worked the plain way', () => {
  it.each([
    ['a healthy bearing', 'finite', healthy, 5_000],
    ['a bearing 0.020 in loose', 'finite', loose, 20_000],
    ['a short healthy bearing', 'short', healthy, 5_000],
    [
      'a short bearing with thin oil',
      'short',
      { ...healthy, viscosity: millipascalSecond(3) },
      9_000,
    ],
    ['a short bearing 0.020 in loose', 'short', loose, 20_000],
  ] as const)('%s', (_, film, bigEnd, steps) => {
    const thinnerThan = micrometre(6);
    const orbit = settled({ ...bigEnd, film, thinnerThan });
    const { journal, length } = bigEnd;
    const mapped = finiteMobility(length / journal);
    const finite = (x: number, y: number): [number, number] => {
      mapped.set(x, y);
      return [mapped.along, mapped.across];
    };
    const plain = plainOrbit(bigEnd, steps, thinnerThan, film === 'finite' ? finite : undefined);
    const { crankAngle, onShell } = orbit.leastFilm;
    expect(orbit.leastFilm.film / plain.leastFilm).toBeCloseTo(1, 2);
    expect(Math.abs(valueIn(crankAngle, degree) - plain.atDegrees)).toBeLessThan(2);
    expect(Math.abs(valueIn(onShell, degree) - plain.onShellDegrees)).toBeLessThan(2);
    expect(orbit.greatestApproach.speed / plain.greatestApproach).toBeCloseTo(1, 1);
    expect(orbit.shareThinner).toBeCloseTo(plain.shareThinner, 2);
  });
});

describe('bigEndOrbit under a steady load', () => {
  it('comes to rest where Ocvirk puts it, within the fit, in any direction', () => {
    const eccentricities = fc.double({ min: 0.1, max: 0.9, noNaN: true });
    const directions = fc.double({ min: -3, max: 3, noNaN: true });
    const speeds = fc.double({ min: 60, max: 6000, noNaN: true }).map((one) => rpm(one));
    fc.assert(
      fc.property(eccentricities, directions, speeds, (e, direction, speed) => {
        // S (L/D)² of the half film of a short bearing, and its attitude: Ocvirk, NACA TN 2808.
        const flat = 1 - e * e;
        const slender = flat ** 2 / (Math.PI * e * Math.sqrt(Math.PI ** 2 * flat + 16 * e * e));
        const attitude = Math.atan((Math.PI * Math.sqrt(flat)) / (4 * e));
        const { journal, length, clearance, viscosity } = healthy;
        const turns = speed / (2 * Math.PI);
        const load =
          (viscosity *
            turns *
            length *
            journal *
            (journal / clearance) ** 2 *
            (length / journal) ** 2) /
          slender;
        const { path } = settled({
          ...healthy,
          film: 'short',
          loads: steady(load, speed, direction),
        });
        for (const { along, across } of [path[0], path[100], path[359]].flatMap((p) => p ?? [])) {
          expect(Math.abs(Math.hypot(along, across) / e - 1)).toBeLessThan(0.05);
          const lean = Math.atan2(across, along) - direction;
          expect(
            Math.abs(Math.atan2(Math.sin(lean - attitude), Math.cos(lean - attitude))),
          ).toBeLessThan(0.05);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('comes to rest where a finite bearing does that turns under it', () => {
    const eccentricities = fc.double({ min: 0.3, max: 0.95, noNaN: true });
    const slender = fc.double({ min: 0.2, max: 1, noNaN: true });
    fc.assert(
      fc.property(eccentricities, slender, (e, lengthToDiameter) => {
        const { sommerfeld, attitude } = finiteBearing({
          eccentricity: ratio(e),
          lengthToDiameter: ratio(lengthToDiameter),
        });
        const { journal, clearance, viscosity } = healthy;
        const length = (journal * lengthToDiameter) as Length;
        // S = (r/c)² µN/P, with N turns a second and P the load over length and diameter.
        const load = (viscosity * 30 * length * journal * (journal / clearance) ** 2) / sommerfeld;
        const { path } = settled({ ...healthy, length, loads: steady(load, rpm(1800)) });
        const [x, y] = [path[0]?.along ?? 0, path[0]?.across ?? 0];
        expect((1 - Math.hypot(x, y)) / (1 - e)).toBeGreaterThan(0.985);
        expect((1 - Math.hypot(x, y)) / (1 - e)).toBeLessThan(1.015);
        // A steady film begins at the widest gap; a squeezed one a little before.
        expect(Math.abs(Math.atan2(y, x) - attitude)).toBeLessThan(0.015 + 0.06 * lengthToDiameter);
      }),
      { numRuns: 40 },
    );
  });

  it('stays in the middle without a load', () => {
    const { leastFilm, greatestApproach } = settled({ ...healthy, loads: steady(0, rpm(1800)) });
    expect(leastFilm.film).toBeCloseTo(healthy.clearance / 2, 15);
    expect(greatestApproach.speed).toBe(0);
  });

  it('settles where a light load holds it, though it would circle there for long', () => {
    const { path, cycles } = settled({
      ...healthy,
      film: 'short',
      tolerance: ratio(1e-6),
      loads: steady(0.5, rpm(1800)),
    });
    expect(cycles).toBeLessThan(20);
    const [x, y] = [path[0]?.along ?? 0, path[0]?.across ?? 0];
    // In the middle the mobility is 1/π each way: half the turning times the lean is the drift.
    const readiness = (healthy.clearance / healthy.length) ** 2;
    const drift =
      (0.5 * readiness) / (Math.PI * healthy.viscosity * healthy.length * healthy.journal);
    expect(y / (drift / (rpm(1800) / 2))).toBeCloseTo(1, 1);
    expect(Math.abs(x)).toBeLessThan(0.05 * y);
  });
});

describe('bigEndOrbit', () => {
  it('stays inside the clearance and comes back to where it started, whatever the engine', () => {
    fc.assert(
      fc.property(anyBigEnd, (bigEnd) => {
        const { path, leastFilm, greatestApproach } = settled(bigEnd);
        const radial = bigEnd.clearance / 2;
        expect(path).toHaveLength(360);
        for (const { along, across, film } of path) {
          expect(Math.hypot(along, across)).toBeLessThan(1);
          expect(film / radial).toBeCloseTo(1 - Math.hypot(along, across), 12);
          expect(film).toBeGreaterThanOrEqual(leastFilm.film);
        }
        expect(leastFilm.film).toBeGreaterThan(0);
        expect(greatestApproach.speed).toBeGreaterThan(0);
        expect(greatestApproach.film).toBeGreaterThanOrEqual(leastFilm.film);
      }),
      { numRuns: 60 },
    );
  });

  it('does not change where loads and viscosity, or loads and speed, grow together', () => {
    // A power of two changes no digit, so the solver takes the very same steps: nothing may differ.
    fc.assert(
      fc.property(anyBigEnd, fc.constantFrom(0.25, 0.5, 2), (bigEnd, by) => {
        const { speed } = bigEnd.loads;
        const loads = bigEnd.loads.loads.map((load) => ({
          ...load,
          along: (load.along * by) as Force,
          across: (load.across * by) as Force,
        }));
        const one = settled(bigEnd);
        const thick = settled({
          ...bigEnd,
          viscosity: pascalSecond(bigEnd.viscosity * by),
          loads: { speed, loads },
        });
        const fast = settled({
          ...bigEnd,
          loads: { speed: (speed * by) as RotationalSpeed, loads },
        });
        expect(thick).toEqual(one);
        expect(fast).toEqual({
          ...one,
          greatestApproach: {
            ...one.greatestApproach,
            speed: one.greatestApproach.speed * by,
          },
        });
      }),
      { numRuns: 25 },
    );
  });

  it('gives the film about to the tolerance asked for', () => {
    for (const bigEnd of [healthy, loose, { ...loose, film: 'short' } as const]) {
      const film = (tolerance: number) =>
        settled({ ...bigEnd, tolerance: ratio(tolerance) }).leastFilm.film;
      const exact = film(1e-6);
      for (const tolerance of [1e-2, 1e-3, 1e-4]) {
        expect(Math.abs(film(tolerance) / exact - 1)).toBeLessThan(10 * tolerance);
      }
    }
  });

  it('says where the film is least on shell and pin', () => {
    const { path, leastFilm } = settled({ ...healthy, viscosity: millipascalSecond(3) });
    const there = path[Math.round(valueIn(leastFilm.crankAngle, degree) / 2)];
    expect(Math.atan2(there?.across ?? 0, there?.along ?? 0)).toBeCloseTo(leastFilm.onShell, 1);
    // After firing the pin presses into the rod's shell, on the side it turns to.
    expect(valueIn(leastFilm.crankAngle, degree)).toBeLessThan(90);
    expect(valueIn(leastFilm.onShell, degree)).toBeGreaterThan(0);
    expect(valueIn(leastFilm.onShell, degree)).toBeLessThan(45);
    // The throw of the crank, seen from the rod, is ahead by the crank's angle and the rod's lean.
    const lean = Math.asin((1.625 / 6) * Math.sin(leastFilm.crankAngle));
    expect(leastFilm.onPin).toBeCloseTo(leastFilm.onShell - leastFilm.crankAngle - lean, 5);
  });

  it('counts the share of the cycle below a film', () => {
    const { path, leastFilm } = settled(healthy);
    const share = (thinnerThan: Length) =>
      settled({ ...healthy, thinnerThan }).shareThinner ?? Number.NaN;
    const films = [0, leastFilm.film * 0.999, 6e-6, 8e-6, 1e-5, healthy.clearance / 2];
    const shares = films.map((film) => share(film as Length));
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    expect([shares[0], shares[1], shares.at(-1)]).toEqual([0, 0, 1]);
    const counted = path.filter(({ film }) => film < 8e-6).length / path.length;
    expect(shares[3]).toBeCloseTo(counted, 2);
    expect(settled(healthy)).not.toHaveProperty('shareThinner');
  });

  it('shows a loose bearing a thicker film than a tight one, and a harder blow', () => {
    const [tight, slack] = [0.0005, 0.003].map((clearance) =>
      settled({ ...healthy, clearance: inch(clearance) }),
    );
    if (!tight || !slack) throw new Error('there is none');
    expect(slack.leastFilm.film).toBeGreaterThan(1.2 * tight.leastFilm.film);
    expect(slack.greatestApproach.speed).toBeGreaterThan(10 * tight.greatestApproach.speed);
  });

  it('finds a film in the loose bearing that a short one only seems to have', () => {
    const [real, short] = [settled(loose), settled({ ...loose, film: 'short' })];
    expect(short.leastFilm.film).toBeGreaterThan(5 * real.leastFilm.film);
    expect(real.leastFilm.film).toBeLessThan(settled(healthy).leastFilm.film / 5);
  });

  it('says how far the result is to be trusted', () => {
    const verdicts = (bigEnd: BigEnd) => {
      const { lengthToDiameter, leastGap } = settled(bigEnd).range;
      return [lengthToDiameter.verdict, leastGap.verdict];
    };
    expect(verdicts(healthy)).toEqual(['within', 'within']);
    expect(verdicts({ ...healthy, length: inch(0.15) })).toEqual(['below', 'within']);
    expect(verdicts({ ...loose, viscosity: millipascalSecond(3) })).toEqual(['within', 'below']);
    const short = { ...healthy, film: 'short' } as const;
    expect(verdicts({ ...short, length: inch(0.8125) })).toEqual(['within', 'below']);
    expect(verdicts({ ...short, length: inch(0.82) })).toEqual(['above', 'below']);
    expect(verdicts({ ...short, viscosity: millipascalSecond(200) })).toEqual(['above', 'within']);
    expect(settled(healthy).range.leastGap.basis.kind).toBe('computed');
    const { basis } = settled(short).range.leastGap;
    expect(basis.kind === 'common practice' && basis.rule).toContain('too thick a film');
    const { range, leastFilm } = settled(healthy);
    expect(range.leastGap.value).toBeCloseTo(leastFilm.film / (healthy.clearance / 2), 12);
    expect(describeFinding(range.leastGap, { units: 'inch' })[0]).toContain(
      'least film over clearance',
    );
  });

  it('has no film where the shaft does not turn: a verdict', () => {
    const loads = bigEndLoads({ ...pumpSet, speed: rpm(0) });
    expect(bigEndOrbit({ ...healthy, loads })).toEqual({ outcome: 'no film' });
    expect(bigEndOrbit({ ...healthy, loads: { ...loads, speed: rpm(1) } }).outcome).toBe('settled');
  });

  it('says so where the film is too thin to be followed', () => {
    // A hundred tons, thrown about, on a pin that turns once in ten minutes, in water.
    const { loads } = steady(1e6, rpm(1));
    const thrown = loads.map((load, i) => ({
      ...load,
      along: (1e6 * Math.cos(2 * i)) as Force,
      across: (1e6 * Math.sin(2 * i)) as Force,
    }));
    const orbit = bigEndOrbit({
      ...loose,
      viscosity: millipascalSecond(1),
      loads: { speed: 0.01 as RotationalSpeed, loads: thrown },
    });
    expect(orbit).toMatchObject({ outcome: 'not settled', because: 'too many steps' });
  });

  it('takes a load diagram of your own, at any angles', () => {
    const even = settled(healthy).leastFilm.film;
    const coarse = pumpSetLoads.loads.filter((_, i) => i < 60 || i > 690 || i % 10 === 0);
    const own = { speed: pumpSetLoads.speed, loads: coarse };
    expect(settled({ ...healthy, loads: own }).leastFilm.film / even).toBeCloseTo(1, 2);
    const late = { ...own, loads: pumpSetLoads.loads.slice(1) };
    expect(settled({ ...healthy, loads: late }).leastFilm.film / even).toBeCloseTo(1, 3);
  });
});

describe('bigEndOrbit refuses', () => {
  it.each(notNumbers.map((value) => [value]))('the number %s', (value) => {
    // What may be left out may be undefined.
    const open = value === undefined || value === null ? [] : ['tolerance', 'thinnerThan'];
    for (const field of ['journal', 'length', 'clearance', 'viscosity', ...open]) {
      const wrong = { ...healthy, [field]: value } as BigEnd;
      expect(refusal(() => bigEndOrbit(wrong)).parameter).toBe(field);
    }
  });

  it('a clearance in which nothing can turn, and one that is no clearance', () => {
    for (const clearance of [inch(-0.0005), inch(0)]) {
      const error = refusal(() => bigEndOrbit({ ...healthy, clearance }));
      expect(error.message).toContain('the clearance that these sizes leave');
    }
    expect(refusal(() => bigEndOrbit({ ...healthy, clearance: inch(0.1) })).parameter).toBe(
      'clearance',
    );
    expect(refusal(() => bigEndOrbit({ ...healthy, clearance: mm(1e-4) })).parameter).toBe(
      'clearance',
    );
  });

  it('a bearing more than twice as long as it is thick, and a film of another sort', () => {
    expect(() => bigEndOrbit({ ...healthy, length: inch(3.25) })).not.toThrow();
    expect(refusal(() => bigEndOrbit({ ...healthy, length: inch(3.26) })).parameter).toBe('length');
    const other = { ...healthy, film: 'long' } as unknown as BigEnd;
    expect(refusal(() => bigEndOrbit(other)).parameter).toBe('film');
  });

  it('loads that are none', () => {
    const { loads, speed } = pumpSetLoads;
    const half = { speed, loads: loads.slice(0, 360) };
    expect(refusal(() => bigEndOrbit({ ...healthy, loads: half })).parameter).toBe('loads.loads');
    const wrong = [...loads.slice(0, 719), { ...loads[719], along: newton(1e9) }] as PinLoad[];
    expect(
      refusal(() => bigEndOrbit({ ...healthy, loads: { speed, loads: wrong } })).parameter,
    ).toBe('loads.loads[719].along');
    const degrees = loads.map((load) => ({ ...load, rodAngle: 15 as Angle }));
    expect(
      refusal(() => bigEndOrbit({ ...healthy, loads: { speed, loads: degrees } })).parameter,
    ).toBe('loads.loads[0].rodAngle');
  });
});
