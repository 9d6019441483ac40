import type { BasedLimits } from '../judging/index.js';
import { describeSpan, say } from '../judging/internal.js';
import type { Dimension, Quantity, UnitSystem } from '../quantities/index.js';

/** What to keep to: `0.0080 to 0.0100 in`, `at least 0.0080 in`, `at most 0.0100 in`. */
export function sayLimits<D extends Dimension>(
  { limits: { min, max } }: Pick<BasedLimits<D>, 'limits'>,
  dimension: D,
  units: UnitSystem,
): string {
  if (min !== undefined && max !== undefined) return describeSpan({ min, max }, dimension, units);
  const bound = min ?? max;
  return `at ${max === undefined ? 'least' : 'most'} ${say(bound as Quantity<D>, dimension, units)}`;
}
