import {
  absolutePressure,
  celsius,
  celsiusDifference,
  format,
  type GaugePressure,
  gaugePressure,
  inch,
  inHgGauge,
  kelvin,
  kPa,
  type Length,
  minus,
  newtonMetre,
  type Pressure,
  plus,
  psi,
  psiGauge,
  standardAtmosphere,
  thou,
  times,
  valueIn,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { notNumbers, refusal } from './refusal.js';

const length = fc.double({ min: -1, max: 1, noNaN: true }).map((x) => x as Length);

describe('arithmetic', () => {
  it('adds, subtracts and multiplies', () => {
    expect(format(plus(inch(2.105), thou(20)), inch)).toBe('2.1250 in');
    expect(format(minus(inch(2.125), thou(20)), inch)).toBe('2.1050 in');
    expect(format(times(thou(10), 2), thou)).toBe('20.0 thou');
    expect(times(newtonMetre(3), -2)).toBe(-6);
  });

  it('keeps temperatures and their differences apart', () => {
    expect(plus(celsius(20), celsiusDifference(60))).toBeCloseTo(celsius(80), 10);
    expect(minus(celsius(80), celsius(20))).toBeCloseTo(celsiusDifference(60), 10);
    expect(minus(celsius(80), celsiusDifference(60))).toBeCloseTo(celsius(20), 10);
    expect(minus(kelvin(300), kelvin(300))).toBe(0);
  });

  it('adds in any order, takes away what it added, and doubles by adding twice', () => {
    fc.assert(
      fc.property(length, length, (a, b) => {
        expect(plus(a, b)).toBe(plus(b, a));
        expect(minus(plus(a, b), b)).toBeCloseTo(a, 14);
        expect(minus(a, b) + minus(b, a)).toBe(0);
        expect(times(a, 2)).toBe(plus(a, a));
      }),
    );
  });

  it.each(notNumbers.map((value) => [value]))('refuses %s on either side', (value) => {
    const wrong = value as Length;
    expect(refusal(() => plus(wrong, inch(1))).parameter).toBe('a');
    expect(refusal(() => plus(inch(1), wrong)).parameter).toBe('b');
    expect(refusal(() => minus(wrong, inch(1))).parameter).toBe('a');
    expect(refusal(() => minus(inch(1), wrong)).parameter).toBe('b');
    expect(refusal(() => times(wrong, 2)).parameter).toBe('quantity');
    expect(refusal(() => times(inch(1), wrong)).parameter).toBe('factor');
  });

  it('refuses a result that no double holds', () => {
    const huge = 1.7e308 as Length;
    expect(refusal(() => plus(huge, huge)).parameter).toBe('result');
    expect(refusal(() => minus(huge, times(huge, -1))).parameter).toBe('result');
    expect(refusal(() => times(huge, 2)).parameter).toBe('result');
  });
});

describe('absolute and gauge pressure', () => {
  it('differ by the atmosphere', () => {
    expect(format(absolutePressure(psiGauge(120), standardAtmosphere), psi)).toBe('134.7 psi');
    expect(gaugePressure(kPa(101.325), standardAtmosphere)).toBeCloseTo(0, 9);
    expect(valueIn(gaugePressure(kPa(50), kPa(100)), psiGauge)).toBeLessThan(0);
    expect(absolutePressure(inHgGauge(-10), kPa(100))).toBeCloseTo(100_000 - 33_863.88, 1);
  });

  it('come back from one another', () => {
    const pascals = fc.double({ min: 0, max: 1e8, noNaN: true }).map((x) => x as Pressure);
    fc.assert(
      fc.property(pascals, pascals, (absolute, air) => {
        const back = absolutePressure(gaugePressure(absolute, air), air);
        expect(Math.abs(back - absolute)).toBeLessThanOrEqual(1e-7);
      }),
    );
  });

  it('cannot be below nothing', () => {
    const error = refusal(() => absolutePressure(psiGauge(-20), standardAtmosphere));
    expect(error.parameter).toBe('reading');
    expect(refusal(() => gaugePressure(-1 as Pressure, kPa(100))).parameter).toBe('absolute');
    expect(refusal(() => gaugePressure(kPa(100), -1 as Pressure)).parameter).toBe('atmosphere');
    expect(refusal(() => absolutePressure(psiGauge(1), 2e12 as Pressure)).value).toBe(2e12);
  });

  it('name the reading as it came when it is refused', () => {
    const reading = psiGauge(-20);
    expect(refusal(() => absolutePressure(reading, standardAtmosphere)).value).toBe(reading);
  });

  it.each(notNumbers.map((value) => [value]))('refuse %s', (value) => {
    const wrong = value as number;
    expect(refusal(() => absolutePressure(wrong as GaugePressure, kPa(1))).parameter).toBe(
      'reading',
    );
    // Left out, the air is the standard atmosphere.
    if (value !== undefined) {
      expect(refusal(() => absolutePressure(psiGauge(1), wrong as Pressure)).parameter).toBe(
        'atmosphere',
      );
    }
    expect(refusal(() => gaugePressure(wrong as Pressure, kPa(1))).parameter).toBe('absolute');
  });
});
