import { clearanceLeft } from '../bearings/internal.js';
import type { Span } from '../judging/index.js';
import type { Length } from '../quantities/index.js';
import {
  canHold,
  type EngineKind,
  type Known,
  marginOf,
  oilLimits,
  own,
  sameStep,
  widthOf,
} from '../reading/index.js';
import { type BandOf, noBand } from './guard-bands.js';
import { isAllowed, type Levels, levelOf } from './levels.js';
import { wallToMake } from './made-stock.js';
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

  /** The shells that give a bearing at least this margin; what is not known may be of any size. */
  choice(
    fits: 'rods' | 'mains',
    step: Length,
    journal: Known,
    housing: Known,
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
    journal: Known,
    housing: Known,
    shells: Stock['shells'][number],
  ): number | undefined {
    return this.#marginsOf(fits, step, journal, housing)[this.shells.indexOf(shells)];
  }

  /** The best order of pistons in bores; undefined if they do not fit. */
  pistons(bores: readonly Known[], sizes: readonly Known[]): PistonFit | undefined {
    const inThese = this.#pistons.get(bores) ?? new WeakMap();
    this.#pistons.set(bores, inThese);
    const known = inThese.get(sizes);
    if (known) return known.fit;
    const { limits } = own(this.engine.bores.pistonClearance);
    const standard = this.engine.bores.standard.max;
    const fit = pistonFit(bores, sizes, limits, (bore) =>
      this.bandOf('piston clearance', bore?.max ?? standard),
    );
    inThese.set(sizes, { fit });
    return fit;
  }

  /** The wall that shells have in a bearing: their own, or the one they are made with to suit it. */
  wallOf(
    fits: 'rods' | 'mains',
    journal: Span<Length>,
    housing: Span<Length>,
    { ready: { wall, toSuit } }: Stock['shells'][number],
  ): Span<Length> | undefined {
    const journals = fits === 'rods' ? this.engine.rodJournals : this.engine.mainJournals;
    if (toSuit === undefined || journals === undefined) return wall;
    const made = wallToMake(toSuit, housing, journal, oilLimits(journals, journal.max));
    return { min: made, max: made };
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
    const margins = this.shells.map((shells) => {
      const { lacking, ready: of } = shells;
      if (of.fits !== undefined && of.fits !== fits) return undefined;
      if (of.step !== undefined && !sameStep(of.step, step)) return undefined;
      const wall = housing && journal ? this.wallOf(fits, journal, housing, shells) : of.wall;
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
