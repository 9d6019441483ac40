import type { Span } from '../judging/index.js';
import { isOutside, NANOMETRE } from '../judging/internal.js';
import type { DiameterReading, Shape } from '../measuring/index.js';
import { journalShapeLimits, judgeShape } from '../measuring/internal.js';
import { type Length, minus, thou } from '../quantities/index.js';
import type { JournalKind } from './engine-kind.js';
import { own } from './stated-limits.js';

/** A journal above standard by more than this was misread (common practice of this library). */
const ABOVE = /* @__PURE__ */ thou(1);
/** A bore that wore further than this from its step is no longer straight (common practice of this library). */
const WORN_STRAIGHT = /* @__PURE__ */ thou(4);

/** A journal that wore further than this from its step is no longer round (common practice of this library). */
const WORN_ROUND = /* @__PURE__ */ thou(2.5);

/**
 * How far above standard a bore reads that is round and straight, and further from every step than one is bored or wears;
 * undefined of any other. A bore of which a place was read twice, and alike, stands.
 */
export function aboveAtNoStep(
  readings: readonly DiameterReading[],
  { smallest, largest }: Pick<Shape, 'smallest' | 'largest'>,
  standard: Span<Length>,
  steps: readonly Length[],
): Length | undefined {
  const isAt = (step: Length) =>
    smallest >= standard.min + step - ABOVE - NANOMETRE &&
    largest <= standard.max + step + WORN_STRAIGHT + NANOMETRE;
  if (smallest <= standard.max || steps.some(isAt) || isReadTwice(readings)) return undefined;
  return minus(smallest, standard.max);
}

/**
 * How far below standard a journal reads that is round and straight and lies at no step, or, negative, how far above standard
 * one lies, as no journal grows; undefined of any other. A wheel
 * leaves a journal round at a step, and wear does not leave it round: most likely a turn of the thimble was miscounted. A
 * journal of which a place was read twice, and alike, stands.
 */
export function belowAtNoStep(
  readings: readonly DiameterReading[],
  shape: Shape,
  { standard, shape: allowed }: Pick<JournalKind, 'standard' | 'shape'>,
  steps: readonly Length[],
): Length | undefined {
  const isAbove = shape.smallest > standard.max && shape.largest > standard.max + ABOVE + NANOMETRE;
  if (isAbove && !isReadTwice(readings)) {
    return minus(standard.max, shape.smallest);
  }
  const limits = journalShapeLimits('shape', own(allowed));
  if (judgeShape(shape, limits).some(isOutside) || isReadTwice(readings)) return undefined;
  const { smallest, largest } = shape;
  const off = steps.map((step) => {
    const { min, max } = standard as Span<number>;
    return Math.max(min - step - smallest, largest - (max - step));
  });
  if (largest > standard.min || off.some((each) => each <= WORN_ROUND + NANOMETRE))
    return undefined;
  return (standard.min - smallest) as Length;
}

/** Whether some place was read twice or more, and alike. */
function isReadTwice(readings: readonly DiameterReading[]): boolean {
  return readings.some((one, i) =>
    readings.some(
      (other, j) =>
        j > i &&
        one.station === other.station &&
        one.angle === other.angle &&
        Math.abs(one.diameter - other.diameter) < WORN_ROUND,
    ),
  );
}
