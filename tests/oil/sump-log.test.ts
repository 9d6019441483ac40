import {
  type Flow,
  format,
  fuelInSump,
  hour,
  litre,
  litrePerMinute,
  mL,
  mLPerHour,
  percentByVolume,
  perHour,
  type Rate,
  type SumpEntry,
  type SumpStory,
  sumpLog,
  type Time,
  type Volume,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { notNumbers, refusal } from '../quantities/refusal.js';

const story = {
  oil: litre(0.9),
  leak: { running: mLPerHour(0), standing: mLPerHour(6) },
  evaporation: { running: perHour(0.2), standing: perHour(0) },
  log: [
    { running: hour(2) },
    { standing: hour(12) },
    { drained: litre(0.3) },
    { added: litre(0.3) },
  ],
} as const satisfies SumpStory;

/** Half a litre and more always stays in, so that no leak here outruns the sump. */
const anyEntry: fc.Arbitrary<SumpEntry> = fc.oneof(
  fc.integer({ min: 0, max: 200 }).map((n) => ({ running: hour(n / 10) })),
  fc.integer({ min: 0, max: 200 }).map((n) => ({ standing: hour(n / 10) })),
  fc.integer({ min: 0, max: 40 }).map((n) => ({ drained: mL(n) })),
  fc.integer({ min: 0, max: 200 }).map((n) => ({ added: mL(n) })),
);
const anyStory = fc.record({
  oil: fc.integer({ min: 700, max: 2000 }).map((n) => mL(n)),
  fuel: fc.integer({ min: 0, max: 100 }).map((n) => mL(n)),
  leak: fc.record({
    running: fc.integer({ min: 0, max: 60 }).map((n) => mLPerHour(n)),
    standing: fc.integer({ min: 0, max: 60 }).map((n) => mLPerHour(n)),
  }),
  evaporation: fc.record({
    running: fc.integer({ min: 0, max: 100 }).map((n) => perHour(n / 100)),
    standing: fc.integer({ min: 0, max: 10 }).map((n) => perHour(n / 100)),
  }),
  log: fc.array(anyEntry, { minLength: 1, maxLength: 5 }),
});
type AnyStory = (typeof anyStory extends fc.Arbitrary<infer S> ? S : never) & SumpStory;

/** The same story step by step, with a count of all that came and went: no closed form anywhere. */
function counted({ oil: atStart, fuel: already, leak, evaporation, log }: AnyStory, steps = 2000) {
  let oil: number = atStart;
  let fuel: number = already;
  const count = { came: oil + fuel, drained: 0, evaporated: 0 };
  for (const entry of log) {
    if ('added' in entry) {
      oil += entry.added;
      count.came += entry.added;
    } else if ('drained' in entry) {
      const drained = Number(entry.drained);
      const level = oil + fuel;
      count.drained += drained;
      oil -= (drained * oil) / level;
      fuel -= (drained * fuel) / level;
    } else {
      const state = 'running' in entry ? 'running' : 'standing';
      const step = ('running' in entry ? entry.running : entry.standing) / steps;
      for (let i = 0; i < steps; i++) {
        // Runge's midpoint rule.
        const half = fuel + (step / 2) * (leak[state] - evaporation[state] * fuel);
        const lost = step * evaporation[state] * half;
        fuel += step * leak[state] - lost;
        count.came += step * leak[state];
        count.evaporated += lost;
      }
    }
  }
  return { oil, fuel, ...count };
}

describe('sumpLog', () => {
  it('follows what happened, entry by entry', () => {
    const { after, end } = sumpLog(story);
    expect(after.map(({ fuel }) => format(fuel, mL))).toEqual([
      '0.0 mL',
      '72.0 mL',
      '49.8 mL',
      '49.8 mL',
    ]);
    expect(after.map(({ level }) => format(level, mL))).toEqual([
      '900.0 mL',
      '972.0 mL',
      '672.0 mL',
      '972.0 mL',
    ]);
    expect(after.map(({ rise }) => format(rise, mL))).toEqual([
      '0.0 mL',
      '72.0 mL',
      '-228.0 mL',
      '72.0 mL',
    ]);
    expect(end).toBe(after[3]);
    expect(end.fraction).toBeCloseTo(end.fuel / end.level, 14);
    expect(end.oil).toBeCloseTo(end.level - end.fuel, 14);
  });

  it('of one stretch is fuelInSump', () => {
    fc.assert(
      fc.property(anyStory, fc.integer({ min: 0, max: 500 }), (any, tenths) => {
        const time = hour(tenths / 10);
        const log = sumpLog({ ...any, log: [{ standing: time }] }).end;
        const leak = any.leak.standing;
        const { oil, fuel } = any;
        const one = fuelInSump({ leak, oil, fuel, evaporation: any.evaporation.standing, time });
        expect([log.fuel, log.level, log.fraction]).toEqual([one.fuel, one.level, one.fraction]);
      }),
    );
  });

  it('agrees with the same story integrated step by step, and nothing is lost on the way', () => {
    fc.assert(
      fc.property(anyStory, (any) => {
        const { end } = sumpLog(any);
        const byCount = counted(any);
        expect(end.oil / byCount.oil).toBeCloseTo(1, 8);
        expect(end.fuel).toBeCloseTo(byCount.fuel, 8);
        // What came is what is left, what was drained and what evaporated.
        const { came, drained, evaporated } = byCount;
        expect((end.level + drained + evaporated) / came).toBeCloseTo(1, 6);
      }),
      { numRuns: 60 },
    );
  });

  it('is the same whether a stretch is written once or in two', () => {
    const at = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(anyStory, at, (any, share) => {
        const halves = any.log.flatMap((entry): SumpEntry[] => {
          if ('running' in entry) {
            const first = (entry.running * share) as Time;
            return [{ running: first }, { running: (entry.running - first) as Time }];
          }
          if ('standing' in entry) {
            const first = (entry.standing * share) as Time;
            return [{ standing: first }, { standing: (entry.standing - first) as Time }];
          }
          return [entry];
        });
        const whole = sumpLog(any).end;
        const split = sumpLog({ ...any, log: halves }).end;
        expect(split.fuel).toBeCloseTo(whole.fuel, 14);
        expect(split.oil).toBeCloseTo(whole.oil, 14);
      }),
    );
  });

  it('does not depend on the order of stretches in one state, but on when it was drained', () => {
    const base = { oil: litre(1), leak: mLPerHour(10) };
    const [a, b] = [{ running: hour(3) }, { standing: hour(9) }];
    const there = sumpLog({ ...base, log: [a, b] }).end;
    const back = sumpLog({ ...base, log: [b, a] }).end;
    expect(back.fuel).toBeCloseTo(there.fuel, 16);
    const drain = { drained: mL(400) };
    const before = sumpLog({ ...base, log: [drain, a, b] }).end;
    const late = sumpLog({ ...base, log: [a, b, drain] }).end;
    expect(late.fuel).toBeLessThan(before.fuel);
    expect(late.level).toBeCloseTo(before.level, 14);
    // Evaporation counts what is there: fuel that came first has longer to go.
    const drying = { ...base, leak: { running: mLPerHour(0), standing: mLPerHour(10) } };
    const evaporation = perHour(0.2);
    const first = sumpLog({ ...drying, evaporation, log: [b, a] }).end;
    const last = sumpLog({ ...drying, evaporation, log: [a, b] }).end;
    expect(first.fuel).toBeLessThan(last.fuel);
  });

  it('ends with more fuel for a larger leak, with less for more evaporation', () => {
    fc.assert(
      fc.property(anyStory, fc.double({ min: 1, max: 3, noNaN: true }), (any, k) => {
        const { running, standing } = any.leak;
        const leak = { running: (running * k) as Flow, standing: (standing * k) as Flow };
        const fuel = sumpLog(any).end.fuel;
        expect(sumpLog({ ...any, leak }).end.fuel).toBeGreaterThanOrEqual(fuel * (1 - 1e-9));
        const evaporation = (3e-4 * k) as Rate;
        const dry = sumpLog({ ...any, evaporation }).end.fuel;
        const dryer = sumpLog({ ...any, evaporation: (2 * evaporation) as Rate }).end.fuel;
        expect(dryer).toBeLessThanOrEqual(dry * (1 + 1e-9));
      }),
    );
  });

  it('takes one leak for both states, and nothing for evaporation', () => {
    const both = mLPerHour(7);
    const one = sumpLog({ ...story, leak: both, evaporation: perHour(0) });
    const { evaporation: _, ...without } = story;
    expect(sumpLog({ ...without, leak: { running: both, standing: both } })).toEqual(one);
  });

  it('lets out all there is, and starts again with clean oil', () => {
    const changed = [{ standing: hour(24) }, { drained: 'all' }, { added: litre(0.9) }] as const;
    const { after, end } = sumpLog({ ...story, log: changed });
    expect(after[1]).toEqual({ oil: 0, fuel: 0, level: 0, fraction: 0, rise: -0.9e-3 });
    expect(end).toEqual({ oil: 0.9e-3, fuel: 0, level: 0.9e-3, fraction: 0, rise: 0 });
    const still = [{ drained: 'all' }, { drained: mL(0) }] as const;
    expect(sumpLog({ ...story, log: still }).end.level).toBe(0);
    const measured = { ...story, log: [{ standing: hour(24) }, { drained: mL(1044) }] };
    expect(sumpLog(measured).end.level).toBeLessThan(1e-12);
  });

  it('refuses more drained than there is, by the entry', () => {
    const log = [{ standing: hour(12) }, { drained: mL(973) }];
    const error = refusal(() => sumpLog({ ...story, log }));
    expect([error.parameter, error.value]).toEqual(['log[1].drained', mL(973)]);
    expect(error.message).toMatch(/0\.973 L is more than is in the sump, 0\.972 L/);
    const empty = [{ drained: 'all' }, { drained: mL(1) }] as const;
    expect(refusal(() => sumpLog({ ...story, log: empty })).parameter).toBe('log[1].drained');
  });

  it('refuses a leak that outruns the sump, by its state', () => {
    const leak = { running: mLPerHour(0), standing: litrePerMinute(30) };
    const flood = refusal(() => sumpLog({ ...story, leak }));
    expect([flood.parameter, flood.value]).toEqual(['leak.standing', leak.standing]);
    expect(flood.message).toMatch(/outruns the sump/);
    const one = refusal(() => sumpLog({ ...story, leak: leak.standing }));
    expect(one.parameter).toBe('leak');
    const dry = [{ drained: 'all' }, { standing: hour(1) }] as const;
    expect(refusal(() => sumpLog({ ...story, log: dry })).hint).toMatch(/no oil in the sump/);
  });

  it.each([
    [{}, 'log[0]', /an empty entry/],
    [{ running: hour(1), standing: hour(1) }, 'log[0]', /exactly one of/],
    [{ ran: hour(1) }, 'log[0].ran', /not a known field/],
    [{ running: hour(-1) }, 'log[0].running', /outside/],
    [{ added: 5 }, 'log[0].added', /outside/],
    [{ drained: 'some' }, 'log[0].drained', /some/],
    [{ drained: -1e-4 as Volume }, 'log[0].drained', /outside/],
    [null, 'log[0]', /an object/],
    [[hour(1)], 'log[0]', /an object/],
  ])('refuses the entry %j', (entry, parameter, message) => {
    const error = refusal(() => sumpLog({ ...story, log: [entry as SumpEntry] }));
    expect(error.parameter).toBe(parameter);
    expect(error.message).toMatch(message);
  });

  it.each([
    ['oil', 0],
    ['oil', undefined],
    ['fuel', -1],
    ['leak', undefined],
    ['leak.standing', { running: mLPerHour(1) }],
    ['leak.running', { running: -1, standing: mLPerHour(1) }],
    ['leak.sitting', { running: mLPerHour(1), sitting: mLPerHour(1) }],
    ['evaporation.running', { standing: perHour(1) }],
    ['log', []],
    ['log', undefined],
    ['log', { running: hour(1) }],
  ])('refuses a %s of %j', (parameter, value) => {
    const [field = ''] = parameter.split('.');
    const wrong = { ...story, [field]: value } as SumpStory;
    expect(refusal(() => sumpLog(wrong)).parameter).toBe(parameter);
  });

  it('refuses what is no number, no story and a field that it does not know', () => {
    for (const value of notNumbers) {
      const entry = { running: value } as SumpEntry;
      expect(refusal(() => sumpLog({ ...story, log: [entry] })).parameter).toBe('log[0].running');
    }
    expect(refusal(() => sumpLog(null as never)).parameter).toBe('sump');
    const misspelt = { ...story, evaportion: perHour(1) };
    expect(refusal(() => sumpLog(misspelt)).parameter).toBe('sump.evaportion');
    const full = { ...story, oil: mL(1), fuel: percentByVolume(10) as number as Volume };
    expect(refusal(() => sumpLog(full)).parameter).toBe('fuel');
  });
});
