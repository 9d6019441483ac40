import {
  inch,
  type Length,
  mm,
  oilClearanceSpan,
  recommendedOilClearance,
  type Span,
  shellWallToSuit,
  thou,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { refusal } from '../quantities/refusal.js';

const micrometres = (min: number, max: number) => fc.integer({ min, max }).map((n) => mm(n / 1000));
const from = (least: Length, width: Length): Span<Length> => ({
  min: least,
  max: (least + width) as Length,
});
const anyBearing = fc
  .record({
    journal: micrometres(30_000, 60_000),
    journalVaries: micrometres(0, 30),
    room: micrometres(2_000, 6_000),
    boreVaries: micrometres(0, 30),
    least: micrometres(10, 60),
    clearanceVaries: micrometres(0, 80),
  })
  .map(({ journal, journalVaries, room, boreVaries, least, clearanceVaries }) => ({
    journal: from(journal, journalVaries),
    housingBore: from((journal + room) as Length, boreVaries),
    limits: from(least, clearanceVaries),
  }));
type Bearing = Record<'journal' | 'housingBore' | 'limits', Span<Length>>;
const leaves = ({ journal, housingBore }: Bearing, shellWall: Length) =>
  oilClearanceSpan({ journal, housingBore, shellWall });
const NEAR = 1e-9;

describe('shellWallToSuit', () => {
  it('keeps the clearance within its limits with any of its walls, whatever the sizes', () => {
    fc.assert(
      fc.property(anyBearing, fc.double({ min: 0, max: 1, noNaN: true }), (bearing, share) => {
        const suit = shellWallToSuit(bearing);
        fc.pre(suit.outcome === 'wall');
        const { min, max } = suit.wall as Span<Length>;
        const shellWall = (min + share * Math.max(0, max - min)) as Length;
        const left = leaves(bearing, shellWall);
        expect(left.min).toBeGreaterThanOrEqual(bearing.limits.min - NEAR);
        expect(left.max).toBeLessThanOrEqual(bearing.limits.max + NEAR);
      }),
    );
  });

  it('gives all such walls: one a micrometre past an end breaks a limit', () => {
    fc.assert(
      fc.property(anyBearing, (bearing) => {
        const suit = shellWallToSuit(bearing);
        fc.pre(suit.outcome === 'wall');
        const { min, max } = suit.wall as Span<Length>;
        const thin = leaves(bearing, (min - 1e-6) as Length);
        const thick = leaves(bearing, (max + 1e-6) as Length);
        expect(thin.max).toBeGreaterThan(bearing.limits.max);
        expect(thick.min).toBeLessThan(bearing.limits.min);
      }),
    );
  });

  it('says that none does if, and only if, the sizes vary by more than the limits leave', () => {
    fc.assert(
      fc.property(anyBearing, (bearing) => {
        const { journal, housingBore, limits } = bearing;
        const varies = housingBore.max - housingBore.min + journal.max - journal.min;
        const room = limits.max - limits.min;
        fc.pre(Math.abs(varies - room) > 1e-8);
        const suit = shellWallToSuit(bearing);
        expect(suit.outcome).toBe(varies > room ? 'none' : 'wall');
        if (suit.outcome === 'none') {
          expect(suit.sizesVary).toBeCloseTo(varies, 12);
          expect(suit.limitsLeave).toBeCloseTo(room, 12);
        }
      }),
    );
  });

  it('orders the middle of the span, with half of its width either way', () => {
    // Hand-computed: (1.7508 - 1.6047 - 0.0028) / 2 = 0.07165; (1.7506 - 1.6049 - 0.0012) / 2 = 0.07225.
    const suit = shellWallToSuit({
      housingBore: { min: inch(1.7506), max: inch(1.7508) },
      journal: { min: inch(1.6047), max: inch(1.6049) },
      limits: { min: thou(1.2), max: thou(2.8) },
    });
    if (suit.outcome !== 'wall') throw new Error('no wall');
    expect(suit.order?.wall).toBeCloseTo(inch(0.07195), 12);
    expect(suit.order?.tolerance).toBeCloseTo(inch(0.0003), 12);
    expect(suit.basis).toEqual({ kind: 'specified' });
  });

  it('gives one bound where the clearance has one, and nothing to order', () => {
    const sizes = { housingBore: inch(1.7506), journal: inch(1.6049) };
    const least = shellWallToSuit({ ...sizes, limits: { min: thou(1.2) } });
    // Hand-computed: (1.7506 - 1.6049 - 0.0012) / 2.
    expect(least).toMatchObject({
      outcome: 'wall',
      wall: { max: expect.closeTo(inch(0.07225), 12) },
    });
    expect(least).not.toHaveProperty('order');
    expect(least).not.toHaveProperty('wall.min');
    const most = shellWallToSuit({ ...sizes, limits: { max: thou(2.8) } });
    expect(most).toMatchObject({ wall: { min: expect.closeTo(inch(0.07145), 12) } });
    expect(most).not.toHaveProperty('wall.max');
  });

  it('takes the rule of thumb where no limits are given, and says so', () => {
    const suit = shellWallToSuit({ housingBore: inch(1.7506), journal: inch(1.6049) });
    expect(suit.basis).toEqual(recommendedOilClearance(inch(1.6049)).basis);
    // Hand-computed: (1.7506 - 1.6049 - 0.0015 * 1.6049) / 2.
    expect(suit).toMatchObject({ wall: { min: expect.closeTo(inch(0.071646325), 12) } });
  });

  it('refuses a journal that leaves no room for shells, or too much', () => {
    const housingBore = inch(1.75);
    const limits = { min: thou(1), max: thou(3) };
    const refused = (journal: Length) =>
      refusal(() => shellWallToSuit({ housingBore, journal, limits })).parameter;
    expect(refused(inch(1.749))).toBe('journal');
    expect(refused(inch(1.76))).toBe('journal');
    expect(refused({ min: inch(1.626), max: inch(1.625) } as never)).toBe('journal');
    const thin = { housingBore, journal: inch(0.17) };
    expect(refusal(() => shellWallToSuit(thin)).parameter).toBe('journal');
    expect(refused(inch(1.7333))).toBe('journal');
    expect(shellWallToSuit({ housingBore, journal: inch(1.733), limits }).outcome).toBe('wall');
  });
});
