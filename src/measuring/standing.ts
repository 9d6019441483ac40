import type { Finding } from '../judging/judge.js';
import type { Span } from '../judging/limits.js';
import type { BasedLimits } from '../judging/own-limits.js';
import type { Length } from '../quantities/dimensions.js';
import type { Shape } from './shape.js';
import { judgeShape } from './shape-rule.js';

/** Sizes closer than this are one. */
export const NANOMETRE = 1e-9;

/** How far a part lies outside a span at its worse end: below it negative, within it zero. */
export function outsideOf(
  { smallest, largest }: Pick<Shape, 'smallest' | 'largest'>,
  target: Span<Length>,
): Length {
  const above = Math.max(0, largest - target.max);
  const below = Math.max(0, target.min - smallest);
  return (above > below ? above : 0 - below) as Length;
}

/** The worse of out-of-round and taper, if either is past its limit. */
export function worstFlaw(
  shape: Pick<Shape, 'outOfRound' | 'taper'>,
  allowed: BasedLimits<'length'>,
): Finding<'length'> | undefined {
  return judgeShape(shape, allowed)
    .filter(({ verdict }) => verdict !== 'within')
    .sort((a, b) => a.margin - b.margin)[0];
}
