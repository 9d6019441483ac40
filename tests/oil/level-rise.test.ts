import {
  type Area,
  fuelFromLevelRise,
  type Length,
  litre,
  mL,
  mm,
  squareMm,
  type Volume,
  valueIn,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { notNumbers, refusal } from '../quantities/refusal.js';

const good = { rise: mm(3), surface: squareMm(15000), oil: litre(0.9) };
const rises = fc.double({ min: 0, max: 30, noNaN: true });

describe('fuelFromLevelRise', () => {
  it('is rise by surface', () => {
    const { fuel, level, fraction } = fuelFromLevelRise(good);
    expect(valueIn(fuel, mL)).toBeCloseTo(45, 12);
    expect(valueIn(level, mL)).toBeCloseTo(945, 12);
    expect(fraction).toBeCloseTo(45 / 945, 14);
    expect(fuelFromLevelRise({ ...good, rise: mm(0) }).fraction).toBe(0);
  });

  it('is the rise again, spread over the surface, and twice that on twice the surface', () => {
    fc.assert(
      fc.property(rises, (millimetres) => {
        const rise = mm(millimetres);
        const { fuel, level } = fuelFromLevelRise({ ...good, rise });
        expect(fuel / good.surface).toBeCloseTo(rise, 14);
        expect(level).toBe(good.oil + fuel);
        const wide = fuelFromLevelRise({ ...good, rise, surface: squareMm(30000) });
        expect(wide.fuel).toBeCloseTo(2 * fuel, 14);
      }),
    );
  });

  it('cannot tell fuel from a level that has fallen', () => {
    const fallen = refusal(() => fuelFromLevelRise({ ...good, rise: mm(-2) }));
    expect([fallen.parameter, fallen.value]).toEqual(['rise', mm(-2)]);
    expect(fallen.message).toMatch(/is a fall: oil has been lost.*measure the viscosity/);
  });

  it.each([
    ['rise', 3 as Length],
    ['surface', 15000 as Area],
    ['surface', 0 as Area],
    ['oil', 0.9 as Volume],
  ])('a %s of %d is refused', (field, value) => {
    const wrong = { ...good, [field]: value } as typeof good;
    expect(refusal(() => fuelFromLevelRise(wrong)).parameter).toBe(field);
  });

  it('refuses a rise that would be nearly all fuel', () => {
    const flood = { ...good, rise: mm(400), surface: 1 as Area };
    expect(refusal(() => fuelFromLevelRise(flood)).message).toMatch(
      /rise: 400 mm outruns the sump/,
    );
  });

  it.each(notNumbers.map((value) => [value]))('refuses the number %s', (value) => {
    for (const field of Object.keys(good)) {
      const wrong = { ...good, [field]: value } as typeof good;
      expect(refusal(() => fuelFromLevelRise(wrong)).parameter).toBe(field);
    }
    expect(refusal(() => fuelFromLevelRise(null as never)).parameter).toBe('sump');
    const misspelt = { ...good, area: good.surface };
    expect(refusal(() => fuelFromLevelRise(misspelt)).parameter).toBe('sump.area');
  });
});
