import { clearanceLeft } from '../bearings/internal.js';
import type { Span } from '../judging/index.js';
import type { Length } from '../quantities/index.js';
import { type EngineKind, marginOf, oilLimits, sameStep } from '../reading/index.js';
import type { Stock } from './stock.js';

/** The shells that fit a bearing, as indices of the kinds of shells in the stock. */
export interface Choice {
  /** Equal for bearings that take the same shells. */
  readonly key: string;
  readonly shells: readonly number[];
}

/** Which shells fit which bearing, and with what margin; every bearing is computed once. */
export class FitTable {
  readonly #known = new Map<string, readonly (number | undefined)[]>();

  constructor(
    private readonly engine: EngineKind,
    private readonly shells: Stock['shells'],
  ) {}

  /** Every margin computed so far [nm]. */
  margins(): readonly number[] {
    return [...this.#known.values()].flat().filter((margin) => margin !== undefined);
  }

  /** The shells that give a bearing at least this margin; without a housing, all shells of the step. */
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
