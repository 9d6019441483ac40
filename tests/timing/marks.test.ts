import {
  type Angle,
  angleAtTravel,
  degree,
  inch,
  type Length,
  metre,
  pistonMotion,
  pistonTravel,
  rimAngle,
  rimDistance,
  rpm,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { refusal } from '../quantities/refusal.js';

const anyAngle = fc.double({ min: 0, max: Math.PI, noNaN: true }) as fc.Arbitrary<Angle>;
const anyDiameter = fc.double({ min: 0.01, max: 5, noNaN: true }) as fc.Arbitrary<Length>;
const anyCrank = fc
  .record({
    stroke: fc.double({ min: 0.01, max: 1, noNaN: true }),
    rods: fc.double({ min: 0.61, max: 10, noNaN: true }),
  })
  .map(({ stroke, rods }) => ({ stroke: metre(stroke), rodLength: metre(stroke * rods) }));

describe('marks on a rim', () => {
  it('give the angle back, along the rim and across', () => {
    fc.assert(
      fc.property(anyDiameter, anyAngle, (diameter, angle) => {
        const { arc, chord } = rimDistance({ diameter, angle });
        expect(rimAngle({ diameter, arc })).toBeCloseTo(angle, 12);
        // Half a turn is where a chord tells the angle least: half of the digits are lost there.
        expect(Math.abs(rimAngle({ diameter, chord }) - angle)).toBeLessThan(1e-7);
        expect(chord).toBeLessThanOrEqual(arc + 1e-14);
      }),
    );
  });

  it('take half a turn and no more', () => {
    const diameter = inch(10);
    const { arc, chord } = rimDistance({ diameter, angle: degree(180) });
    expect(rimAngle({ diameter, arc })).toBeCloseTo(Math.PI, 12);
    expect(rimAngle({ diameter, chord })).toBeCloseTo(Math.PI, 12);
    expect(refusal(() => rimAngle({ diameter, arc: inch(15.8) })).parameter).toBe('arc');
    expect(refusal(() => rimAngle({ diameter, chord: inch(10.01) })).parameter).toBe('chord');
  });
});

describe('travel of the piston', () => {
  it('is where the motion of the piston has it, before top and after', () => {
    fc.assert(
      fc.property(anyCrank, anyAngle, (crank, angle) => {
        const travel = pistonTravel({ ...crank, angle });
        for (const crankAngle of [angle, -angle as Angle]) {
          const { position } = pistonMotion({ ...crank, crankAngle, speed: rpm(0) });
          expect(travel).toBe(position);
        }
      }),
    );
  });

  it('gives the angle back to the last digits, near both dead centres too', () => {
    fc.assert(
      fc.property(anyCrank, anyAngle, (crank, angle) => {
        const travel = pistonTravel({ ...crank, angle });
        // A travel is known to the last digit of the stroke: near the bottom that is half of the digits of the angle.
        const slack = 4e-16 * crank.stroke;
        const back = angleAtTravel({ ...crank, travel });
        expect(Math.abs(pistonTravel({ ...crank, angle: back }) - travel)).toBeLessThan(10 * slack);
        if (angle < 3) expect(Math.abs(back - angle)).toBeLessThan(1e-12 * Math.max(angle, 0.01));
      }),
    );
  });

  it('ends at the stroke', () => {
    const crank = { stroke: inch(3.25), rodLength: inch(6) };
    expect(angleAtTravel({ ...crank, travel: inch(0) })).toBe(0);
    expect(angleAtTravel({ ...crank, travel: inch(3.25) })).toBeCloseTo(Math.PI, 12);
    const refused = refusal(() => angleAtTravel({ ...crank, travel: inch(3.26) }));
    expect(refused.parameter).toBe('travel');
  });
});
