import type { KnownShape } from '../measuring/internal.js';

/** A journal or a bore as it was measured. */
export interface MeasuredPart {
  readonly name: string;
  readonly shape: KnownShape;
  readonly faults?: readonly string[];
}

/** What a plan has to know of it: its name, its sizes and shape, and its faults. */
export function sizesOf({ name, shape, faults }: MeasuredPart) {
  const { smallest, largest, outOfRound, taper } = shape;
  return { name, smallest, largest, outOfRound, taper, ...(faults && { faults }) };
}
