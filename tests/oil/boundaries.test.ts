import {
  blendViscosity,
  centistokes,
  type Flow,
  type Rate,
  timeToDilution,
  type Volume,
  type VolumeFraction,
} from 'crankwright';
import { describe, expect, it } from 'vitest';

describe('the oil room at its boundaries', () => {
  it('never reaches the fraction at which as much evaporates as leaks', () => {
    // One litre of oil at one half: a litre of fuel, of which 1/2^20 goes a second, as it comes.
    const oil = 0.001 as Volume;
    const sump = { oil, evaporation: (2 ** -20) as Rate, fraction: 0.5 as VolumeFraction };
    const leak = (0.001 * 2 ** -20) as Flow;
    expect(timeToDilution({ ...sump, leak })).toEqual({ reached: false, settlesAt: 0.5 });
    expect(timeToDilution({ ...sump, leak: (leak * 1.001) as Flow })).toMatchObject({
      reached: true,
    });
  });

  it('wants the fractions of a blend to be one, to a part in a thousand million', () => {
    const parts = (sum: number) =>
      [0.5, sum - 0.5].map((fraction) => ({
        viscosity: centistokes(100),
        fraction: fraction as VolumeFraction,
      }));
    expect(() => blendViscosity({ law: 'ASTM D7152', parts: parts(1 + 1e-10) })).not.toThrow();
    expect(() => blendViscosity({ law: 'ASTM D7152', parts: parts(1 + 1e-8) })).toThrow(/sum/);
  });
});
