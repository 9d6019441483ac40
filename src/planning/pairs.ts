import type { Length } from '../quantities/index.js';
import { canHold, marginOf } from '../reading/index.js';
import { type Brief, kindsFor } from './brief.js';
import type { Batch, Housings, Shaft } from './draft.js';
import type { Choice } from './fit-table.js';
import { thicknessToMake } from './made-stock.js';
import type { Stock } from './stock.js';
import { packsFor } from './thrust.js';

/** The washers that set the end play of one engine. */
export type Pack = readonly Stock['thrustWashers'][number][];

/** A crankshaft that fits a block. */
export interface Pair {
  /** Equal for pairs that take the same shells and washers. */
  readonly key: string;
  /** The shells that fit each main. */
  readonly bearings: readonly Choice[];
  /** A key for the gap that washers must fill, by the packs that fill it; absent if there is none to fill. */
  readonly gap: string | undefined;
}

/** Works out which crankshafts fit which blocks, and remembers the choices and gaps. */
export class Pairs {
  readonly #choices = new Map<string, Choice>();
  readonly #gaps = new Map<string, readonly Pack[]>();
  readonly #packs = new Map<number, string>();

  constructor(
    private readonly brief: Brief,
    private readonly batch: Batch,
  ) {}

  /** How a crankshaft fits a block; undefined if no shells or no washers fit. */
  of(shaft: Shaft, block: Housings): Pair | undefined {
    const { fits, clock } = this.brief;
    clock?.check();
    const bearings = shaft.journals.map((journal, i) =>
      fits.choice('mains', shaft.step, journal, block.housings[i], this.brief),
    );
    if (bearings.some(({ shells }) => shells.length === 0)) return undefined;
    const gap = this.#gapOf(shaft, block);
    if (gap !== undefined && this.#gaps.get(gap)?.length === 0) return undefined;
    for (const choice of bearings) this.#choices.set(choice.key, choice);
    return { key: JSON.stringify([bearings.map(({ key }) => key), gap]), bearings, gap };
  }

  /** Every choice of shells so far. */
  choices(): Iterable<Choice> {
    return this.#choices.values();
  }

  /** Every gap so far, with the packs that fill it. */
  gaps(): Iterable<[string, readonly Pack[]]> {
    return this.#gaps;
  }

  #gapOf({ thrustWidth: outer }: Shaft, { thrustWidth: inner }: Housings): string | undefined {
    if (this.brief.engine.endPlay === undefined) return undefined;
    if (outer === undefined || inner === undefined) return undefined;
    const nanometres = Math.round((outer - inner) * 1e9);
    const known = this.#packs.get(nanometres);
    if (known !== undefined) return known;
    const packs = this.#packsFor((nanometres / 1e9) as Length);
    const gap = JSON.stringify(packs.map((pack) => pack.map(({ members }) => members[0]?.name)));
    this.#packs.set(nanometres, gap);
    this.#gaps.set(gap, packs);
    return gap;
  }

  #packsFor(without: Length): readonly Pack[] {
    const limits = this.brief.engine.endPlay ?? {};
    const band = this.brief.fits.bandOf('end play by washers', 0);
    const kinds = kindsFor(this.brief.stock.thrustWashers, this.batch);
    const there = kinds.flatMap((kind) => {
      const { thickness } = kind.ready;
      return kind.lacking || thickness === undefined ? [] : [{ kind, thickness }];
    });
    const packs = packsFor(
      without,
      there.map(({ thickness }) => thickness),
      there.map(({ kind }) => kind.count),
      limits,
      band,
    ).map((pack) => pack.flatMap((i) => there[i]?.kind ?? []));
    // A missing washer, or one that is not measured, has the right thickness, if there is room for any.
    const made = kinds.filter(({ ready: { toSuit } }) => {
      const thickness = toSuit && thicknessToMake(toSuit, without, limits);
      if (thickness === undefined) return false;
      const play = (without - thickness) as Length;
      return (
        marginOf({ min: play, max: play }, { min: 0 as Length, ...limits }, band) !== undefined
      );
    });
    const isRoom = without > (limits.min ?? 0) && canHold(0, limits, band);
    const isOpen = (kind: (typeof kinds)[number]) =>
      kind.lacking || (kind.ready.thickness === undefined && !kind.made);
    const any = kinds.filter((kind) => isRoom && isOpen(kind));
    return [...packs, ...[...made, ...any].map((kind) => [kind])];
  }
}
