import type { Dimension, Quantity } from '../quantities/index.js';
import type { Domain } from './domain.js';

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
