import {
  type Angle,
  degree,
  dipperDip,
  inch,
  type Length,
  mm,
  pistonStandDown,
  radian,
  stackUp,
  thou,
  throwPhase,
  throwPhaseByHeights,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { refusal } from '../quantities/refusal.js';

const share = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('throwPhase', () => {
  const twin = { stroke: mm(80), firstTop: degree(0), designed: degree(180) };

  it('counts whole turns for nothing, either way', () => {
    fc.assert(
      fc.property(share(-10, 10), fc.integer({ min: -1, max: 1 }), (off, turns) => {
        const secondTop = degree(180 + off + 360 * turns);
        const { error, alongCircle } = throwPhase({ ...twin, secondTop });
        expect(error).toBeCloseTo(degree(off), 9);
        expect(alongCircle).toBeCloseTo(mm(40) * degree(off), 9);
      }),
    );
    const together = { ...twin, designed: degree(360), secondTop: degree(0.5) };
    expect(throwPhase(together).error).toBeCloseTo(degree(0.5), 12);
  });

  it('judges by the caller alone, whichever way it is off, and not past what the readings bear', () => {
    const limits = { max: degree(0.5) };
    const by = (off: number, within = 0) =>
      throwPhase({ ...twin, secondTop: degree(180 + off), topsWithin: degree(within), limits });
    expect(throwPhase({ ...twin, secondTop: degree(182) }).finding).toBeUndefined();
    expect(by(-0.75).finding?.verdict).toBe('above');
    expect(by(0.25).finding?.verdict).toBe('within');
    expect(by(0.25, 0.25).finding?.verdict).toBe('undecided');
  });

  it('is told alike by heights above a plate, however level the crankshaft lies', () => {
    fc.assert(
      fc.property(share(-0.05, 0.05), share(-0.2, 0.2), (off, tilt) => {
        const at = (angle: number) => (0.1 + 0.04 * Math.sin(angle)) as Length;
        const level = { stroke: mm(80), centre: mm(100), first: at(tilt) };
        const opposite = at(tilt + Math.PI + off);
        const together = at(tilt + off);
        expect(
          throwPhaseByHeights({ ...level, second: opposite, throws: 'opposite' }).error,
        ).toBeCloseTo(off, 9);
        expect(
          throwPhaseByHeights({ ...level, second: together, throws: 'together' }).error,
        ).toBeCloseTo(off, 9);
      }),
    );
  });

  it('knows how far heights can be trusted', () => {
    const level = { stroke: inch(3), centre: inch(4), first: inch(4), second: inch(4) };
    const within = { heightsWithin: thou(1) };
    const opposite = throwPhaseByHeights({ ...level, ...within, throws: 'opposite' });
    // Both pins once and the centre twice: √(1 + 1 + 4) thou at 1.5 in.
    expect(opposite.uncertainty).toBeCloseTo(Math.sqrt(6) * (0.001 / 1.5), 12);
    const upright = { ...level, first: inch(5.5) } as const;
    expect(refusal(() => throwPhaseByHeights({ ...upright, throws: 'opposite' })).parameter).toBe(
      'first',
    );
  });
});

describe('dipperDip', () => {
  const trough = {
    stroke: mm(80),
    rodLength: mm(150),
    dipper: mm(45),
    centreAboveFloor: mm(90),
    oilDepth: mm(12),
  };

  it('reaches as low as the tip gets anywhere in a turn, upright or lying', () => {
    fc.assert(
      fc.property(share(0.02, 0.4), share(0.05, 0.3), (dipper, rodLength) => {
        const of = { ...trough, dipper: dipper as Length, rodLength: rodLength as Length };
        const lowest = (depthAt: (angle: number) => number) =>
          Math.max(...Array.from({ length: 7200 }, (_, i) => depthAt((i * Math.PI) / 3600)));
        const lean = (angle: number) => Math.asin((0.04 / rodLength) * Math.sin(angle));
        const upright = lowest((a) => -0.04 * Math.cos(a) + dipper * Math.cos(lean(a)));
        const lying = lowest((a) => 0.04 * Math.sin(a) + dipper * Math.cos(lean(a)));
        expect(dipperDip({ ...of, cylinder: 'upright' }).reach.min).toBeCloseTo(upright, 6);
        expect(dipperDip({ ...of, cylinder: 'lying' }).reach.min).toBeCloseTo(lying, 6);
      }),
      { numRuns: 25 },
    );
  });

  it('tells a tip that strikes, one that may, and one that stays dry', () => {
    const run = (floor: number, oil: number) =>
      dipperDip({
        ...trough,
        cylinder: 'upright',
        dipper: { min: mm(44), max: mm(46) },
        centreAboveFloor: mm(floor),
        oilDepth: mm(oil),
      });
    expect([run(83, 10).strikes, run(85, 10).strikes, run(87, 10).strikes]).toEqual([
      'yes',
      'maybe',
      'no',
    ]);
    expect([run(95, 12).reachesOil, run(95, 10).reachesOil, run(95, 8).reachesOil]).toEqual([
      'yes',
      'maybe',
      'no',
    ]);
  });

  it('judges the worse end by the limits of the maker', () => {
    const found = dipperDip({
      ...trough,
      cylinder: 'upright',
      oilDepth: { min: mm(6), max: mm(12) },
      dipLimits: { limits: { min: mm(3), max: mm(8) }, basis: { kind: 'specified', by: 'manual' } },
      clearanceLimits: { limits: { min: mm(3) } },
    });
    expect(found.dipFinding).toMatchObject({ verdict: 'below', basis: { by: 'manual' } });
    expect(found.clearanceFinding?.verdict).toBe('within');
  });
});

describe('pistonStandDown', () => {
  const sizes = {
    deckHeight: { min: mm(229.1), max: mm(229.3) },
    stroke: { min: mm(79.9), max: mm(80.1) },
    rodLength: { min: mm(149.95), max: mm(150.05) },
    pinHeight: { min: mm(38.9), max: mm(39) },
  };

  it('is the worst case of a stack of the same sizes', () => {
    const { calculated } = pistonStandDown(sizes);
    const { span } = stackUp(
      [
        { name: 'deck', size: sizes.deckHeight },
        { name: 'stroke', size: sizes.stroke, sensitivity: -0.5 },
        { name: 'rod', size: sizes.rodLength, sensitivity: -1 },
        { name: 'pin', size: sizes.pinHeight, sensitivity: -1 },
      ],
      { kind: 'worst case' },
    );
    expect(calculated.min).toBeCloseTo(span.min, 12);
    expect(calculated.max).toBeCloseTo(span.max, 12);
    // 229.1 - 40.05 - 150.05 - 39 and 229.3 - 39.95 - 149.95 - 38.9
    expect(calculated.min).toBeCloseTo(mm(0), 12);
    expect(calculated.max).toBeCloseTo(mm(0.5), 12);
  });

  it('says of a piston that was measured whether its sizes allow it', () => {
    const at = (measured: number) => pistonStandDown({ ...sizes, measured: mm(measured) });
    expect([at(-0.1), at(0.3), at(0.6)].map(({ stands }) => stands)).toEqual([
      'too high',
      'as the sizes say',
      'too low',
    ]);
    expect(at(0.6).difference?.min).toBeCloseTo(mm(0.1), 12);
    expect(pistonStandDown(sizes).stands).toBeUndefined();
  });

  it('judges what was measured before what was calculated', () => {
    const limits = { max: mm(0.4) };
    expect(pistonStandDown({ ...sizes, limits }).finding?.verdict).toBe('above');
    const measured = pistonStandDown({ ...sizes, limits, measured: mm(0.3) });
    expect(measured.finding?.verdict).toBe('within');
    expect(pistonStandDown(sizes).finding).toBeUndefined();
  });

  it('refuses a rod shorter than its throw, and a deck of another engine', () => {
    const short = { ...sizes, rodLength: mm(39) };
    expect(refusal(() => pistonStandDown(short)).parameter).toBe('rodLength');
    const atEnd = { ...sizes, rodLength: { min: mm(39), max: mm(150) } };
    expect(refusal(() => pistonStandDown(atEnd)).parameter).toBe('rodLength.min');
    const other = { ...sizes, deckHeight: mm(429) };
    expect(refusal(() => pistonStandDown(other)).parameter).toBe('deckHeight');
  });

  it('takes an angle and a length for what they are', () => {
    expect(
      throwPhase({
        stroke: mm(80),
        firstTop: radian(0),
        secondTop: Math.PI as Angle,
        designed: radian(Math.PI),
      }).error,
    ).toBe(0);
  });
});
