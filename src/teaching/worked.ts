import type { MathNode, OperatorNode, ParenthesisNode, SymbolNode } from 'mathjs';
import {
  type Dimension,
  type Quantity,
  RebuildInputError,
  type UnitSystem,
  valueIn,
} from '../quantities/index.js';
import { worksByAnotherFormula } from './another-formula.js';
import type { CardName } from './cards.js';
import { shownAs, toShop, toWorking } from './conversions.js';
import { type CardValues, cardNamed } from './evaluate.js';
import type { FormulaCard } from './formula-card.js';
import { type FormulaPlan, planOf } from './formula-plan.js';
import { forPeople, printedQuantity } from './printed.js';
import { resultOf } from './result-of.js';
import { toDigits } from './rounding.js';
import { readIn, readingOf, resultUnit } from './shop-values.js';
import { plainText } from './unfold.js';
import { unitsAsked, type WorkedOptions } from './worked-options.js';
import type { WorkedConstant, WorkedFormula, WorkedLetter, WorkedStep } from './worked-types.js';
import { type Exponents, sizeOf, workingUnitName } from './working-units.js';

/** Digits of a result. */
const DIGITS = 6;
/** Digits of what is printed on the way: as few as give the result to its own digits. */
const TRIES = [7, 9, 11, 13, 15] as const;

/**
 * Works a formula through with numbers, line by line, in units that go together: each line, typed into a calculator,
 * gives the number that stands after it. What was given in other units is converted first, and the sum is shown.
 *
 * The numbers on the way are rounded to as few digits as give the result to its own six. The result is always that of
 * the library's function.
 *
 * @param name - name of the card
 * @param values - a number for each letter that goes in, in SI
 * @param options - the units that the shop reads, inches without it
 * @returns the letters, the lines of the working, and the result, as data
 * @throws {RebuildInputError} when a field is misspelt, there is no such card, a letter has no number, a number
 * is outside the domain of its letter, the unit system is unknown, the function refuses the values, the function works them by
 * another formula than that of the card, or the numbers that the card holds from a table are not those of the values
 * @example
 * ```ts
 * const { steps, result, converted } = worked(
 *   'oilClearance',
 *   { D_h: inch(2.251), t: inch(0.062), D_j: inch(2.125) },
 *   { units: 'inch' },
 * );
 * steps[0]?.symbolic; // "D_h - 2 * t - D_j"
 * steps[0]?.substituted; // "(2.251 in) - 2 * (0.062 in) - (2.125 in)"
 * steps[0]?.typed; // "2.251 - 2 * 0.062 - 2.125"
 * result.text; // "0.002 in"
 * converted?.gives.text; // "2 thou"
 * ```
 */
export function worked(
  name: CardName,
  values: CardValues,
  options: WorkedOptions = {},
): WorkedFormula {
  const units = unitsAsked(options);
  const found = workedBy(name, values, units);
  if (found !== undefined) return found;
  throw worksByAnotherFormula(name, (other) => isWorkedBy(other, values, units));
}

/** The working; nothing where the formula gives another result than the function. */
function workedBy(
  name: CardName,
  values: CardValues,
  units: UnitSystem,
): WorkedFormula | undefined {
  const card = cardNamed(name);
  const value = resultOf(card, values);
  for (const digits of TRIES) {
    const attempt = attemptAt(name, card, values, units, value, digits);
    if (attempt !== undefined) return attempt;
  }
  return undefined;
}

function isWorkedBy(name: CardName, values: CardValues, units: UnitSystem): boolean {
  try {
    return workedBy(name, values, units) !== undefined;
  } catch (error) {
    if (error instanceof RebuildInputError) return false;
    throw error;
  }
}

