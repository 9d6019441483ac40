import type { Length } from '../quantities/index.js';
import type { Known } from '../reading/index.js';
import type { Kind } from './kinds.js';
import { Model, type Row, type Term } from './model.js';
import type { PricedWay, Stock } from './stock.js';

/** The engines of one interchange group; or one engine of it, if each engine has its own cost limit or block. */
export interface Batch {
  readonly index: number;
  /** Whether it is one engine. */
  readonly single?: true;
  readonly interchange?: string;
  /** The only block that goes into it, by name. */
  readonly block?: string;
}

/** The main journals of one crankshaft, ready for an engine. */
export interface Shaft {
  readonly step: Length;
  readonly journals: readonly Known[];
  readonly thrustWidth?: Length;
}

/** The main housings of one block; empty for a block of any size. */
export interface Housings {
  readonly housings: readonly Known[];
  readonly thrustWidth?: Length;
}

/** The bores of one block, ready for an engine. */
export interface Bores {
  readonly step: Length;
  readonly sizes: readonly Known[];
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
  | { readonly use: 'other part'; readonly kind: KindOf<'otherParts'> }
  | { readonly use: 'stems in guides'; readonly guide: string; readonly stem: string };

/** A model of all builds under construction, with the meaning of its variables. */
export class Draft {
  readonly model = new Model();
  /** What each variable counts, and of which batch. */
  readonly uses: (Use & { readonly batch: Batch })[] = [];
  /** The number of engines. */
  readonly engines: Term[] = [];
  /** Their cost [thousandths]. */
  readonly cost: Term[] = [];
  /** The missing parts, with their numbers. */
  readonly lacking: (readonly [term: Term, kind: Kind<unknown>])[] = [];
  /** The number of must-build blocks in the plan. */
  readonly mustBuild: Term[] = [];
  /** What takes parts of each kind. */
  readonly taken = new Map<Kind<unknown>, Term[]>();
  readonly #tight: (readonly [term: Term, level: number])[] = [];

  /** Adds a variable that takes nothing from the shed. */
  count(batch: Batch, use: Use, bound = MANY): number {
    this.uses.push({ ...use, batch });
    return this.model.variable(bound);
  }

  /** Adds a variable that takes one part of a kind from the shed, with its cost and the cost of work on it. */
  take(batch: Batch, kind: Kind<unknown>, use: Use, work = 0): number {
    const variable = this.count(batch, use, kind.count);
    this.alsoTake(variable, kind);
    if (work > 0) this.cost.push([variable, work]);
    return variable;
  }

  /** Lets a variable take one part of another kind as well. */
  alsoTake(variable: number, kind: Kind<unknown>): void {
    const terms = this.taken.get(kind) ?? [];
    terms.push([variable, 1]);
    this.taken.set(kind, terms);
    if (kind.cost > 0) this.cost.push([variable, kind.cost]);
    if (kind.lacking) this.lacking.push([[variable, 1], kind]);
  }

  /** Notes that a variable has a clearance whose margin is within a level, if it is within any. */
  tight(variable: number, level: number | undefined): void {
    if (level !== undefined) this.#tight.push([[variable, 1], level]);
  }

  /** The number of clearances whose margins are within a level. */
  within(level: number): readonly Term[] {
    return this.#tight.flatMap(([term, its]) => (its <= level ? [term] : []));
  }

  /** Adds a term to a place of one batch. What comes into a place must go out. */
  flow(batch: Batch, place: string, variable: number, amount: number): void {
    this.model.flow(`${batch.index} ${place}`, variable, amount);
  }

  /** The terms of a sum that belong to one batch. */
  termsOf(terms: readonly Term[], batch: Batch): readonly Term[] {
    return terms.filter(([variable]) => this.uses[variable]?.batch === batch);
  }

  /** Closes the model: every place balances, and no kind is taken more often than it is available. */
  close(rows: readonly Row[]): void {
    this.model.balance();
    for (const [kind, terms] of this.taken) {
      this.model.rows.push({ terms, min: 0, max: kind.count });
    }
    for (const row of rows) this.model.rows.push(row);
  }
}

/** An upper bound for any variable. */
const MANY = 10_000;
