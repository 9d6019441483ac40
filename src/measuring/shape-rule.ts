import type { BasedLimits } from '../judging/own-limits.js';
import { thou } from '../quantities/units.js';

/** The out-of-round or taper a journal may have before it is ground, where the maker's limit is not known. */
export function journalShapeRule(): BasedLimits<'length'> {
  return {
    limits: { max: thou(0.5) },
    basis: { kind: 'common practice', rule: 'journal out-of-round and taper up to 0.0005 in' },
  };
}
