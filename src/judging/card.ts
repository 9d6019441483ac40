import type { Dimension, Quantity, UnitSystem } from '../quantities/index.js';
import type { Bounds } from './showing.js';

/** What a formula gives. */
export interface CardResult {
  /** How the formula writes it. */
  readonly symbol: string;
  /** What it stands for, in the trade's words. */
  readonly meaning: string;
  /** Its dimension. */
  readonly dimension: Dimension;
  /** Whether its standard has it told as a whole number. */
  readonly isWhole?: boolean;
}

/** A domain of whatever dimension. */
export interface AnyDomain extends Bounds {
  (parameter: string, value: never): unknown;
  /** Dimension of the quantities it takes. */
  readonly dimension: Dimension;
}

/** A letter that is put into a formula. */
export interface CardLetter {
  /** What it stands for, in the trade's words. */
  readonly meaning: string;
  /** The parameter of the function that it goes into, with its path: `journal`, `line[0].viscosity`. */
  readonly field: string;
  /** How the formula in its documentation writes it; without this, as the last name of the field. */
  readonly written?: string;
  /** What it can be. */
  readonly domain: AnyDomain;
  /** Least and most that is usual in a small engine, in the coherent SI unit. */
  readonly usual: readonly [least: number, most: number];
  /** The sizes that it is made, read or written in, where no shop meets others, in SI; one list, one for each unit system, or one for the only system that it is made in. */
  readonly made?: readonly number[] | Readonly<Partial<Record<UnitSystem, readonly number[]>>>;
}

/** Sizes from the least to the most, so many units apart: whole counts, or limits as a manual writes them. */
export const everyStep = (
  unit: (value: number) => number,
  least: number,
  most: number,
  step: number,
): readonly number[] =>
  Array.from({ length: Math.round((most - least) / step) + 1 }, (_, i) =>
    unit(Number((least + i * step).toPrecision(12))),
  );

/** What a definition of a formula defines. */
export interface CardDefined {
  /** What the letter stands for, in the trade's words. */
  readonly meaning: string;
  /** What the documentation calls it; without this, as the formula does. */
  readonly written?: string;
}

/** A definition of a formula, and what it defines. */
export interface Definition extends CardDefined {
  readonly line: string;
}

/** A definition: its line in mathjs syntax, what its letter stands for, and what the documentation calls that. */
export const defined = (line: string, meaning: string, written?: string): Definition => ({
  line,
  meaning,
  ...(written !== undefined && { written }),
});

/** A call that the function refuses. */
export interface CardRefusal {
  /** Values of letters that bring it about, in SI; the others are usual ones. */
  readonly with: Readonly<Record<string, number>>;
  /** The parameter that the refusal names. */
  readonly names: string;
}

/**
 * What is written on the card of one formula, with the function that computes it. The same card is read, worked
 * through with numbers, checked for its dimensions, and held against the code and its documentation.
 */
export interface WrittenCard {
  /** The function that computes it. */
  readonly of: (...args: never[]) => unknown;
  /** What it gives, in the trade's words. */
  readonly name: string;
  /** What comes out. */
  readonly gives: CardResult;
  /** What goes in, by the letter that the formula writes for it. */
  readonly letters: Readonly<Record<string, CardLetter>>;
  /** Definitions used in the formula, in mathjs syntax, each on its own. */
  readonly where: readonly string[];
  /** What they define, by its letter; functions are not among them. */
  readonly defines: Readonly<Record<string, CardDefined>>;
  /** Those of them that hold numbers out of a table, by the letter they define. */
  readonly tabled: readonly string[];
  /** The formula, in mathjs syntax. */
  readonly expression: string;
  /** What the function refuses besides values outside their domains, by the cause that its documentation names. */
  readonly refuses: Readonly<Record<string, CardRefusal>>;
  /** Where the formula comes from. */
  readonly source: string;
  /** A sound value for each letter, in SI, where the middle of what is usual would make none together. */
  readonly example?: Readonly<Record<string, number>>;
  /** Values of letters that are only made together, in SI: the diameter of a thread with its pitch. */
  readonly madeTogether?: Readonly<
    Partial<Record<UnitSystem, readonly Readonly<Record<string, number>>[]>>
  >;
  /** The arguments that the function takes for a value of each letter [SI]. */
  readonly call: (values: Readonly<Record<string, number>>) => readonly unknown[];
  /** The number of the formula in what the function gives; undefined where it gives none. */
  readonly read: (result: unknown) => number | undefined;
}

type AnyFunction = (...args: never[]) => unknown;
type Letters = WrittenCard['letters'];
type Derived =
  | 'of'
  | 'letters'
  | 'where'
  | 'defines'
  | 'tabled'
  | 'refuses'
  | 'example'
  | 'call'
  | 'read';

/** A value for each letter, of the dimension of its domain. */
type ValuesOf<L extends Letters> = {
  readonly [K in keyof L]: Quantity<L[K]['domain']['dimension']>;
};

/** What is written on a card; the rest follows from it. */
interface CardText<F extends AnyFunction, L extends Letters>
  extends Omit<WrittenCard, Derived>,
    Partial<Pick<WrittenCard, 'tabled' | 'refuses'>> {
  readonly of: F;
  readonly letters: L;
  /** Definitions used in the formula; a function is its line alone. */
  readonly where?: readonly (string | Definition)[];
  readonly example?: ValuesOf<L>;
  /** The arguments of a call. Without it they are one object with a field for each letter. */
  readonly call?: (letters: ValuesOf<L>) => Readonly<Parameters<F>>;
  /** Where the number stands in what the function gives. Without it, that is the number. */
  readonly read?: (result: ReturnType<F>) => number | undefined;
}

/** Makes a card. */
export function card<F extends AnyFunction, L extends Letters>(text: CardText<F, L>): WrittenCard {
  const { letters, call, read, where = [] } = text;
  return Object.freeze({
    tabled: [],
    refuses: {},
    ...text,
    where: where.map((each) => (typeof each === 'string' ? each : each.line)),
    defines: Object.fromEntries(
      where.flatMap((each) => {
        if (typeof each === 'string') return [];
        const { line, ...what } = each;
        return [[line.slice(0, line.indexOf(' ')), what]];
      }),
    ),
    call: (values: Readonly<Record<string, number>>) =>
      call?.(values as ValuesOf<L>) ?? [fieldsOf(letters, values)],
    read: (result: unknown) => (read ? read(result as ReturnType<F>) : (result as number)),
  });
}

const fieldsOf = (letters: Letters, values: Readonly<Record<string, number>>) =>
  Object.fromEntries(Object.entries(letters).map(([letter, { field }]) => [field, values[letter]]));
