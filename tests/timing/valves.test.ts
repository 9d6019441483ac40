import {
  type Angle,
  type CrankPlace,
  crankPlace,
  degree,
  oneTooth,
  teethOff,
  topDeadCentre,
  type ValveReadings,
  valueIn,
  valveTiming,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { refusal } from '../quantities/refusal.js';

const shortOf = (degrees: number, centre: 'top' | 'bottom'): CrankPlace =>
  degrees < 0
    ? { angle: degree(-degrees), after: centre }
    : { angle: degree(degrees), before: centre };
const past = (degrees: number, centre: 'top' | 'bottom') => shortOf(-degrees, centre);
const inDegrees = (angle: Angle | undefined) => angle && valueIn(angle, degree);
const wanted = {
  inletOpens: shortOf(10, 'top'),
  inletCloses: past(40, 'bottom'),
  exhaustOpens: shortOf(45, 'bottom'),
  exhaustCloses: past(15, 'top'),
};
/** The same cam, late by so many degrees of the crank. */
const lateBy = (degrees: number) => ({
  inletOpens: shortOf(10 - degrees, 'top'),
  inletCloses: past(40 + degrees, 'bottom'),
  exhaustOpens: shortOf(45 - degrees, 'bottom'),
  exhaustCloses: past(15 + degrees, 'top'),
});
const gears = { wanted, within: degree(2), crankTeeth: 24, camTeeth: 48 };

describe('top dead centre', () => {
  it('lies in the middle of two stop readings, wherever the wheel was put and whichever came first', () => {
    const any = fc.record({
      top: fc.double({ min: 0, max: 359.99, noNaN: true }),
      stop: fc.double({ min: 2.1, max: 74, noNaN: true }),
      swap: fc.boolean(),
    });
    fc.assert(
      fc.property(any, ({ top, stop, swap }) => {
        const wrapped = (degrees: number) => degree(((degrees % 360) + 360) % 360);
        const readings = [wrapped(top - stop), wrapped(top + stop)] as const;
        const [first, second] = swap ? readings : [readings[1], readings[0]];
        const found = topDeadCentre({ first, second });
        const miss = Math.abs(valueIn(found.top, degree) - top);
        expect(Math.min(miss, 360 - miss)).toBeLessThan(1e-9);
        expect(valueIn(found.fromStop, degree)).toBeCloseTo(stop, 9);
        expect(Math.abs(found.off)).toBeLessThanOrEqual(Math.PI + 1e-12);
      }),
    );
  });

  it('tells a wheel that reads too little, and is no surer than its readings', () => {
    const { off, span } = topDeadCentre({
      first: degree(330),
      second: degree(26),
      within: degree(1),
    });
    expect(inDegrees(off)).toBeCloseTo(-2, 9);
    expect(inDegrees(span.min)).toBeCloseTo(357, 9);
    expect(inDegrees(span.max)).toBeCloseTo(359, 9);
  });

  it('refuses two readings of one side, and a stop so low that the middle may be the bottom', () => {
    const at = (first: number, second: number) => () =>
      topDeadCentre({ first: degree(first), second: degree(second) });
    expect(refusal(at(20, 22)).parameter).toBe('second');
    expect(refusal(at(90, 270)).parameter).toBe('second');
    expect(refusal(at(80, 280)).parameter).toBe('second');
  });
});

describe('a place on the wheel', () => {
  it('is told from the nearer dead centre, and before and after change on a wheel marked backwards', () => {
    const top = degree(3);
    const place = (reading: number, numbersRise: 'forwards' | 'backwards') => {
      const { angle, ...side } = crankPlace({ reading: degree(reading), top, numbersRise });
      return [Math.round(valueIn(angle, degree) * 1e6) / 1e6, side];
    };
    expect(place(353, 'forwards')).toEqual([10, { before: 'top' }]);
    expect(place(353, 'backwards')).toEqual([10, { after: 'top' }]);
    expect(place(-7, 'forwards')).toEqual([10, { before: 'top' }]);
    expect(place(236, 'forwards')).toEqual([53, { after: 'bottom' }]);
    expect(place(143, 'forwards')).toEqual([40, { before: 'bottom' }]);
    expect(place(3, 'forwards')).toEqual([0, { after: 'top' }]);
  });

  it('is the same place however it is written', () => {
    const timing = (inletOpens: CrankPlace) =>
      valveTiming({ inletOpens, exhaustCloses: wanted.exhaustCloses }).overlap;
    expect(inDegrees(timing(shortOf(10, 'top')))).toBeCloseTo(25, 9);
    expect(inDegrees(timing(past(170, 'bottom')))).toBeCloseTo(25, 9);
  });
});

describe('valve timing', () => {
  it('takes an inlet that opens after top and closes before bottom', () => {
    const { inlet, overlap } = valveTiming({
      inletOpens: past(12, 'top'),
      inletCloses: shortOf(8, 'bottom'),
      exhaustCloses: shortOf(5, 'top'),
    });
    expect(inDegrees(inlet?.duration)).toBeCloseTo(160, 9);
    expect(inDegrees(inlet?.centreline)).toBeCloseTo(92, 9);
    expect(inDegrees(overlap)).toBeCloseTo(-17, 9);
  });

  it('keeps every length and moves every centreline as the cam is moved', () => {
    fc.assert(
      fc.property(fc.double({ min: -30, max: 30, noNaN: true }), (late) => {
        const [was, is] = [valveTiming(wanted), valveTiming(lateBy(late))];
        expect(is.inlet?.duration).toBeCloseTo(was.inlet?.duration ?? Number.NaN, 9);
        expect(is.overlap).toBeCloseTo(was.overlap ?? Number.NaN, 9);
        expect(is.lobeSeparation).toBeCloseTo(was.lobeSeparation ?? Number.NaN, 9);
        expect((is.camAdvance ?? 0) - (was.camAdvance ?? 0)).toBeCloseTo(degree(-late), 9);
      }),
    );
  });

  it('leaves out what was not read, and tells how far it may be off', () => {
    const timing = valveTiming({ inletOpens: wanted.inletOpens, within: degree(1) });
    expect(timing).toEqual({ durationWithin: degree(2), centrelineWithin: degree(1) });
  });

  it('refuses a valve that opens after it closes, and before for after, by name', () => {
    const refused = (readings: ValveReadings) => refusal(() => valveTiming(readings)).parameter;
    expect(refused({ inletOpens: past(95, 'top'), inletCloses: shortOf(95, 'bottom') })).toBe(
      'inletCloses',
    );
    expect(refused({ exhaustOpens: past(90, 'bottom'), exhaustCloses: shortOf(90, 'top') })).toBe(
      'exhaustCloses',
    );
    expect(refused({ inletOpens: shortOf(10, 'top'), inletCloses: shortOf(20, 'top') })).toBe(
      'inletCloses',
    );
    expect(refused({ inletOpens: shortOf(10, 'bottom') })).toBe('inletOpens');
    expect(refused({ inletOpens: { ...shortOf(10, 'top'), after: 'top' } as never })).toBe(
      'inletOpens.after',
    );
    expect(refused({ inletOpens: { angle: degree(10) } as never })).toBe('inletOpens.after');
  });
});

describe('teeth of the timing gears', () => {
  it('tells teeth and which way, with readings that are off', () => {
    for (const [late, teeth, cam] of [
      [15, 1, 'late'],
      [-15, 1, 'early'],
      [31.5, 2, 'late'],
    ] as const) {
      expect(teethOff({ ...gears, found: lateBy(late) })).toMatchObject({
        outcome: 'teeth off',
        teeth,
        cam,
        durationDiffers: false,
      });
    }
    expect(teethOff({ ...gears, found: lateBy(1.9) }).outcome).toBe('in mesh');
  });

  it('finds a cam that was put in any number of teeth out', () => {
    const any = fc.record({
      teeth: fc.integer({ min: -2, max: 2 }),
      error: fc.double({ min: -0.99, max: 0.99, noNaN: true }),
      crankTeeth: fc.integer({ min: 20, max: 50 }),
    });
    fc.assert(
      fc.property(any, ({ teeth, error, crankTeeth }) => {
        const tooth = 360 / crankTeeth;
        const check = teethOff({
          ...gears,
          found: lateBy(teeth * tooth + error),
          within: degree(1),
          crankTeeth,
          camTeeth: 2 * crankTeeth,
        });
        const counted =
          check.outcome === 'teeth off' ? (check.cam === 'late' ? check.teeth : -check.teeth) : 0;
        expect(['teeth off', 'in mesh']).toContain(check.outcome);
        expect(counted === teeth).toBe(true);
      }),
    );
  });

  it('says that it is not a tooth', () => {
    expect(teethOff({ ...gears, found: lateBy(7) })).toMatchObject({
      outcome: 'not a tooth',
      because: 'between teeth',
    });
    const { inletOpens, inletCloses } = lateBy(15);
    expect(teethOff({ ...gears, found: { ...wanted, inletOpens, inletCloses } })).toMatchObject({
      outcome: 'not a tooth',
      because: 'valves disagree',
    });
  });

  it('tells lash from a tooth by the middle of the lobe, and reports it', () => {
    // Wide lash: opens 12 late, closes 12 early.
    const found = { inletOpens: past(2, 'top'), inletCloses: past(28, 'bottom') };
    const check = teethOff({ ...gears, found });
    expect(check).toMatchObject({ outcome: 'in mesh', durationDiffers: true });
    expect(inDegrees(check.shifts[0]?.longer)).toBeCloseTo(-24, 9);
  });

  it('does not decide by readings that are too coarse', () => {
    expect(teethOff({ ...gears, found: lateBy(8), within: degree(9) })).toMatchObject({
      outcome: 'undecided',
      because: 'readings too coarse',
      teeth: [0, 1],
    });
  });

  it('is the same turn of the crank at every gear of the train', () => {
    expect(oneTooth({ crankTeeth: 32, gearTeeth: 64 }).atCrank).toBe(
      oneTooth({ crankTeeth: 32, gearTeeth: 41 }).atCrank,
    );
  });
});
