import { type DiameterReading, degree, inch, type Length, mm, type SizeOrSpan } from 'crankwright';
import type { UnitSystem } from '../../src/quantities/systems.js';
import type { Dice } from '../support/dice.js';

/** Lengths in grains: 0.0001 in, or 0.0025 mm on a metric shed. */
export interface Ruler {
  readonly units: UnitSystem;
  readonly length: (grains: number) => Length;
  readonly span: (min: number, max: number) => { readonly min: Length; readonly max: Length };
}

/** A step of the trade, 10 thou or 0.25 mm, is 100 grains on either. */
export const STEP = 100;

export function rulerOf(units: UnitSystem): Ruler {
  const length = (grains: number) => (units === 'inch' ? inch(grains / 10_000) : mm(grains / 400));
  return { units, length, span: (min, max) => ({ min: length(min), max: length(max) }) };
}

/** Readings at two stations and two angles, the largest and how the others fall short of it in grains. */
export function readings(
  ruler: Ruler,
  largest: number,
  { oval = 0, taper = 0 }: { readonly oval?: number; readonly taper?: number },
): readonly DiameterReading[] {
  return [0, 1].flatMap((station) =>
    [0, 1].map((quarter) => ({
      station: ruler.length(3000 + 7000 * station),
      angle: degree(90 * quarter),
      diameter: ruler.length(largest - station * taper - quarter * oval),
    })),
  );
}

/** A measured size: mostly one, now and then a spread of a grain or two. */
export const about = (ruler: Ruler, dice: Dice, size: number): SizeOrSpan<Length> =>
  dice.percent(35) ? ruler.span(size, size + dice.from(1, 2)) : ruler.length(size);
