import {
  celsius,
  centistokes,
  format,
  kilogramPerCubicMetre,
  petrol,
  petrolAt20C,
  petrolDensity,
  petrolLine,
  viscosityAt,
} from 'crankwright';
import { describe, expect, it } from 'vitest';

describe('petrol', () => {
  it('is on its line at 20 °C what it is alone', () => {
    expect(viscosityAt(petrolLine, celsius(20)) / petrolAt20C).toBeCloseTo(1, 3);
    expect(format(viscosityAt(petrolLine, celsius(100)), centistokes)).toBe('0.28 cSt');
    expect(petrolDensity).toBe(kilogramPerCubicMetre(745));
    expect([petrol.line, petrol.density]).toEqual([petrolLine, petrolDensity]);
  });

  it('has a viscosity within ASTM D341 wherever an oil is reckoned', () => {
    for (let degrees = -40; degrees <= 150; degrees += 5) {
      expect(viscosityAt(petrolLine, celsius(degrees))).toBeGreaterThan(centistokes(0.21));
    }
  });
});
