import {
  type Angle,
  degree,
  inch,
  type Length,
  metre,
  type PistonMotion,
  pistonMotion,
  type RotationalSpeed,
  radianPerSecond,
  rpm,
} from 'crankwright';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { notNumbers, refusal } from '../quantities/refusal.js';
import { anyCrank } from './engines.js';

const crank = { stroke: inch(3.25), rodLength: inch(6), speed: rpm(1800) };
const at = (degrees: number) => pistonMotion({ ...crank, crankAngle: degree(degrees) });
const anyAngle = fc.double({ min: -12.5, max: 12.5, noNaN: true });

/** The pins drawn with compass and rule: the crankpin on its circle, the piston pin on the axis, a rod's length apart. */
function drawn({ stroke, rodLength }: { stroke: number; rodLength: number }, angle: number) {
  const pin = { up: (stroke / 2) * Math.cos(angle), aside: (stroke / 2) * Math.sin(angle) };
  const pistonUp = pin.up + Math.sqrt(rodLength ** 2 - pin.aside ** 2);
  return {
    position: stroke / 2 + rodLength - pistonUp,
    lean: Math.atan2(pin.aside, pistonUp - pin.up),
  };
}

describe('pistonMotion', () => {
  it('stands at the top, passes the middle late and stands at the bottom', () => {
    expect(at(0)).toMatchObject({ position: 0, velocity: 0, rodAngle: 0 });
    expect(at(90).position).toBeGreaterThan(crank.stroke / 2);
    expect(at(180).position / crank.stroke).toBeCloseTo(1, 14);
    expect(at(180).acceleration).toBeLessThan(0);
  });

  it('is where compass and rule put it', () => {
    fc.assert(
      fc.property(anyCrank, anyAngle, (any, angle) => {
        const motion = pistonMotion({ ...any, speed: rpm(1), crankAngle: angle as Angle });
        const { position, lean } = drawn(any, angle);
        expect(Math.abs(motion.position - position)).toBeLessThan(1e-14);
        expect(motion.rodAngle).toBeCloseTo(lean, 12);
      }),
    );
  });

  it('has speeds and accelerations that are the slopes of what they should be', () => {
    fc.assert(
      fc.property(anyCrank, anyAngle, (any, angle) => {
        const speed = radianPerSecond(1);
        const near = (offset: number) =>
          pistonMotion({ ...any, speed, crankAngle: (angle * 0.99 + offset) as Angle });
        const slope = (pick: (motion: PistonMotion) => number) =>
          (pick(near(1e-5)) - pick(near(-1e-5))) / 2e-5;
        const here = near(0);
        expect(here.velocity / any.stroke).toBeCloseTo(slope((m) => m.position) / any.stroke, 7);
        expect(here.acceleration / any.stroke).toBeCloseTo(
          slope((m) => m.velocity) / any.stroke,
          7,
        );
        expect(here.rodSpeed).toBeCloseTo(
          slope((m) => m.rodAngle),
          7,
        );
      }),
    );
  });

  it('goes with the speed, and its acceleration with the square of it', () => {
    fc.assert(
      fc.property(
        anyCrank,
        anyAngle,
        fc.double({ min: 0.1, max: 9, noNaN: true }),
        (any, x, by) => {
          const crankAngle = (x * 0.9) as Angle;
          const slow = pistonMotion({ ...any, speed: radianPerSecond(10), crankAngle });
          const fast = pistonMotion({ ...any, speed: radianPerSecond(10 * by), crankAngle });
          expect(fast.velocity).toBeCloseTo(slow.velocity * by, 9);
          expect(fast.rodSpeed).toBeCloseTo(slow.rodSpeed * by, 9);
          expect(fast.acceleration).toBeCloseTo(slow.acceleration * by * by, 8);
          expect(fast.position).toBe(slow.position);
        },
      ),
    );
  });

  it('comes down as it went up', () => {
    const [down, up] = [at(50), at(-50)];
    expect(up.position).toBe(down.position);
    expect(up.acceleration).toBe(down.acceleration);
    expect([up.velocity, up.rodAngle]).toEqual([-down.velocity, -down.rodAngle]);
    expect(at(410).position).toBeCloseTo(down.position, 14);
  });

  it('nears plain harmonic motion as the rod grows long', () => {
    const far = pistonMotion({ ...crank, rodLength: metre(2), crankAngle: degree(60) });
    expect(far.position / (crank.stroke / 4)).toBeCloseTo(1, 1);
    expect(at(60).position).toBeGreaterThan(far.position);
  });
});

describe('pistonMotion refuses', () => {
  const moving = { ...crank, crankAngle: degree(40) };

  it.each(notNumbers.map((value) => [value]))('the number %s', (value) => {
    for (const field of ['stroke', 'rodLength', 'speed', 'crankAngle']) {
      const wrong = { ...moving, [field]: value };
      expect(refusal(() => pistonMotion(wrong)).parameter).toBe(field);
    }
  });

  it('a rod that cannot follow its crank', () => {
    const short = refusal(() => pistonMotion({ ...moving, rodLength: inch(1.9) }));
    expect(short.message).toContain('cannot belong to a stroke');
    expect(() => pistonMotion({ ...moving, rodLength: inch(1.96) })).not.toThrow();
    expect(() => pistonMotion({ ...moving, rodLength: inch(82) })).toThrow(/stroke/);
  });

  it('inches and revolutions that were not wrapped in their unit', () => {
    expect(refusal(() => pistonMotion({ ...moving, stroke: 3.25 as Length })).hint).toContain(
      'inch',
    );
    const wrong = { ...moving, speed: 18_000 as RotationalSpeed };
    expect(refusal(() => pistonMotion(wrong)).hint).toContain('rpm(1800)');
  });
});
