import {
  type Angle,
  type Bend,
  bend,
  type DialReading,
  degree,
  grindPlan,
  harmonics,
  inch,
  type Length,
  runout,
  shareOfOvalSeen,
  thou,
  twoPointOutOfRound,
  undersizeSteps,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { refusal } from '../quantities/refusal.js';

const at = (angle: number, reading: number): DialReading => ({
  angle: angle as Angle,
  reading: reading as Length,
});
const turn = (steps: number, law: (angle: number) => number) =>
  Array.from({ length: steps }, (_, i) => {
    const angle = (2 * Math.PI * i) / steps;
    return at(angle, law(angle));
  });
const heights = fc.double({ min: 1e-6, max: 1e-3, noNaN: true });
const phases = fc.double({ min: 0, max: 6, noNaN: true });

describe('two points', () => {
  it('see no odd lobes, nor that the part stands off its axis', () => {
    const odd = fc.integer({ min: 0, max: 5 }).map((k) => 2 * k + 1);
    fc.assert(
      fc.property(odd, heights, phases, fc.integer({ min: 6, max: 30 }), (n, high, phase, half) => {
        const readings = turn(2 * half, (angle) => high * Math.cos(n * angle - phase));
        expect(twoPointOutOfRound(readings)).toBeLessThan(1e-15);
      }),
      { numRuns: 50 },
    );
  });

  it('at 0 and 90 degrees read nothing of an oval that lies at 45', () => {
    const oval = (steps: number) =>
      twoPointOutOfRound(turn(steps, (angle) => thou(1) * Math.cos(2 * angle - Math.PI / 2)));
    expect(oval(4)).toBeCloseTo(0, 15);
    expect(oval(8)).toBeCloseTo(thou(4), 12);
  });

  it('are sure to see the share of an oval that is told, and at some place see no more', () => {
    const sets = fc.array(fc.double({ min: 0, max: Math.PI, noNaN: true }), {
      minLength: 1,
      maxLength: 7,
    });
    fc.assert(
      fc.property(sets, (angles) => {
        const told = shareOfOvalSeen(angles as Angle[]);
        // The oval is turned in small steps; between two of them no more than a step can be gained.
        const seen = Array.from({ length: 2000 }, (_, k) => {
          const shown = angles.map((angle) => Math.cos(2 * angle - (2 * Math.PI * k) / 2000) / 2);
          return Math.max(...shown) - Math.min(...shown);
        });
        expect(Math.min(...seen)).toBeGreaterThanOrEqual(told - 1e-9);
        expect(Math.min(...seen)).toBeLessThanOrEqual(told + Math.PI / 2000 + 1e-9);
      }),
      { numRuns: 30 },
    );
  });

  it('never see more of an oval for any two angles than none', () => {
    expect(shareOfOvalSeen([10, 55].map(degree))).toBe(0);
    expect(shareOfOvalSeen([degree(30)])).toBe(0);
    // Half a turn apart is one diameter, and counts once.
    expect(shareOfOvalSeen([0, 90, 180, 270, 360].map(degree))).toBe(0);
  });

  it('name the reading that has none opposite', () => {
    const lacking = [0, 90, 180, 280].map((angle) => at(degree(angle), 0));
    expect(refusal(() => twoPointOutOfRound(lacking)).parameter).toBe('readings[1].angle');
    const odd = turn(5, () => 0);
    expect(refusal(() => twoPointOutOfRound(odd)).parameter).toBe('readings[0].angle');
  });
});

describe('lobes', () => {
  it('are told as far as the gaps let them, and no farther', () => {
    const shown = (steps: number) => harmonics(turn(steps, () => 0)).harmonics.length;
    expect([3, 4, 5, 8, 9, 31, 36, 100].map(shown)).toEqual([1, 1, 2, 3, 4, 15, 15, 15]);
    const asked = refusal(() =>
      harmonics(
        turn(8, () => 0),
        { most: 4 },
      ),
    );
    expect(asked.parameter).toBe('options.most');
    // A sector that could not be reached: a gap of 60° shows two, however many readings there are.
    const sector = turn(36, () => 0).filter(({ angle }) => angle < 5.3);
    expect(harmonics(sector).harmonics).toHaveLength(2);
  });

  it('stand where they are as the mark is moved, and turn with it', () => {
    fc.assert(
      fc.property(heights, phases, fc.integer({ min: 1, max: 5 }), (high, phase, lobes) => {
        const found = harmonics(turn(24, (angle) => high * Math.cos(lobes * (angle - phase))));
        const its = found.harmonics[lobes - 1];
        expect(its?.amplitude).toBeCloseTo(high, 15);
        expect(Math.cos(lobes * ((its?.at ?? 0) - phase))).toBeCloseTo(1, 9);
        expect(its?.at).toBeLessThan((2 * Math.PI) / lobes + 1e-12);
        expect(found.left).toBeLessThan(1e-14);
      }),
      { numRuns: 50 },
    );
  });
});

describe('runout', () => {
  it('tells standing off the axis from being out of round', () => {
    const three = (angle: number) =>
      thou(2) * Math.cos(angle - 1) + thou(0.5) * Math.cos(3 * angle);
    const read = runout(turn(24, three));
    expect(read.eccentricity).toBeCloseTo(thou(2), 14);
    expect(read.direction).toBeCloseTo(1, 9);
    expect(read.outOfRound).toBeCloseTo(thou(1), 12);
  });

  it('finds the same at unequal angles, and from three it tells no out-of-round', () => {
    const law = (angle: number) => 1e-5 + thou(3) * Math.cos(angle - 4);
    const read = runout([0.2, 1.9, 3.4].map((angle) => at(angle, law(angle))));
    expect(read.eccentricity).toBeCloseTo(thou(3), 14);
    expect(read.direction).toBeCloseTo(4, 9);
    expect(read).not.toHaveProperty('outOfRound');
  });

  it('gives the grinder what four readings missed of the high place', () => {
    const off = thou(2);
    const read = runout(turn(4, (angle) => off * Math.cos(angle - Math.PI / 4)));
    // At 45° to all of them, each shows off by 2 · cos 45° = 1.414 thou.
    expect(read.total).toBeCloseTo(thou(2 * Math.SQRT2), 12);
    expect(read.toGrind).toBeCloseTo(thou(4), 14);
    const plan = (reading: Length) =>
      grindPlan({
        journals: [
          {
            name: 'main 1',
            smallest: inch(1.991),
            largest: inch(1.992),
            outOfRound: inch(0.001),
            taper: inch(0),
            runout: reading,
          },
        ],
        standard: { min: inch(1.9995), max: inch(2) },
        steps: undersizeSteps('inch'),
      });
    // 1.9910 - 0.0010 - 0.0040 - 0.0010 = 1.9850, which cleans up at 20 under.
    expect(plan(read.toGrind)).toMatchObject({ outcome: 'grind', undersize: thou(20) });
  });

  it('may be lobes where it was read at fewer than six angles', () => {
    const lobed = (steps: number, lobes: number) =>
      runout(turn(steps, (angle) => thou(2) * Math.cos(lobes * angle)));
    for (const [steps, lobes] of [
      [4, 3],
      [3, 2],
    ] as const) {
      const read = lobed(steps, lobes);
      expect(read.eccentricity).toBeCloseTo(thou(2), 12);
      expect(read.mayBeLobes).toBe(true);
    }
    expect(lobed(5, 2).mayBeLobes).toBe(true);
    expect(lobed(6, 3)).not.toHaveProperty('mayBeLobes');
    expect(lobed(8, 3).eccentricity).toBeLessThan(1e-12);
  });

  it('refuses readings from one side, a place read twice and too few', () => {
    const from = (angles: readonly number[]) =>
      refusal(() => runout(angles.map((angle) => at(degree(angle), 0)))).parameter;
    expect(from([0, 60, 120])).toBe('readings');
    expect(from([0, 90, 180])).toBe('readings');
    expect(from([0, 120])).toBe('readings');
    expect(from([0, 120, 240, 360])).toBe('readings[3].angle');
    expect(from([0, 120, 240, -120])).toBe('readings[3].angle');
  });
});

describe('a bend', () => {
  const shaft = (
    places: readonly number[],
    law: (station: number, angle: number) => number,
    resolution = 0.1,
  ): Bend =>
    bend({
      supports: { min: inch(0), max: inch(20) },
      stations: places.map((place) => ({
        station: inch(place),
        readings: turn(8, (angle) => thou(law(place, angle))),
      })),
      resolution: thou(resolution),
    });
  const kink = (z: number) => (z < 7 ? z / 7 : (20 - z) / 13);
  const bow = (z: number) => (4 * z * (20 - z)) / 400;

  it('is a kink where the shaft is straight on either side, and a bow where it is not', () => {
    const places = [3, 6, 9, 12, 15, 18];
    const kinked = shaft(places, (z, angle) => 4 * kink(z) * Math.cos(angle - 2));
    expect(kinked).toMatchObject({ outcome: 'kink' });
    if (kinked.outcome !== 'kink') return;
    expect(kinked.at).toBeCloseTo(inch(7), 6);
    expect(kinked.amount).toBeCloseTo(thou(4), 9);
    expect(kinked.direction).toBeCloseTo(2, 6);
    expect(kinked.between.min).toBeLessThanOrEqual(kinked.at);
    expect(kinked.between.max).toBeGreaterThanOrEqual(kinked.at);
    const bowed = shaft(places, (z, angle) => 4 * bow(z) * Math.cos(angle - 2));
    expect(bowed).toMatchObject({ outcome: 'bow' });
  });

  it('goes past the supports: an overhanging end stands off the other way', () => {
    const ends = shaft([3, 10, 15, 23], (z, angle) => 4 * kink(z) * Math.cos(angle));
    expect(ends).toMatchObject({ outcome: 'kink' });
    expect(ends.stations.at(-1)?.direction).toBeCloseTo(Math.PI, 9);
  });

  it('is not decided from four angles, to which three lobes look like one', () => {
    const straight = {
      supports: { min: inch(0), max: inch(20) },
      stations: [5, 10, 15].map((place) => ({
        station: inch(place),
        readings: turn(4, (angle) => thou(place === 10 ? 2 : 1) * Math.cos(3 * angle)),
      })),
    };
    const found = bend(straight);
    expect(found).toMatchObject({
      outcome: 'undecided',
      because: 'too few angles',
      readNext: inch(10),
      anglesNext: 6,
    });
    expect(found.stations[0]?.mayBeLobes).toBe(true);
    const round = bend({ ...straight, roundnessChecked: true });
    expect(round.outcome).toBe('kink');
    expect(round.stations[0]).not.toHaveProperty('mayBeLobes');
    expect(refusal(() => bend({ ...straight, roundnessChecked: 1 as never })).parameter).toBe(
      'roundnessChecked',
    );
    // No station stands off: nothing hangs on the angles.
    const still = straight.stations.map((one) => ({ ...one, readings: turn(4, () => 0) }));
    expect(bend({ ...straight, stations: still }).outcome).toBe('true');
  });

  it('is not decided from one or two stations, which any kink fits', () => {
    const one = shaft([10], (z, angle) => 4 * kink(z) * Math.cos(angle));
    expect(one).toMatchObject({ outcome: 'undecided', because: 'too few stations' });
    // Between 10 and the support at 20, or at 0: the middle of the first stretch of them.
    expect(one.outcome === 'undecided' && one.readNext).toBeCloseTo(inch(5), 12);
    const two = shaft([5, 15], (z, angle) => 4 * bow(z) * Math.cos(angle));
    expect(two).toMatchObject({ outcome: 'undecided', because: 'too few stations' });
    expect(two.outcome === 'undecided' && two.readNext).toBeCloseTo(inch(10), 12);
  });

  it('is not decided where the dial is too coarse to tell both apart', () => {
    const places = [5, 10, 15];
    const law = (z: number, angle: number) => 2 * bow(z) * Math.cos(angle);
    expect(shaft(places, law, 0.05)).toMatchObject({ outcome: 'bow' });
    expect(shaft(places, law, 0.5)).toMatchObject({ outcome: 'undecided', because: 'both fit' });
  });

  it('is not forced into a shape where the shaft is bent twice, or its journals are off its axis', () => {
    const places = [3, 6, 9, 12, 15, 18];
    const twice = shaft(places, (z, angle) => 4 * Math.sin((Math.PI * z) / 10) * Math.cos(angle));
    expect(twice).toMatchObject({ outcome: 'undecided', because: 'neither fits' });
    // As high as in a bow, but each in a direction of its own.
    const wound = shaft(places, (z, angle) => 4 * bow(z) * Math.cos(angle - z / 4));
    expect(wound).toMatchObject({ outcome: 'undecided', because: 'neither fits' });
  });

  it('is none where the dial swings over an oval', () => {
    const oval = shaft([5, 10, 15], (_, angle) => 2 * Math.cos(2 * angle));
    expect(oval).toMatchObject({ outcome: 'out-of-round' });
    expect(oval.stations[0]?.outOfRound).toBeCloseTo(thou(4), 12);
    expect(shaft([5, 10, 15], () => 0)).toMatchObject({ outcome: 'true' });
    expect(shaft([5, 10, 15], (_, angle) => 0.05 * Math.cos(angle))).toMatchObject({
      outcome: 'true',
    });
  });

  it('is the same from whichever end and mark it is measured', () => {
    const places = [2, 6, 9, 13, 18];
    fc.assert(
      fc.property(phases, fc.boolean(), (phase, other) => {
        const seen = shaft(
          places,
          (z, angle) => 4 * kink(other ? 20 - z : z) * Math.cos(angle - phase),
        );
        expect(seen.outcome).toBe('kink');
        if (seen.outcome !== 'kink') return;
        expect(seen.amount).toBeCloseTo(thou(4), 9);
        expect(seen.at).toBeCloseTo(inch(other ? 13 : 7), 6);
      }),
      { numRuns: 10 },
    );
  });
});
