/** So much of a variable. */
export type Term = readonly [variable: number, coefficient: number];

/** A sum of terms that lies between two bounds. */
export interface Row {
  readonly terms: readonly Term[];
  readonly min: number;
  readonly max: number;
}

/** What is allowed: how far each variable goes, and rows. */
export interface Allowed {
  readonly bounds: readonly number[];
  readonly rows: readonly Row[];
}

/** A model of whole numbers as it is put together: variables from 0 to a bound, and rows. */
export class Model implements Allowed {
  readonly bounds: number[] = [];
  readonly rows: Row[] = [];
  readonly #places = new Map<string, Term[]>();

  /** Adds a variable. */
  variable(bound: number): number {
    return this.bounds.push(bound) - 1;
  }

  /** Adds a term to a place where what comes in must go out. */
  flow(place: string, variable: number, amount: number): void {
    const terms = this.#places.get(place);
    if (terms) terms.push([variable, amount]);
    else this.#places.set(place, [[variable, amount]]);
  }

  /** Closes every such place with its row. */
  balance(): void {
    for (const terms of this.#places.values()) this.rows.push({ terms, min: 0, max: 0 });
    this.#places.clear();
  }
}

/** What terms come to at given values. */
export const sumOf = (terms: readonly Term[], values: readonly number[]): number =>
  terms.reduce((sum, [variable, coefficient]) => sum + coefficient * (values[variable] ?? 0), 0);
