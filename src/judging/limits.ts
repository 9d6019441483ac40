import { RebuildInputError } from '../quantities/error.js';
import { guardFields } from './guards.js';

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

/** One size, or the span that it lies in. */
export type SizeOrSpan<Q extends number> = Q | Span<Q>;

/** The span that a size lies in: one size is a span of no width. */
export function spanOf<Q extends number>(size: SizeOrSpan<Q>): Span<Q> {
  return typeof size === 'object' ? size : { min: size, max: size };
}

/** Refuses a span whose ends are not quantities or stand the wrong way round; one size is a span of no width. */
export function guardSpan<Q extends number>(
  parameter: string,
  value: SizeOrSpan<Q>,
  guard: (parameter: string, value: Q) => Q,
): Span<Q> {
  if (typeof value !== 'object' || value === null) {
    const size = guard(parameter, value);
    return { min: size, max: size };
  }
  const min = guard(`${parameter}.min`, value.min);
  const max = guard(`${parameter}.max`, value.max);
  if (min > max) throw wrongWayRound(parameter, { min, max });
  return { min, max };
}

/** Refuses limits without any bound, with a bound that is not a quantity, or the wrong way round. */
export function guardLimits<Q extends number>(
  parameter: string,
  limits: Limits<Q>,
  guard: (parameter: string, bound: Q) => Q,
): Limits<Q> {
  guardFields(parameter, limits, ['min', 'max']);
  const { min, max } = limits;
  if (min === undefined && max === undefined) {
    throw new RebuildInputError({
      parameter,
      value: limits,
      expected: 'limits with a min, a max or both',
      hint: 'A limit that allows everything cannot judge anything.',
    });
  }
  if (min !== undefined) guard(`${parameter}.min`, min);
  if (max !== undefined) guard(`${parameter}.max`, max);
  if (min !== undefined && max !== undefined && min > max) {
    throw wrongWayRound(parameter, { min, max });
  }
  return limits;
}

function wrongWayRound(parameter: string, span: Span<number>): RebuildInputError {
  return new RebuildInputError({
    parameter,
    value: span,
    shown: `min ${span.min} and max ${span.max}`,
    expected: 'a min that is not above its max',
    problem: 'are the wrong way round',
    hint: 'Swap the two.',
  });
}
