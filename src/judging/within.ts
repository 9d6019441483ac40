import type { Dimension, Length, Quantity } from '../quantities/index.js';
import type { Domain } from './domain.js';
import type { Span } from './limits.js';

/**
 * The value of a domain that is nearest to a number. A card works out with it what its function asks for besides the
 * letters: the other end of a span, the standard size of a journal. So the rest follows the size that is put in. It is
 * never the one that is refused: what is no number comes to the least.
 */
export const within = <D extends Dimension>(
  { least, most }: Domain<D>,
  value: number,
): Quantity<D> =>
  (Number.isFinite(value) ? Math.min(Math.max(value, least), most) : least) as Quantity<D>;

/** How far apart the ends of a span are on a card that asks for one of them, unless it says so [m]. */
const TOLERANCE = 5e-6;

/** The span of which a card asks for the lower end. */
export const upFrom = (
  domain: Domain<'length'>,
  min: Length,
  tolerance = TOLERANCE,
): Span<Length> => ({ min, max: within(domain, min + tolerance) });

/** The span of which a card asks for the upper end. */
export const downFrom = (
  domain: Domain<'length'>,
  max: Length,
  tolerance = TOLERANCE,
): Span<Length> => ({ min: within(domain, max - tolerance), max });
