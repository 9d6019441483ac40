import { clearanceLeft } from '../bearings/internal.js';
import type { Span } from '../judging/index.js';
import type { Length } from '../quantities/index.js';
import { canHold, type EngineKind, marginOf, oilLimits, own, sameStep } from '../reading/index.js';
import { type BandOf, noBand } from './guard-bands.js';
import { isAllowed, type Levels, levelOf } from './levels.js';
import { type PistonFit, pistonFit } from './piston-fit.js';
import type { Stock } from './stock.js';

/** The shells that fit a bearing, as indices of the kinds of shells in the stock. */
export interface Choice {
  /** Equal for bearings that take the same shells. */
  readonly key: string;
  readonly shells: readonly number[];
  /** For each of them, the level that its margin is within, if it is within any. */
  readonly levels: readonly (number | undefined)[];
}

/** Which shells fit which bearing, and with what margin; every bearing is computed once. */
export class FitTable {
  readonly #known = new Map<string, readonly (number | undefined)[]>();
  readonly #pistons = new WeakMap<
    object,
    WeakMap<object, { readonly fit: PistonFit | undefined }>
  >();

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

  /** The shells that give a bearing at least this margin; without a housing, all shells of the step. */
  choice(
    fits: 'rods' | 'mains',
    step: Length,
    journal: Span<Length>,
    housing: Span<Length> | undefined,
    wanted: Levels,
  ): Choice {
    const margins = this.#marginsOf(fits, step, journal, housing);
    const shells = margins.flatMap((margin, i) =>
      margin !== undefined && isAllowed(margin, wanted) ? [i] : [],
    );
    const within = shells.map((i) => levelOf(margins[i] as number, wanted));
    const named = shells.map((i, n) => (within[n] === undefined ? i : `${i}:${within[n]}`));
    return { key: `${fits} ${named.join(' ')}`, shells, levels: within };
  }

  /** The margin that a shell gives a bearing; undefined if it does not fit [nm]. */
  margin(
    fits: 'rods' | 'mains',
    step: Length,
    journal: Span<Length>,
    housing: Span<Length> | undefined,
    shells: Stock['shells'][number],
  ): number | undefined {
    return this.#marginsOf(fits, step, journal, housing)[this.shells.indexOf(shells)];
  }

  /** The best order of pistons in bores; undefined if they do not fit. */
  pistons(bores: readonly Span<Length>[], sizes: readonly Span<Length>[]): PistonFit | undefined {
    const inThese = this.#pistons.get(bores) ?? new WeakMap();
    this.#pistons.set(bores, inThese);
    const known = inThese.get(sizes);
    if (known) return known.fit;
    const { limits } = own(this.engine.bores.pistonClearance);
    const fit = pistonFit(bores, sizes, limits, ({ max }) => this.bandOf('piston clearance', max));
    inThese.set(sizes, { fit });
    return fit;
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
    const band = this.bandOf('oil clearance', journal.max);
    const margins = this.shells.map(({ ready, lacking }) => {
      if (journals === undefined || ready.fits !== fits || !sameStep(ready.step, step))
        return undefined;
      const limits = oilLimits(journals, journal);
      if (lacking || housing === undefined) {
        // A missing part has the best size that there can be.
        const width = widthOf(journal) + widthOf(housing) + (lacking ? 0 : 2 * widthOf(ready.wall));
        return canHold(width, limits, band) ? Infinity : undefined;
      }
      return marginOf(clearanceLeft(housing, ready.wall, journal), limits, band);
    });
    this.#known.set(key, margins);
    return margins;
  }
}

const widthOf = (size: Span<Length> | undefined): number => (size ? size.max - size.min : 0);
