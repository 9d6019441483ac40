import type { Span } from '../judging/index.js';
import type { Length } from '../quantities/index.js';
import type { Kind } from './kinds.js';
import { Model, type Row, type Term } from './model.js';
import type { PricedWay, Stock } from './stock.js';

/** Engines of one interchange group; or, where each engine's cost counts by itself, one engine of it. */
export interface Batch {
  readonly index: number;
  /** It is one engine. */
  readonly single?: true;
  readonly interchange?: string;
}

/** Journals of one crankshaft as they go into an engine. */
export interface Shaft {
  readonly step: Length;
  readonly journals: readonly Span<Length>[];
  readonly thrustWidth?: Length;
}

/** Main housings of one block; empty where any would do. */
export interface Housings {
  readonly housings: readonly Span<Length>[];
  readonly thrustWidth?: Length;
}

/** Bores of one block as they go into an engine. */
export interface Bores {
  readonly step: Length;
  readonly sizes: readonly Span<Length>[];
}

type KindOf<S extends keyof Stock> = Stock[S][number];

/** What a variable of the model counts. */
export type Use =
  | {
      readonly use: 'mains';
      readonly kind: KindOf<'crankshafts'>;
      readonly way: PricedWay;
      readonly shaft: string;
    }
  | {
      readonly use: 'rod journals';
      readonly kind: KindOf<'crankshafts'>;
      readonly way: PricedWay;
      readonly shaft: string;
    }
  | {
      readonly use: 'block';
      readonly kind: KindOf<'blocks'>;
      readonly way: PricedWay;
      readonly housings: string;
      readonly bores: string;
    }
  | {
      readonly use: 'shaft in housings';
      readonly shaft: string;
      readonly housings: string;
      readonly gap: string | undefined;
    }
  | {
      readonly use: 'rod set';
      readonly kind: KindOf<'rods'>;
      readonly shaft: string;
      readonly choices: readonly string[];
    }
  | { readonly use: 'single rods'; readonly shaft: string }
  | {
      readonly use: 'rod on journal';
      readonly kind: KindOf<'rods'>;
      readonly journal: string;
      readonly choice: string;
    }
  | { readonly use: 'pistons'; readonly kind: KindOf<'pistonSets'>; readonly bores: string }
  | { readonly use: 'rings'; readonly kind: KindOf<'ringSets'>; readonly bores: string }
  | { readonly use: 'shells'; readonly kind: KindOf<'shells'>; readonly choice: string }
  | {
      readonly use: 'washers';
      readonly gap: string;
      readonly pack: readonly KindOf<'thrustWashers'>[];
    }
  | { readonly use: 'head'; readonly kind: KindOf<'heads'>; readonly guide: string }
  | { readonly use: 'valves'; readonly kind: KindOf<'valveSets'>; readonly stem: string }
  | { readonly use: 'stems in guides'; readonly guide: string; readonly stem: string };

/** A model of all builds as it is put together, with what its variables count. */
export class Draft {
  readonly model = new Model();
  /** What each variable counts, and of which batch. */
  readonly uses: (Use & { readonly batch: Batch })[] = [];
  /** How many engines there are. */
  readonly engines: Term[] = [];
  /** What they cost [thousandths]. */
  readonly cost: Term[] = [];
  /** Parts that are not there, by how many. */
  readonly lacking: (readonly [term: Term, kind: Kind<unknown>])[] = [];
  /** How many of the blocks that must be built are. */
  readonly mustBuild: Term[] = [];
  readonly #taken = new Map<Kind<unknown>, Term[]>();

  /** Adds a variable that takes nothing from the shed. */
  count(batch: Batch, use: Use, bound = MANY): number {
    this.uses.push({ ...use, batch });
    return this.model.variable(bound);
  }

  /** Adds a variable that takes one of a kind from the shed, at what that and the work on it cost. */
  take(batch: Batch, kind: Kind<unknown>, use: Use, work = 0): number {
    const variable = this.count(batch, use, kind.count);
    this.alsoTake(variable, kind);
    if (work > 0) this.cost.push([variable, work]);
    return variable;
  }

  /** Lets a variable take one of a kind, too. */
  alsoTake(variable: number, kind: Kind<unknown>): void {
    const terms = this.#taken.get(kind) ?? [];
    terms.push([variable, 1]);
    this.#taken.set(kind, terms);
    if (kind.cost > 0) this.cost.push([variable, kind.cost]);
    if (kind.lacking) this.lacking.push([[variable, 1], kind]);
  }

  /** A place of one batch where what comes in must go out. */
  flow(batch: Batch, place: string, variable: number, amount: number): void {
    this.model.flow(`${batch.index} ${place}`, variable, amount);
  }

  /** The terms of a sum that belong to one batch. */
  termsOf(terms: readonly Term[], batch: Batch): readonly Term[] {
    return terms.filter(([variable]) => this.uses[variable]?.batch === batch);
  }

  /** Closes the model: what comes in goes out, and nothing is taken more often than it is there. */
  close(rows: readonly Row[]): void {
    this.model.balance();
    for (const [kind, terms] of this.#taken) {
      this.model.rows.push({ terms, min: 0, max: kind.count });
    }
    for (const row of rows) this.model.rows.push(row);
  }
}

/** More than any variable comes to. */
const MANY = 10_000;
