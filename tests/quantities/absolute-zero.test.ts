import { celsius, convert, fahrenheit } from 'crankwright';
import { describe, expect, it } from 'vitest';

describe('temperatures', () => {
  it('are none below absolute zero, in any unit, not even its own', () => {
    expect(convert(-273.15, '°C', 'K')).toBeCloseTo(0, 12);
    expect(celsius(-273.15)).toBeCloseTo(0, 12);
    expect(fahrenheit(-459.67)).toBeCloseTo(0, 12);
    expect(convert(-459.67, '°F', '°R')).toBeCloseTo(0, 12);
    expect(() => convert(-273.16, '°C', 'K')).toThrow(/absolute zero/);
    expect(() => convert(-500, '°C', '°C')).toThrow(/absolute zero/);
    expect(() => celsius(-274)).toThrow(/absolute zero/);
    expect(() => fahrenheit(-460)).toThrow(/absolute zero/);
  });
});
