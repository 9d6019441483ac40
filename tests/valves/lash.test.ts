import {
  afterFacing,
  celsius,
  degree,
  type EngineMaterial,
  inch,
  type Length,
  lashGrowth,
  meanExpansion,
  mm,
  ppmPerKelvin,
  ratio,
  stemToGrind,
  thou,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { refusal } from '../quantities/refusal.js';

const piece = (length: Length, of: EngineMaterial, degrees: number) => ({
  length,
  expansion: meanExpansion(of),
  temperature: celsius(degrees),
});
const cold = {
  carrier: [piece(mm(150), 'grey iron', 20)],
  train: [piece(mm(50), 'steel', 20), piece(mm(100), 'austenitic valve steel', 20)],
};

describe('lashGrowth', () => {
  it('is nothing as long as nothing has warmed', () => {
    expect(lashGrowth(cold)).toEqual({ growth: { min: 0, max: 0 }, outsideRange: [] });
  });

  it('closes the more, the hotter the valve, and opens the more, the hotter the block', () => {
    const hot = (block: number, valve: number) =>
      lashGrowth({
        carrier: [piece(mm(100), 'grey iron', block)],
        train: [piece(mm(100), 'steel', valve)],
      }).growth;
    fc.assert(
      fc.property(
        fc.integer({ min: 20, max: 200 }),
        fc.integer({ min: 20, max: 600 }),
        fc.integer({ min: 1, max: 100 }),
        (block, valve, more) => {
          const base = hot(block, valve);
          expect(hot(block, valve + more).min).toBeLessThan(base.min);
          expect(hot(block, valve + more).max).toBeLessThan(base.max);
          expect(hot(block + more, valve).min).toBeGreaterThan(base.min);
          expect(base.min).toBeLessThanOrEqual(base.max);
        },
      ),
    );
  });

  it('opens where an alloy block carries a steel push rod, by the ratio of the rocker', () => {
    const still = [piece(mm(100), 'steel', 20)];
    const of = (times: number) =>
      lashGrowth({
        carrier: still,
        train: still,
        rocker: {
          ratio: ratio(times),
          carrier: [piece(mm(200), 'aluminium alloy', 100)],
          train: [piece(mm(200), 'steel', 100)],
        },
      }).growth;
    // 200 * (21.5 - 12.1) * 80 and 200 * (23.6 - 11.2) * 80 µm per m.
    expect(of(1).min).toBeCloseTo(mm(0.1504), 12);
    expect(of(1).max).toBeCloseTo(mm(0.1984), 12);
    expect(of(1.5).min / of(1).min).toBeCloseTo(1.5, 12);
  });

  it('gives the cold lash that the growth brings to what is wanted hot, whichever the coefficient', () => {
    const { growth, coldLash } = lashGrowth({
      ...cold,
      train: [piece(mm(150), 'steel', 200)],
      hotLash: mm(0.15),
    });
    expect((coldLash?.max ?? 0) + growth.min).toBeCloseTo(mm(0.15), 15);
    expect((coldLash?.min ?? 0) + growth.max).toBeCloseTo(mm(0.15), 15);
    expect(coldLash?.max).toBeGreaterThan(mm(0.15));
    expect(lashGrowth(cold)).not.toHaveProperty('coldLash');
  });

  it('names the pieces that run outside the range of their coefficients', () => {
    const train = [piece(mm(50), 'steel', 150), piece(mm(100), 'steel', 350)];
    const { outsideRange } = lashGrowth({
      carrier: [piece(mm(150), 'grey iron', 90)],
      train,
      rocker: {
        ratio: ratio(1),
        carrier: [piece(mm(9), 'grey iron', 101)],
        train: train.slice(0, 1),
      },
    });
    expect(outsideRange).toEqual(['train[1]', 'rocker.carrier[0]']);
  });

  it('names the whole path of what it refuses', () => {
    const wrong = { ...piece(mm(100), 'steel', 90), temperature: 900 as never };
    const hotter = { ...wrong, temperature: celsius(1200) };
    const train = (bad: object) => ({ ...cold, train: [cold.train[0], bad] }) as never;
    expect(refusal(() => lashGrowth(train(hotter))).parameter).toBe('train[1].temperature');
    expect(refusal(() => lashGrowth(train({ ...wrong, lenght: 1 }))).parameter).toBe(
      'train[1].lenght',
    );
    const rocker = { ...cold, ratio: ratio(9) };
    expect(refusal(() => lashGrowth({ ...cold, rocker })).parameter).toBe('rocker.ratio');
    expect(refusal(() => lashGrowth({ ...cold, hotLash: 0.2 as Length })).parameter).toBe(
      'hotLash',
    );
  });

  it('takes a coefficient of the caller’s own as it is', () => {
    const own = {
      length: mm(100),
      expansion: {
        coefficient: ppmPerKelvin(18),
        from: celsius(20),
        to: celsius(700),
        source: 'a data sheet',
      },
      temperature: celsius(520),
    };
    const { growth } = lashGrowth({ carrier: [piece(mm(100), 'grey iron', 20)], train: [own] });
    // 100 * 18e-6 * 500 = 0.9 mm.
    expect(growth.min).toBeCloseTo(mm(-0.9), 12);
    expect(growth.max).toBe(growth.min);
  });
});

describe('stemToGrind', () => {
  const wanted = { min: thou(7), max: thou(9) };

  it('grinds up to the lash that is wanted, no stem twice', () => {
    fc.assert(
      fc.property(fc.integer({ min: -40, max: 69 }), (tenths) => {
        const lash = thou(tenths / 10);
        const work = stemToGrind({ lash, wanted });
        if (work.outcome !== 'grind the stem') throw new Error(work.outcome);
        const { by } = work;
        for (const taken of [by.min, by.max]) {
          const then = (lash + taken) as Length;
          expect(stemToGrind({ lash: then, wanted }).outcome).toBe('leave it');
        }
        expect(work.leastLength).toBe('not known');
      }),
    );
  });

  it('leaves a lash at either of its limits', () => {
    for (const lash of [thou(7), thou(8), thou(9)]) {
      expect(stemToGrind({ lash, wanted })).toEqual({ outcome: 'leave it' });
    }
  });

  it('says that no lash found may be less than none', () => {
    expect(stemToGrind({ lash: thou(0), wanted })).toHaveProperty('atLeast', true);
    expect(stemToGrind({ lash: thou(-2), wanted })).not.toHaveProperty('atLeast');
    expect(stemToGrind({ lash: thou(2), wanted })).not.toHaveProperty('atLeast');
  });

  it('never grinds past the least length, and says how far it may go', () => {
    const of = (length: Length) =>
      stemToGrind({ lash: thou(3), wanted, length, leastLength: inch(3.9) });
    // 4 to 6 thou are wanted.
    expect(of(inch(3.91))).toMatchObject({ outcome: 'grind the stem', leastLength: 'kept' });
    const five = of(inch(3.905));
    expect(five.outcome === 'grind the stem' && five.by.max).toBeCloseTo(thou(5), 12);
    const three = of(inch(3.903));
    expect(three.outcome).toBe('stem too short');
    expect(three.outcome === 'stem too short' && three.needed).toBeCloseTo(thou(4), 12);
    expect(three.outcome === 'stem too short' && three.left).toBeCloseTo(thou(3), 12);
    expect(of(inch(3.89)).outcome).toBe('stem too short');
    expect(of(inch(3.904)).outcome).toBe('grind the stem');
  });

  it('sinks a valve with too much lash, by what facing takes off it again', () => {
    const work = stemToGrind({ lash: thou(12), wanted });
    expect(work.outcome).toBe('too much lash');
    const sink = work.outcome === 'too much lash' ? work.sink : { min: thou(0), max: thou(0) };
    expect(sink.min).toBeCloseTo(thou(3), 12);
    expect(sink.max).toBeCloseTo(thou(5), 12);
    const { lash } = afterFacing({ seatAngle: degree(45), seatCut: sink.min, lash: thou(12) });
    expect(lash).toBeCloseTo(wanted.max, 12);
  });

  it('refuses a least length without the length', () => {
    const stem = { lash: thou(3), wanted, leastLength: inch(3.9) };
    expect(refusal(() => stemToGrind(stem)).parameter).toBe('length');
  });
});

describe('afterFacing', () => {
  const before = {
    lash: thou(8),
    margin: inch(1 / 32),
    recession: thou(10),
    installedHeight: inch(1.5),
  };

  it('changes nothing where nothing is ground', () => {
    expect(afterFacing({ seatAngle: degree(45), ...before })).toEqual({ sink: 0, ...before });
  });

  it('tells only what was read before', () => {
    expect(Object.keys(afterFacing({ seatAngle: degree(45), seatCut: thou(1) }))).toEqual(['sink']);
  });

  it('takes no margin by cutting the seat, and the more the steeper the face', () => {
    const cut = afterFacing({ seatAngle: degree(45), seatCut: thou(5), ...before });
    expect(cut.margin).toBe(before.margin);
    expect(cut.lash).toBeCloseTo(thou(3), 12);
    expect(cut.recession).toBeCloseTo(thou(15), 12);
    expect(cut.installedHeight).toBeCloseTo(inch(1.505), 12);
    const face = (angle: number) =>
      afterFacing({ seatAngle: degree(angle), faceGround: thou(5), ...before });
    expect(face(45).margin).toBeLessThan(face(30).margin ?? 0);
    // What the lash loses, the head sinks by and the spring gains.
    const { sink, lash, recession } = face(30);
    expect((lash ?? 0) + sink).toBeCloseTo(thou(8), 15);
    expect((recession ?? 0) - sink).toBeCloseTo(thou(10), 15);
  });

  it('gives a lash and a margin that are no more as less than nothing', () => {
    const gone = afterFacing({ seatAngle: degree(45), faceGround: thou(40), ...before });
    expect(gone.lash).toBeLessThan(0);
    expect(gone.margin).toBeLessThan(0);
  });
});
