import type { Dimension } from '../quantities/index.js';

/** A letter in a formula. */
export interface CardSymbol {
  /** How the expression writes it. */
  readonly symbol: string;
  /** What it stands for, in the trade's words. */
  readonly meaning: string;
  /** Its dimension. */
  readonly dimension: Dimension;
}

/** A letter that is put in, with the values a small engine gives it. */
export interface CardInput extends CardSymbol {
  /** Least and most that is usual, in the coherent SI unit of the dimension. */
  readonly between: readonly [least: number, most: number];
}

/**
 * One formula of the library, written out. The same card is read, worked
 * through with numbers, checked for its dimensions and compared with the code.
 */
export interface FormulaCard {
  /** What it gives, in the trade's words. */
  readonly name: string;
  /** The function of the library that computes it. */
  readonly computedBy: string;
  /** What comes out. */
  readonly result: CardSymbol;
  /** What goes in. */
  readonly inputs: readonly CardInput[];
  /** Definitions used in the expression, in mathjs syntax, each on its own. */
  readonly where: readonly string[];
  /** The formula, in mathjs syntax. */
  readonly expression: string;
  /** Where it comes from. */
  readonly source: string;
}

/** Makes a card's input. */
export function input(
  symbol: string,
  meaning: string,
  dimension: Dimension,
  least: number,
  most: number,
): CardInput {
  return { symbol, meaning, dimension, between: [least, most] };
}
