import {
  freeSpread,
  housingRoundness,
  inch,
  MPa,
  mm,
  type ShellInHousing,
  shellNip,
  thou,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { refusal } from '../quantities/refusal.js';

const shell: ShellInHousing = { housingBore: mm(60), crush: mm(0.03), back: mm(1.5) };

describe('shellNip', () => {
  it('grips in proportion to the crush, and with a thicker back at the same stress', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 100 }), (n) => {
        const one = shellNip({ ...shell, crush: mm(0.001) });
        const more = shellNip({ ...shell, crush: mm(0.001 * n) });
        expect(more.hoopStress / one.hoopStress).toBeCloseTo(n, 9);
        expect(more.seatingPressure / one.seatingPressure).toBeCloseTo(n, 9);
      }),
    );
    const thick = shellNip({ ...shell, back: mm(3) });
    expect(thick.hoopStress).toBe(shellNip(shell).hoopStress);
    expect(thick.seatingPressure / shellNip(shell).seatingPressure).toBeCloseTo(2, 12);
  });

  it('grips nothing without crush', () => {
    expect(shellNip({ ...shell, crush: mm(0) })).toEqual({
      hoopStrain: 0,
      hoopStress: 0,
      seatingPressure: 0,
    });
  });

  it('holds its pressure against its stress: both carry the joint of the ring', () => {
    // Cut the ring in half: pressure times the bore is what two backs carry.
    const { hoopStress, seatingPressure } = shellNip(shell);
    expect(seatingPressure * 0.06).toBeCloseTo(2 * hoopStress * 0.0015, 6);
  });

  it('takes steel unless it is told otherwise', () => {
    expect(shellNip({ ...shell, elasticity: MPa(207_000) })).toEqual(shellNip(shell));
    expect(refusal(() => shellNip({ ...shell, back: mm(7) })).parameter).toBe('back');
  });
});

describe('freeSpread', () => {
  it('is what the ends stand wider than the housing, and less than nothing for a loose half', () => {
    expect(freeSpread({ acrossEnds: inch(2.275), housingBore: inch(2.25) })).toBeCloseTo(
      thou(25),
      12,
    );
    expect(freeSpread({ acrossEnds: inch(2.249), housingBore: inch(2.25) })).toBeCloseTo(
      thou(-1),
      12,
    );
  });
});

describe('housingRoundness', () => {
  const readings = { crown: inch(1.7512), left: inch(1.7505), right: inch(1.7507) };

  it('is the same whichever way the readings are turned', () => {
    const { crown, left, right } = readings;
    const turned = housingRoundness({ crown: left, left: right, right: crown });
    expect(turned).toEqual(housingRoundness(readings));
    expect(turned.outOfRound).toBeCloseTo(inch(0.0007), 12);
  });

  it("judges by the caller's limits alone: another engine's say nothing of this one", () => {
    expect(housingRoundness(readings)).not.toHaveProperty('finding');
    const judged = housingRoundness({ ...readings, limits: { max: thou(0.5) } });
    expect(judged.finding).toMatchObject({ verdict: 'above', basis: { kind: 'specified' } });
    expect(housingRoundness({ ...readings, limits: { max: thou(1) } }).finding?.verdict).toBe(
      'within',
    );
  });

  it('refuses readings of two bores, and a basis of no limits', () => {
    expect(refusal(() => housingRoundness({ ...readings, right: inch(1.85) })).parameter).toBe(
      'right',
    );
    expect(
      refusal(() => housingRoundness({ ...readings, basis: { kind: 'specified' } })).parameter,
    ).toBe('housing.limits');
  });
});
