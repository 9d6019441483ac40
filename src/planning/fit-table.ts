import { clearanceLeft } from '../bearings/internal.js';
import type { Span } from '../judging/index.js';
import type { Length } from '../quantities/index.js';
import { type EngineKind, marginOf, oilLimits, sameStep } from '../reading/index.js';
import type { Stock } from './stock.js';

/** The shells that may go into a bearing, as indices of the stock's kinds of shells. */
export interface Choice {
  /** Alike for bearings that the same shells may go into. */
  readonly key: string;
  readonly shells: readonly number[];
}

/** Which shells fit which bearing, and how well; every bearing is worked out once. */
export class FitTable {
  readonly #known = new Map<string, readonly (number | undefined)[]>();

  constructor(
    private readonly engine: EngineKind,
    private readonly shells: Stock['shells'],
  ) {}

  /** Every margin that has been met [nm]. */
  margins(): readonly number[] {
    return [...this.#known.values()].flat().filter((margin) => margin !== undefined);
  }

  /** The shells that leave a bearing at least so much margin; without a housing any would do. */
  choice(
    fits: 'rods' | 'mains',
    step: Length,
    journal: Span<Length>,
    housing: Span<Length> | undefined,
    least: number,
  ): Choice {
    const margins = this.#marginsOf(fits, step, journal, housing);
    const shells = margins.flatMap((margin, i) =>
      margin !== undefined && margin >= least ? [i] : [],
    );
    return { key: `${fits} ${shells.join(' ')}`, shells };
  }

  #marginsOf(
    fits: 'rods' | 'mains',
    step: Length,
    journal: Span<Length>,
    housing: Span<Length> | undefined,
  ): readonly (number | undefined)[] {
    const key = `${fits} ${step} ${journal.min} ${journal.max} ${housing?.min} ${housing?.max}`;
    const known = this.#known.get(key);
    if (known) return known;
    const journals = fits === 'rods' ? this.engine.rodJournals : this.engine.mainJournals;
    const margins = this.shells.map(({ ready, lacking }) => {
      if (journals === undefined || ready.fits !== fits || !sameStep(ready.step, step))
        return undefined;
      if (lacking || housing === undefined) return Infinity;
      return marginOf(clearanceLeft(housing, ready.wall, journal), oilLimits(journals, journal));
    });
    this.#known.set(key, margins);
    return margins;
  }
}
