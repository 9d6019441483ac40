import type { Dimension, Unit } from '../quantities/index.js';
import { forPeople, printedQuantity } from './printed.js';
import { toDigits } from './rounding.js';
import type { PrintedQuantity, WorkedConversion } from './worked-types.js';
import { type Exponents, sizeOf, type WorkingUnits, workingUnitName } from './working-units.js';

/** A number in a shop's unit, in the units of the working; nothing where they are the same. */
export function toWorking(
  value: number,
  unit: Unit<Dimension>,
  exponents: Exponents,
  units: WorkingUnits,
  digits: number,
): WorkedConversion | undefined {
  const { add, factor } = between(unit, sizeOf(units, exponents));
  const name = forPeople(workingUnitName(units, exponents));
  if (add === 0 && factor.value === 1) return undefined;
  const shifted = add === 0 ? `${value}` : `(${value} + ${add})`;
  const result = toDigits((value + add) * factor.value, digits);
  return { typed: plainer(`${shifted}${factor.text}`), gives: printedQuantity(result, name) };
}

/** A number in the units of the working, in a shop's unit; nothing where they have one name. */
export function toShop(
  { value }: PrintedQuantity,
  unit: Unit<Dimension>,
  exponents: Exponents,
  units: WorkingUnits,
  digits: number,
): WorkedConversion | undefined {
  const { add, factor } = between(unit, sizeOf(units, exponents));
  const name = forPeople(workingUnitName(units, exponents));
  if (add === 0 && factor.value === 1 && name === shownAs(unit)) return undefined;
  const less = add === 0 ? '' : ` - ${add}`;
  const result = toDigits(value / factor.value - add, digits);
  return { typed: `${value}${factor.back}${less}`, gives: printedQuantity(result, shownAs(unit)) };
}

/** The symbol of a unit; a plain number has none. */
export const shownAs = ({ symbol }: Unit<Dimension>): string =>
  symbol === '-' || symbol.includes('/vol') ? '' : symbol;

interface Factor {
  readonly value: number;
  /** As it is typed after a number, and to go back. */
  readonly text: string;
  readonly back: string;
}

function between(
  { dimension, numerator, denominator, offset }: Unit<Dimension>,
  size: number,
): { readonly add: number; readonly factor: Factor } {
  const isTurn = dimension === 'angle' || dimension === 'rotationalSpeed';
  return { add: offset / numerator, factor: factorOf(numerator / denominator / size, isTurn) };
}

/** A factor in the way that it is easiest to type: a product, a quotient, or a share of π. */
function factorOf(exact: number, isTurn: boolean): Factor {
  const value = toDigits(exact, 12);
  if (value === 1) return { value: 1, text: '', back: '' };
  if (isTurn) {
    const share = toDigits(Math.PI / exact, 12);
    return { value: exact, text: ` * pi / ${share}`, back: ` * ${share} / pi` };
  }
  const inverse = toDigits(1 / exact, 12);
  if (`${inverse}`.length < `${value}`.length) {
    return { value: 1 / inverse, text: ` / ${inverse}`, back: ` * ${inverse}` };
  }
  return { value, text: ` * ${value}`, back: ` / ${value}` };
}

/** Without parentheses that nothing follows. */
const plainer = (text: string): string => text.replace(/^\(([^()]+)\)$/, '$1');
