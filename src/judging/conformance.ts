import { normalTail } from '../numerics/index.js';
import {
  type Dimension,
  type Quantity,
  type Ratio,
  RebuildInputError,
} from '../quantities/index.js';
import { guardDimension } from '../quantities/internal.js';
import { guardFields, guardQuantity } from './guards.js';
import { guardLimits, type Limits } from './limits.js';
import { showQuantity } from './showing.js';

/** A measured value, and what the true one must lie between. */
export interface MeasuredAgainstLimits<D extends Dimension> {
  /** Dimension of the value; by default a length. */
  readonly dimension?: D;
  /** The measured value, in the coherent SI unit of its dimension. */
  readonly value: Quantity<NoInfer<D>>;
  /** Its standard uncertainty, half of an expanded one at about 95 %, in the same unit. */
  readonly standardUncertainty: Quantity<NoInfer<D>>;
  /** What the true value must lie between, in the same unit. */
  readonly limits: Limits<Quantity<NoInfer<D>>>;
}

const MEASURED = ['dimension', 'value', 'standardUncertainty', 'limits'] as const;

/**
 * The chance that a part is within its limits, for the value that was measured on it. The true value is taken as
 * normally distributed about the measured one, and nothing else is known of the part. What is left to 1 is the risk
 * of a false verdict on this part: of accepting it, if it is accepted.
 *
 *     conformance = Φ((max - value) / standardUncertainty) - Φ((min - value) / standardUncertainty)
 *
 * with Φ the normal distribution function.
 *
 * @param measured - the value, its standard uncertainty and the limits
 * @returns chance that the true value lies within the limits [-]
 * @throws {RebuildInputError} when a field is misspelt, the value is not finite, a limit is not finite, the limits
 * are reversed, there is no limit at all, the standard uncertainty is not more than zero, or the dimension is unknown
 * @see Source: JCGM 106:2012, 7.2 and 7.3
 * @example
 * ```ts
 * const chance = conformanceProbability({
 *   value: inch(2.0004), standardUncertainty: inch(0.0001), limits: { max: inch(2.0005) },
 * });
 * chance.toFixed(3); // "0.841"
 * ```
 */
export function conformanceProbability<D extends Dimension = 'length'>(
  measured: MeasuredAgainstLimits<D>,
): Ratio {
  guardFields('measured', measured, MEASURED);
  const { dimension: given = 'length' as D } = measured;
  const dimension = guardDimension(given);
  const value = guardQuantity('value', measured.value, dimension);
  const spread = guardSpread('standardUncertainty', measured.standardUncertainty, dimension);
  const { min, max } = guardLimits(
    'limits',
    measured.limits,
    (parameter, bound) => guardQuantity(parameter, bound, dimension),
    dimension,
  );
  return chanceBetween(
    ((min ?? -Infinity) - value) / spread,
    ((max ?? Infinity) - value) / spread,
  ) as Ratio;
}

/** The chance that a standard normal value lies between two, of which neither tail takes the digits. */
export function chanceBetween(from: number, to: number): number {
  if (from > 0) return normalTail(from) - normalTail(to);
  return to < 0 ? normalTail(-to) - normalTail(-from) : 1 - normalTail(to) - normalTail(-from);
}

/** Refuses a standard uncertainty or deviation that is not more than zero. */
export function guardSpread<D extends Dimension>(
  parameter: string,
  spread: Quantity<D>,
  dimension: D,
): Quantity<D> {
  if (guardQuantity(parameter, spread, dimension) > 0) return spread;
  throw new RebuildInputError({
    parameter,
    value: spread,
    shown: showQuantity(spread, dimension),
    expected: 'more than zero',
    hint: 'Nothing is measured without an uncertainty, and no two parts are quite alike.',
  });
}
