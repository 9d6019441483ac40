import { all, create, type FactoryFunctionMap, type Unit } from 'mathjs';
import { guardFields, type WrittenCard } from '../judging/internal.js';
import { type Dimension, type Quantity, RebuildInputError } from '../quantities/index.js';
import { mathjsUnit, nearest } from '../quantities/internal.js';
import { type CardName, cards } from './cards.js';
import type { FormulaCard } from './formula-card.js';

/** The mathjs that the cards are written for. */
export const math = /* @__PURE__ */ create(all as FactoryFunctionMap);

/** Numbers for the letters of a card, each in the coherent SI unit of its dimension. */
export type CardValues = Readonly<Record<string, number>>;

/**
 * Works a card out with mathjs, units and all, so that a formula whose
 * dimensions do not balance cannot give a result.
 *
 * @param name - name of the card
 * @param values - a number for each letter that goes in, in SI
 * @returns the result, of the dimension that the card says [coherent SI unit]
 * @throws {RebuildInputError} when a field is misspelt, there is no such card, a letter has no number, a number
 * is outside the domain of its letter, the dimensions do not balance or the result is not finite
 * @example
 * ```ts
 * evaluateCard('dripFlow', { n: 12, t: 60, V_d: 5e-8 }); // 1e-8
 * ```
 */
export function evaluateCard(name: CardName, values: CardValues): Quantity<Dimension> {
  return evaluateFormula(cardNamed(name), values) as Quantity<Dimension>;
}

/** Works out any card; `evaluateCard` looks it up by its name. */
export function evaluateFormula(card: WrittenCard, values: CardValues): number {
  const scope = scopeOf(card, values);
  try {
    for (const definition of card.where) math.evaluate(definition, scope);
    return plainNumber(card, math.evaluate(card.expression, scope));
  } catch (error) {
    if (error instanceof RebuildInputError) throw error;
    throw unbalanced(card, error instanceof Error ? error.message : String(error));
  }
}

/** The card of that name. */
export function cardNamed(name: CardName): FormulaCard {
  if (typeof name === 'string' && Object.hasOwn(cards, name)) return cards[name];
  const near = typeof name === 'string' ? nearest(name, Object.keys(cards)) : undefined;
  throw new RebuildInputError({
    parameter: 'name',
    value: name,
    expected: 'the name of a card',
    hint: near === undefined ? 'cardsAbout finds cards by words.' : `Did you mean ${near}?`,
  });
}

function scopeOf(card: WrittenCard, values: CardValues): Map<string, number | Unit> {
  guardFields('values', values, Object.keys(card.letters));
  return new Map(
    Object.entries(card.letters).map(([letter, { domain }]) => {
      const value = domain(letter, values[letter] as never) as number;
      const unit = mathjsUnit[domain.dimension];
      return [letter, unit === '' ? value : math.unit(value, unit)];
    }),
  );
}

function plainNumber(card: WrittenCard, result: unknown): number {
  const unit = mathjsUnit[card.gives.dimension];
  const value =
    unit === '' || typeof result === 'number' ? result : (result as Unit).toNumber(unit);
  if (typeof value === 'number' && Number.isFinite(value) && (unit === '') === (result === value)) {
    return value;
  }
  throw unbalanced(card, `the result is ${math.format(result, 6)}`);
}

function unbalanced(card: WrittenCard, why: string): RebuildInputError {
  return new RebuildInputError({
    parameter: 'values',
    value: card.expression,
    expected: `values that give a result of the dimension ${card.gives.dimension}`,
    problem: `gives no result of the dimension ${card.gives.dimension}: ${why}`,
    hint: 'Check the values against what is usual for the letters of the card.',
  });
}