function attemptAt(
  name: CardName,
  card: FormulaCard,
  values: CardValues,
  system: UnitSystem,
  value: number,
  digits: number,
): WorkedFormula | undefined {
  const plan = planOf(card);
  const units = plan.units[readIn(card, system)];
  const { gives, topic } = card;
  const unitNamed = (of: Exponents) => forPeople(workingUnitName(units, of));
  const numbers = new Map<string, Put>();

  const legend = Object.entries(card.letters).map(([symbol, letter]): WorkedLetter => {
    const exponents = plan.letters.get(symbol) as Exponents;
    const si = values[symbol] as Quantity<Dimension>;
    const { unit } = readingOf(card, letter, system);
    const given = toDigits(valueIn(si, unit), digits);
    const converted = toWorking(given, unit, exponents, units, digits);
    numbers.set(symbol, {
      value: converted?.gives.value ?? given,
      unit: workingUnitName(units, exponents),
    });
    return {
      symbol,
      meaning: letter.meaning,
      field: letter.field,
      given: printedQuantity(given, shownAs(unit)),
      ...(converted && { converted }),
    };
  });

  const constants = [...plan.quantities].flatMap(
    ([symbol, { written, size, exponents }]): readonly WorkedConstant[] => {
      const number = toDigits(size / sizeOf(units, exponents), digits);
      const unit = workingUnitName(units, exponents);
      numbers.set(symbol, { value: number, unit });
      const isAsWritten = [written.replace(/[()]/g, ''), `1 ${written}`].includes(
        `${number} ${unit}`,
      );
      if (isAsWritten) return [];
      return [{ written, gives: printedQuantity(number, forPeople(unit)) }];
    },
  );

  const ofResult = (plan.lines.at(-1) as FormulaPlan['lines'][number]).exponents.join();
  // A difference of sizes keeps the noise of the sizes.
  const noise = [...plan.letters].reduce(
    (most, [symbol, of]) =>
      of.join() === ofResult
        ? Math.max(most, 1e-14 * Math.abs(numbers.get(symbol)?.value ?? 0))
        : most,
    0,
  );

  const scope = new Map([...numbers].map(([symbol, put]) => [symbol, put.value]));
  const last = plan.lines.length - 1;
  const steps = plan.lines.map((line, index): WorkedStep => {
    const exact = line.compiled.evaluate(scope as never) as number;
    const isNoise = index === last && Math.abs(exact) <= noise;
    const result = isNoise ? 0 : toDigits(exact, index === last ? DIGITS : digits);
    const { symbolic, symbol, isTabled, node, exponents } = line;
    const substituted = sparse(plainText(node, withUnits(numbers)));
    const typed = sparse(plainText(node, withoutUnits(numbers)));
    scope.set(symbol, result);
    numbers.set(symbol, { value: result, unit: workingUnitName(units, exponents) });
    const meaning = card.defines[symbol]?.meaning;
    return {
      symbol,
      ...(meaning !== undefined && { meaning }),
      symbolic,
      substituted,
      typed,
      gives: printedQuantity(result, unitNamed(exponents)),
      isTabled,
    };
  });

  const result = (steps[last] as WorkedStep).gives;
  const exponents = (plan.lines[last] as FormulaPlan['lines'][number]).exponents;
  const exact = value / sizeOf(units, exponents);
  if (!agrees(result.value, exact, noise)) return undefined;
  const unit = resultUnit(card, value, system);
  const converted = toShop(result, unit, exponents, units, DIGITS);
  return {
    name,
    title: card.name,
    topic,
    units: system,
    asks: { symbol: gives.symbol, meaning: gives.meaning },
    formula: card.expression,
    where: card.where,
    legend,
    constants,
    steps,
    result,
    ...(converted && { converted }),
    value,
    inRadians: plan.inRadians,
    source: card.source,
  };
}

/** A number that is put in for a letter, with the unit of the working in mathjs. */
interface Put {
  readonly value: number;
  readonly unit: string;
}

/** Prints a letter as its number and unit, in parentheses where something could bind tighter. */
const withUnits =
  (numbers: ReadonlyMap<string, Put>) =>
  (node: MathNode): string | undefined => {
    const put = putFor(node, numbers);
    if (put === undefined) return undefined;
    const text = put.unit === '' ? `${put.value}` : `${put.value} ${put.unit}`;
    return /[ -]/.test(text) ? `(${text})` : text;
  };

/** Prints a letter as its number alone; a unit that the formula is divided by is 1 and drops out. */
const withoutUnits =
  (numbers: ReadonlyMap<string, Put>) =>
  (node: MathNode, options: object): string | undefined => {
    const put = putFor(node, numbers);
    if (put !== undefined) return put.value < 0 ? `(${put.value})` : `${put.value}`;
    if (node.type !== 'OperatorNode') return undefined;
    const { fn, args } = node as OperatorNode;
    const [left, right] = args;
    const isOne =
      (fn === 'divide' || fn === 'multiply') &&
      right !== undefined &&
      left !== undefined &&
      isQuantitySymbol(bare(right)) &&
      putFor(bare(right), numbers)?.value === 1;
    return isOne ? (left as MathNode).toString(options) : undefined;
  };

/** Without parentheses around parentheses, or around a number alone that nothing is called with. */
const sparse = (text: string): string =>
  text.replaceAll(/\(\(([^()]*)\)\)/g, '($1)').replaceAll(/(?<![a-z\d])\(([\d.]+)\)/g, '$1');

const bare = (node: MathNode): MathNode =>
  node.type === 'ParenthesisNode' ? bare((node as ParenthesisNode).content) : node;

const isQuantitySymbol = (node: MathNode): boolean =>
  node.type === 'SymbolNode' && (node as SymbolNode).name.startsWith('quantity');

const putFor = (node: MathNode, numbers: ReadonlyMap<string, Put>): Put | undefined =>
  node.type === 'SymbolNode' ? numbers.get((node as SymbolNode).name) : undefined;

/** Whether a printed result is the exact one to its own digits. */
function agrees(printed: number, exact: number, noise: number): boolean {
  const lastDigit = exact === 0 ? 0 : 10 ** (Math.floor(Math.log10(Math.abs(exact))) + 1 - DIGITS);
  return Math.abs(printed - exact) <= 0.6 * lastDigit + noise;
}
