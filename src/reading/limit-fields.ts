import type { z } from 'zod';
import type { Span } from '../judging/index.js';
import { diametralClearance } from '../judging/internal.js';
import type { Dimension } from '../quantities/index.js';
import { fields, name } from './fields.js';
import { marked } from './marks.js';
import { type Guard, inOrder, quantity, REVERSED } from './quantity-fields.js';
import type { StatedLimits } from './stated-limits.js';

/** Limits of a size or a clearance, with at least one bound, and who set them. */
export const statedLimits = (guard: Guard<'length'> = diametralClearance) =>
  statedLimitsOf('length', guard);

/** Limits of any quantity, with at least one bound, and who set them. */
export function statedLimitsOf<D extends Dimension>(
  dimension: D,
  guard: Guard<D>,
): z.ZodType<StatedLimits<D>> {
  const bound = quantity(dimension, guard);
  const bounds = {
    min: bound.exactOptional(),
    max: bound.exactOptional(),
    source: name.exactOptional(),
  };
  const service = marked(fields(bounds).refine(hasBound, NEEDS_BOUND).refine(inOrder, REVERSED), {
    json: () => ({ anyOf: [{ required: ['min'] }, { required: ['max'] }] }),
  });
  const limits = fields({ ...bounds, service: service.exactOptional() })
    .refine((stated) => stated.service !== undefined || hasBound(stated), NEEDS_BOUND)
    .refine(inOrder, REVERSED)
    .refine(({ min, service }) => !past(service?.min, min), {
      path: ['service', 'min'],
      error: 'is above the min of new parts; are the two swapped?',
    })
    .refine(({ max, service }) => !past(max, service?.max), {
      path: ['service', 'max'],
      error: 'is below the max of new parts; are the two swapped?',
    });
  return marked(limits, {
    json: () => ({
      anyOf: [{ required: ['min'] }, { required: ['max'] }, { required: ['service'] }],
    }),
  }) as unknown as z.ZodType<StatedLimits<D>>;
}

const NEEDS_BOUND = 'needs a min, a max or both';

function hasBound({ min, max }: Partial<Span<number>>): boolean {
  return min !== undefined || max !== undefined;
}

/** Whether one bound is past another that is there. */
function past(one: number | undefined, other: number | undefined): boolean {
  return one !== undefined && other !== undefined && one > other;
}
