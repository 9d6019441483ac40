import {
  dripFlow,
  dropVolume,
  type Flow,
  format,
  fuelInSump,
  hour,
  hydraulicLockHours,
  kilogramPerCubicMetre,
  type Length,
  litre,
  litrePerMinute,
  minute,
  mL,
  mLPerHour,
  mm,
  newtonPerMetre,
  percentByVolume,
  perHour,
  perMinute,
  petrolDrop,
  quartUS,
  type Rate,
  type SumpLeak,
  second,
  type Time,
  timeToDilution,
  type Volume,
  type VolumeFraction,
  valueIn,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { notNumbers, refusal } from '../quantities/refusal.js';

const sump: SumpLeak = { leak: mLPerHour(36), oil: quartUS(1) };
const anySump = fc
  .record({
    leak: fc.integer({ min: 1, max: 2000 }).map((n) => mLPerHour(n)),
    oil: fc.integer({ min: 100, max: 8000 }).map((n) => mL(n)),
    evaporation: fc.integer({ min: 0, max: 300 }).map((n) => perHour(n / 100)),
  })
  .map((any): Required<Omit<SumpLeak, 'fuel'>> => any);
const startingFuel = fc.integer({ min: 0, max: 300 }).map((n) => mL(n));
const hours = fc.double({ min: 0.01, max: 500, noNaN: true });
/** Whether the sump is still one after so long: at least 2 % oil, and no more fuel than 100 L. */
const holds = ({ leak, oil }: SumpLeak, t: number, fuel = 0) =>
  leak * hour(t) + fuel < Math.min(49 * oil, 0.099);

describe('dripFlow', () => {
  it('is the drops counted by their volume over the time, by default 0.018 to 0.05 mL each', () => {
    const counted = { drops: 12, time: minute(1) };
    const { min, max } = dripFlow(counted);
    expect([min, max].map((flow) => format(flow, mLPerHour))).toEqual(['13.0 mL/h', '36.0 mL/h']);
    expect(dripFlow({ ...counted, dropVolume: petrolDrop })).toEqual(dripFlow(counted));
    const large = dripFlow({ ...counted, dropVolume: mL(0.1) });
    expect(large.min).toBe(large.max);
    expect(format(large.max, mLPerHour)).toBe('72.0 mL/h');
    expect(dripFlow({ drops: 0, time: minute(1) })).toEqual({ min: 0, max: 0 });
    // Three counts of a minute: 12, 13 and 12 drops.
    expect(dripFlow({ drops: 37 / 3, time: minute(1) }).max).toBeCloseTo(
      dripFlow({ drops: 37, time: minute(3) }).max,
      18,
    );
  });

  it('gives a flow that the sump takes, from the fewest drops in the longest time to the most', () => {
    for (const [drops, time, drop] of [
      [1, 1e6, 1e-9],
      [1000, 1, 1e-6],
    ] as const) {
      const { max: leak } = dripFlow({ drops, time: second(time), dropVolume: drop as Volume });
      expect(() =>
        timeToDilution({ leak, oil: litre(1), fraction: percentByVolume(5) }),
      ).not.toThrow();
    }
  });

  it('refuses drops in a time where a count belongs, and a count without its time', () => {
    const rate = { drops: perMinute(12), time: minute(1) };
    expect(refusal(() => dripFlow(rate)).parameter).toBe('drops');
    expect(refusal(() => dripFlow({ drops: 5 } as never)).parameter).toBe('time');
    expect(refusal(() => dripFlow({ drops: 5, time: 0 as Time })).parameter).toBe('time');
    expect(refusal(() => dripFlow(null as never)).parameter).toBe('drip');
  });

  it('shows a drop in its unit where there is none', () => {
    const jug = { drops: 1, time: minute(1), dropVolume: 0.05 as Volume };
    expect(refusal(() => dripFlow(jug)).hint).toContain('mL(0.05)');
    const reversed = { min: petrolDrop.max, max: petrolDrop.min };
    expect(refusal(() => dripFlow({ ...jug, dropVolume: reversed })).parameter).toBe('dropVolume');
  });
});

describe('dropVolume', () => {
  it('grows with the edge and the surface tension, and shrinks with the density', () => {
    const edges = fc.double({ min: 0.5, max: 8, noNaN: true }).map((size) => mm(size));
    fc.assert(
      fc.property(edges, (edge) => {
        const drop = dropVolume({ edge });
        expect(dropVolume({ edge: (edge * 2) as Length })).toBeCloseTo(2 * drop, 15);
        const water = { surfaceTension: newtonPerMetre(0.0728) };
        expect(dropVolume({ edge, ...water })).toBeGreaterThan(drop);
        const heavy = { density: kilogramPerCubicMetre(1000) };
        expect(dropVolume({ edge, ...heavy })).toBeLessThan(drop);
      }),
    );
  });
});

describe('hydraulicLockHours', () => {
  it('is reached when the leak has run in so much', () => {
    const spaces = fc.integer({ min: 10, max: 500 }).map((n) => mL(n));
    const leaks = fc.integer({ min: 1, max: 500 }).map((n) => mLPerHour(n));
    fc.assert(
      fc.property(spaces, leaks, (clearanceVolume, leak) => {
        const time = hydraulicLockHours({ clearanceVolume, leak });
        const { fuel } = fuelInSump({ leak, oil: litre(60), time });
        expect(fuel / clearanceVolume).toBeCloseTo(1, 9);
      }),
    );
  });

  it('refuses what leaks nothing: there is no such time', () => {
    const dry = { clearanceVolume: mL(60), leak: mLPerHour(0) };
    expect(refusal(() => hydraulicLockHours(dry)).parameter).toBe('leak');
  });
});

describe('fuelInSump', () => {
  it('adds up what leaks', () => {
    const after = fuelInSump({ ...sump, time: hour(2) });
    expect(format(after.fuel, mL)).toBe('72.0 mL');
    expect(valueIn(after.level, mL)).toBeCloseTo(946.352946 + 72, 6);
    expect(after.fraction).toBeCloseTo(72 / 1018.352946, 12);
  });

  it('tends to leak over evaporation', () => {
    const long = fuelInSump({ ...sump, evaporation: perHour(0.5), time: hour(1000) });
    expect(valueIn(long.fuel, mL)).toBeCloseTo(72, 9);
    const short = fuelInSump({ ...sump, evaporation: perHour(0.5), time: hour(2) });
    expect(valueIn(short.fuel, mL)).toBeCloseTo(72 * (1 - Math.exp(-1)), 9);
  });

  it('is without evaporation the limit of little evaporation', () => {
    fc.assert(
      fc.property(anySump, hours, ({ leak, oil }, t) => {
        fc.pre(holds({ leak, oil }, t));
        const none = fuelInSump({ leak, oil, time: hour(t) });
        const little = fuelInSump({ leak, oil, time: hour(t), evaporation: perHour(1e-9) });
        expect(little.fuel / none.fuel).toBeCloseTo(1, 5);
        expect(little.fuel).toBeLessThanOrEqual(none.fuel);
      }),
    );
  });

  it('holds more for longer, for a larger leak, for less evaporation', () => {
    fc.assert(
      fc.property(anySump, hours, fc.double({ min: 1, max: 5, noNaN: true }), (any, t, k) => {
        fc.pre(holds(any, k * t));
        const one = fuelInSump({ ...any, time: hour(t) });
        const longer = fuelInSump({ ...any, time: hour(k * t) });
        const larger = fuelInSump({ ...any, leak: (any.leak * k) as Flow, time: hour(t) });
        const dryer = { ...any, evaporation: (any.evaporation * k) as Rate, time: hour(t) };
        expect(longer.fuel).toBeGreaterThanOrEqual(one.fuel * (1 - 1e-12));
        expect(larger.fuel).toBeCloseTo(one.fuel * k, 12);
        expect(fuelInSump(dryer).fuel).toBeLessThanOrEqual(one.fuel * (1 + 1e-12));
        expect(one.fraction).toBeLessThan(1);
        expect(one.level).toBeGreaterThanOrEqual(any.oil);
      }),
    );
  });
});

describe('a sump with fuel in it at the start', () => {
  it('keeps it, and loses it only by evaporating', () => {
    const with50 = { ...sump, fuel: mL(50) };
    expect(valueIn(fuelInSump({ ...with50, time: hour(2) }).fuel, mL)).toBeCloseTo(122, 9);
    expect(fuelInSump({ ...with50, time: hour(0) }).fuel).toBe(mL(50));
    const dry = { ...with50, leak: mLPerHour(0), evaporation: perHour(0.5), time: hour(2) };
    expect(valueIn(fuelInSump(dry).fuel, mL)).toBeCloseTo(50 * Math.exp(-1), 9);
  });

  it('is the end of a stretch and the start of the next: one split in two ends alike', () => {
    const split = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(anySump, startingFuel, hours, split, (any, fuel, t, at) => {
        fc.pre(holds(any, t, fuel));
        const whole = fuelInSump({ ...any, fuel, time: hour(t) });
        const first = fuelInSump({ ...any, fuel, time: hour(t * at) });
        const second = fuelInSump({ ...any, fuel: first.fuel, time: hour(t - t * at) });
        expect(second.fuel / whole.fuel).toBeCloseTo(1, 9);
      }),
    );
  });

  it('obeys fuel’ = leak - evaporation * fuel, integrated step by step', () => {
    fc.assert(
      fc.property(
        anySump,
        startingFuel,
        fc.double({ min: 0.1, max: 40, noNaN: true }),
        (any, fuel, t) => {
          fc.pre(holds(any, t, fuel));
          const { leak, evaporation } = any;
          const slope = (there: number) => leak - evaporation * there;
          // Runge's midpoint rule, as in any textbook: 4000 steps.
          const steps = 4000;
          const step = hour(t) / steps;
          let there: number = fuel;
          for (let i = 0; i < steps; i++) there += step * slope(there + (step / 2) * slope(there));
          const { fuel: exact } = fuelInSump({ ...any, fuel, time: hour(t) });
          expect(exact / there).toBeCloseTo(1, 3);
        },
      ),
      { numRuns: 50 },
    );
  });

  it('gets to a fraction sooner, and no sooner than at once', () => {
    const fraction = percentByVolume(5);
    const clean = timeToDilution({ ...sump, fraction });
    const soiled = timeToDilution({ ...sump, fuel: mL(20), fraction });
    expect(clean.reached && soiled.reached && clean.time - soiled.time).toBeCloseTo(2000, 6);
    expect(timeToDilution({ ...sump, fuel: mL(60), fraction })).toEqual({ reached: true, time: 0 });
    const drying = { ...sump, fuel: mL(60), leak: mLPerHour(0), evaporation: perHour(1), fraction };
    expect(timeToDilution(drying)).toEqual({ reached: true, time: 0 });
  });

  it('without a leak stays as it is, or dries out', () => {
    const still = { oil: mL(950), fuel: mL(50), leak: mLPerHour(0), fraction: percentByVolume(6) };
    expect(timeToDilution(still)).toEqual({ reached: false, settlesAt: 0.05 });
    const dries = timeToDilution({ ...still, evaporation: perHour(0.1) });
    expect(dries).toEqual({ reached: false, settlesAt: 0 });
  });

  it('finds the time again', () => {
    fc.assert(
      fc.property(anySump, startingFuel, hours, (any, fuel, t) => {
        fc.pre(any.evaporation * hour(t) < 5 && holds(any, t, fuel));
        const { fraction, fuel: then } = fuelInSump({ ...any, fuel, time: hour(t) });
        // Where fuel evaporates faster than it leaks there is less than at the start: no time leads there.
        fc.pre(then > fuel + mL(0.1));
        const until = timeToDilution({ ...any, fuel, fraction });
        expect(until.reached && until.time / hour(t)).toBeCloseTo(1, 6);
      }),
    );
  });
});

