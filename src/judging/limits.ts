import { type Dimension, type Quantity, RebuildInputError } from '../quantities/index.js';
import { guardFields } from './guards.js';
import { showQuantity } from './showing.js';

/** Lengths closer than this are one: no instrument tells them apart. */
export const NANOMETRE = 1e-9;
/** A part in a thousand million: what rounding may take from a number, or add to it. */
export const ROUNDING = 1e-9;

/** What a size lies between: readings, a tolerance, a result. Both ends belong to it. */
export interface Span<Q extends number> {
  /** Smallest, in the unit of the quantity. */
  readonly min: Q;
  /** Largest, in the unit of the quantity. */
  readonly max: Q;
}

/** What a size must lie between. Either bound may be absent, not both; both belong to the range. */
export interface Limits<Q extends number> {
  /** Least that is allowed, in the unit of the quantity. */
  readonly min?: Q;
  /** Most that is allowed, in the unit of the quantity. */
  readonly max?: Q;
}

/** What limits are of: new parts, or worn ones that may stay in service. */
export type LimitsOf = 'new parts' | 'service';

/** One size, or the span that it lies in. */
export type SizeOrSpan<Q extends number> = Q | Span<Q>;

/** A span moved up by so much, or down by a negative amount. */
export const shifted = <Q extends number>({ min, max }: Span<Q>, by: number): Span<Q> =>
  ({ min: min + by, max: max + by }) as Span<Q>;

/** The span that a size lies in: one size is a span of no width. */
export function spanOf<Q extends number>(size: SizeOrSpan<Q>): Span<Q> {
  return typeof size === 'object' ? size : { min: size, max: size };
}

/** Both ends of a span, and both bounds of limits. */
const ENDS = ['min', 'max'] as const;

/** Refuses a span whose ends are not sizes or stand the wrong way round; one size is a span of no width. */
export function guardSpan<D extends Dimension = 'length'>(
  parameter: string,
  value: SizeOrSpan<Quantity<D>>,
  guard: (parameter: string, value: Quantity<D>) => Quantity<D>,
  dimension = 'length' as D,
): Span<Quantity<D>> {
  // What has no end at all is no span, and the size itself is refused.
  if (typeof value !== 'object' || value === null || !('min' in value || 'max' in value)) {
    const size = guard(parameter, value as Quantity<D>);
    return { min: size, max: size };
  }
  guardFields(parameter, value, ENDS);
  const min = guard(`${parameter}.min`, value.min);
  const max = guard(`${parameter}.max`, value.max);
  if (min > max) throw wrongWayRound(parameter, { min, max }, dimension);
  return { min, max };
}

/** Refuses limits without any bound, with a bound that is not a quantity, or the wrong way round. */
export function guardLimits<D extends Dimension>(
  parameter: string,
  limits: Limits<Quantity<D>>,
  guard: (parameter: string, bound: Quantity<D>) => Quantity<D>,
  dimension: D,
): Limits<Quantity<D>> {
  guardFields(parameter, limits, ENDS);
  const { min, max } = limits;
  if (min === undefined && max === undefined) {
    throw new RebuildInputError({
      parameter,
      value: limits,
      expected: 'limits with a min, a max or both',
      problem: 'has neither a min nor a max',
      hint: 'A limit that allows everything cannot judge anything.',
    });
  }
  if (min !== undefined) guard(`${parameter}.min`, min);
  if (max !== undefined) guard(`${parameter}.max`, max);
  if (min !== undefined && max !== undefined && min > max) {
    throw wrongWayRound(parameter, { min, max }, dimension);
  }
  return limits;
}

function wrongWayRound(
  parameter: string,
  span: Span<number>,
  dimension: Dimension,
): RebuildInputError {
  const show = (end: number) => showQuantity(end, dimension);
  return new RebuildInputError({
    parameter,
    value: span,
    shown: `min ${show(span.min)} and max ${show(span.max)}`,
    expected: 'a min that is not above its max',
    problem: 'are the wrong way round',
    hint: 'Swap the two.',
  });
}
