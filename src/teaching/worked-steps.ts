import type { MathNode, SymbolNode } from 'mathjs';
import type { Wording } from '../judging/index.js';
import { guardWording } from '../judging/internal.js';
import {
  type Dimension,
  kelvin,
  type Quantity,
  tradeUnit,
  type UnitSystem,
  valueIn,
} from '../quantities/index.js';
import type { CardName } from './cards.js';
import { type CardValues, cardNamed, evaluateFormula, math } from './evaluate.js';

/**
 * A card worked through with numbers, a line each: the formula, its
 * definitions, the numbers put in, the result.
 *
 * @param name - name of the card
 * @param values - a number for each letter that goes in, in SI
 * @param wording - the units to print in
 * @returns lines of plain text
 * @throws {RebuildInputError} when a field is misspelt, there is no such card, a letter has no number, a number
 * is outside the domain of its letter, the dimensions do not balance, the result is not finite, or the unit
 * system is unknown
 * @example
 * ```ts
 * workedSteps('oilClearance', { D_h: inch(2.251), t: inch(0.062), D_j: inch(2.125) }, { units: 'inch' });
 * // ["c = D_h - 2 * t - D_j", "c = (2.251 in) - 2 * (0.062 in) - (2.125 in)", "c = 0.002 in"]
 * ```
 */
export function workedSteps(
  name: CardName,
  values: CardValues,
  wording: Wording,
): readonly string[] {
  const card = cardNamed(name);
  guardWording(wording);
  const { gives, letters, where, expression } = card;
  const value = evaluateFormula(card, values);
  const put = new Map(
    Object.entries(letters).map(([letter, { domain }]) => {
      const text = print(values[letter] as number, domain.dimension, wording.units);
      return [letter, text.includes(' ') ? `(${text})` : text];
    }),
  );
  const substituted = math.parse(expression).toString({
    handler: (node: MathNode) =>
      node.type === 'SymbolNode' ? put.get((node as SymbolNode).name) : undefined,
  });
  return [
    `${gives.symbol} = ${expression}`,
    ...where.map((definition) => `where ${definition}`),
    `${gives.symbol} = ${substituted}`,
    `${gives.symbol} = ${print(value, gives.dimension, wording.units)}`,
  ];
}

/** Six digits in a unit that the formula holds in: temperatures from absolute zero, fractions plain. */
function print(value: number, dimension: Dimension, units: UnitSystem): string {
  if (PLAIN.has(dimension)) return sixDigits(value);
  const unit = dimension === 'temperature' ? kelvin : tradeUnit(dimension, units);
  return `${sixDigits(valueIn(value as Quantity<Dimension>, unit))} ${unit.symbol}`;
}

const PLAIN: ReadonlySet<Dimension> = /* @__PURE__ */ new Set([
  'ratio',
  'volumeFraction',
  'massFraction',
]);

const sixDigits = (value: number) => String(Number(value.toPrecision(6)));