describe('a leak that outruns the sump', () => {
  it('is refused by its name, and so is a start that is all fuel', () => {
    const flood = { ...sump, leak: litrePerMinute(36), time: hour(5) };
    const error = refusal(() => fuelInSump(flood));
    expect([error.parameter, error.value]).toEqual(['leak', flood.leak]);
    expect(error.message).toMatch(/outruns the sump.*mLPerHour/);
    const all = { oil: mL(1), fuel: mL(100), leak: mLPerHour(0), time: hour(0) };
    expect(refusal(() => fuelInSump(all)).parameter).toBe('fuel');
  });

  it('has left less than 1 % oil, not sooner', () => {
    const just = { oil: mL(10), leak: mLPerHour(99), time: hour(10) };
    expect(fuelInSump(just).fraction).toBeCloseTo(0.99, 12);
    expect(refusal(() => fuelInSump({ ...just, time: hour(10.01) })).parameter).toBe('leak');
  });
});

describe('timeToDilution', () => {
  it('says when, and that some leaks never get there', () => {
    const until = timeToDilution({ ...sump, fraction: percentByVolume(2.5) });
    expect(until.reached && format(until.time, minute)).toBe('40.4 min');
    const never = timeToDilution({
      ...sump,
      evaporation: perHour(2),
      fraction: percentByVolume(2.5),
    });
    const settled = 18 / (18 + 946.352946);
    expect(never).toEqual({ reached: false, settlesAt: expect.closeTo(settled, 12) });
    expect(timeToDilution({ ...sump, fraction: percentByVolume(0) })).toEqual({
      reached: true,
      time: 0,
    });
  });

  it('never gets anywhere without a leak', () => {
    const dry = { leak: mLPerHour(0), oil: litre(1) };
    const never = { reached: false, settlesAt: 0 };
    expect(timeToDilution({ ...dry, fraction: percentByVolume(1) })).toEqual(never);
    const evaporation = perHour(1);
    expect(timeToDilution({ ...dry, evaporation, fraction: percentByVolume(1) })).toEqual(never);
    expect(timeToDilution({ ...dry, fraction: percentByVolume(0) }).reached).toBe(true);
  });

  it('is the time after which the sump holds that fraction', () => {
    const fraction = fc.double({ min: 0.001, max: 0.9, noNaN: true });
    fc.assert(
      fc.property(anySump, fraction, (any, f) => {
        const until = timeToDilution({ ...any, fraction: f as VolumeFraction });
        if (until.reached) {
          fc.pre(until.time <= 3.2e8);
          const then = fuelInSump({ ...any, time: until.time });
          // Near what it settles at, the last of the time decides: allow for that.
          expect(then.fraction).toBeCloseTo(f, 9);
        } else {
          expect(until.settlesAt).toBeLessThanOrEqual(f);
          const late = fuelInSump({ ...any, time: 3e8 as Time });
          expect(late.fraction).toBeCloseTo(until.settlesAt, 9);
        }
      }),
      { numRuns: 500 },
    );
  });

  it('finds the time again from the fraction', () => {
    fc.assert(
      fc.property(anySump, hours, (any, t) => {
        const time = hour(t);
        // Once settled, any time fits the fraction.
        fc.pre(any.evaporation * time < 5 && holds(any, t));
        const { fraction } = fuelInSump({ ...any, time });
        const until = timeToDilution({ ...any, fraction });
        expect(until.reached && until.time / time).toBeCloseTo(1, 8);
      }),
    );
  });

  it('is right for the slowest evaporation that it takes, and refuses what is slower still', () => {
    const fraction = percentByVolume(2.5);
    const slow = timeToDilution({ ...sump, evaporation: 1e-14 as Rate, fraction });
    expect(slow.reached && format(slow.time, minute)).toBe('40.4 min');
    const slower = { ...sump, evaporation: 1e-320 as Rate, fraction };
    expect(refusal(() => timeToDilution(slower)).parameter).toBe('evaporation');
    const trickle = { ...sump, leak: 1e-320 as Flow, fraction };
    expect(refusal(() => timeToDilution(trickle)).parameter).toBe('leak');
    expect(timeToDilution({ ...sump, leak: 0 as Flow, fraction }).reached).toBe(false);
  });
});

