import type { Finding, Span } from '../judging/index.js';
import { holds, NANOMETRE } from '../judging/internal.js';
import type { Shape } from '../measuring/index.js';
import { repeatsIn } from '../measuring/internal.js';
import { type Length, thou } from '../quantities/index.js';
import type { Measured } from './bearing-plan.js';

/**
 * How far a journal is below standard, if it reads round and straight and that is no step: no wear does that, but a
 * missed turn of the thimble. A place that was read again bears the size out.
 */
export function oddSizeOf(
  { bearing, shape }: Measured,
  findings: readonly Finding<'length'>[],
  undersize: Length | undefined,
  standard: Span<Length>,
): Length | undefined {
  const below = (standard.min - shape.smallest) as Length;
  const isOdd = undersize === undefined && below > thou(2.5) + NANOMETRE && findings.every(holds);
  return isOdd && repeatsIn(bearing.journal.readings) === undefined ? below : undefined;
}

/** The step nearest to the journal's size, if it is within 2.5 thou. */
export function measuredUndersize(
  { smallest, largest }: Shape,
  standard: Span<Length>,
  steps: readonly Length[],
): Length | undefined {
  const below = (standard.min + standard.max - smallest - largest) / 2;
  const [nearest] = [...steps].sort((a, b) => Math.abs(a - below) - Math.abs(b - below));
  return nearest !== undefined && Math.abs(nearest - below) <= thou(2.5) ? nearest : undefined;
}
