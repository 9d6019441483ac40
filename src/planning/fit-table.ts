import { clearanceLeft } from '../bearings/internal.js';
import type { Length } from '../quantities/index.js';
import {
  canHold,
  type EngineKind,
  type Known,
  marginOf,
  oilLimits,
  sameStep,
  widthOf,
} from '../reading/index.js';
import { type BandOf, noBand } from './guard-bands.js';
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
    /** What every clearance of the plan must keep from its limits. */
    readonly bandOf: BandOf = noBand,
  ) {}

  /** Every margin computed so far [nm]. */
  margins(): readonly number[] {
    return [...this.#known.values()].flat().filter((margin) => margin !== undefined);
  }

  /** The shells that give a bearing at least this margin; what is not known may be of any size. */
  choice(
    fits: 'rods' | 'mains',
    step: Length,
    journal: Known,
    housing: Known,
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
    journal: Known,
    housing: Known,
  ): readonly (number | undefined)[] {
    const key = `${fits} ${step} ${journal?.min} ${journal?.max} ${housing?.min} ${housing?.max}`;
    const known = this.#known.get(key);
    if (known) return known;
    const journals = fits === 'rods' ? this.engine.rodJournals : this.engine.mainJournals;
    if (journals === undefined) return this.shells.map(() => undefined);
    const largest = (journal?.max ?? journals.standard.max - step) as Length;
    const band = this.bandOf('oil clearance', largest);
    const limits = oilLimits(journals, largest);
    const margins = this.shells.map(({ ready, lacking }) => {
      const { wall, ...of } = ready;
      if (of.fits !== undefined && of.fits !== fits) return undefined;
      if (of.step !== undefined && !sameStep(of.step, step)) return undefined;
      if (lacking || !housing || !journal || !wall) {
        // A missing part, or one that is not known, has the best size that there can be.
        const width = widthOf(journal) + widthOf(housing) + (lacking ? 0 : 2 * widthOf(wall));
        return canHold(width, limits, band) ? Infinity : undefined;
      }
      return marginOf(clearanceLeft(housing, wall, journal), limits, band);
    });
    this.#known.set(key, margins);
    return margins;
  }
}
