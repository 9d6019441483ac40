import {
  celsius,
  centistokes,
  fahrenheit,
  type KinematicViscosity,
  kinematicFromSaybolt,
  sayboltUniversal,
  second,
  type Temperature,
  type Time,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { notNumbers, refusal } from '../quantities/refusal.js';

const anyViscosity = fc
  .double({ min: Math.log(1.77), max: Math.log(2e7), noNaN: true })
  .map((log) => centistokes(Math.min(Math.max(Math.exp(log), 1.77), 2e7)));
const anyTemperature = fc.double({ min: 0, max: 350, noNaN: true }).map(fahrenheit);

describe('Saybolt seconds', () => {
  it('give back the viscosity that they come from', () => {
    fc.assert(
      fc.property(anyViscosity, anyTemperature, (viscosity, temperature) => {
        const time = sayboltUniversal(viscosity, temperature);
        const back = kinematicFromSaybolt(time, temperature);
        expect(Math.abs(back / viscosity - 1)).toBeLessThan(1e-14);
      }),
      { numRuns: 1000 },
    );
  });

  it('come back from a viscosity', () => {
    const seconds = fc.double({ min: 33, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(seconds, anyTemperature, (time, temperature) => {
        const viscosity = kinematicFromSaybolt(second(time), temperature);
        const again = sayboltUniversal(viscosity, temperature);
        expect(Math.abs(again / time - 1)).toBeLessThan(1e-14);
      }),
    );
  });

  it('grow with viscosity, and with temperature by 61 parts in a million for a degree', () => {
    const more = fc.double({ min: 1.000001, max: 2, noNaN: true });
    fc.assert(
      fc.property(anyViscosity, more, anyTemperature, (viscosity, times, temperature) => {
        fc.pre(viscosity * times <= 20);
        const thicker = (viscosity * times) as KinematicViscosity;
        const time = sayboltUniversal(viscosity, temperature);
        expect(sayboltUniversal(thicker, temperature)).toBeGreaterThan(time);
        const at100 = sayboltUniversal(viscosity, fahrenheit(100));
        const degrees = temperature * 1.8 - 459.67 - 100;
        expect(time / at100).toBeCloseTo(1 + 61e-6 * degrees, 12);
      }),
    );
  });

  it('are taken from 0 to 350 °F', () => {
    const v = centistokes(32);
    for (const f of [0, 350]) {
      expect(() =>
        kinematicFromSaybolt(sayboltUniversal(v, fahrenheit(f)), fahrenheit(f)),
      ).not.toThrow();
    }
    for (const f of [-0.1, 350.1]) {
      expect(refusal(() => sayboltUniversal(v, fahrenheit(f))).parameter).toBe('temperature');
      expect(refusal(() => kinematicFromSaybolt(second(150), fahrenheit(f))).parameter).toBe(
        'temperature',
      );
    }
  });

  it('begin at 1.77 mm²/s', () => {
    const temperature = celsius(40);
    expect(refusal(() => sayboltUniversal(centistokes(1.769), temperature)).parameter).toBe(
      'viscosity',
    );
    const least = sayboltUniversal(centistokes(1.77), temperature);
    expect(kinematicFromSaybolt(least, temperature) / 1.77e-6).toBeCloseTo(1, 12);
    const shorter = (least * (1 - 1e-6)) as Time;
    expect(refusal(() => kinematicFromSaybolt(shorter, temperature)).parameter).toBe('time');
  });

  it.each(notNumbers.map((value) => [value]))('refuse %s', (value) => {
    const at = value as Temperature;
    expect(refusal(() => sayboltUniversal(centistokes(32), at)).parameter).toBe('temperature');
    expect(refusal(() => kinematicFromSaybolt(second(150), at)).parameter).toBe('temperature');
    const v = value as KinematicViscosity;
    expect(refusal(() => sayboltUniversal(v, celsius(40))).parameter).toBe('viscosity');
    expect(refusal(() => kinematicFromSaybolt(value as Time, celsius(40))).parameter).toBe('time');
  });
});
