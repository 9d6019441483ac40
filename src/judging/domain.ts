import { type Dimension, degree, type Quantity, type Unit } from '../quantities/index.js';
import { guardQuantity } from './guards.js';
import { type Bounds, outsideBounds, outsideLength } from './showing.js';

/**
 * What a thing of an engine can measure. Called with the name of a parameter and its value, it
 * refuses the value or gives it back; read, it tells its bounds. Both belong to it.
 */
export interface Domain<D extends Dimension> extends Bounds {
  (parameter: string, value: Quantity<D>): Quantity<D>;
  /** Dimension of the quantities it takes. */
  readonly dimension: D;
}

type Guard<D extends Dimension> = (parameter: string, value: Quantity<D>) => Quantity<D>;

// NaN fails every comparison, and text that looks like a number is none. The errors are made elsewhere, so
// that the guards stay small enough to be inlined.

/** Makes a domain of lengths. It is apart from the others so that a formula of lengths carries one message alone. */
export function lengthDomain(bounds: Omit<Bounds, 'orNone'>): Domain<'length'> {
  const { least, most } = bounds;
  const guard: Guard<'length'> = (parameter, value) => {
    if (typeof value === 'number' && value >= least && value <= most) return value;
    throw outsideLength(parameter, value, bounds);
  };
  return Object.assign(guard, { dimension: 'length', ...bounds } as const);
}

/** Makes a domain of quantities that the trade reads in a unit; a refusal is told in it. */
export function domain<D extends Dimension>(unit: Unit<D>, bounds: Bounds): Domain<D> {
  const { least, most, orNone = false } = bounds;
  const { dimension } = unit;
  const guard: Guard<D> = (parameter, value) => {
    if (typeof value === 'number' && value >= least && value <= most) return value;
    if (orNone && value === 0) return value;
    guardQuantity(parameter, value, dimension, bounds.example);
    throw outsideBounds(parameter, value, unit, bounds);
  };
  return Object.assign(guard, { dimension, ...bounds });
}

/** Makes a domain of angles from bounds in degrees. */
export const angleDomain = (least: number, most: number, example: string): Domain<'angle'> =>
  domain(degree, { least: degree(least), most: degree(most), example });