describe('a sump that is none', () => {
  it.each([
    ['leak', -1e-9 as Flow],
    ['leak', 36 as Flow],
    ['oil', 0 as Volume],
    ['oil', 1 as Volume],
    ['oil', undefined],
    ['evaporation', -1 as Rate],
    ['evaporation', 'none'],
    ['fuel', -1e-6 as Volume],
    ['fuel', 50 as Volume],
    ['fule', 5e-5 as Volume],
  ])('a %s of %j is refused', (field, value) => {
    const wrong = { ...sump, [field]: value } as SumpLeak;
    const name = new RegExp(`^(sump\\.)?${field}$`);
    expect(refusal(() => fuelInSump({ ...wrong, time: hour(1) })).parameter).toMatch(name);
    const call = () => timeToDilution({ ...wrong, fraction: percentByVolume(1) });
    expect(refusal(call).parameter).toMatch(name);
  });

  it.each(notNumbers.map((value) => [value]))('a time or a fraction of %s is refused', (value) => {
    expect(refusal(() => fuelInSump({ ...sump, time: value as Time })).parameter).toBe('time');
    const call = () => timeToDilution({ ...sump, fraction: value as VolumeFraction });
    expect(refusal(call).parameter).toBe('fraction');
  });

  it('a fraction of all, or of less than none, is refused', () => {
    for (const fraction of [percentByVolume(99.5), percentByVolume(-1), 2.5 as VolumeFraction]) {
      expect(refusal(() => timeToDilution({ ...sump, fraction })).parameter).toBe('fraction');
    }
    expect(refusal(() => fuelInSump({ ...sump, time: -1 as Time })).parameter).toBe('time');
    expect(refusal(() => fuelInSump(null as never)).parameter).toBe('sump');
    expect(refusal(() => timeToDilution(null as never)).parameter).toBe('sump');
  });
});
