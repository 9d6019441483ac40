/** A variable with its coefficient. */
export type Term = readonly [variable: number, coefficient: number];

/** A sum of terms between two bounds. */
export interface Row {
  readonly terms: readonly Term[];
  readonly min: number;
  readonly max: number;
}

/** A row: a sum is just so much. */
export const exactly = (terms: readonly Term[], sum: number): Row => ({
  terms,
  min: sum,
  max: sum,
});

/** A row: a sum is no more than this. */
export const upTo = (terms: readonly Term[], max: number): Row => ({ terms, min: -Infinity, max });

/** Constraints: an upper bound for each variable, and rows. */
export interface Allowed {
  readonly bounds: readonly number[];
  readonly rows: readonly Row[];
}

/** A model of whole numbers under construction: variables from 0 to a bound, and rows. */
export class Model implements Allowed {
  readonly bounds: number[] = [];
  readonly rows: Row[] = [];
  readonly #places = new Map<string, Term[]>();

  /** Adds a variable. */
  variable(bound: number): number {
    return this.bounds.push(bound) - 1;
  }

  /** Adds a term to a place. What comes into a place must go out. */
  flow(place: string, variable: number, amount: number): void {
    const terms = this.#places.get(place);
    if (terms) terms.push([variable, amount]);
    else this.#places.set(place, [[variable, amount]]);
  }

  /** Adds the balance row of every place. */
  balance(): void {
    for (const terms of this.#places.values()) this.rows.push({ terms, min: 0, max: 0 });
    this.#places.clear();
  }
}

/** The sum of terms at given values. */
export const sumOfTerms = (terms: readonly Term[], values: readonly number[]): number =>
  terms.reduce((sum, [variable, coefficient]) => sum + coefficient * (values[variable] ?? 0), 0);
