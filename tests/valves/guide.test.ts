import {
  clearanceFromRock,
  degree,
  guideClearance,
  guideWear,
  inch,
  type Length,
  mm,
  seatFindings,
  thou,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { refusal } from '../quantities/refusal.js';

describe('guideClearance', () => {
  const pair = { guide: { min: mm(8.01), max: mm(8.06) }, stem: { min: mm(7.95), max: mm(7.97) } };

  it('is judged by limits of the caller’s own alone, at its worse end', () => {
    expect(guideClearance(pair)).not.toHaveProperty('finding');
    const { clearance, finding } = guideClearance({ ...pair, limits: { max: mm(0.1) } });
    expect(clearance.min).toBeCloseTo(mm(0.04), 12);
    expect(clearance.max).toBeCloseTo(mm(0.11), 12);
    expect(finding).toMatchObject({ feature: 'guide clearance', verdict: 'above' });
    const tight = guideClearance({ ...pair, limits: { min: mm(0.05), max: mm(0.2) } });
    expect(tight.finding?.verdict).toBe('below');
  });

  it('leaves a used guide between its fit and its wear limit in service', () => {
    const own = {
      limits: { min: mm(0.03), max: mm(0.08) },
      service: { limits: { max: mm(0.15) } },
    };
    expect(guideClearance({ ...pair, ...own }).finding?.grade).toBe('serviceable');
  });

  it('gives an interference as less than nothing', () => {
    expect(guideClearance({ guide: mm(8), stem: mm(8.02) }).clearance.max).toBeCloseTo(
      mm(-0.02),
      12,
    );
  });

  it('refuses a stem of another valve, at its end', () => {
    const other = { guide: mm(8), stem: { min: mm(6), max: mm(8) } };
    expect(refusal(() => guideClearance(other)).parameter).toBe('stem.min');
    expect(refusal(() => guideClearance({ guide: mm(8), stem: mm(9) })).parameter).toBe('stem');
  });
});

describe('guideWear', () => {
  const at = (height: number, along: number, across: number) => [
    { station: mm(height), angle: degree(0), diameter: mm(along) },
    { station: mm(height), angle: degree(90), diameter: mm(across) },
  ];

  it('tells the bell-mouth of both ends from the waist', () => {
    const wear = guideWear([...at(2, 8.09, 8.05), ...at(25, 8.02, 8.01), ...at(48, 8.04, 8.03)]);
    expect(wear.bellMouthFirst).toBeCloseTo(mm(0.055), 12);
    expect(wear.bellMouthLast).toBeCloseTo(mm(0.02), 12);
    expect(wear.outOfRound).toBeCloseTo(mm(0.04), 12);
    expect(wear.bore).toEqual({ min: mm(8.01), max: mm(8.09) });
    expect(wear.form).toBe('hourglass');
    const { clearance } = guideClearance({ guide: wear.bore, stem: mm(7.96) });
    expect(clearance.max).toBeCloseTo(mm(0.13), 12);
  });

  it('is the taper where only the ends were read', () => {
    const wear = guideWear([...at(2, 8.06, 8.06), ...at(48, 8.02, 8.02)]);
    expect(wear.bellMouthFirst).toBeCloseTo(mm(0.04), 12);
    expect(wear.bellMouthLast).toBe(0);
  });

  it('asks for a second angle', () => {
    const readings = [...at(2, 8.06, 8.06), ...at(48, 8.02, 8.02).slice(0, 1)];
    expect(refusal(() => guideWear(readings)).parameter).toBe('readings');
  });
});

describe('clearanceFromRock', () => {
  /** What a straight stem rocks by, between two ends with clearances of their own: two lines through their edges. */
  const rockOf = (near: number, far: number, length: number, overhang: number) => {
    const leans = (side: 1 | -1) => {
      const [atNear, atFar] = [(side * near) / 2, (-side * far) / 2];
      return atNear + ((atNear - atFar) / length) * overhang;
    };
    return (leans(1) - leans(-1)) as Length;
  };

  it('finds the clearance of an even guide again, and spans that of an uneven one', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 2e-5, max: 3e-4, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0.003, max: 0.05, noNaN: true }),
        (near, share, overhang) => {
          const guideLength = mm(50);
          const of = (far: number) =>
            clearanceFromRock({
              rock: rockOf(near, far, guideLength, overhang),
              guideLength,
              overhang: overhang as Length,
            });
          expect(of(near).clearance / near).toBeCloseTo(1, 9);
          const bell = of(share * near);
          expect(bell.clearance).toBeLessThanOrEqual(near * (1 + 1e-9));
          expect(bell.most).toBeGreaterThanOrEqual(near * (1 - 1e-9));
          expect(of(0).most / near).toBeCloseTo(1, 9);
        },
      ),
    );
  });

  it('shows double the clearance at half the guide’s length past its end', () => {
    const rocked = { rock: thou(8), guideLength: inch(2), overhang: inch(1) };
    expect(clearanceFromRock(rocked).clearance).toBeCloseTo(thou(4), 12);
  });

  it('decides nothing that the shape of the wear may turn round', () => {
    // 4.8 thou if worn evenly, 6.86 at most.
    const rocked = { rock: thou(12), guideLength: inch(2), overhang: inch(1.5) };
    const verdict = (max: number) =>
      clearanceFromRock({ ...rocked, limits: { max: thou(max) } }).finding?.verdict;
    expect(verdict(7)).toBe('within');
    expect(verdict(6)).toBe('undecided');
    expect(verdict(4.5)).toBe('undecided');
    expect(verdict(2.5)).toBe('above');
    expect(clearanceFromRock(rocked)).not.toHaveProperty('finding');
    const doubted = { ...rocked, limits: { max: thou(7) }, uncertainty: thou(1) };
    expect(clearanceFromRock(doubted).finding?.verdict).toBe('undecided');
  });
});

describe('seatFindings', () => {
  it('says nothing of what was not read, or has no limit', () => {
    expect(seatFindings({})).toEqual({});
    expect(seatFindings({ recession: thou(90) })).toEqual({});
    const own = { recession: { limits: { max: thou(30) } } };
    expect(seatFindings({}, own)).toEqual({});
    expect(seatFindings({ recession: thou(31) }, own).recession?.verdict).toBe('above');
  });

  it('lets the caller’s limit win, and says whose the other is', () => {
    const margin = inch(0.012);
    const another = seatFindings({ margin }).margin;
    expect(another).toMatchObject({ verdict: 'below', grade: 'undecided' });
    expect(another?.basis).toMatchObject({ kind: 'published', forAnotherEngine: true });
    const mine = seatFindings({ margin }, { margin: { limits: { min: thou(10) } } }).margin;
    expect(mine).toMatchObject({ verdict: 'within', basis: { kind: 'specified' } });
  });

  it('names the whole path of a limit that it refuses', () => {
    const own = { seatWidth: { limits: { max: 3 as Length } } };
    expect(refusal(() => seatFindings({}, own)).parameter).toBe('limits.seatWidth.limits.max');
    expect(refusal(() => seatFindings({ margin: 2 as Length })).parameter).toBe('margin');
    expect(refusal(() => seatFindings({ magrin: mm(1) } as never)).parameter).toBe(
      'readings.magrin',
    );
  });
});
