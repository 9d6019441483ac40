import type { NeededPart } from 'crankwright/shed';

/** One of each of these, as an engine needs them. */
export const needing = (...parts: readonly string[]): readonly NeededPart[] =>
  parts.map((part) => ({ part, count: 1 }));
